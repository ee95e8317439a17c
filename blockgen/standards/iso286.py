"""ISO 286-1: standard tolerances and fundamental deviations, built into the limits of hole and shaft classes.

Classes: holes F G H J JS K M N P, shafts f g h j js k m n p, grades IT5 to IT11, sizes above 0 up to 500 mm. js and JS
are the unrounded +-IT/2 (older printings round the half of an odd tolerance down in grades 7 to 11).
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

from blockgen.standards.tables import Row, TableError, load_table, quoted, row_for

GRADES = (5, 6, 7, 8, 9, 10, 11)
SHAFT_LETTERS = ("f", "g", "h", "j", "js", "k", "m", "n", "p")
HOLE_LETTERS = ("F", "G", "H", "J", "JS", "K", "M", "N", "P")
_CLASS = re.compile(r"([A-Za-z]{1,2})(\d{1,2})")


@dataclass(frozen=True, slots=True)
class Limits:
    """Deviations from the nominal size, mm.

    Args:
        lower: Lower deviation (EI or ei).
        upper: Upper deviation (ES or es).
    """

    lower: float
    upper: float

    @property
    def tolerance(self) -> float:
        """Width of the tolerance zone, mm."""
        return self.upper - self.lower

    @property
    def middle(self) -> float:
        """Middle of the tolerance zone, mm."""
        return (self.upper + self.lower) / 2


@dataclass(frozen=True, slots=True)
class Fit:
    """A hole and a shaft of one nominal size.

    Args:
        min_clearance: Least clearance, mm; negative is interference.
        max_clearance: Greatest clearance, mm.
        hole: Deviations of the hole.
        shaft: Deviations of the shaft.
        kind: clearance, transition or interference.
    """

    min_clearance: float
    max_clearance: float
    hole: Limits
    shaft: Limits
    kind: str


def is_class(text: str) -> bool:
    """Tell whether a text is a tolerance class that this module knows, for instance ``H7``."""
    match = _CLASS.fullmatch(text.strip())
    return match is not None and match[1] in HOLE_LETTERS + SHAFT_LETTERS and int(match[2]) in GRADES


def is_hole(tolerance_class: str) -> bool:
    """Tell whether a class belongs to holes (capital letter)."""
    return tolerance_class[:1].isupper()


@lru_cache(maxsize=4096)
def tolerance(size: float, grade: int) -> float:
    """Return the standard tolerance ITn in mm.

    Args:
        size: Nominal size, mm, above 0 up to 500.
        grade: 5 to 11.

    Raises:
        TableError: size or grade is outside the table.

    Source: ISO 286-1, Table 1.
    """
    if grade not in GRADES:
        raise TableError("tolerance grade", f"IT{grade}", "IT5 to IT11 are known", "take a grade among them")
    return _micrometres(_grades(size), f"IT{grade}")


@lru_cache(maxsize=4096)
def limits(size: float, tolerance_class: str) -> Limits:
    """Return the deviations of a tolerance class in mm.

    Args:
        size: Nominal size, mm, above 0 up to 500.
        tolerance_class: Letter and grade, for instance ``H7`` or ``js6``.

    Raises:
        TableError: size or class is outside the table.

    Source: ISO 286-1, Tables 1 to 5; js and JS unrounded.
    """
    letter, grade = _split(tolerance_class)
    width = tolerance(size, grade)
    if letter in ("js", "JS"):
        return Limits(-width / 2, width / 2)
    if letter.islower():
        return _shaft(size, letter, grade, width)
    return _hole(size, letter, grade, width)


@lru_cache(maxsize=4096)
def fit(size: float, hole_class: str, shaft_class: str) -> Fit:
    """Return clearances and deviations of a hole and a shaft of one nominal size.

    Raises:
        TableError: size or class is outside the tables, or the two classes stand in the wrong order.
    """
    if not is_hole(hole_class) or is_hole(shaft_class):
        found = f"{hole_class}/{shaft_class}"
        raise TableError("fit", found, "capital letter for the hole, then small letter for the shaft", "write H7/h6")
    hole, shaft = limits(size, hole_class), limits(size, shaft_class)
    least, greatest = _clean(hole.lower - shaft.upper), _clean(hole.upper - shaft.lower)
    return Fit(least, greatest, hole, shaft, _kind(least, greatest))


def _kind(least: float, greatest: float) -> str:
    if least >= 0:
        return "clearance"
    return "interference" if greatest <= 0 else "transition"


def _clean(value: float) -> float:
    return round(value, 7)  # a sum of micrometres carries binary dust; half micrometres (js) survive


def _grades(size: float) -> Row:
    return row_for(load_table("iso286_grades").rows, "nominal size", size)


def _deviations(size: float) -> Row:
    return row_for(load_table("iso286_deviations").rows, "nominal size", size)


def _micrometres(row: Row, column: str) -> float:
    return float(row[column]) / 1000


def _split(tolerance_class: str) -> tuple[str, int]:
    match = _CLASS.fullmatch(tolerance_class.strip())
    if match is None or match[1] not in HOLE_LETTERS + SHAFT_LETTERS:
        known = f"holes {' '.join(HOLE_LETTERS)} and shafts {' '.join(SHAFT_LETTERS)} with a grade are known"
        raise TableError("tolerance class", quoted(tolerance_class), known, "write for instance H7 or h6")
    return match[1], int(match[2])


def _shaft(size: float, letter: str, grade: int, width: float) -> Limits:
    if letter == "h":
        return Limits(-width, 0.0)
    row = _deviations(size)
    if letter in ("f", "g"):
        upper = _micrometres(row, letter)
        return Limits(_clean(upper - width), upper)
    lower = _shaft_lower(row, letter, grade)
    return Limits(lower, _clean(lower + width))


def _shaft_lower(row: Row, letter: str, grade: int) -> float:
    """Return ei of j, k, m, n, p; k has a deviation in grades 4 to 7 only, j depends on the grade."""
    if letter == "k" and grade > 7:
        return 0.0
    return _tabled(row, f"j{grade}", grade, "j") if letter == "j" else _micrometres(row, letter)


def _hole(size: float, letter: str, grade: int, width: float) -> Limits:
    row = _deviations(size)
    if letter in ("F", "G", "H"):
        lower = 0.0 if letter == "H" else -_micrometres(row, letter.lower())
        return Limits(lower, _clean(lower + width))
    upper = _tabled(row, f"J{grade}", grade, "J") if letter == "J" else _hole_upper(size, row, letter, grade)
    return Limits(_clean(upper - width), upper)


def _tabled(row: Row, column: str, grade: int, letter: str) -> float:
    if not row.get(column):
        asked = f"{letter}{grade} at {row['above']} to {row['to']} mm"
        raise TableError("tolerance class", asked, "ISO 286-1 has no such class", f"take {letter}s or another grade")
    return _micrometres(row, column)


def _hole_upper(size: float, row: Row, letter: str, grade: int) -> float:
    """Return ES of K, M, N, P: the shaft's deviation mirrored, plus delta in the finer grades."""
    if letter == "M" and grade == 6 and 250 < size <= 315:
        return -0.009  # ISO 286-1 makes this one exception; the rule would give -0.011
    if grade > 8 and letter in ("K", "N") and size > 3:
        if letter == "N":
            return 0.0
        raise TableError("tolerance class", f"K{grade} above 3 mm", "ISO 286-1 has K up to grade 8", "take K8 or JS")
    return _clean(_mirrored(row, letter, size) + _delta(size, letter, grade))


def _mirrored(row: Row, letter: str, size: float) -> float:
    return 0.0 if letter == "K" and size <= 3 else -_micrometres(row, letter.lower())


def _delta(size: float, letter: str, grade: int) -> float:
    """Return delta = ITn - IT(n-1), which applies up to IT8 for K, M, N and up to IT7 for P, above 3 mm."""
    if size <= 3 or grade > (7 if letter == "P" else 8):
        return 0.0
    row = _grades(size)
    return _micrometres(row, f"IT{grade}") - _micrometres(row, f"IT{grade - 1}")
