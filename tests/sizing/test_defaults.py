"""Every default has a reason and a source, and what is assumed says so."""

import pytest

from blockgen.sizing.defaults import MATING, PRACTICE, complete
from blockgen.spec.load import parse_spec
from blockgen.spec.tables import MODELS
from tests.sizing.strategies import COMPLETE, REQUIRED, ledger, toml


def assumed():
    return [r for r in ledger(REQUIRED) if r.origin == "assumed"]


def test_every_default_has_reason_and_source():
    found = assumed()
    assert len(found) > 100
    for record in found:
        assert record.rule, record.key
        assert record.source, record.key


def test_every_practice_value_is_marked_as_assumed_with_its_meaning():
    for key, record in PRACTICE.items():
        assert key == record.key
        assert key.startswith("practice.")
        assert record.origin == "assumed"
        assert "common practice, no source" in record.source or "from memory" in record.source


INTERNAL = {"coupling.journal_grip_min", "coupling.motor_grip_min"}  # split from grip_min by shaft


def test_every_default_is_a_key_of_the_spec():
    for record in assumed():
        table, name = record.key.split(".", 1)
        if table != "practice" and record.key not in INTERNAL:
            assert name in MODELS[table].model_fields, record.key


def test_mating_keys_are_known():
    for key in MATING - INTERNAL:
        table, name = key.split(".", 1)
        assert name in MODELS[table].model_fields, key


def test_no_load_is_ever_assumed():
    known = {r.key for r in assumed()}
    assert not known & {"screw.thrust", "motor.peak_torque", "motor.rated_torque", "motor.mass", "screw.moved_mass",
                        "coupling.rated_torque", "screw.lead", "motor.inertia"}  # fmt: skip


def test_given_values_win_over_defaults():
    given = parse_spec(toml(COMPLETE)).records
    after = complete(given)
    for key, record in given.items():
        assert after[key] is record


def test_inputs_of_derived_defaults_exist():
    start = ledger(REQUIRED)
    for record in start:
        for given in record.inputs.values():
            assert given.ref in start


def test_the_pilot_class_is_not_assumed_beside_given_deviations():
    start = ledger(REQUIRED, motor={"pilot_upper": 0, "pilot_lower": -0.03})
    assert "motor.pilot_fit" not in start


def test_the_maker_s_grip_wins_over_the_shaft_diameter():
    start = ledger()
    assert start.number("coupling.journal_grip_min") == 16
    assert start["coupling.journal_grip_min"].origin == "given"
    assert ledger(REQUIRED).number("coupling.journal_grip_min") == pytest.approx(15)


def test_journal_reach_follows_from_the_shoulder():
    start = ledger(screw={"journal_reach": None, "shoulder_to_end": 84}, bearing={"shoulder_offset": 40})
    assert start.number("screw.journal_reach") == 44


def test_nothing_is_complete_twice_with_other_values():
    assert list(ledger(REQUIRED)) == list(ledger(REQUIRED))
