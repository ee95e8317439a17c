"""Numbers, limits and derivations as a reader wants to see them; shared by the summary and the terminal."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Sequence
from typing import TypeGuard

from blockgen.plan import Fastener, Plan
from blockgen.record import Input, Record, Value

_OPERATOR = re.compile(r"[*/+]|\s[-x]\s")
_WORD = re.compile(r"(?<![A-Za-z])(?!(?:x|max|min|sqrt|pi)(?![A-Za-z]))[A-Za-z]")


def number(value: float, decimals: int = 4) -> str:
    """Return a number without needless digits; small ones keep three significant digits.

    Args:
        value: Number in any unit.
        decimals: Decimals at most, for numbers that are not small.
    """
    if isinstance(value, int):
        return str(value)
    if not math.isfinite(value):
        return "-"
    text = f"{value:.{decimals}f}"
    if decimals:
        text = text.rstrip("0").rstrip(".")
    if text in {"0", "-0"}:
        return "0" if abs(value) < 1e-12 else f"{value:.3g}"
    return text


def significant(value: float | None, digits: int = 4) -> str:
    """Return a number to a few significant digits, never with an exponent below a million; ``-`` for None."""
    if value is None or not math.isfinite(value):
        return "-"
    if value == 0:
        return "0"
    places = max(0, digits - 1 - math.floor(math.log10(abs(value))))
    return number(round(value, places), places)


def value(of: Value) -> str:
    """Return a value of any kind as text."""
    if of is None:
        return "-"
    if isinstance(of, bool):
        return "yes" if of else "no"
    if isinstance(of, (int, float)):
        return number(of)
    if isinstance(of, tuple):
        return "(" + ", ".join(value(part) for part in of) + ")"  # type: ignore[arg-type] # parts are values too
    return str(of)


def with_unit(of: Value, unit: str) -> str:
    """Return value and unit."""
    text = value(of)
    return f"{text} {unit_sign(unit)}" if unit and of is not None else text


def unit_sign(unit: str) -> str:
    """Return a unit as it is printed: ``N*m`` with a raised dot, ``kg/m^3`` as ``kg/m3``."""
    return unit.replace("*", "\u00b7").replace("^", "")


def amount(record: Record) -> str:
    """Return the value of a record with its unit; a pattern of holes as its rows and columns where it is a grid."""
    if not is_pattern(record.value):
        return with_unit(record.value, record.unit)
    across, up = ("y", "z") if record.key.endswith("bolt_positions") else ("x", "y")
    return f"{_pattern(record.value, across, up)} {record.unit}".rstrip()


def is_pattern(of: Value) -> TypeGuard[tuple[tuple[float, float], ...]]:
    """Tell whether a value is a list of hole centres."""
    return isinstance(of, tuple) and bool(of) and all(isinstance(p, tuple) and len(p) == 2 for p in of)


def _pattern(points: tuple[tuple[float, float], ...], across: str, up: str) -> str:
    columns, rows = sorted({p[0] for p in points}), sorted({p[1] for p in points})
    if len(points) == len(set(points)) == len(columns) * len(rows):
        return f"{across} {_places(columns)}, {up} {_places(rows)}"
    return f"({across}, {up}) " + ", ".join(value(point) for point in points)


def _places(along: Sequence[float]) -> str:
    """Return places along one axis, for instance ``\u00b139.5`` or ``10.5 / 78``."""
    if len(along) == 2 and along[0] == -along[1]:
        return f"\u00b1{number(along[1])}"
    return " / ".join(number(place) for place in along)


def limits(record: Record | None) -> str:
    """Return deviations and tolerance class, for instance ``H7 +0.030/0``; empty without any."""
    if record is None:
        return ""
    return deviations(record.fit, record.upper, record.lower)


def deviations(fit: str | None, upper: float | None, lower: float | None) -> str:
    """Return a tolerance class with its deviations in mm."""
    words = [fit] if fit else []
    if upper is not None and lower is not None:
        if upper == -lower and upper != 0:
            words.append(f"\u00b1{number(upper)}")
        else:
            words.append(f"{_signed(upper)}/{_signed(lower)}")
    return " ".join(words)


def _signed(deviation: float) -> str:
    text = number(deviation)
    return f"+{text}" if deviation > 0 else text


def input_list(record: Record) -> str:
    """Return the inputs of a rule as ``name = value unit``."""
    return ", ".join(f"{name} = {with_unit(i.value, i.unit)}" for name, i in record.inputs.items())


def formula(record: Record) -> str:
    """Return the formula of a rule, without the remark that may follow it behind a semicolon."""
    return record.rule.partition("; ")[0]


def substitution(record: Record) -> str:
    """Return the rule with the values of its inputs in place of their names; empty where it is not a formula.

    A rule may call an input by its key, by the last part of it with or without the side it is on, or by these in words.
    """
    values = _by_spelling(record)
    if not values:
        return ""
    names = "|".join(re.escape(name) for name in sorted(values, key=lambda n: (-len(n), n)))
    pattern = re.compile(rf"(?<![\w.])(?:{names})(?!\w|\.\w)")
    replaced = pattern.sub(lambda m: values[m.group()], formula(record))
    return replaced if _OPERATOR.search(replaced) and not _WORD.search(replaced) else ""


def _by_spelling(record: Record) -> dict[str, str]:
    """Return the value of each input by the ways in which a rule may call it; what could mean two is left out."""
    full = {spelling: of for key, of in record.inputs.items() for spelling in (key, _in_words(key))}
    short: dict[str, list[Input]] = {}
    for key, of in record.inputs.items():
        last = key.rpartition(".")[2]
        for name in {last, last.removeprefix("base_").removeprefix("bearing_").removeprefix("motor_")}:
            for spelling in {name, _in_words(name)}:
                short.setdefault(spelling, []).append(of)
    clear = {spelling: found[0] for spelling, found in short.items() if len(found) == 1}
    return {spelling: value(of.value) for spelling, of in {**clear, **full}.items()}


def _in_words(key: str) -> str:
    return key.replace("_", " ").replace(".", " ")


def derivation(record: Record) -> str:
    """Return formula, substitution and result in one line."""
    result = amount(record)
    numbers = substitution(record)
    if numbers:
        note = record.rule[len(formula(record)) :].removeprefix("; ")
        return f"{formula(record)} = {numbers}" + (f"; {note}: {result}" if note else f" = {result}")
    inputs = input_list(record)
    return joined((record.rule, f"from {inputs}" if inputs else "", f"result {result}"), "; ")


def derivation_words(record: Record) -> str:
    """Return the rule with its inputs, without the result."""
    return joined((record.rule, input_list(record)), ": ")


def quantity(of: float | None, unit: str) -> str:
    """Return a checked value to four significant digits with its unit; ``-`` for None."""
    text = significant(of)
    return f"{text} {unit_sign(unit)}" if unit and of is not None else text


def margin(of: float | None) -> str:
    """Return a margin as a percentage; ``-`` where nothing was assessed. A small one is never shown as none."""
    if of is None or not math.isfinite(of):
        return "-"
    percent = of * 100
    return f"{percent:.0f} %" if abs(percent) >= 1 or percent == 0 else f"{percent:.1g} %"


def verdict(of: str) -> str:
    """Return the verdict in plain words."""
    return of.replace("_", " ")


def plain_id(of: str) -> str:
    """Return an id such as ``base_screw_1`` in words."""
    return of.replace("_", " ").replace(".", ", ")


def joined(parts: Iterable[str], between: str = ", ") -> str:
    """Return the parts that are not empty, joined."""
    return between.join(part for part in parts if part)


def plain_material(plan: Plan) -> str:
    """Return the name of the block's material."""
    return plan.text("block.material") or "material not named"


def fastener(of: Fastener) -> str:
    """Return a group of screws as it is ordered, for instance ``4 x M10 x 50 - 8.8 (ISO 4762)``."""
    length = "length to be chosen" if of.length is None else number(of.length)
    grade = f" - {of.property_class}" if of.property_class else ""
    washer = f" with {of.washer}" if of.washer else ""
    return f"{of.count} x {of.size} x {length}{grade} ({of.standard}){washer}"
