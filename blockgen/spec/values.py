"""The kinds of value that a spec key can take; each reads a raw TOML value and says what it expected.

A kind stands in the annotation of a key, so its unit and wording also feed the key table and the starter spec.
"""

from __future__ import annotations

import datetime
import re
from abc import ABC, abstractmethod
from dataclasses import dataclass
from typing import Annotated, NoReturn

from pydantic_core import CoreSchema, PydanticCustomError, core_schema

from blockgen.units import UnitProblem, expected, quantity

RESERVED_NAMES = frozenset(
    ["con", "prn", "aux", "nul", *(f"com{i}" for i in range(1, 10)), *(f"lpt{i}" for i in range(1, 10))]
)
_FILE_NAME = re.compile(r"[^\W_](?:[\w.\- ]{0,62}[\w\-])?")
_FIT = re.compile(r"[A-Za-z]{1,2}(?:[1-9]|1[0-8])")
_METRIC = re.compile(r"M(?:[1-9][0-9]?)(?:\.[0-9])?(?:x[0-9](?:\.[0-9]{1,2})?)?")
_UNIFIED = re.compile(r"(?:#?(?:[0-9]|1[02])|(?:[1-9] )?[1-9][0-9]?/[0-9]{1,2}|1)-[0-9]{1,2}(?: UN[CFJ]{0,2})?")
_CONTROL = re.compile(r"[\x00-\x1f\x7f-\x9f\u2028\u2029\ud800-\udfff\ufffe\uffff]")
_DATE = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")


def refuse(wanted: str, remedy: str = "") -> NoReturn:
    """Reject a value in words.

    Raises:
        PydanticCustomError: always.
    """
    raise PydanticCustomError("blockgen", "{wanted}", {"wanted": wanted, "remedy": remedy})


class Kind(ABC):
    """Base of the kinds; a subclass reads one raw value."""

    unit: str = ""

    @abstractmethod
    def read(self, value: object) -> object:
        """Return the value as the spec keeps it."""

    def __get_pydantic_core_schema__(self, _source: object, _handler: object) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(self.read)


@dataclass(frozen=True)
class Quantity(Kind):
    """A number with a unit; bare numbers are in ``unit``."""

    unit: str = "mm"

    def read(self, value: object) -> float:
        """Return the number in the default unit."""
        try:
            return quantity(value, self.unit)
        except UnitProblem as problem:
            refuse(problem.expected, problem.remedy)


@dataclass(frozen=True)
class Words(Kind):
    """Free text on one line; it goes into file headers and title blocks, so no control characters."""

    most: int = 200

    def read(self, value: object) -> str:
        """Return the text without blanks around it."""
        if not isinstance(value, str) or not value.strip() or len(value) > self.most or _CONTROL.search(value):
            remedy = "" if isinstance(value, str) else "text stands in quotes"
            refuse(f"text on one line, 1 to {self.most} characters, no control characters", remedy)
        return value.strip()


@dataclass(frozen=True)
class FileName(Kind):
    """Text from which file names are made, on every system."""

    noun: str = "a name"

    def read(self, value: object) -> str:
        """Return the text as it is."""
        if not isinstance(value, str) or not is_file_name(value):
            refuse(
                f"{self.noun} of 1 to 64 letters, digits, blanks, dots, hyphens or underscores that starts with a "
                "letter or digit",
                "leave out slashes, leading and trailing dots and names that a system keeps for devices"
                if isinstance(value, str)
                else "text stands in quotes",
            )
        return value


def is_file_name(text: str) -> bool:
    """Tell whether text can stand in a file name on every system, and cannot be a path."""
    first = text.split(".", 1)[0].strip().lower()
    return _FILE_NAME.fullmatch(text) is not None and first not in RESERVED_NAMES and ".." not in text


@dataclass(frozen=True)
class Pattern(Kind):
    """Text of a fixed form, such as a thread or a tolerance class."""

    patterns: tuple[re.Pattern[str], ...] = ()
    wanted: str = ""

    def read(self, value: object) -> str:
        """Return the text without blanks around it."""
        text = value.strip() if isinstance(value, str) else ""
        if not any(p.fullmatch(text) for p in self.patterns):
            refuse(self.wanted)
        return text


@dataclass(frozen=True)
class Count(Kind):
    """A whole number of parts."""

    least: int = 1
    most: int = 24

    def read(self, value: object) -> int:
        """Return the number."""
        if isinstance(value, bool) or not isinstance(value, int) or not self.least <= value <= self.most:
            refuse(f"a whole number from {self.least} to {self.most}")
        return value


@dataclass(frozen=True)
class Positions(Kind):
    """Pairs of lengths."""

    unit: str = "mm"

    def read(self, value: object) -> tuple[tuple[float, float], ...]:
        """Return the pairs in mm."""
        wanted = 'pairs of lengths such as [["10 mm", "-5 mm"], [10, 5]], 1 to 48 of them'
        if not isinstance(value, list) or not 1 <= len(value) <= 48:
            refuse(wanted)
        return tuple(self._pair(pair, wanted) for pair in value)

    @staticmethod
    def _pair(pair: object, wanted: str) -> tuple[float, float]:
        if not isinstance(pair, list) or len(pair) != 2:
            refuse(wanted)
        try:
            return quantity(pair[0], "mm"), quantity(pair[1], "mm")
        except UnitProblem as problem:
            refuse(f"{wanted}; each one {problem.expected}", problem.remedy)


@dataclass(frozen=True)
class FlagOrLength(Kind):
    """True, false or a length."""

    unit: str = "mm"

    def read(self, value: object) -> bool | float:
        """Return the flag, or the length in mm."""
        if isinstance(value, bool):
            return value
        try:
            return quantity(value, "mm")
        except UnitProblem as problem:
            refuse(f"true, false or {expected('mm')}", problem.remedy)


@dataclass(frozen=True)
class Flag(Kind):
    """True or false."""

    def read(self, value: object) -> bool:
        """Return the flag."""
        if not isinstance(value, bool):
            refuse("true or false", "write it without quotes")
        return value


@dataclass(frozen=True)
class Date(Kind):
    """A calendar date."""

    def read(self, value: object) -> str:
        """Return the date as YYYY-MM-DD."""
        if isinstance(value, datetime.date) and not isinstance(value, datetime.datetime):
            return value.isoformat()
        if not isinstance(value, str) or not _is_date(value):
            refuse('a date such as "2026-03-31"')
        return value


def _is_date(text: str) -> bool:
    try:
        return _DATE.fullmatch(text) is not None and bool(datetime.date.fromisoformat(text))
    except ValueError:
        return False


Length = Annotated[float | None, Quantity("mm")]
Angle = Annotated[float | None, Quantity("deg")]
Force = Annotated[float | None, Quantity("N")]
Torque = Annotated[float | None, Quantity("N*m")]
Mass = Annotated[float | None, Quantity("kg")]
Temperature = Annotated[float | None, Quantity("degC")]
Stress = Annotated[float | None, Quantity("MPa")]
Frequency = Annotated[float | None, Quantity("Hz")]
Stiffness = Annotated[float | None, Quantity("N/um")]
AngularStiffness = Annotated[float | None, Quantity("N*m/rad")]
Inertia = Annotated[float | None, Quantity("kg*m^2")]
Density = Annotated[float | None, Quantity("kg/m^3")]
Expansion = Annotated[float | None, Quantity("1/K")]
Ratio = Annotated[float | None, Quantity("")]
Number = Annotated[int | None, Count()]
Text = Annotated[str | None, Words()]
LongText = Annotated[str | None, Words(1000)]
Switch = Annotated[bool | None, Flag()]
Pairs = Annotated[tuple[tuple[float, float], ...] | None, Positions()]
SwitchOrLength = Annotated[bool | float | None, FlagOrLength()]
Day = Annotated[str | None, Date()]
SafeName = Annotated[str | None, FileName()]
FitClass = Annotated[str | None, Pattern((_FIT,), 'an ISO 286 tolerance class such as "h7" or "H7"')]
MetricThread = Annotated[str | None, Pattern((_METRIC,), 'a metric thread such as "M10" or "M10x1.25"')]
Thread = Annotated[str | None, Pattern((_METRIC, _UNIFIED), 'a thread such as "M8" or "1/4-20 UNC"')]
PropertyClass = Annotated[
    str | None, Pattern((re.compile(r"8\.8|10\.9|12\.9|A[24]-(?:70|80)"),), 'a property class such as "8.8" or "A2-70"')
]
