"""Rows of bought parts."""

from dataclasses import replace

import pytest

from blockgen.evidence.bought import bought_rows, pilot_limits
from tests.evidence.samples import made, rows_of


def test_the_pilot_has_the_limits_of_its_own_class():
    row = rows_of()["motor.pilot_diameter"]
    assert (row.lower, row.upper) == (pytest.approx(69.97), 70)  # 70 h7


def test_pilot_limits_are_for_clearances_only():
    plan = made().plan
    with pytest.raises(ValueError, match="bore_coaxiality is no clearance"):
        pilot_limits(plan, next(c for c in plan.contributors if c.id == "bore_coaxiality"))


def test_a_recess_has_no_pilot_to_measure():
    plan = made().plan
    records = {**plan.records, "motor.pilot_form": replace(plan.records["motor.pilot_form"], value="recessed")}
    ids = {row.id for row in bought_rows(replace(plan, records=records))}
    assert "motor.pilot_diameter" not in ids
    assert "bearing.pilot_diameter" in ids


def test_a_run_out_that_nobody_gave_has_no_row():
    assert "screw.journal_runout" in rows_of()
    assert "screw.journal_runout" not in rows_of("stepper")
