"""Drawing symbols as strokes about their own origin, mm, for letters 3.5 high.

Sources (from memory, but for what tests/outside checks: four symbols of tolerances, arrow, projection symbol): ISO
1101 and ISO 7083 for the symbols of geometrical tolerances, ISO 5459 for the datum triangle, ISO 21920-1 (before: ISO
1302) for surface texture, ISO 5456-2 for the projection symbol, ISO 13715 for edges.
"""

from __future__ import annotations

import math

from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.strokes import Arc, Fill, Line, Point, Stroke, Text

LETTER = 3.5
"""Height of capitals on the sheet."""
SMALL = 2.5
"""Height of capitals of deviations, tables and notes."""

_ROOT3 = math.sqrt(3)


def tolerance_symbol(kind: str) -> tuple[Stroke, ...]:
    """Return the symbol of a geometrical tolerance, its middle at the origin, within 4.5 x 4.5.

    Raises:
        KeyError: there is no symbol for that kind.
    """
    return _TOLERANCE[kind]


_TOLERANCE: dict[str, tuple[Stroke, ...]] = {
    "flatness": (
        Line((-2.3, -1.2), (1.1, -1.2)), Line((1.1, -1.2), (2.3, 1.2)), Line((2.3, 1.2), (-1.1, 1.2)),
        Line((-1.1, 1.2), (-2.3, -1.2)),
    ),
    "parallelism": (Line((-1.5, -2.0), (0.3, 2.0)), Line((-0.3, -2.0), (1.5, 2.0))),
    "perpendicularity": (Line((-2.1, -1.8), (2.1, -1.8)), Line((0.0, -1.8), (0.0, 2.0))),
    "coaxiality": (Arc((0.0, 0.0), 2.1), Arc((0.0, 0.0), 1.1)),
    "position": (Arc((0.0, 0.0), 1.4), Line((-2.3, 0.0), (2.3, 0.0)), Line((0.0, -2.3), (0.0, 2.3))),
}  # fmt: skip


DEPTH = "↧"
"""Stands for the sign of a depth in a text; the sign itself is drawn."""


def depth_symbol() -> tuple[Stroke, ...]:
    """Return the sign for a depth, its middle at the origin, 3.5 high."""
    return (Line((-1.4, 1.7), (1.4, 1.7)), Line((0.0, 1.7), (0.0, -1.7)), Line((-1.0, -0.2), (0.0, -1.7)),
            Line((1.0, -0.2), (0.0, -1.7)))  # fmt: skip


def arrow(tip: Point, towards: Point, length: float = 3.0) -> Fill:
    """Return a filled arrow head with its tip at ``tip`` and its tail towards another point.

    It is three times as long as it is wide, so that it opens by 19 deg. Source: tests/outside/test_arrow_heads.py.
    """
    far = math.dist(tip, towards) or 1.0
    x, y = (towards[0] - tip[0]) / far, (towards[1] - tip[1]) / far
    back, half = (tip[0] + length * x, tip[1] + length * y), length / 6
    return Fill((tip, (back[0] - half * y, back[1] + half * x), (back[0] + half * y, back[1] - half * x)))


def datum_symbol(letter: str) -> tuple[Stroke, ...]:
    """Return a datum triangle that stands with its base at the origin and hangs down, with its framed letter."""
    tip, low = (0.0, -2.6), -5.0
    box = (Line((-3.0, low), (3.0, low)), Line((3.0, low), (3.0, low - 6.0)), Line((3.0, low - 6.0), (-3.0, low - 6.0)),
           Line((-3.0, low - 6.0), (-3.0, low)))  # fmt: skip
    words = Text(letter, (-text_width(letter, LETTER) / 2, low - 3.0 - LETTER / 2), LETTER)
    return (Fill(((-1.5, 0.0), (1.5, 0.0), tip)), Line(tip, (0.0, low)), *box, words)


DATUM_DEPTH = 11.0
"""How far a datum symbol hangs down."""


def small_texture_symbol() -> tuple[Stroke, ...]:
    """Return the sign for a surface whose material is removed, within a row: 60 deg, legs 3 and 6 high.

    Its point is the origin; its value stands to the right, under a line that the row continues.
    """
    low, high = 3.0, 6.0
    left, right = (-low / _ROOT3, low), (high / _ROOT3, high)
    return (Line((0.0, 0.0), left), Line((0.0, 0.0), right), Line(left, (low / _ROOT3, low)))


def projection_symbol(method: str) -> tuple[Stroke, ...]:
    """Return the cone of the projection method about its middle, 20 x 8.

    Args:
        method: ``first`` or ``third``.
    """
    side = 1.0 if method == "first" else -1.0
    cone, circles = -side * 5.0, side * 5.5
    small, large, half = 2.0, 4.0, 3.5
    # The end view looks from the left at the narrow end: the first method puts it to the right, the third to the left.
    narrow, wide = cone - half, cone + half
    outline: tuple[Stroke, ...] = (
        Line((wide, -large), (wide, large), "outline"),
        Line((narrow, -small), (narrow, small), "outline"),
        Line((narrow, small), (wide, large), "outline"),
        Line((narrow, -small), (wide, -large), "outline"),
        Arc((circles, 0.0), small, pen="outline"),
        Arc((circles, 0.0), large, pen="outline"),
    )
    axes = (Line((min(narrow, wide) - 1.5, 0.0), (max(narrow, wide) + 1.5, 0.0), "centre"),
            Line((circles - 5.2, 0.0), (circles + 5.2, 0.0), "centre"),
            Line((circles, -5.2), (circles, 5.2), "centre"))  # fmt: skip
    return outline + axes


def edge_symbol() -> tuple[Stroke, ...]:
    """Return the sign for edges of undefined shape, its corner at the origin."""
    return (Line((0.0, 0.0), (0.0, 6.0)), Line((0.0, 0.0), (6.0, 0.0)), Line((0.0, 0.0), (3.2, 3.2)),
            Line((3.2, 3.2), (8.5, 3.2)))  # fmt: skip
