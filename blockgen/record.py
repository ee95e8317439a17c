"""A number that knows where it comes from: value, unit, origin, rule, inputs, source, limits, fit."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Literal

Origin = Literal["given", "preset", "standard", "assumed", "sized", "measured"]
Value = float | int | str | bool | tuple[object, ...] | None


@dataclass(frozen=True, slots=True)
class Input:
    """One input of a rule, as it stood when the rule was used."""

    value: Value
    unit: str
    origin: Origin
    ref: str | None = None


@dataclass(frozen=True, slots=True)
class Band:
    """Upper and lower deviation in the unit of the value, and the ISO 286 class where one gives them."""

    upper: float | None = None
    lower: float | None = None
    fit: str | None = None


NO_BAND = Band()


@dataclass(frozen=True, slots=True)
class Record:
    """One value with its reason.

    Args:
        key: Dotted key (``motor.pilot_diameter``) or dimension key (``window_length``).
        value: Number, text, flag or tuple, in ``unit``.
        unit: Unit of value and limits (mm, deg, N, N*m, kg, degC, 1/1 as empty text).
        origin: given, preset, standard, assumed, sized or measured.
        rule: Formula or decision in words.
        inputs: Inputs by name; ``ref`` is the key of another record, which makes a graph.
        source: Standard with clause, preset with its source, or "common practice, no source".
        upper: Upper deviation from value, same unit.
        lower: Lower deviation from value, same unit.
        fit: ISO 286 tolerance class such as ``H7``.
        line: Line in the spec file for a given value.
    """

    key: str
    value: Value
    unit: str
    origin: Origin
    rule: str
    inputs: Mapping[str, Input] = field(default_factory=dict)
    source: str = ""
    upper: float | None = None
    lower: float | None = None
    fit: str | None = None
    line: int | None = None
    _input: Input = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Make the input once: most records are that of many others."""
        object.__setattr__(self, "_input", Input(self.value, self.unit, self.origin, self.key))

    def as_input(self) -> Input:
        """Return this record as the input of another one."""
        return self._input


class Ledger:
    """Records in the order in which they were decided; a key is entered once and never changed."""

    def __init__(self, records: Iterable[Record] = ()) -> None:
        """Start with the given records."""
        self._records = {r.key: r for r in records}
        self._remarks: list[str] = []

    def __contains__(self, key: object) -> bool:
        return key in self._records

    def __getitem__(self, key: str) -> Record:
        return self._records[key]

    def __iter__(self) -> Iterator[Record]:
        return iter(self._records.values())

    def copy(self) -> Ledger:
        """Return a ledger that can go on by itself."""
        other = Ledger()
        other._records = dict(self._records)
        other._remarks = list(self._remarks)
        return other

    @property
    def remarks(self) -> tuple[str, ...]:
        """What the rules had to say in words, in order."""
        return tuple(self._remarks)

    def remark(self, text: str) -> None:
        """Add a remark for the designer: what was moved, thinned or enlarged, and why."""
        self._remarks.append(text)

    def number(self, key: str) -> float:
        """Return a numeric value.

        Raises:
            TypeError: the value is not a number.
        """
        value = self._records[key].value
        if type(value) is float:  # nearly always, and asked for hundreds of times a block
            return value
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            raise TypeError(f"{key} is {value!r}, not a number")
        return value

    def number_or(self, key: str, otherwise: float) -> float:
        """Return a numeric value, or ``otherwise`` where nothing is entered."""
        return self.number(key) if self.known(key) else otherwise

    def text(self, key: str) -> str:
        """Return a value as text; empty where nothing is entered."""
        record = self._records.get(key)
        return "" if record is None or record.value is None else str(record.value)

    def known(self, key: str) -> bool:
        """Tell whether a value is entered and is not None."""
        record = self._records.get(key)
        return record is not None and record.value is not None

    def points(self, key: str) -> tuple[tuple[float, float], ...]:
        """Return a list of pairs such as hole centres.

        Raises:
            TypeError: the value is not a tuple of pairs.
        """
        value = self._records[key].value
        if not isinstance(value, tuple):
            raise TypeError(f"{key} is {value!r}, not a list of points")
        return tuple((float(pair[0]), float(pair[1])) for pair in value if isinstance(pair, tuple))

    def enter(self, record: Record) -> Record:
        """Enter a record.

        Raises:
            KeyError: the key has been entered before.
        """
        if record.key in self._records:
            raise KeyError(f"{record.key} has been decided already")
        self._records[record.key] = record
        return record

    def decide(
        self,
        key: str,
        value: Value,
        unit: str,
        rule: str,
        using: Iterable[str] = (),
        source: str = "",
        *,
        origin: Origin = "sized",
        band: Band = NO_BAND,
    ) -> Record:
        """Enter a decided value; ``using`` names the records that the rule used."""
        records = self._records
        inputs = {name: records[name].as_input() for name in using if name in records}
        return self.enter(Record(key, value, unit, origin, rule, inputs, source, band.upper, band.lower, band.fit))

    def frozen(self) -> Mapping[str, Record]:
        """Return the records by key."""
        return dict(self._records)
