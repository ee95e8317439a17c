"""Lines of hatched areas: inside, evenly spaced, as much of them as there is area."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.hatching import hatch_lines, passed
from blockgen.outputs.drawing.strokes import Arc, Hatch, Line
from tests.outputs.drawing.sample_sheets import cove, frame, slot

angles = st.sampled_from([0.0, 30.0, 45.0, 90.0, 135.0, 180.0]) | st.floats(-180, 180)
places = st.floats(-50, 50)
sizes = st.floats(1, 40)

NEAR = 1e-6
"""A line along an edge counts as inside."""


@st.composite
def areas(draw):
    """Return loops, their area and a test of whether a point lies inside."""
    x, y, size = draw(places), draw(places), draw(sizes)
    in_square = lambda p: min(p[0] - x, x + size - p[0], p[1] - y, y + size - p[1]) > -NEAR  # noqa: E731
    kind = draw(st.sampled_from(["ring", "cove", "slot", "frame with hole", "halves"]))
    if kind == "ring":
        inner = size * draw(st.floats(0.2, 0.8))
        loops = ((Arc((x, y), size),), (Arc((x, y), inner),))
        return loops, math.pi * (size**2 - inner**2), lambda p: inner - NEAR < math.dist(p, (x, y)) < size + NEAR
    if kind == "halves":
        start = draw(st.floats(0, 360))
        loop = (Arc((x, y), size, start, start + 180), Arc((x, y), size, start + 180, start + 360))
        return (loop,), math.pi * size**2, lambda p: math.dist(p, (x, y)) < size + NEAR
    if kind == "cove":
        inside = lambda p: in_square(p) and math.dist(p, (x + size, y + size)) > size / 2 - NEAR  # noqa: E731
        return (cove(x, y, size),), size**2 * (1 - math.pi / 16), inside
    if kind == "slot":
        radius = size / 4
        inside = lambda p: math.hypot(p[0] - min(max(p[0], x), x + size), p[1] - y) < radius + NEAR  # noqa: E731
        return (slot(x, y, size, radius),), 2 * size * radius + math.pi * radius**2, inside
    hole = (Arc((x + size / 2, y + size / 2), size / 4),)
    inside = lambda p: in_square(p) and math.dist(p, hole[0].centre) > size / 4 - NEAR  # noqa: E731
    return (frame(x, y, x + size, y + size), hole), size**2 - math.pi * size**2 / 16, inside


@given(areas(), angles)
def test_each_line_lies_inside(area, angle):
    loops, _, inside = area
    lines = hatch_lines(Hatch(loops, 0.7, angle))
    for line in lines:
        if math.dist(line.start, line.end) > 1e-3:
            assert inside(((line.start[0] + line.end[0]) / 2, (line.start[1] + line.end[1]) / 2))


@given(areas(), angles)
def test_lines_times_spacing_is_the_area(area, angle):
    loops, size, _ = area
    spacing = math.sqrt(size) / 150
    total = sum(math.dist(line.start, line.end) for line in hatch_lines(Hatch(loops, spacing, angle)))
    assert total * spacing == pytest.approx(size, rel=0.02)


@given(areas(), angles)
def test_lines_run_along_the_angle_and_are_counted_from_the_origin(area, angle):
    spacing = 1.3
    cosine, sine = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    for line in hatch_lines(Hatch(area[0], spacing, angle)):
        for x, y in (line.start, line.end):
            steps = (y * cosine - x * sine) / spacing
            assert steps == pytest.approx(round(steps), abs=1e-6)
        assert (line.end[0] - line.start[0]) * cosine + (line.end[1] - line.start[1]) * sine > 0


def test_lines_through_corners_and_along_edges_stay_inside():
    """Levels 0, 1, ... 10 meet corners and edges of the square exactly."""
    lines = hatch_lines(Hatch((frame(0.0, 0.0, 10.0, 10.0),), 1.0, 0.0))
    assert [(line.start, line.end) for line in lines] == [((0.0, float(k)), (10.0, float(k))) for k in range(10)]


def test_an_arc_passed_against_its_sense_is_told():
    assert [part.forward for part in passed(cove(0.0, 0.0, 10.0))] == [True, True, False, True, True]


def test_an_open_loop_is_refused():
    first = Line((0.0, 0.0), (10.0, 0.0))
    with pytest.raises(ValueError, match=r"open loop: \(10.0, 0.0\) does not meet \(10.0, 1.0\); close it"):
        hatch_lines(Hatch(((first, Line((10.0, 1.0), (5.0, 9.0)), Line((5.0, 9.0), (0.0, 0.0))),), 1.0))


def test_a_spacing_of_nothing_is_refused():
    with pytest.raises(ValueError, match=r"spacing of hatch lines is 0\.0 mm; it must be positive"):
        hatch_lines(Hatch((frame(0.0, 0.0, 1.0, 1.0),), 0.0))


def test_an_area_smaller_than_the_spacing_may_stay_empty():
    assert hatch_lines(Hatch((frame(0.1, 0.1, 0.2, 0.2),), 5.0, 0.0)) == ()
