"""The face under a block and the preload at which it gapes."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.mechanics.contact import Box, Pull, face_of_boxes, opening_safety, ring_face

FULL = face_of_boxes([Box((0.0, -40.0), (100.0, 40.0))])
HOLLOW = face_of_boxes([Box((0.0, -40.0), (100.0, 40.0)), Box((20.0, -20.0), (80.0, 20.0), -1.0)])


def test_a_full_rectangle():
    assert FULL.area == 8000.0
    assert FULL.centre == (50.0, 0.0)
    assert FULL.inertia_u == pytest.approx(80 * 100**3 / 12)
    assert FULL.inertia_v == pytest.approx(100 * 80**3 / 12)


def test_a_window_is_taken_off():
    assert HOLLOW.area == 8000 - 2400
    assert HOLLOW.inertia_u == pytest.approx(80 * 100**3 / 12 - 40 * 60**3 / 12)


def test_a_window_nearer_one_end_moves_the_centroid_away():
    face = face_of_boxes([Box((0.0, -40.0), (100.0, 40.0)), Box((10.0, -20.0), (60.0, 20.0), -1.0)])
    assert face.centre[0] == pytest.approx((8000 * 50 - 2000 * 35) / 6000)


def test_nothing_left_is_refused():
    with pytest.raises(ValueError, match="window takes all"):
        face_of_boxes([Box((0.0, 0.0), (10.0, 10.0)), Box((0.0, 0.0), (10.0, 10.0), -1.0)])


def test_flange_faces():
    ring = ring_face(40.0, 40.0, 60.0, round_=True)
    assert ring.area == pytest.approx(math.pi * (40**2 - 30**2))
    assert ring.inertia_u == pytest.approx(math.pi * (80**4 - 60**4) / 64)
    square = ring_face(40.0, 30.0, 0.0, round_=False)
    assert square.inertia_u == pytest.approx(60 * 80**3 / 12)
    assert square.inertia_v == pytest.approx(80 * 60**3 / 12)


def test_a_moment_opens_at_the_kern():
    """A full rectangle gapes when the resultant leaves the middle third: M = F l / 6."""
    force = 12000.0
    moment = force * 100 / 6 / 1000
    assert opening_safety(FULL, FULL.centre, force, [Pull(0.0, moment, 0.0)]) == pytest.approx(1.0)
    assert opening_safety(FULL, FULL.centre, force, [Pull(0.0, -moment, 0.0)]) == pytest.approx(1.0)


def test_a_lift_alone():
    assert opening_safety(FULL, FULL.centre, 12000.0, [Pull(4000.0, 0.0, 0.0)]) == pytest.approx(3.0)


def test_no_load_never_opens():
    assert opening_safety(FULL, FULL.centre, 1000.0, [Pull(0.0, 0.0, 0.0)]) == math.inf
    assert opening_safety(FULL, FULL.centre, 1000.0, [Pull(-500.0, 0.0, 0.0)]) == math.inf


def test_screws_beyond_the_kern_leave_an_edge_open():
    assert opening_safety(FULL, (95.0, 0.0), 1000.0, [Pull(0.0, 0.0, 0.0)]) == 0.0


@given(st.floats(1, 1e5), st.floats(0.1, 1e3), st.floats(1.01, 5), st.floats(-30, 30), st.floats(0, 500))
def test_monotone_in_preload_and_load(preload, moment, more, aside, lift):
    pulls = [Pull(lift, moment, aside)]
    plain = opening_safety(HOLLOW, HOLLOW.centre, preload, pulls)
    assert opening_safety(HOLLOW, HOLLOW.centre, preload * more, pulls) == pytest.approx(plain * more)
    stronger = [Pull(lift * more, moment * more, aside * more)]
    assert opening_safety(HOLLOW, HOLLOW.centre, preload, stronger) == pytest.approx(plain / more)


@given(st.floats(0.1, 1e3))
def test_the_worst_load_decides(moment):
    both = [Pull(0.0, moment, 0.0), Pull(0.0, 0.0, 2 * moment)]
    one_by_one = [opening_safety(HOLLOW, HOLLOW.centre, 1e4, [pull]) for pull in both]
    assert opening_safety(HOLLOW, HOLLOW.centre, 1e4, both) == min(one_by_one)
