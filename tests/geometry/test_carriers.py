"""Lines and circles on which curves lie: places there and back, and where they cross."""

import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from blockgen.geometry.carriers import Circle, Line, carried, crossings, line_through
from blockgen.geometry.curves import ArcCurve, Chain, Segment

numbers = st.integers(-4000, 4000).map(lambda n: n / 40)
points = st.tuples(numbers, numbers)
radii = st.integers(1, 2000).map(lambda n: n / 40)


@st.composite
def lines(draw):
    start, end = draw(points), draw(points)
    assume(math.dist(start, end) > 0.1)
    return line_through(start, end)


circles = st.builds(Circle, points, radii)
carriers = st.one_of(lines(), circles)


@given(carriers, st.floats(-300, 300), st.floats(-0.01, 0.01))
def test_a_place_is_found_again_from_its_point(carrier, place, aside):
    again = carrier.place(carrier.at(place, aside))
    apart = again - place if isinstance(carrier, Line) else math.remainder(again - place, carrier.period)
    assert apart == pytest.approx(0.0, abs=1e-6)


@given(carriers, carriers)
def test_crossings_lie_on_both(first, second):
    for point in crossings(first, second):
        for carrier in (first, second):
            assert math.dist(carrier.at(carrier.place(point)), point) < 2e-2  # touching within 1e-5 is a touch
            assert _beside(carrier, point) < 2e-5


def _beside(carrier, point):
    if isinstance(carrier, Line):
        return math.dist(carrier.at(carrier.place(point)), point)
    return abs(math.dist(carrier.centre, point) - carrier.radius)


@given(carriers, carriers)
def test_crossings_do_not_ask_which_comes_first(first, second):
    there, back = (sorted(crossings(*pair)) for pair in ((first, second), (second, first)))
    assert len(there) == len(back)


@pytest.mark.parametrize(
    ("first", "second", "expected"),
    [
        (line_through((0, 0), (10, 0)), line_through((3, -1), (3, 5)), [(3, 0)]),
        (line_through((0, 0), (10, 0)), line_through((0, 2), (10, 2)), []),
        (line_through((0, 3), (10, 3)), Circle((5, 0), 5), [(1, 3), (9, 3)]),
        (line_through((0, 5), (10, 5)), Circle((5, 0), 5), [(5, 5)]),
        (line_through((0, 6), (10, 6)), Circle((5, 0), 5), []),
        (Circle((0, 0), 5), Circle((6, 0), 5), [(3, -4), (3, 4)]),
        (Circle((0, 0), 5), Circle((0, 0), 4), []),
        (Circle((0, 0), 5), Circle((20, 0), 5), []),
        (Circle((0, 0), 5), Circle((2, 0), 3), [(5, 0)]),
    ],
)
def test_crossings_by_hand(first, second, expected):
    assert sorted(crossings(first, second)) == [pytest.approx(point) for point in expected]


@given(points, points)
def test_a_line_is_the_same_from_either_end(start, end):
    assume(math.dist(start, end) > 0.1)
    assert line_through(start, end).key() == line_through(end, start).key()


def test_a_short_upright_line_is_upright():
    assert line_through((7.0, 1.0), (7.0 + 1e-13, 0.9995)).direction == (0, 1)


def test_carried_gives_places_on_the_carrier():
    line, span = carried(Segment((4.0, 2.0), (1.0, 2.0)))
    assert (line.direction, line.offset, span) == ((1.0, 0.0), 2.0, (1.0, 4.0))
    circle, (low, high) = carried(ArcCurve((0.0, 0.0), 2.0, 90.0, 180.0))
    assert (circle.radius, low, high) == pytest.approx((2.0, math.pi, 2 * math.pi))


def test_a_chain_has_no_carrier():
    with pytest.raises(TypeError, match="a chain lies on no single line or circle"):
        carried(Chain(((0.0, 0.0), (1.0, 0.0))))
