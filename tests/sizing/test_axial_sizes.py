"""What the axial layout enters: interval with reasons, length, coupling position, grips and gap."""

import pytest

from blockgen.record import Ledger, Record
from blockgen.sizing.axial import Layout
from blockgen.sizing.axial_sizes import enter_coupling
from tests.sizing.strategies import sized


def test_each_end_of_the_interval_names_what_binds_it():
    records = sized().records
    assert {"motor_wall", "coupling.clamp_access_radius"} <= set(records["length_min"].inputs)
    assert {"screw.journal_reach", "coupling.journal_grip_min"} <= set(records["length_max"].inputs)
    assert "grip of the journal" in records["length_max"].rule


def test_the_interval_by_hand():
    plan = sized()  # c >= bearing wall + key - clamp, d >= 60 - 8 + motor wall + 5; c <= 44 - 16, d <= 60 + 40 - 16
    low = max(20 + 2, plan.number("bearing_wall") + 5 - 8) + max(60 + 3 + 2, 52 + plan.number("motor_wall") + 5)
    assert plan.number("length_min") == pytest.approx(low)
    assert plan.number("length_max") == pytest.approx(28 + 84)


def test_the_length_is_a_round_number_near_the_middle():
    plan = sized()
    middle = (plan.number("length_low") + plan.number("length_high")) / 2
    assert abs(plan.number("length") - middle) <= 0.25 + 1e-9
    assert plan.number("length") * 2 == round(plan.number("length") * 2)


def test_a_given_length_is_kept_inside_the_interval():
    plan = sized(block={"length": 103.7})
    assert plan.number("length") == 103.7
    assert "given" in plan.records["length"].rule


def test_length_and_coupling_position_carry_their_tolerances():
    records = sized(block={"length_tolerance": 0.05}).records
    assert (records["length"].upper, records["length"].lower) == (0.05, -0.05)
    assert records["coupling_position"].upper == -records["coupling_position"].lower > 0


def test_a_wider_length_tolerance_narrows_the_interval_by_as_much():
    walls = {"bearing_wall": 22, "motor_wall": 22, "window_width": 70}  # so that no wall moves with the tolerance
    tight, loose = (sized(block={**walls, "length_tolerance": size}) for size in (0.1, 0.4))
    assert loose.number("length_min") == tight.number("length_min")
    assert loose.number("length_low") > tight.number("length_low")
    assert loose.number("length_high") < tight.number("length_high")


def test_grips_and_gap_by_hand():
    plan = sized()
    c, length = plan.number("coupling_position"), plan.number("length")
    assert plan.number("journal_grip") == pytest.approx(44 - c)
    assert plan.number("motor_grip") == pytest.approx(c + 60 - (length - 40))
    assert plan.number("shaft_gap") == pytest.approx(length - 40 - 44)


def test_a_coupling_range_of_one_point_is_taken_whatever_the_last_digit_says():
    limits = {"c_min": 20.0, "c_max": 30.0, "d_min": 60.0, "d_max": 80.0, "l_min": 0.0, "l_max": 200.0}
    point = limits | {"c_min": 26.7 + 4e-15, "c_max": 26.7}
    layout, tight = (Layout(80.0, 110.0, (), (), values) for values in (limits, point))
    values = {"length": 100.0, "practice.setting_tolerance": 0.2, "screw.journal_reach": 46.0,
              "motor.shaft_length": 40.0, "coupling.length": 58.0}  # fmt: skip
    ledger = Ledger(Record(key, value, "mm", "given", "") for key, value in values.items())
    enter_coupling(ledger, layout, tight)
    assert ledger.number("coupling_low") == ledger.number("coupling_high") == ledger.number("coupling_position") == 26.7
