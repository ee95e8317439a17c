"""What to ask for, and of whom."""

from blockgen.checks import check
from blockgen.checks.missing import missing, who_knows
from tests.sizing.strategies import REQUIRED, sized


def rows(**changes):
    plan = sized(**changes)
    return missing(plan, check(plan))


def test_geometry_that_mates_comes_first():
    plan = sized(REQUIRED)
    found = missing(plan, check(plan))
    first = [row.key for row in found if row.rank >= 100]
    assert "motor.bolt_hole" in first
    assert [row.key for row in found][: len(first)] == first


def test_a_value_that_settles_more_comes_before():
    ranks = [row.rank for row in rows(screw={"thrust": None})]
    assert ranks == sorted(ranks, reverse=True)


def test_the_thrust_names_every_check_that_waits_for_it():
    row = next(r for r in rows(screw={"thrust": None}) if r.key == "screw.thrust")
    assert {"base_slip", "base_opening", "base_screw_load", "bearing_pull", "drive_thrust"} <= set(row.checks)
    assert row.ask == "machine designer"


def test_a_given_value_is_not_asked_for():
    assert "screw.thrust" not in [row.key for row in rows()]
    assert "motor.mass" not in [row.key for row in rows(motor={"mass": 4, "centre_of_mass": 70})]


def test_every_open_check_is_somebody_s():
    plan = sized(REQUIRED)
    findings = check(plan)
    waiting = {name for row in missing(plan, findings) for name in row.checks}
    assert {f.id for f in findings if f.verdict == "not_assessed"} <= waiting


def test_who_knows():
    assert who_knows("motor.mass") == "motor maker"
    assert who_knows("bearing.axial_stiffness") == "maker of the bearing unit"
    assert who_knows("screw.lead") == "maker of the ball screw"
    assert who_knows("screw.moved_mass") == "machine designer"
    assert who_knows("pressure that the bearing flange bears (maker's data)") == "maker of the bearing unit"
    assert who_knows("limits.first_frequency") == "machine designer"
