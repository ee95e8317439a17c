"""Text of ISO 10303-21, the exchange form of STEP: values, strings, and new entities behind those of a file."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TypeAlias

DIGITS = 9
"""Places that lengths keep, mm: what a sum of floats adds beyond them is noise."""


@dataclass(frozen=True, slots=True)
class Ref:
    """Number of an entity."""

    number: int


@dataclass(frozen=True, slots=True)
class Typed:
    """A real number with the name of its measure, which a choice of types needs: ``LENGTH_MEASURE(0.02)``."""

    name: str
    value: float


@dataclass(frozen=True, slots=True)
class Sign:
    """What is written as it stands: an enumeration such as ``.MICRO.``, or ``*`` for a derived attribute."""

    text: str


Value: TypeAlias = "Ref | Typed | Sign | str | bool | float | Sequence[Value] | None"


class Entities:
    """New entities in the order in which they are added, numbered on from the last one of a file."""

    def __init__(self, last: int) -> None:
        """Start behind the greatest number of a file."""
        self._last = last
        self._lines: list[str] = []

    def add(self, name: str, *values: Value) -> Ref:
        """Add an entity of one type, its attributes in order."""
        return self._number(written(name, values))

    def add_together(self, **leaves: Sequence[Value]) -> Ref:
        """Add an entity of several types at once; they are written by name, as the standard asks for."""
        return self._number(f"( {' '.join(written(name, leaves[name]) for name in sorted(leaves))} )")

    def text(self) -> str:
        """Return all that was added, an entity on each line."""
        return "".join(line + "\n" for line in self._lines)

    def _number(self, body: str) -> Ref:
        self._last += 1
        self._lines.append(f"#{self._last} = {body};")
        return Ref(self._last)


def written(name: str, values: Sequence[Value]) -> str:
    """Return a type with its attributes."""
    return f"{name}({','.join(value_text(value) for value in values)})"


def value_text(value: Value) -> str:
    """Return one attribute: nothing is ``$``, a truth ``.T.`` or ``.F.``, a list stands in brackets."""
    match value:
        case None:
            return "$"
        case bool():
            text = ".T." if value else ".F."
        case Ref():
            text = f"#{value.number}"
        case Typed():
            text = f"{value.name}({real(value.value)})"
        case Sign():
            text = value.text
        case str():
            text = quoted(value)
        case int() | float():
            text = real(value)
        case _:
            text = written("", value)
    return text


def real(value: float) -> str:
    """Return a real number: always with a point, an exponent with a capital E."""
    rounded = round(value, DIGITS) + 0.0  # no minus before a zero
    mantissa, _, exponent = repr(rounded).partition("e")
    whole, _, part = mantissa.partition(".")
    digits = f"{whole}.{'' if part == '0' else part}"
    return f"{digits}E{exponent}" if exponent else digits


def quoted(text: str) -> str:
    r"""Return a text as a string of ISO 10303-21.

    Quote and backslash are doubled, control characters written as ``\X\0A``, other letters as ``\X2\03BC\X0\`` and
    beyond the basic plane as ``\X4\0001F600\X0\``.
    """
    return "'" + "".join(_escaped(character) for character in text) + "'"


def _escaped(character: str) -> str:
    code = ord(character)
    if character in "'\\":
        return character * 2
    if code < 32 or code == 127:
        return f"\\X\\{code:02X}"
    if code < 127:
        return character
    return f"\\X2\\{code:04X}\\X0\\" if code < 0x10000 else f"\\X4\\{code:08X}\\X0\\"
