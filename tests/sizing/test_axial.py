"""The closed form against the worked example, and against brute force over whole numbers."""

import itertools
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.sizing.axial import KINDS, LOWER, Bound, conflicts, is_irreducible, slope, solve

# The worked example of the engineering notes, bores large enough.
EXAMPLE = {
    "screw.journal_reach": 35.0, "screw.journal_smooth_length": 35.0, "motor.shaft_length": 30.0,
    "motor.shaft_smooth_length": 30.0, "coupling.length": 50.0, "coupling.journal_grip_min": 14.0,
    "coupling.motor_grip_min": 14.0, "coupling.grip_max": 19.0, "coupling.gap_min": 1.5, "coupling.clearance": 2.0,
    "coupling.clamp_position": 6.0, "coupling.clamp_access_radius": 6.0, "bearing.nut_reach": 12.0,
    "motor_pilot_reach": 3.0, "bearing_wall": 20.0, "motor_wall": 15.0,
}  # fmt: skip


def bound(name, kind, removable=False, **terms):
    """Return a bound; keys of the example are named by their last part."""
    keys = {key.split(".")[-1]: key for key in EXAMPLE}
    found = tuple((keys[name], float(factor)) for name, factor in terms.items())
    return Bound(name, kind, found, name, removable)


# Section 1 of the notes, line by line.
BOUNDS = (
    bound("journal grip, least", "c_max", journal_reach=1, journal_grip_min=-1),
    bound("journal grip, most", "c_min", journal_reach=1, grip_max=-1),
    bound("journal smooth", "c_min", journal_reach=1, journal_smooth_length=-1),
    bound("motor shaft grip, least", "d_max", length=1, shaft_length=1, motor_grip_min=-1),
    bound("motor shaft grip, most", "d_min", length=1, shaft_length=1, grip_max=-1),
    bound("motor shaft smooth", "d_min", length=1, shaft_length=1, shaft_smooth_length=-1),
    bound("shaft gap", "l_min", shaft_length=1, journal_reach=1, gap_min=1),
    bound("lock nut", "c_min", nut_reach=1, clearance=1),
    bound("motor pilot", "d_min", length=1, motor_pilot_reach=1, clearance=1),
    bound("key, bearing side", "c_min", removable=True, bearing_wall=1, clamp_access_radius=1, clamp_position=-1),
    bound("key, motor side", "d_min", removable=True, length=1, clamp_position=-1, motor_wall=1, clamp_access_radius=1),
)
SMALL_BORE = bound("small bore", "c_min", bearing_wall=1, clearance=1)


def facts(**changes):
    """Return the example with keys changed; a double underscore stands for the dot."""
    return EXAMPLE | {key.replace("__", "."): value for key, value in changes.items()}


def test_worked_example():
    layout = solve(BOUNDS, EXAMPLE)
    assert layout.feasible
    assert (layout.low, layout.high) == (85.0, 87.0)
    assert [b.name for b in layout.low_bounds] == ["key, bearing side", "key, motor side"]
    assert [b.name for b in layout.high_bounds] == ["journal grip, least", "motor shaft grip, least"]


def test_thinner_bearing_wall_gives_room():
    layout = solve(BOUNDS, facts(bearing_wall=18.0))
    assert (layout.low, layout.high) == (83.0, 87.0)


@pytest.mark.parametrize("wall", [0.0, 5.0, 12.0, 18.0, 20.0, 40.0])
def test_short_motor_shaft_fits_no_wall(wall):
    assert not solve(BOUNDS, facts(motor__shaft_length=22.0, bearing_wall=wall)).feasible


def test_small_bore_leaves_nothing():
    assert not solve((*BOUNDS, SMALL_BORE), EXAMPLE).feasible


@pytest.mark.parametrize("length", [85.0, 86.0, 87.0])
def test_every_bound_holds_at_both_ends_of_the_coupling_range(length):
    low, high = solve(BOUNDS, EXAMPLE).coupling_range(length)
    assert low <= high
    for c in (low, high):
        at = {"c": c, "d": length - c, "l": length}
        for each in BOUNDS:
            have, asked = at[each.kind[0]], each.value(EXAMPLE)
            assert have >= asked if each.kind in LOWER else have <= asked, each.name


def test_coupling_range_is_empty_outside_the_interval():
    layout = solve(BOUNDS, EXAMPLE)
    for length in (84.9, 87.1):
        low, high = layout.coupling_range(length)
        assert low > high


@st.composite
def problems(draw):
    """Draw bounds with whole numbers, each kind at least once, and their facts."""
    kinds = [*KINDS, *draw(st.lists(st.sampled_from(KINDS), max_size=3))]
    values = {f"f{i}": draw(st.integers(0, 8) if k in LOWER else st.integers(2, 12)) for i, k in enumerate(kinds)}
    bounds = tuple(Bound(f"b{i}", kind, ((f"f{i}", 1.0),), "a fact") for i, kind in enumerate(kinds))
    return bounds, values


def brute(bounds, values):
    """Return every whole length for which some whole coupling position satisfies all bounds.

    Bounds on differences with whole numbers have a whole solution where they have any.
    """

    def holds(c, length):
        at = {"c": c, "d": length - c, "l": length}
        return all(
            at[b.kind[0]] >= b.value(values) if b.kind in LOWER else at[b.kind[0]] <= b.value(values) for b in bounds
        )

    return sorted({length for c, length in itertools.product(range(14), range(26)) if holds(c, length)})


@settings(max_examples=60, deadline=None)
@given(problems())
def test_closed_form_is_brute_force(problem):
    bounds, values = problem
    layout, lengths = solve(bounds, values), brute(bounds, values)
    assert layout.feasible == bool(lengths)
    if lengths:
        assert (layout.low, layout.high) == (lengths[0], lengths[-1])


@settings(max_examples=60, deadline=None)
@given(problems())
def test_conflicts_are_irreducible(problem):
    bounds, values = problem
    found = conflicts(bounds, values)
    assert bool(found) != bool(brute(bounds, values))
    for cycle in found:
        assert cycle.deficit > 0
        assert len(cycle.bounds) <= 3
        assert not solve(cycle.bounds, values).feasible
        assert is_irreducible(cycle, values)


def test_a_conflict_with_a_needless_fact_is_reducible():
    cycle = conflicts(BOUNDS, facts(motor__shaft_length=22.0))[0]
    idle = Bound("idle", "l_min", (("coupling.gap_min", 1.0),), "needless")
    assert not is_irreducible(type(cycle)((*cycle.bounds, idle), cycle.deficit), facts(motor__shaft_length=22.0))


@settings(max_examples=60, deadline=None)
@given(problems(), st.lists(st.floats(0, 0.5), min_size=12, max_size=12))
def test_interval_with_tolerances_lies_inside(problem, sizes):
    bounds, values = problem
    tolerances = {f"f{i}": size for i, size in enumerate(sizes)}
    wide, tight = solve(bounds, values), solve(bounds, values, tolerances)
    assert tight.low >= wide.low
    assert tight.high <= wide.high
    assert wide.feasible or not tight.feasible


def test_a_bound_carries_the_tolerances_of_its_own_terms_only():
    plain = solve(BOUNDS, EXAMPLE)
    for key, low, high in (
        ("bearing_wall", 0.3, 0.0),
        ("screw.journal_reach", 0.0, 0.3),
        ("bearing.nut_reach", 0.0, 0.0),
    ):
        tight = solve(BOUNDS, EXAMPLE, {key: 0.3})
        assert tight.low == pytest.approx(plain.low + low)
        assert tight.high == pytest.approx(plain.high - high)


def test_tolerance_of_the_setting_counts_once_at_each_side_of_the_coupling():
    tight = solve(BOUNDS, EXAMPLE, {"c": 0.2, "d": 0.3, "l": 0.1})
    assert tight.low == pytest.approx(85.5)
    assert tight.high == pytest.approx(86.5)


@settings(max_examples=60, deadline=None)
@given(st.floats(0.0, 5.0))
def test_more_room_never_narrows_the_interval(more):
    plain = solve(BOUNDS, EXAMPLE)
    for change in (
        {"bearing_wall": 20.0 - more},
        {"motor_wall": 15.0 - more},
        {"coupling.journal_grip_min": 14.0 - more},
        {"coupling.grip_max": 19.0 + more},
        {"coupling.clearance": 2.0 - more / 3},
        {"bearing.nut_reach": 12.0 - more},
    ):
        roomy = solve(BOUNDS, EXAMPLE | change)
        assert roomy.low <= plain.low
        assert roomy.high >= plain.high


def test_slope_is_the_change_of_the_deficit():
    short = facts(motor__shaft_length=22.0)
    (cycle,) = [c for c in conflicts(BOUNDS, short) if len(c.bounds) == 2]
    for key in EXAMPLE:
        moved = short | {key: short[key] + 0.01}
        change = sum(b.value(moved) * (1 if b.kind in LOWER else -1) for b in cycle.bounds) - cycle.deficit
        assert change == pytest.approx(0.01 * slope(cycle, key), abs=1e-9)


def test_nothing_bounds_an_empty_problem():
    layout = solve((), {})
    assert layout.feasible
    assert layout.low == -math.inf
    assert layout.high == math.inf
