"""Zones from components."""

import pytest

from blockgen.evidence.derived import derived
from tests.evidence.samples import made, measured


def zone(identifier, **values):
    return derived(made().plan, measured({k.replace("__", "."): v for k, v in values.items()}).values, identifier)


def test_coaxiality_is_twice_the_offset():
    found = zone("motor_bore.coaxiality", motor_bore__offset_y=(0.003, 0.001), motor_bore__offset_z=(-0.004, 0.001))
    assert (found.value, found.uncertainty) == (pytest.approx(0.01), pytest.approx(0.002))


def test_only_the_doubt_along_the_offset_counts():
    found = zone("motor_bore.coaxiality", motor_bore__offset_y=(0.01, 0.001), motor_bore__offset_z=(0.0, 0.009))
    assert found.uncertainty == pytest.approx(0.002)


def test_no_offset_has_the_greater_doubt():
    found = zone("motor_bore.coaxiality", motor_bore__offset_y=(0.0, 0.001), motor_bore__offset_z=(0.0, 0.003))
    assert (found.value, found.uncertainty) == (0, pytest.approx(0.006))


def test_seats_count_over_the_whole_face():
    width, height = made().plan.body.width, made().plan.body.height
    slopes = {"motor_seat__slope_y": (0.1, 0.02), "motor_seat__slope_z": (-0.2, 0.02)}
    found = zone("motor_seat.parallelism", **slopes)
    assert found.value == pytest.approx((0.1 * width + 0.2 * height) / 1000)
    level = zone("bearing_seat.perpendicularity", bearing_seat__slope_z=(-0.1, 0.02))
    assert (level.value, level.uncertainty) == (pytest.approx(0.1 * height / 1000), pytest.approx(0.02 * height / 1000))


def test_nothing_without_the_components_or_for_others():
    assert zone("motor_bore.coaxiality", motor_bore__offset_y=(0.003, 0.001)) is None
    assert zone("base.flatness") is None
