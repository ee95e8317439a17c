"""The alignment in words: one cell a column, units that the figures have, small chances not called nought."""

import math
from pathlib import Path

import pytest

from blockgen.alignment.arrangements import arrangements
from blockgen.alignment.chain import align
from blockgen.outputs import alignment_rows as words
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec

SERVO = Path(__file__).parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"


@pytest.fixture(scope="module")
def plan():
    return size(load_spec(SERVO))


@pytest.fixture(scope="module")
def alignment(plan):
    return align(plan)


def test_each_row_has_a_cell_for_each_column(plan, alignment):
    for columns, rows in (
        (words.SPREAD_COLUMNS, words.spread_rows(alignment)),
        (words.SHARE_COLUMNS, words.share_rows(alignment)),
        (words.DECISION_COLUMNS, words.decision_rows(alignment)),
        (words.ARRANGEMENT_COLUMNS, words.arrangement_rows(arrangements(plan, 0.2))),
    ):
        made = list(rows)
        assert made
        assert {len(row) for row in made} == {len(columns)}


def test_offsets_are_told_in_mm_and_angles_in_deg(alignment):
    rows = {row[0]: row[1:] for row in words.spread_rows(alignment)}
    assert rows["offset, mm"][1] == f"{alignment.offset.p95:.4f}"
    assert rows["angle, deg"][1] == f"{math.degrees(alignment.angle.p95):.4f}"
    assert rows["angle, deg"][4] == "1"
    assert rows["offset that turns, mm"][4:] == ("-", "-")


def test_what_turns_and_what_stands_still_are_apart(alignment):
    rows = {row[0]: row[1:] for row in words.spread_rows(alignment)}
    whole, still, turning = (float(rows[name][3]) for name in (
        "offset, mm", "offset that stands still, mm", "offset that turns, mm"
    ))  # fmt: skip
    assert whole == pytest.approx(still + turning, abs=2e-4)
    marked = {row[0] for row in words.share_rows(alignment) if row[0].endswith(" (turns)")}
    assert marked == {"motor shaft runout (turns)", "screw journal runout (turns)"}


def test_a_contributor_to_offset_and_angle_has_one_row_and_the_angle_adds_up(alignment):
    rows = list(words.share_rows(alignment))
    assert len({row[0] for row in rows}) == len(rows)
    parts = [float(row[4].rstrip(" %")) for row in rows if row[4] != "-"]
    assert len(parts) == len(alignment.shares_angle)
    assert sum(parts) == pytest.approx(100, abs=0.05 * len(parts))


@pytest.mark.parametrize(
    ("probability", "told"),
    [(None, "-"), (0.0, "< 1e-6"), (9e-7, "< 1e-6"), (0.00123, "0.12 %"), (0.758, "76 %")],
)
def test_a_chance(probability, told):
    assert words.chance(probability) == told


def test_contributors_come_greatest_first_and_decisions_by_gain(alignment):
    parts = [float(row[2].rstrip(" %")) for row in words.share_rows(alignment) if row[2] != "-"]
    assert parts == sorted(parts, reverse=True)
    gains = [float(row[2].removesuffix(" mm")) for row in words.decision_rows(alignment)]
    assert gains == sorted(gains, reverse=True)


def test_an_arrangement_names_every_tolerance_that_must_be_held(plan):
    rows = arrangements(plan, 0.2)
    for row, cells in zip(rows, words.arrangement_rows(rows), strict=True):
        assert row.remark in cells[0]
        assert cells[6].count(";") == len(row.held) - 1
