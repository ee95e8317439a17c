"""Motors drawn by chance: what is true of them is read, in any pose and unit, whatever else is on them."""

import math
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.reading.part import reading_of
from blockgen.reading.read_file import StepModel
from tests.reading.made_motors import Motor, as_free_form, drawn, made, posed, truth
from tests.reading.score import TOLERANCE, agrees, measure

pytestmark = pytest.mark.slow

NOISE = (
    "flange_chamfer", "pilot_chamfer", "undercut", "seal_recess", "boss", "cover_screws", "hole_chamfer",
    "shaft_chamfer", "shaft_fillet", "centre_hole", "shaft_thread", "connector", "gland", "rear_boss", "rear_shaft",
    "fins", "second_pattern", "rear_screws", "jack_holes", "groove", "loose_shaft", "rear_heads", "round_corners",
)  # fmt: skip
PLAIN = Motor(end="keyed", key_length=25.0, key_width=6.0, more=frozenset({"round_key"}))


def read(shape, part="motor", unit="mm"):
    return reading_of(StepModel(shape, unit, 1), "a model", part)


def values(shape):
    return {f.key: f.value for f in read(shape).found}


def wrong(reading, motor):
    return {k: (reading.value(k), t) for k, t in truth(motor).items() if not agrees(reading.value(k), t)}


@pytest.mark.parametrize("noise", NOISE)
def test_each_noise_part_alone_changes_nothing(noise):
    motor = replace(PLAIN, more=PLAIN.more | {noise})
    assert not wrong(read(posed(made(motor), 5)), motor)


@pytest.mark.parametrize(
    "motor",
    [
        PLAIN,
        Motor(recessed=True, pilot_length=2.5),
        Motor(
            shape="round", width=120, height=120, circle=100, pilot=80, thread="M6", hole=5.0, round_body=True, body=110
        ),
        Motor(shape="rectangle", width=120, height=80, rectangle=(104, 64), pilot=60, circle=122.1, body=60),
        Motor(end="flat"),
        Motor(end="keyed", key_length=25, key_width=6, more=frozenset({"key"})),
        Motor(more=frozenset({"counterbore"})),
        Motor(thread="M5", hole=4.2, through=False, body=80),
    ],
    ids=["square", "recessed", "round", "rectangle", "flat", "key", "counterbore", "tapped"],
)
def test_each_form_is_read(motor):
    for shape in (made(motor), posed(made(motor), 3), as_free_form(made(motor))):
        assert not wrong(read(shape), motor)


@settings(max_examples=25, deadline=None)
@given(st.integers(1, 10**6), st.integers(1, 10**6))
def test_pose_changes_no_value(seed, pose):
    shape = made(drawn(seed % 400 + 1))
    straight, turned = values(shape), values(posed(shape, pose))
    assert straight.keys() == turned.keys()
    for key, value in straight.items():
        assert agrees(turned[key], value) if isinstance(value, float) else turned[key] == value, key


@settings(max_examples=25, deadline=None)
@given(st.sets(st.sampled_from(NOISE), max_size=8), st.integers(0, 10**6))
def test_noise_parts_change_no_value(noise, pose):
    motor = replace(PLAIN, more=PLAIN.more | frozenset(noise))
    assert not wrong(read(posed(made(motor), pose)), motor)


def test_recall_and_precision_stay_high():
    """60 motors that no rule was made on; a value said to be sure is never wrong."""
    told = []
    wanted, got, right, sure_wrong = measure(range(30001, 30061), tell=told.append)
    assert not any(sure_wrong.values()), told
    for key, count in wanted.items():
        assert right[key] >= 0.95 * count, (key, told)
        assert right[key] >= 0.97 * got[key], (key, told)


def test_a_mirrored_pattern_keeps_its_places():
    """Holes in no order about the axis come out as places, seen from the motor."""
    motor = Motor(
        count=3, angle=20.0, circle=90.0, pilot=60.0, width=110.0, height=110.0, more=frozenset({"connector"})
    )
    reading = read(posed(made(motor), 11))
    assert reading.value("bolt_count") == 3
    angle = reading.value("bolt_angle")
    # right is -x as one looks from the motor along +z with +y up
    assert math.isclose(angle, (180 - 20) % 120, abs_tol=TOLERANCE)
