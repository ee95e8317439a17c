"""Components of vectors."""

import pytest

from blockgen.evidence.components import components, measuring_diameter
from tests.evidence.samples import made, rows_of


def test_vectors_only():
    plan = made().plan
    found = {note.id: [row.id for row in components(plan, note)] for note in plan.annotations}
    assert {key: ids for key, ids in found.items() if ids} == {
        "bearing_seat.perpendicularity": ["bearing_seat.slope_z"],
        "motor_bore.coaxiality": ["motor_bore.offset_y", "motor_bore.offset_z"],
        "motor_seat.parallelism": ["motor_seat.slope_y", "motor_seat.slope_z"],
    }


def test_slopes_count_over_the_bolt_circle():
    plan = made().plan
    assert measuring_diameter(plan, "motor_seat") == plan.number("motor.bolt_circle") == 90
    assert measuring_diameter(plan, "bearing_seat") == 62


def test_components_are_measured_well_enough_for_their_zone():
    rows = rows_of()
    assert 2 * rows["motor_bore.offset_y"].uncertainty_wanted == rows["motor_bore.coaxiality"].uncertainty_wanted
    over = rows["motor_seat.parallelism"].uncertainty_wanted / 90 * 1000
    assert rows["motor_seat.slope_y"].uncertainty_wanted == pytest.approx(over, rel=0.05)
