"""Easy access to resolved values for the rules of physical sense."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from itertools import combinations

from blockgen.errors import Problem
from blockgen.record import Record

Point = tuple[float, float]
_METRIC = re.compile(r"M([0-9]+(?:\.[0-9])?)")
_FRACTION = re.compile(r"(?:([0-9]) )?([0-9]+)/([0-9]+)-")


@dataclass(frozen=True, slots=True)
class Facts:
    """The records of one spec and the file that they stand in."""

    records: Mapping[str, Record]
    file: str
    _motors: tuple[str, ...] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Find the motors once: many rules ask for them."""
        family = {".".join(k.split(".")[:2]) + "." for k in self.records if k.startswith("family.")}
        object.__setattr__(self, "_motors", ("motor.", *sorted(family)))

    def has(self, *keys: str) -> bool:
        """Tell whether all keys have a value."""
        return all(k in self.records for k in keys)

    def number(self, key: str, otherwise: float | None = None) -> float:
        """Return a number, or ``otherwise`` where the key has none.

        Raises:
            TypeError: the value is not a number.
            KeyError: there is none and no ``otherwise``.
        """
        if otherwise is not None and key not in self.records:
            return otherwise
        value = self.records[key].value
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            raise TypeError(f"{key} is {value!r}, not a number")
        return value

    def text(self, key: str) -> str:
        """Return a text; empty where the key has none."""
        return str(self.records[key].value) if key in self.records else ""

    def points(self, key: str) -> list[Point]:
        """Return pairs of lengths, mm."""
        value = self.records[key].value if key in self.records else ()
        pairs = value if isinstance(value, tuple) else ()
        return [(p[0], p[1]) for p in pairs if isinstance(p, tuple)]

    def motors(self) -> tuple[str, ...]:
        """Return the prefixes of the motor and of its family."""
        return self._motors

    def thread_diameter(self, key: str) -> float | None:
        """Return the nominal diameter of a thread in mm; None where it is not given or numbered."""
        text = self.text(key)
        metric, inch = _METRIC.match(text), _FRACTION.match(text)
        if metric:
            return float(metric[1])
        if inch:
            return 25.4 * (int(inch[1] or 0) + int(inch[2]) / int(inch[3]))
        return None

    @staticmethod
    def least_distance(points: Sequence[Point]) -> float:
        """Return the least distance between two points; infinite for fewer than two."""
        return min((math.dist(a, b) for a, b in combinations(points, 2)), default=math.inf)

    def problem(self, keys: Sequence[str], expected: str, remedy: str = "") -> Problem:
        """Return a problem that shows keys, values and where values of presets come from."""
        found = ", ".join(self._shown(k) for k in keys)
        lines = [self.records[k].line for k in keys if k in self.records]
        line = next((x for x in lines if x is not None), None)
        return Problem(self.file, line, keys[0], found, expected, remedy or f"correct {' or '.join(keys)}")

    def _shown(self, key: str) -> str:
        record = self.records[key]
        number = isinstance(record.value, (int, float)) and not isinstance(record.value, bool)
        value = f"{record.value:g}" if number else str(record.value)
        place = f" ({record.source.split(':', 1)[0]})" if record.line is None and record.source else ""
        return f"{key} = {value} {record.unit}".rstrip() + place
