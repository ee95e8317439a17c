"""The status in words."""

from blockgen.checks import check
from blockgen.checks.status import status
from tests.sizing.strategies import REQUIRED, sized


def words(start=None, **changes):
    plan = sized(**changes) if start is None else sized(start, **changes)
    return status(plan, check(plan))


def test_released_for_review():
    assert words() == "released for review"


def test_preliminary_names_what_is_assumed():
    text = words(REQUIRED)
    assert text.startswith("PRELIMINARY: ")
    for key in ("motor.bolt_hole", "bearing.nut_reach", "bearing.pilot_length", "coupling.grip_max"):
        assert key in text


def test_one_assumed_key_is_enough():
    text = words(motor={"pilot_length": None})
    assert text.startswith("PRELIMINARY: ")
    assert "motor.pilot_length" in text
    assert "bearing.pilot_length" not in text


def test_assumptions_that_do_not_mate_are_no_matter():
    assert words(motor={"body_size": None}, base={"screw": None}) == "released for review"


def test_a_failed_check_stands_above_assumptions():
    text = words(REQUIRED, block={"width": 60})
    assert text.startswith("NOT FOR MANUFACTURE: ")
    assert "Block width" in text


def test_a_warning_does_not_change_the_status():
    plan = sized(motor={"shaft_end": "keyed"})
    assert any(f.verdict == "warn" for f in check(plan))
    assert status(plan, check(plan)) == "released for review"
