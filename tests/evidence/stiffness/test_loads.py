"""Cases of service as sums of unit loads."""

from __future__ import annotations

import pytest

from blockgen.evidence.stiffness.loads import UNITS, cases_of, motor_wrench
from blockgen.mechanics.loads import resultant
from blockgen.pipeline import design
from blockgen.sizing.loads import base_cases
from tests.examples import SERVO


@pytest.fixture(scope="module")
def plan():
    return design(SERVO).plan


def test_thrust_both_ways_and_rest_each_with_the_torque_either_way(plan):
    cases = cases_of(plan)
    assert [case.thrust for case in cases] == [2400, 2400, -2400, -2400, 0, 0]
    turns = [case.factors[UNITS.index("motor_mx")] for case in cases]
    assert turns == pytest.approx([7100, -7100] * 3)


def test_cases_are_the_loads_of_the_joint(plan):
    """Force and moment about the base are those of the rigid-body statics, the motor's torque apart."""
    seat, height = plan.body.length, plan.number("shaft_height")
    for forces, case in zip(base_cases(plan.records), cases_of(plan)[::2], strict=True):
        force, moment = resultant(forces, (0.0, 0.0, 0.0))
        thrust, fx, fy, fz, mx, my, mz = case.factors
        assert (thrust + fx, fy, fz) == pytest.approx(force)
        about = (mx - 7100 - height * fy, my + height * (fx + thrust) - seat * fz, mz + seat * fy)
        assert about == pytest.approx([1000 * m for m in moment], abs=1e-6)


def test_weight_hangs_down_and_nods_the_motor(plan):
    _, _, fz, mx, my, _ = motor_wrench(plan)
    assert fz == pytest.approx(-2.8 * 9.80665)
    assert my == pytest.approx(62 * 2.8 * 9.80665)
    assert mx == 0
