"""Symbols of geometrical tolerances against the letters of independent fonts.

osifont (fonts/osifont.ttf of the package, drawn by its authors after ISO 3098): U+23E5 flatness, U+2316 position,
U+25CE for coaxiality; DejaVu Sans: U+22A5 for perpendicularity. Which letter stands for which characteristic:
aerospace-community.eu/Database/GeometricalCharacteristics and the names in the Unicode standard. Ours and the letter
are drawn to fill the same square, since proportions differ from font to font. No font at hand has the slanting sign
of parallelism. The sign of depth (U+21A7) was tried too: osifont gives the head of its arrow the width of the bar,
ours is narrower.
"""

import math
from importlib.resources import files

import pytest

from blockgen.outputs.drawing.strokes import Line
from blockgen.outputs.drawing.symbols import tolerance_symbol

FONTS = files("blockgen.outputs.drawing") / "fonts"
DOTS = 120
LETTERS = {
    "flatness": ("osifont.ttf", "\u23e5"),
    "position": ("osifont.ttf", "\u2316"),
    "coaxiality": ("osifont.ttf", "\u25ce"),
    "perpendicularity": ("DejaVuSans.ttf", "\u22a5"),
}


def along(stroke):
    """Return points along a stroke."""
    if isinstance(stroke, Line):
        (x, y), (u, v) = stroke.start, stroke.end
        return [(x + (u - x) * k / 60, y + (v - y) * k / 60) for k in range(61)]
    turns = [math.radians(stroke.start + (stroke.end - stroke.start) * k / 180) for k in range(181)]
    return [
        (stroke.centre[0] + stroke.radius * math.cos(a), stroke.centre[1] + stroke.radius * math.sin(a)) for a in turns
    ]


def filled(points):
    """Return points moved and stretched so that they fill the unit square; a row of an image runs downwards."""
    xs, ys = [x for x, _ in points], [y for _, y in points]
    wide, high = max(xs) - min(xs), max(ys) - min(ys)
    return [((x - min(xs)) / wide, (max(ys) - y) / high) for x, y in points]


def ink(font, letter):
    """Return the points of a letter's ink, pared to their middle, in the unit square."""
    from PIL import Image, ImageDraw, ImageFont

    image = Image.new("L", (4 * DOTS, 4 * DOTS))
    ImageDraw.Draw(image).text((DOTS, DOTS), letter, fill=255, font=ImageFont.truetype(str(FONTS / font), 2 * DOTS))
    pixels = image.crop(image.getbbox())
    return [
        (x / (pixels.width - 1), y / (pixels.height - 1))
        for x in range(0, pixels.width, 3)
        for y in range(0, pixels.height, 3)
        if pixels.getpixel((x, y)) > 128
    ]


def farthest(points, others):
    """Return the greatest distance of a point from the nearest of the others."""
    return max(min(math.dist(point, other) for other in others) for point in points)


def ours(name):
    return filled([point for stroke in tolerance_symbol(name) for point in along(stroke)])


@pytest.mark.slow
@pytest.mark.parametrize("name", LETTERS)
def test_the_symbol_has_its_strokes_where_the_letter_has_them(name):
    theirs = ink(*LETTERS[name])
    assert farthest(ours(name), theirs) < 0.12
    assert farthest(theirs, ours(name)) < 0.16


@pytest.mark.slow
@pytest.mark.parametrize("name", LETTERS)
def test_no_other_symbol_would_pass(name):
    theirs = ink(*LETTERS[name])
    for other in set(LETTERS) - {name}:
        assert farthest(ours(other), theirs) >= 0.12 or farthest(theirs, ours(other)) >= 0.16
