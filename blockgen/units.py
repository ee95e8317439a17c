"""Quantities in, plain floats in a key's default unit out (mm, deg, N, N*m, kg, degC and so on)."""

from __future__ import annotations

import csv
import difflib
import re
from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path
from types import MappingProxyType
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pint import UnitRegistry

# The angle is a dimension of its own: pint's usual one takes "10 %" for an angle and N*m/rad for N*m.
_DEFINITIONS = (
    "m = [length]",
    "kg = [mass]",
    "s = [time]",
    "K = [temperature]; offset: 0",
    "rad = [angle]",
    "percent = 0.01",
    "cm = 0.01 m",
    "mm = 1e-3 m",
    "um = 1e-6 m",
    "in = 0.0254 m = _ = inch",
    "ft = 0.3048 m",
    "thou = 2.54e-5 m",
    "g = 1e-3 kg",
    "t = 1000 kg",
    "lb = 0.45359237 kg",
    "oz = 0.028349523125 kg",
    "ms = 1e-3 s",
    "min = 60 s",
    "N = kg * m / s**2",
    "kN = 1000 N",
    "lbf = 4.4482216152605 N",
    "ozf = 0.27801385095378125 N",
    "Pa = N / m**2",
    "kPa = 1e3 Pa",
    "MPa = 1e6 Pa",
    "GPa = 1e9 Pa",
    "bar = 1e5 Pa",
    "psi = lbf / in**2",
    "ksi = 1000 psi",
    "Hz = 1 / s",
    "kHz = 1000 Hz",
    "deg = 0.017453292519943295 rad",
    "arcmin = 2.908882086657216e-4 rad",
    "mrad = 1e-3 rad",
    "urad = 1e-6 rad",
    "degC = K; offset: 273.15",
    "degF = 5 / 9 K; offset: 255.37222222222223",
)

#: Default unit: (what it measures, greatest magnitude that a spec may hold).
DIMENSIONS: Mapping[str, tuple[str, float]] = MappingProxyType(
    {
        "mm": ("length", 1e5),
        "deg": ("angle", 3600.0),
        "N": ("force", 1e8),
        "N*m": ("torque", 1e7),
        "kg": ("mass", 1e6),
        "degC": ("temperature", 3000.0),
        "MPa": ("stress", 1e7),
        "Hz": ("frequency", 1e6),
        "N/um": ("stiffness", 1e6),
        "N*m/rad": ("angular stiffness", 1e10),
        "kg*m^2": ("inertia", 1e6),
        "kg/m^3": ("density", 1e5),
        "1/K": ("thermal expansion", 1e-2),
        "": ("plain number", 1e6),
    }
)

_LEAST = 1e-12
"""Least amount other than 0, in any unit; below it stands no value of a machine, and a quotient may be infinite."""

# Written by many data sheets, and never meant as a mass times a length.
_TORQUE_HABITS = MappingProxyType({"oz*in": "ozf*in", "lb*in": "lbf*in", "lb*ft": "lbf*ft"})
_HINTS = MappingProxyType(
    {
        "Nm": "N*m",
        "Ncm": "N*cm",
        "Nmm": "N*mm",
        "N-m": "N*m",
        "lb-in": "lbf*in",
        "lbf-in": "lbf*in",
        "in-lb": "lbf*in",
        "inlb": "lbf*in",
        "lb-ft": "lbf*ft",
        "ft-lb": "lbf*ft",
        "oz-in": "oz*in",
        '"': "in",
        "''": "in",
        "'": "ft",
        "inches": "in",
        "lbs": "lb",
        "kgs": "kg",
        "C": "degC",
        "F": "degF",
        "degrees": "deg",
        "kgm2": "kg*m^2",
        "kgcm2": "kg*cm^2",
        "kg*m2": "kg*m^2",
        "kg*cm2": "kg*cm^2",
        "newton": "N",
        "millimetre": "mm",
    }
)
_TYPOGRAPHY = str.maketrans(
    {"·": "*", "⋅": "*", "µ": "u", "μ": "u", "²": "^2", "³": "^3", "\u2212": "-", "\u00a0": " "}
)
_SPELLED = ((re.compile("°C"), "degC"), (re.compile("°F"), "degF"), (re.compile("°"), "deg"))
_NUMBER = r"[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?"
_QUANTITY = re.compile(rf"\s*({_NUMBER})(?:\s*([^\s,.0-9].*?)|\s+(1\s*/.*?))?\s*")
_COMMA = re.compile(r"\s*([+-]?[0-9]+),([0-9]+)\s*(.*?)\s*")
# Nothing else reaches pint, so no text of a spec can make it compute.
_NAME = r"[A-Za-z%]{1,12}(?:(?:\^|\*\*)-?[1-4])?"
_UNIT = re.compile(rf"(?:1\s*/\s*)?{_NAME}(?:\s*[*/ ]\s*{_NAME}){{0,5}}")


class UnitProblem(ValueError):  # noqa: N818 - what is wrong with a value, not a failure
    """A value that is not a quantity of the kind that its key wants.

    Args:
        expected: What should stand there.
        remedy: What to do about it.
    """

    def __init__(self, expected: str, remedy: str = "") -> None:
        """Keep both parts and make the message from them."""
        self.expected = expected
        self.remedy = remedy
        super().__init__(f"expected {expected}" + (f"; {remedy}" if remedy else ""))


def quantity(value: object, unit: str) -> float:
    """Return a quantity as a number in ``unit``.

    Args:
        value: Text with a unit (``"40 mm"``) or a bare number in ``unit``.
        unit: One of the keys of ``DIMENSIONS``; empty for a plain number.

    Raises:
        UnitProblem: it is not a number, has another dimension, is not finite or is beyond every machine.
    """
    if isinstance(value, str):
        number = _parse(value, unit)
    elif isinstance(value, (int, float)) and not isinstance(value, bool):
        number = _float(value, unit)
    else:
        raise UnitProblem(expected(unit))
    if not abs(number) <= DIMENSIONS[unit][1]:  # also true for nan
        raise UnitProblem(f"{expected(unit)}, finite and at most {DIMENSIONS[unit][1]:g} {unit}".rstrip())
    if 0 < abs(number) < _LEAST:
        raise UnitProblem(f"{expected(unit)}, 0 or at least {_LEAST:g} {unit}".rstrip())
    return number


def expected(unit: str) -> str:
    """Return in words what a value in ``unit`` may look like."""
    noun = DIMENSIONS[unit][0]
    if not unit:
        return 'a plain number such as 0.9 or "90 %"'
    example = {"degC": "20", "deg": "0.5", "1/K": "23e-6", "kg/m^3": "2700"}.get(unit, "40")
    return f'{"an" if noun[0] in "aeiou" else "a"} {noun} such as "{example} {unit}", or a bare number in {unit}'


def _float(value: float, unit: str) -> float:
    try:
        return float(value)
    except OverflowError:
        raise UnitProblem(f"{expected(unit)}, finite") from None


def _parse(text: str, unit: str) -> float:
    match = _QUANTITY.fullmatch(text)
    if match is None:
        raise _not_a_quantity(text, unit)
    number, written = match[1], match[2] or match[3]
    if not written:
        return float(number)
    factor, offset = _conversion(written, unit)
    converted = float(number) * factor + offset
    # 12 digits: "1 in" and "25.4 mm" are to be the same number, not numbers a rounding error apart
    return converted if factor == 1.0 and not offset else float(f"{converted:.12g}")


def _not_a_quantity(text: str, unit: str) -> UnitProblem:
    comma = _COMMA.fullmatch(text)
    if comma is not None:
        point = f"{comma[1]}.{comma[2]} {comma[3]}".rstrip()
        return UnitProblem(expected(unit), f'decimals are written with a point: "{point}"')
    return UnitProblem(expected(unit))


@lru_cache(maxsize=512)
def _conversion(written: str, unit: str) -> tuple[float, float]:
    """Return factor and offset from a unit as written to the default unit."""
    name = _tidy(written)
    if unit == "N*m":
        name = _TORQUE_HABITS.get(name, name)
    if name == unit:
        return 1.0, 0.0
    if _UNIT.fullmatch(name) is None:
        raise _unknown(written, unit)
    usual = usual_conversions().get((name, unit))
    return usual or _ask_pint(name, written, unit)


@lru_cache(maxsize=1)
def usual_conversions() -> Mapping[tuple[str, str], tuple[float, float]]:
    """Return factor and offset by (unit as written, default unit), computed beforehand by pint.

    Loading pint takes longer than a whole check, so only a rare unit asks it. A test computes every row again.
    """
    with (Path(__file__).parent / "unit_factors.csv").open(encoding="utf-8", newline="") as file:
        rows = [row for row in csv.reader(file) if row and not row[0].startswith("#")]
    return {(written, unit): (float(factor), float(offset)) for written, unit, factor, offset in rows[1:]}


def _tidy(written: str) -> str:
    name = written
    for pattern, word in _SPELLED:
        name = pattern.sub(word, name)
    name = re.sub(r"\s*([*/^])\s*", r"\1", name.translate(_TYPOGRAPHY))
    return re.sub(r"\s+", "*", name.strip()).replace("%", "percent")


def _ask_pint(name: str, written: str, unit: str) -> tuple[float, float]:
    from pint.errors import DimensionalityError, OffsetUnitCalculusError, UndefinedUnitError

    registry = _registry()
    try:
        source, target = registry.parse_units(name), registry.parse_units(unit)
        zero = registry.convert(0.0, source, target)
        one = registry.convert(1.0, source, target)
    except (DimensionalityError, OffsetUnitCalculusError):
        raise UnitProblem(expected(unit), _other_dimension(name, written)) from None
    except (UndefinedUnitError, ValueError):  # the second where a word such as nan reads as a number
        raise _unknown(written, unit) from None
    return one - zero, zero


def _unknown(written: str, unit: str) -> UnitProblem:
    hint = _HINTS.get(written.strip()) or _nearest(written)
    return UnitProblem(expected(unit), f'"{written}" is not a known unit' + (f"; write {hint}" if hint else ""))


def _nearest(written: str) -> str:
    near = difflib.get_close_matches(written, [*unit_names(), *DIMENSIONS], n=1, cutoff=0.6)
    return near[0] if near else ""


def _other_dimension(name: str, written: str) -> str:
    registry = _registry()
    found = registry.parse_units(name).dimensionality
    for unit, (noun, _) in DIMENSIONS.items():
        if registry.parse_units(unit).dimensionality == found:
            return f'"{written}" is a {noun}' if not unit else f'"{written}" is a unit of {noun}'
    return f'"{written}" measures something else'


def unit_names() -> tuple[str, ...]:
    """Return the names of the units that a spec may use."""
    return tuple("%" if d.startswith("percent") else d.split(" ", 1)[0] for d in _DEFINITIONS)


@lru_cache(maxsize=1)
def _registry() -> UnitRegistry[float]:
    """Return a registry of our own short list: pint's default one takes longer to build than a spec to check."""
    from pint import UnitRegistry

    registry: UnitRegistry[float] = UnitRegistry(None)
    for definition in _DEFINITIONS:
        registry.define(definition)
    return registry
