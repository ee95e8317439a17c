"""A sheet as an SVG file to true size, letters as outlines, so that it looks the same where the fonts are missing."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from html import escape
from pathlib import Path

from blockgen.outputs.drawing.hatching import ends, on_arc
from blockgen.outputs.drawing.lettering import FontName, Run, em_size, em_width, glyph_path, runs
from blockgen.outputs.drawing.pens import by_pen, width_and_dashes
from blockgen.outputs.drawing.strokes import Arc, Fill, Item, Line, Pen, Point, Sheet, Text

UNITS = 2048
"""Units an em of both fonts, in which their outlines are written."""

NAMES = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"'

Glyphs = dict[tuple[FontName, str], str]


def write_svg(sheet: Sheet, path: Path) -> None:
    """Write a sheet.

    Args:
        sheet: The sheet.
        path: File to write.

    Raises:
        OSError: The file could not be written.
        ValueError: A hatched area is open.
    """
    path.write_text(svg_text(sheet), encoding="utf-8", newline="\n")


def svg_text(sheet: Sheet) -> str:
    """Return a sheet as the text of an SVG file: mm, one group an item, each glyph once."""
    glyphs: Glyphs = {}
    groups = [line for item in sheet.items for line in _group(item, glyphs)]
    width, height = _number(sheet.width), _number(sheet.height)
    head = (
        f'<svg {NAMES} width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}">',
        f"<title>{quoted(sheet.title)}</title>",
        "<defs>",
        *(f'<path id="{name}" d="{glyph_path(*key)}"/>' for key, name in glyphs.items()),
        "</defs>",
        f'<rect width="{width}" height="{height}" fill="#fff"/>',
        # y runs upwards, as in the sheet and in the fonts
        f'<g transform="matrix(1 0 0 -1 0 {height})" fill="none" stroke="#000" stroke-linecap="round">',
    )
    return "\n".join((*head, *groups, "</g>", "</svg>", ""))


def quoted(words: str) -> str:
    """Return a text for an attribute or an element; what XML cannot hold is shown as the replacement."""
    return escape("".join(c if _allowed(c) else "\N{REPLACEMENT CHARACTER}" for c in words))


def _allowed(character: str) -> bool:
    code = ord(character)
    return (code >= 0x20 and not 0x7F <= code < 0xA0 and not 0xD800 <= code < 0xE000) and code & 0xFFFE != 0xFFFE


def _group(item: Item, glyphs: Glyphs) -> Iterator[str]:
    yield f'<g class="{item.role}" data-id="{quoted(item.id)}">'
    yield from (_path(pen, pieces) for pen, pieces in by_pen(item.strokes).items())
    fills = [stroke for stroke in item.strokes if isinstance(stroke, Fill)]
    if fills:
        yield f'<path d="{"".join(_polygon(fill.outline) for fill in fills)}" fill="#000" stroke="none"/>'
    yield from (_text(stroke, glyphs) for stroke in item.strokes if isinstance(stroke, Text))
    yield "</g>"


def _path(pen: Pen, pieces: Iterable[Line | Arc]) -> str:
    width, dashes = width_and_dashes(pen)
    dashed = f' stroke-dasharray="{" ".join(map(_number, dashes))}" stroke-linecap="butt"' if dashes else ""
    data = "".join(_arc(piece) if isinstance(piece, Arc) else _polyline(ends(piece)) for piece in pieces)
    return f'<path stroke-width="{_number(width)}"{dashed} d="{data}"/>'


def _polyline(points: Iterable[Point]) -> str:
    return "M" + "L".join(_point(point) for point in points)


def _polygon(points: Iterable[Point]) -> str:
    return _polyline(points) + "Z"


def _arc(arc: Arc) -> str:
    """Return an arc in two halves: one piece could not make a whole circle."""
    sweep = 360.0 if arc.end - arc.start == 360 else (arc.end - arc.start) % 360
    radius = _number(arc.radius)
    parts = (_point(on_arc(arc, arc.start + sweep * share)) for share in (0.0, 0.5, 1.0))
    return f"M{next(parts)}" + "".join(f"A{radius} {radius} 0 0 1 {point}" for point in parts)


def _text(text: Text, glyphs: Glyphs) -> str:
    turn = f" rotate({_number(text.angle)})" if text.angle else ""
    place = f"translate({_point(text.at)}){turn}"
    pieces = "".join(_run(run, text.height, glyphs) for run in runs(text.words))
    return f'<g role="img" aria-label="{quoted(text.words)}" transform="{place}" fill="#000" stroke="none">{pieces}</g>'


def _run(run: Run, height: float, glyphs: Glyphs) -> str:
    scale = em_size(run.font, height) / UNITS
    start = f"translate({_number(run.start * height)} 0) " if run.start else ""
    uses, across = [], 0.0
    for character in run.shown:
        if glyph_path(run.font, character):
            name = glyphs.setdefault((run.font, character), f"{run.font}-{ord(character):x}")
            uses.append(f'<use xlink:href="#{name}" x="{_number(across)}"/>')
        across += em_width(run.font, character) * UNITS
    return f'<g transform="{start}scale({scale:.6g})">{"".join(uses)}</g>' if uses else ""


def _point(point: Point) -> str:
    return f"{_number(point[0])} {_number(point[1])}"


def _number(value: float) -> str:
    """Return a number with four decimals at most."""
    text = f"{value:.4f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text
