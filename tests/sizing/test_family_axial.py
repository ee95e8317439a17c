"""One length for several motors: the layouts of all of them, intersected."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.errors import InfeasibleError
from blockgen.sizing.axial import Bound, solve
from blockgen.sizing.family_axial import ApartError, Motor, SharedTask, common
from blockgen.sizing.layout import AxialTask

# c and d lie between fixed ends; the shaft of a motor moves its d, and the wall is a part of the least d.
BOUNDS = (
    Bound("c low", "c_min", (("start", 1),), "the coupling starts here at the earliest"),
    Bound("c high", "c_max", (("start", 1), ("play", 1)), "and here at the latest"),
    Bound("d low", "d_min", (("motor.shaft_length", 1), ("motor_wall", 1)), "the motor is so far away at least"),
    Bound("d high", "d_max", (("motor.shaft_length", 1), ("play", 1)), "and so far at most"),
)
FLOORS = {"bearing_wall": 8.0, "motor_wall": 2.0}


def task(shaft, play=5.0):
    """Return the layout of one motor with a shaft in mm."""
    facts = {
        "start": 10.0,
        "play": play,
        "motor.shaft_length": shaft,
        "motor.shaft_smooth_length": shaft,
        "bearing_wall": 8.0,
        "motor_wall": 2.0,
    }
    return AxialTask(BOUNDS, facts, {"l": 0.1}, FLOORS)


def shared(*shafts, floors=None):
    """Return the layout of several motors, the first one first."""
    first, *others = map(task, shafts)
    entries = ("motor", *(f"family.{n}" for n in range(len(others))))
    floors = floors or [2.0] * len(shafts)
    motors = tuple(Motor(e, f"motor {n}", floor) for n, (e, floor) in enumerate(zip(entries, floors, strict=True), 1))
    further = tuple(zip(entries[1:], others, strict=True))
    return SharedTask(first.bounds, first.facts, first.tolerances, first.floors, further, motors)


@given(st.lists(st.integers(20, 60), min_size=1, max_size=4))
def test_the_common_lengths_are_those_of_all(shafts):
    layouts = [task(shaft).nominal() for shaft in shafts]
    found = common([(f"family.{n}", layout) for n, layout in enumerate(layouts)])
    assert found.low == max(layout.low for layout in layouts)
    assert found.high == min(layout.high for layout in layouts)
    assert found.feasible == (max(shafts) - min(shafts) <= 8)  # both plays less the wall
    assert found.limits == layouts[0].limits


def test_bounds_are_told_under_the_keys_of_their_motor():
    layout = shared(30, 34).nominal()
    assert [key for bound in layout.low_bounds for key, _ in bound.terms] == ["start", "family.0.shaft_length",
                                                                             "motor_wall"]  # fmt: skip
    assert "motor.shaft_length" in [key for bound in layout.high_bounds for key, _ in bound.terms]


def test_a_layout_that_is_impossible_at_any_length_leaves_nothing():
    narrow = solve((*BOUNDS, Bound("d lower", "d_min", (("start", 10),), "")), task(30).facts)
    assert not narrow.feasible
    assert not common([("motor", task(30).nominal()), ("family.0", narrow)]).feasible


def test_walls_are_those_of_all_motors():
    thick = shared(30, 34).with_walls(9, 4)
    assert [one.facts["motor_wall"] for _, one in thick.each()] == [4, 4]
    assert thick.nominal().low == 10 + 34 + 4


def test_tolerances_tighten_what_is_left():
    loose, tight = shared(30, 34).nominal(), shared(30, 34).toleranced()
    assert tight.low - loose.low == loose.high - tight.high == pytest.approx(0.0)  # this layout bounds c and d only
    assert shared(30, 34).workable()


def test_two_motors_that_have_no_length_in_common_are_named():
    with pytest.raises(ApartError, match=r"motor 2 asks for a block of at least 52\.00 mm, motor 1 allows at most"):
        shared(30, 40).require(None, FLOORS)


def test_a_wall_that_only_another_motor_needs_is_told_with_both():
    thick = shared(30, 30, floors=[2.0, 7.0]).with_walls(8, 7)
    with pytest.raises(InfeasibleError, match="motor 1 with the 7 mm of motor wall that motor 2 needs: ") as caught:
        thick.require(None, FLOORS)
    assert not isinstance(caught.value, ApartError)


def test_a_given_length_must_suit_every_motor():
    assert shared(30, 34).require(48, FLOORS).feasible
    with pytest.raises(InfeasibleError, match="motor 2"):
        shared(30, 34).require(43, FLOORS)


def test_what_is_missing_in_the_worst_case_names_both_bounds():
    apart = shared(30, 40)
    assert "mm missing: c low together with d low against c high together with d high" in apart.shortfall()
