"""Slip and lift: equilibrium of the shares, and the safeties that follow."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.mechanics import slip

RECTANGLE = [(-50.0, -40.0), (50.0, -40.0), (50.0, 40.0), (-50.0, 40.0)]
coordinates = st.integers(-200, 200).map(float)
points = st.tuples(coordinates, coordinates)
patterns = st.lists(points, min_size=2, max_size=8, unique=True)
forces = st.tuples(st.floats(-1e4, 1e4), st.floats(-1e4, 1e4))


@given(patterns, forces, st.floats(-500, 500))
def test_shares_balance_force_and_moment(positions, force, moment):
    shares = slip.shear_shares(positions, force, moment)
    centre_x, centre_y = slip.pattern_centre(positions)
    assert sum(x for x, _ in shares) == pytest.approx(force[0], abs=1e-6)
    assert sum(y for _, y in shares) == pytest.approx(force[1], abs=1e-6)
    turned = sum(
        (x - centre_x) * along_y - (y - centre_y) * along_x
        for (x, y), (along_x, along_y) in zip(positions, shares, strict=True)
    )
    assert turned / 1000 == pytest.approx(moment, abs=1e-6)


@given(patterns, forces, points, points)
def test_moment_ignores_where_the_pattern_stands(positions, force, point, shift):
    moved = [(x + shift[0], y + shift[1]) for x, y in positions]
    there = slip.moment_about_centre(moved, force, (point[0] + shift[0], point[1] + shift[1]))
    assert there == pytest.approx(slip.moment_about_centre(positions, force, point), abs=1e-6)


def test_central_force_is_shared_equally():
    assert slip.shear_shares(RECTANGLE, (4000.0, 0.0)) == ((1000.0, 0.0),) * 4


def test_eccentric_force_loads_the_near_screws_most():
    moment = slip.moment_about_centre(RECTANGLE, (0.0, 4000.0), (100.0, 0.0))
    assert moment == 400.0
    shares = slip.shear_shares(RECTANGLE, (0.0, 4000.0), moment)
    twist = 400e3 / (4 * (50**2 + 40**2))
    assert slip.greatest_share(shares) == pytest.approx(math.hypot(40 * twist, 1000 + 50 * twist))
    worst = slip.screw_slip_safety(20000.0, 0.0, 0.15, shares)
    assert worst < slip.slip_safety(80000.0, 0.0, 0.15, 4000.0) == pytest.approx(3.0)


def test_lift_takes_from_the_friction():
    assert slip.slip_safety(80000.0, 20000.0, 0.15, -4500.0) == pytest.approx(2.0)
    assert slip.slip_safety(80000.0, 90000.0, 0.15, 4500.0) == 0.0
    assert slip.slip_safety(80000.0, 0.0, 0.15, 0.0) == math.inf


@given(st.lists(coordinates, min_size=2, max_size=8), st.floats(1.0, 500.0))
def test_tilting_loads_balance_the_moment(distances, moment):
    if not any(distances):
        distances = [1.0, *distances]
    loads = slip.tilting_loads(distances, moment)
    assert sum(x * load for x, load in zip(distances, loads, strict=True)) / 1000 == pytest.approx(moment)


def test_screws_in_one_place_hold_no_moment():
    with pytest.raises(ValueError, match=r"moment 5 N\*m on screws in one place"):
        slip.shear_shares([(1.0, 1.0)], (10.0, 0.0), 5.0)


def test_screws_on_the_tilting_axis_hold_no_moment():
    with pytest.raises(ValueError, match="every screw stands on the tilting axis"):
        slip.tilting_loads([0.0, 0.0], 10.0)


def test_pattern_needs_a_screw():
    with pytest.raises(ValueError, match="no screw positions"):
        slip.screw_pattern_inertia([])
