"""What a reader expects of a drawing, without a source that could be read: from memory, or common practice.

Looked for and not found in readable form: the proportions of ISO 7083 (frames, datum triangle), of ISO 1302 Annex A
or ISO 21920-1 (texture sign), ISO 6410-1 itself, sizes of stock bars and plates. None of these tests proves more than
that what was remembered has not been changed unawares.
"""

import math

import pytest

from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.label import row_of
from blockgen.outputs.drawing.strokes import Arc, Fill, Line
from blockgen.outputs.drawing.symbols import (
    LETTER,
    datum_symbol,
    small_texture_symbol,
    tolerance_symbol,
)
from blockgen.standards.stock import bar_sections, plate_thicknesses
from tests.outside.test_thread_arcs import arcs
from tests.sizing.strategies import sized


def steepness(line):
    (x, y), (u, v) = line.start, line.end
    return math.degrees(math.atan2(v - y, u - x)) % 180


def test_the_open_quarter_of_a_thread_is_the_upper_right_one():
    """From memory: ISO 6410-1."""
    _, found = arcs()
    for arc in found:
        middle = ((arc.end + arc.start + 360) / 2) % 360
        assert 0 < middle < 90


def test_a_tolerance_frame_is_twice_as_high_as_its_letters():
    """From memory: ISO 7083."""
    note = next(note for note in sized().annotations if note.kind == "flatness")
    lines = [stroke for stroke in row_of(note, Figures()).strokes if isinstance(stroke, Line)]
    upright = [abs(line.end[1] - line.start[1]) for line in lines if line.start[0] == line.end[0]]
    assert max(upright) == 2 * LETTER


def test_parallelism_is_two_parallel_strokes_that_lean_to_the_right():
    """From memory: ISO 1101; about 60 deg."""
    first, second = (steepness(line) for line in tolerance_symbol("parallelism") if isinstance(line, Line))
    assert first == pytest.approx(second)
    assert first == pytest.approx(60, abs=8)


def test_a_datum_is_a_filled_triangle_with_a_letter_in_a_square():
    """From memory: ISO 5459; the triangle about equilateral, the square about as high as a tolerance frame."""
    strokes = datum_symbol("A")
    (triangle,) = [stroke for stroke in strokes if isinstance(stroke, Fill)]
    sides = [
        math.dist(a, b) for a, b in zip(triangle.outline, (*triangle.outline[1:], triangle.outline[0]), strict=True)
    ]
    assert max(sides) <= 1.05 * min(sides)
    square = [math.dist(s.start, s.end) for s in strokes if isinstance(s, Line) and s.start[0] in {3.0, -3.0}]
    assert square
    assert all(1.5 * LETTER <= side <= 2 * LETTER for side in square)


def test_a_texture_sign_has_legs_of_60_deg_one_twice_as_high_and_a_bar():
    """From memory: ISO 1302, Annex A: 5 and about 10.5 high for letters of 3.5; ours is smaller, to stand in rows."""
    short = 3.0
    left, right, bar = small_texture_symbol()
    assert (left.end[1], right.end[1]) == (short, 2 * short)
    assert (steepness(left), steepness(right), steepness(bar)) == pytest.approx((120, 60, 0))
    assert bar.start[1] == bar.end[1] == short


def test_a_cylindrical_zone_has_the_sign_of_a_diameter_and_a_flat_one_has_none():
    """From memory: ISO 1101. An axis may wander in all directions, a plane only across itself."""
    for note in sized().annotations:
        if note.kind in {"coaxiality", "position"}:
            assert note.diametral
        if note.kind in {"flatness", "parallelism"}:
            assert not note.diametral


def test_a_datum_is_flatter_than_what_is_squared_to_it():
    """Common practice, no source."""
    notes = {note.id: note.value for note in sized().annotations}
    assert notes["bearing_seat.flatness"] < notes["bearing_bore.perpendicularity"]


def test_circles_of_threads_share_their_centres_with_the_holes():
    """Common practice, no source."""
    plan, found = arcs()
    view_points = {
        (round(f.position[1] + plan.body.width / 2, 6), round(f.position[2], 6)) for f in plan.features if f.thread
    }
    assert {(round(arc.centre[0], 6), round(arc.centre[1], 6)) for arc in found if isinstance(arc, Arc)} <= view_points


@pytest.mark.parametrize("kind", ["steel", "aluminium"])
def test_usual_stock(kind):
    """Common practice, no source: these sizes any merchant has."""
    assert {20, 25, 30, 40, 50} <= {plate.thickness for plate in plate_thicknesses(kind)}
    assert {30, 40, 50, 60} <= {bar.thickness for bar in bar_sections(kind) if bar.thickness == bar.width}
