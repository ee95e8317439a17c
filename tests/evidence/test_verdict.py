"""Accept, use with note, reject."""

from dataclasses import replace

import pytest

from blockgen.evidence.verdict import holding, percent, verdict
from tests.evidence.samples import changed, good, made, measured, vectors

PLAN = made().plan


def told(**values):
    return verdict(PLAN, measured(changed(**values)))


@pytest.mark.parametrize("name", ["servo", "large", "stepper"])
def test_a_good_block_is_accepted(name):
    found = verdict(made(name).plan, measured(good(name), name))
    assert (found.decision, found.reasons, found.notes) == ("accept", (), ())


def test_something_out_is_noted_by_name_while_the_function_holds():
    found = told(block__shaft_height=(64.975, 0.002))
    assert found.decision == "use with note"
    assert found.notes == (
        "12 block: shaft height: out, 64.975 mm is below 64.98 by 0.005 mm, uncertainty 0.002 mm; see the shim",
    )


def test_something_in_doubt_is_noted():
    (note,) = told(base__flatness=(0.019, 0.002)).notes
    assert note == "6 base: flatness: cannot be told, 0.019 mm is inside 0.02 by 0.001 mm, uncertainty 0.002 mm"


def test_something_that_matters_and_was_not_measured_is_noted():
    (note,) = told(motor_bore__diameter=None, base__texture=None, block__width=None).notes
    assert note == "not measured, though it matters: 8 motor bore: diameter"


def test_a_zone_from_its_vector_counts_as_measured():
    assert told(motor_bore__coaxiality=None, motor_seat__parallelism=None).decision == "accept"
    assert told(motor_bore__coaxiality=None, motor_bore__offset_y=None, motor_bore__offset_z=None).notes


def test_a_part_that_does_not_fit_rejects_the_block():
    found = told(motor_bore__diameter=(69.98, 0.003))
    assert found.decision == "reject"
    assert "too small" in found.reasons[0]


def test_a_function_that_does_not_hold_rejects_it():
    found = told(motor_bore__coaxiality=None, motor_bore__offset_y=(0.2, 0.002))
    assert found.decision == "reject"
    assert found.as_built.offset.exceeding > 0.05
    assert "the offset at the coupling stays within 0.2 mm with" in found.reasons[0]
    assert "may be" in found.reasons[1]  # and so much of the coupling is used


def test_more_likely_than_not_is_not_enough():
    found = told(motor_bore__coaxiality=None, motor_bore__offset_y=(0.16, 0.002), motor_bore__offset_z=(-0.1, 0.002))
    assert 0.5 < holding(found.as_built.offset) < 0.95
    assert "the offset at the coupling stays within 0.2 mm with 6" in found.reasons[0]
    assert found.reasons[0].endswith("95 % are asked for")


def test_zones_out_with_a_function_that_holds_are_no_reason():
    found = told(motor_bore__coaxiality=None, motor_bore__offset_y=(0.03, 0.002))
    assert found.decision == "use with note"


def test_turning_the_motor_is_offered_where_it_saves_the_block():
    values = vectors(motor_bore__offset_y=(0.12, 0.001), motor__spigot_y=(0.1, 0.001))
    found = verdict(PLAN, measured(values))
    assert found.decision == "reject"
    assert found.reasons[-1].endswith("; it holds with the motor turned by 180 deg")


def test_without_allowances_the_function_is_not_told():
    records = {k: v for k, v in PLAN.records.items() if k != "coupling.allow_parallel"}
    found = verdict(replace(PLAN, records=records), measured(good()))
    assert found.decision == "use with note"
    assert found.notes[-1] == "function not judged in full: coupling.allow_parallel not given"
    assert holding(found.as_built.offset) is None


def test_nothing_is_called_certain():
    assert percent(1.0) == "more than 99.99 %"
    assert percent(0.62554) == "62.55 %"


def test_a_size_that_is_another_block_s_is_rejected():
    found = told(window__length=(40.0, 0.06))
    assert found.decision == "reject"
    assert "window: length: 40 mm is 22 mm off its nominal 62: a slip in the sheet" in found.reasons[0]


def test_a_slip_of_the_decimal_point_is_rejected():
    assert "off its nominal 65" in told(block__shaft_height=(6.5, 0.004)).reasons[0]


def test_a_size_a_little_out_is_no_slip():
    assert told(block__width=(105.0, 0.06)).decision == "use with note"


def test_an_uncertainty_wider_than_the_tolerance_is_told():
    notes = " ".join(told(block__width=(104.0, 3.0)).notes)
    assert "block: width: uncertainty 3 mm is wider than the tolerance" in notes


def test_a_design_that_fails_is_never_accepted():
    found = verdict(PLAN, measured(good()), design_faults=["Base joint, slip"])
    assert found.decision == "use with note"
    assert found.notes[0] == "the design itself fails: Base joint, slip"
