"""The alignment on a page: what comes first, what is cut short and says so, how wide it gets."""

from pathlib import Path

import pytest

from blockgen.alignment.arrangements import arrangements
from blockgen.alignment.chain import align
from blockgen.console.alignment_page import alignment_parts, arrangement_parts
from blockgen.console.plain import lines
from blockgen.outputs import alignment_rows
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec

SERVO = Path(__file__).parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"


@pytest.fixture(scope="module")
def plan():
    return size(load_spec(SERVO))


@pytest.mark.parametrize("width", [80, 100, 140])
def test_the_page_fits(plan, width):
    parts = [*alignment_parts(align(plan)), *arrangement_parts(arrangements(plan, 0.2))]
    assert max(map(len, lines(parts, width))) <= width


def test_the_greatest_contributors_are_shown_and_the_others_counted(plan):
    alignment = align(plan)
    text = list(lines(list(alignment_parts(alignment)), 120))
    rows = [row[0] for row in alignment_rows.share_rows(alignment)]
    start = next(i for i, line in enumerate(text) if line.startswith("Contributor"))
    assert [line.split("  ")[0] for line in text[start + 2 : start + 8]] == rows[:6]
    assert text[start + 8] == f"and {len(rows) - 6} smaller ones, all in the summary."


def test_every_decision_is_shown(plan):
    alignment = align(plan)
    text = "\n".join(lines(list(alignment_parts(alignment)), 200))
    for row in alignment_rows.decision_rows(alignment):
        assert row[0] in text
        assert row[4] in text


def test_arrangements_side_by_side_with_what_each_must_hold(plan):
    rows = arrangements(plan, 0.2)
    text = list(lines(list(arrangement_parts(rows)), 400))
    assert text[1] == "This block beside a separate motor plate and a foot-mounted unit, cold and without load"
    for row in rows:
        told = next(line for line in text if line.startswith(f"- to be held, {row.title}: "))
        assert all(f"{held.what} {held.value}" in told for held in row.held)
        assert any(line.startswith(row.title) and f"{row.p95:.3f} mm" in line for line in text)
