"""Terms of the separate arrangement."""

import dataclasses

import pytest

from blockgen.alignment.plate import (
    dowelled,
    loosest,
    plate_values,
    screwed,
    separate_terms,
)
from blockgen.alignment.scatter import greatest
from blockgen.alignment.terms import offsets
from tests.sizing.strategies import sized

VALUES = plate_values(sized())


def terms(values=VALUES):
    return {t.id: t for t in separate_terms(sized(), values, dowelled(values))}


def test_what_one_boring_gave_is_gone():
    gone = {
        "bore_coaxiality",
        "bearing_pilot_clearance",
        "motor_seat_perpendicularity",
        "bearing_seat_perpendicularity",
    }
    assert not gone & set(terms())
    assert {"motor_pilot_clearance", "motor_spigot_runout", "bearing_runout"} <= set(terms())


def test_heights_stand_along_z_and_sides_along_y():
    for name, term in terms().items():
        if name in {"plate_height", "unit_height", "plate_squareness", "plate_foot", "unit_foot"}:
            assert term.scatter.law == "uniform_z"
        elif name in {"plate_side", "unit_side", "plate_yaw", "unit_yaw"}:
            assert term.scatter.law == "uniform_y"


def test_fits_of_pins():
    assert loosest(8.0, "H7/m6") == pytest.approx(0.009)  # ISO 286-1: 8 H7 +0.015/0, m6 +0.015/+0.006
    assert loosest(8.0, "H7") == pytest.approx(0.009)
    assert loosest(8.0, "P7/m6") == 0.0
    assert dowelled(VALUES).side == pytest.approx(0.0245)


def test_screws_leave_half_their_clearance():
    assert screwed(sized()).side == pytest.approx(0.5)  # M10 in 11 mm


def test_values_of_the_plan_win():
    plan = sized(plate={"plate_thickness": 30, "slot_fit": "H7/h6"})
    found = plate_values(plan)
    assert (found.plate_thickness, found.slot_fit) == (30.0, "H7/h6")
    assert found.dowel_fit == VALUES.dowel_fit


@pytest.mark.parametrize("name", ["plate_height_tolerance", "unit_height_tolerance", "plate_perpendicularity",
                                  "foot_flatness", "dowel_position"])  # fmt: skip
def test_a_wider_tolerance_widens_the_worst_case(name):
    wide = dataclasses.replace(VALUES, **{name: 2 * getattr(VALUES, name)})
    reach = [sum(map(greatest, offsets(terms(values).values()))) for values in (VALUES, wide)]
    assert reach[1] > reach[0] + 1e-4
