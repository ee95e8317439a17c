"""Parts that will not go together."""

from dataclasses import replace

import pytest

from blockgen.evidence.mating import misfits
from tests.evidence.samples import good, made, measured

PLAN = made().plan


def told(plan=PLAN, **values):
    return list(misfits(plan, measured({key.replace("__", "."): value for key, value in values.items()})))


def test_a_good_block_takes_all_its_parts():
    assert list(misfits(PLAN, measured(good()))) == []


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"motor_bore__diameter": (69.99, 0.003)}, "motor bore of 69.99 mm is too small for a pilot of up to 70 mm"),
        ({"bearing_bore__diameter": (45.01, 0.002), "bearing__pilot_diameter": (45.02, 0.002)},
         "bearing pilot does not enter: 45.02 mm in a bore of 45.01 mm, 0.010 mm too great"),
        ({"motor_bore__depth": (2.9, 0.02)}, "motor pilot of 3 mm meets the bottom of its bore, 2.9 mm deep"),
        ({"motor_threads__position": (0.7, 0.03)}, "the motor flange do not enter: holes 0.7 mm off, 0.60 mm"),
        ({"motor_threads__thread": (11.5, 0.1)}, "11.5 mm deep, the screws meet its end at 12 mm"),
        ({"motor_threads__thread": (0, 0.1)}, "motor threads: thread M6-6H: the gauges refuse it"),
        ({"block__length": (116.5, 0.02)}, "need 110 to 116 mm between the seats; there are 116.5 mm"),
    ],
)  # fmt: skip
def test_misfits(values, words):
    (found,) = told(**values)
    assert words in found


def test_doubt_and_the_real_pilot_speak_for_the_block():
    assert told(motor_bore__diameter=(69.999, 0.003)) == []  # cannot be told
    assert told(motor_bore__diameter=(69.99, 0.003), motor__pilot_diameter=(69.98, 0.002)) == []
    assert told(motor_threads__position=(0.61, 0.03)) == []
    assert told(motor_threads__thread=(11.95, 0.1)) == []
    assert told(block__length=(116.01, 0.02)) == []


def test_a_recess_meets_nothing():
    records = {**PLAN.records, "motor.pilot_form": replace(PLAN.records["motor.pilot_form"], value="recessed")}
    assert told(replace(PLAN, records=records), motor_bore__depth=(2.9, 0.02)) == []


def test_a_small_bore_still_takes_a_pilot_of_a_loose_class():
    loose = [replace(c, limits=(0.03, 0.06)) if c.id == "motor_pilot_clearance" else c for c in PLAN.contributors]
    plan = replace(PLAN, contributors=tuple(loose))
    assert told(plan, motor_bore__diameter=(69.98, 0.003)) == []  # pilots of up to 69.97
    assert len(told(plan, motor_bore__diameter=(69.96, 0.003))) == 1
