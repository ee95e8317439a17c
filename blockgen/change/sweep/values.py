"""The values of a varied key, from a list or a range in words to raw values as a spec file would hold them."""

from __future__ import annotations

import math
import re
import tomllib
from collections.abc import Sequence

from blockgen.spec.table import Table
from blockgen.spec.values import Count, Flag, FlagOrLength, Kind, Positions, Quantity
from blockgen.units import UnitProblem, quantity

_BARE = re.compile(r"\s*([+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\s*")
_LEADING = re.compile(r"\s*[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?")
_DIGITS = 12
# A step that misses the end by less than this part of itself reaches it.
_HAIR = 1e-9


class Wrong(ValueError):  # noqa: N818 - what is wrong with a value, not a failure
    """A list or range that a key cannot take.

    Args:
        expected: What should stand there.
        remedy: What to do about it.
    """

    def __init__(self, expected: str, remedy: str = "") -> None:
        """Keep both parts."""
        self.expected = expected
        self.remedy = remedy
        super().__init__(expected)


def split_list(words: str) -> list[str]:
    """Return the parts between commas; commas in brackets and quotes do not count.

    Raises:
        Wrong: a part is empty.
    """
    parts, depth, quoted = [""], 0, False
    for sign in words:
        quoted ^= sign == '"'
        depth += 0 if quoted else (sign in "[{") - (sign in "]}")
        if sign == "," and depth == 0 and not quoted:
            parts.append("")
        else:
            parts[-1] += sign
    found = [part.strip() for part in parts]
    if not all(found):
        raise Wrong("values with commas between them", "take away the comma too many")
    return found


def kind_of(model: type[Table], name: str) -> Kind | None:
    """Return the kind of a key's values; None for a choice of words."""
    return next((part for part in model.model_fields[name].metadata if isinstance(part, Kind)), None)


def read_values(model: type[Table], name: str, parts: Sequence[str]) -> list[object]:
    """Return raw values; what they must be beyond their form is left to the spec's own rules.

    Raises:
        Wrong: some have a unit and others none, or a list does not read.
    """
    kind = kind_of(model, name)
    if isinstance(kind, (Quantity, FlagOrLength)):
        _same_units(parts, kind.unit)
    return [_raw(kind, part) for part in parts]


def _raw(kind: Kind | None, part: str) -> object:
    if isinstance(kind, Count) and _is_whole(part):
        return int(part)
    if isinstance(kind, (Flag, FlagOrLength)) and part in {"true", "false"}:
        return part == "true"
    if isinstance(kind, Positions):
        return _listed(part)
    return part[1:-1] if len(part) > 1 and part[0] == part[-1] == '"' else part


def _is_whole(part: str) -> bool:
    return part.removeprefix("-").isdecimal()


def _listed(part: str) -> object:
    try:
        return tomllib.loads(f"value = {part}")["value"]
    except tomllib.TOMLDecodeError:
        raise Wrong("lists of pairs such as [[10, 5], [90, 5]]", "put the whole of it in single quotes") from None


def _same_units(parts: Sequence[str], unit: str) -> None:
    """Refuse ``1, 2 in``, which could mean 1 mm or 1 in."""
    bare = [_BARE.fullmatch(part) is not None for part in parts if part not in {"true", "false"}]
    if unit and any(bare) and not all(bare):
        raise Wrong(f"a unit at every number, or at none for {unit}")


def number_range(model: type[Table], name: str, ends: tuple[str, str, str | None], most: int) -> list[object]:
    """Return the numbers of a range in default units, its end included where a step reaches it.

    Args:
        model: Table of the key.
        name: The key.
        ends: Low end, high end and step as written; None for no step, which gives the two ends, or counts by one.
        most: Greatest number of values.

    Raises:
        Wrong: the key takes no numbers, an end is no number, the range is empty or has too many values.
    """
    kind = kind_of(model, name)
    if not isinstance(kind, (Quantity, Count, FlagOrLength)):
        raise Wrong("values with commas between them", "only numbers have a range")
    written = [part for part in ends if part is not None]
    _same_units(written, kind.unit)
    try:
        numbers = quantity(ends[0], kind.unit), quantity(ends[1], kind.unit)
        step = None if ends[2] is None else _increment(ends[2], kind.unit)
    except UnitProblem as problem:
        raise Wrong(f"lo:hi:step, each {problem.expected}", problem.remedy) from None
    if numbers[0] >= numbers[1]:
        raise Wrong("a low end below the high end")
    if isinstance(kind, Count):
        return [_whole(number) for number in _steps(*numbers, step or 1.0, most)]
    return list(numbers if step is None else _steps(*numbers, step, most))


def _increment(text: str, unit: str) -> float:
    """Return a step: what it changes a value by, so that 9 degF is 5 K and no temperature."""
    zero = _LEADING.sub("0", text, count=1)
    return round_off(quantity(text, unit) - quantity(zero, unit))


def _steps(low: float, high: float, step: float, most: int) -> list[float]:
    if step <= 0:
        raise Wrong("a step above zero")
    count = math.floor((high - low) / step + _HAIR)
    if count >= most:
        raise Wrong(f"at most {most} values", "take a larger step")
    return [round_off(low + number * step) for number in range(count + 1)]


def _whole(number: float) -> int:
    if number != int(number):
        raise Wrong("whole numbers")
    return int(number)


def round_off(number: float) -> float:
    """Return a number to twelve digits, as conversions of units do, so that 0.1 + 0.2 is 0.3."""
    return float(f"{number:.{_DIGITS}g}")
