"""Letters of a drawing: which font has them, how wide and high they are, their outlines.

Two fonts come with the package: osifont, drawn after ISO 3098, and DejaVu Sans for what osifont does not have. Widths
are sums of advance widths, without kerning, so that they are the same in all formats.
"""

from __future__ import annotations

import math
import struct
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from io import BytesIO
from itertools import groupby
from typing import TYPE_CHECKING, Literal

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.strokes import Text

if TYPE_CHECKING:
    from fontTools.ttLib import TTFont

FontName = Literal["osifont", "DejaVuSans"]

FONTS: tuple[FontName, ...] = ("osifont", "DejaVuSans")
"""Fonts in the order in which a letter is looked for; also the names of the files."""

CAP_HEIGHT: dict[FontName, float] = {"osifont": 1510 / 2048, "DejaVuSans": 1493 / 2048}
"""Height of the letter H over the em. Source: the outlines of the fonts (a test reads them again)."""

REPLACEMENT = "\N{REPLACEMENT CHARACTER}"
"""Shown in place of a letter that neither font has. A plain square would be read as the sign for a square."""


@dataclass(frozen=True, slots=True)
class Letter:
    """One letter; sizes over the height of capitals.

    Args:
        font: Font that has it.
        shown: The letter, or the replacement.
        advance: Distance to the next letter.
        low: Lowest point of the outline over the base line.
        high: Highest point of it.
    """

    font: FontName
    shown: str
    advance: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Run:
    """A piece of a line of text in one font.

    Args:
        font: The font.
        shown: Letters to draw with it, the replacement where one is missing.
        start: Distance from the start of the line, over the height of capitals.
    """

    font: FontName
    shown: str
    start: float


def text_width(words: str, height: float) -> float:
    """Return the width of a line of text: sum of advance widths, mm.

    Args:
        words: The text.
        height: Height of capital letters, mm.
    """
    return height * math.fsum(letter(character).advance for character in words)


def text_box(text: Text) -> Box:
    """Return the box around a text, mm: advance widths along the line, outlines of the letters used across it."""
    letters = [letter(character) for character in text.words]
    width = text.height * math.fsum(one.advance for one in letters)
    low = text.height * min((one.low for one in letters), default=0.0)
    high = text.height * max((one.high for one in letters), default=0.0)
    return _turned(text, ((0.0, low), (width, low), (width, high), (0.0, high)))


def _turned(text: Text, corners: Iterable[tuple[float, float]]) -> Box:
    cosine, sine = direction(text.angle)
    x, y = text.at
    return Box.around((x + along * cosine - up * sine, y + along * sine + up * cosine) for along, up in corners)


def direction(angle: float) -> tuple[float, float]:
    """Return cosine and sine of an angle in deg, exact for quarter turns."""
    quarter = {0.0: (1.0, 0.0), 90.0: (0.0, 1.0), 180.0: (-1.0, 0.0), 270.0: (0.0, -1.0)}.get(angle % 360)
    return quarter or (math.cos(math.radians(angle)), math.sin(math.radians(angle)))


def runs(words: str) -> tuple[Run, ...]:
    """Return the pieces of a line of text by font: osifont, else DejaVu Sans, else a visible replacement."""
    return tuple(_runs(words))


def _runs(words: str) -> Iterator[Run]:
    start = 0.0
    for font, group in groupby(map(letter, words), key=lambda one: one.font):
        letters = list(group)
        yield Run(font, "".join(one.shown for one in letters), start)
        start += math.fsum(one.advance for one in letters)


def missing(words: str) -> tuple[str, ...]:
    """Return the letters that neither font has, in the order in which they first occur."""
    return tuple(dict.fromkeys(c for c in words if letter(c).shown != c))


@lru_cache(maxsize=8192)
def letter(character: str) -> Letter:
    """Return font and sizes of a letter, those of the replacement where neither font has it."""
    for font in FONTS:
        if ord(character) in _cmap(font) and character.isprintable():
            return _letter(font, character)
    return _letter("DejaVuSans", REPLACEMENT)


def _letter(font: FontName, character: str) -> Letter:
    glyph, unit = _cmap(font)[ord(character)], 1 / (CAP_HEIGHT[font] * _units(font))
    advance, low, high = _opened(font)["hmtx"].metrics[glyph][0], *_low_and_high(font, glyph)
    return Letter(font, character, advance * unit, low * unit, high * unit)


def _low_and_high(font: FontName, glyph: str) -> tuple[int, int]:
    """Return least and greatest y of an outline from its header: reading the outline itself takes much longer."""
    opened = _opened(font)
    index, places = opened.getGlyphID(glyph), opened["loca"]
    if places[index] == places[index + 1]:
        return 0, 0
    _, low, _, high = struct.unpack_from(">4h", _outlines(font), places[index] + 2)
    return low, high


def em_size(font: FontName, height: float) -> float:
    """Return the font size (em) in mm that gives capitals of a height in mm."""
    return height / CAP_HEIGHT[font]


def em_width(font: FontName, character: str) -> float:
    """Return the advance width of a letter that the font has, over the em."""
    return _letter(font, character).advance * CAP_HEIGHT[font]


@lru_cache(maxsize=8192)
def glyph_path(font: FontName, character: str) -> str:
    """Return the outline of a letter that the font has as the data of an SVG path, y up, 2048 units an em."""
    from fontTools.pens.svgPathPen import SVGPathPen

    glyphs = _opened(font).getGlyphSet()
    pen = SVGPathPen(glyphs)
    glyphs[_cmap(font)[ord(character)]].draw(pen)
    return str(pen.getCommands())


def font_bytes(font: FontName) -> bytes:
    """Return the file of a font."""
    return (files("blockgen.outputs.drawing") / "fonts" / f"{font}.ttf").read_bytes()


@lru_cache
def _opened(font: FontName) -> TTFont:
    from fontTools.ttLib import TTFont

    return TTFont(BytesIO(font_bytes(font)), lazy=True)


@lru_cache
def _cmap(font: FontName) -> dict[int, str]:
    return dict(_opened(font).getBestCmap() or {})


@lru_cache
def _outlines(font: FontName) -> bytes:
    return bytes(_opened(font).getTableData("glyf"))


@lru_cache
def _units(font: FontName) -> int:
    return int(_opened(font)["head"].unitsPerEm)
