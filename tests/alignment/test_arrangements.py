"""The table of arrangements."""

import pytest

from blockgen.alignment.arrangements import arrangements
from blockgen.alignment.chain import align
from blockgen.alignment.plate import dowelled, plate_values, separate_terms
from blockgen.alignment.terms import offsets
from tests.alignment.draws import lengths, off_by
from tests.sizing.strategies import sized


def rows(limit=None, **plate):
    return {row.id: row for row in arrangements(sized(plate=plate or {"plate_thickness": 20}), limit)}


def test_one_block_beats_pins_and_pins_beat_screws():
    found = rows(limit=0.12)
    order = [found[name] for name in ("block", "plate_dowelled", "plate_screwed")]
    assert order[0].p95 < order[1].p95 < order[2].p95
    assert order[0].worst < order[1].worst < order[2].worst
    assert order[0].exceeding < order[1].exceeding < order[2].exceeding


def test_the_block_s_row_is_the_block_s_alignment():
    row, found = rows()["block"], align(sized())
    assert (row.p50, row.p95, row.p9973) == pytest.approx(
        (found.offset.p50, found.offset.p95, found.offset.p9973), rel=1e-6
    )
    assert row.exceeding is None


def test_the_dowelled_row_agrees_with_a_million_draws():
    plan = sized()
    values = plate_values(plan)
    drawn = lengths(offsets(separate_terms(plan, values, dowelled(values))), 77)
    row = rows()["plate_dowelled"]
    for value, probability in ((row.p50, 0.5), (row.p95, 0.95), (row.p9973, 0.9973)):
        assert off_by(drawn, value, probability) < 3


def test_values_change_the_row():
    row = rows(plate_height_tolerance=0.1)["plate_dowelled"]
    assert row.p95 > rows()["plate_dowelled"].p95
    assert "+-0.1" in {held.value for held in row.held}


def test_pins_cost_fitted_holes():
    found = rows()
    assert found["plate_dowelled"].fitted > found["block"].fitted > found["plate_screwed"].fitted
    assert len(found["plate_dowelled"].held) > len(found["plate_screwed"].held)
