"""The alignment as plain data: units, finite numbers, nothing lost."""

import json
import math
from pathlib import Path

import pytest

from blockgen.alignment.arrangements import arrangements
from blockgen.alignment.chain import align
from blockgen.alignment.heat import expansions_of
from blockgen.outputs.alignment_json import alignment_document, arrangement_document, with_arrangements
from blockgen.pipeline import build
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec
from tests.sizing.strategies import sized

EXAMPLES = Path(__file__).parents[2] / "presets" / "examples"
SERVO = EXAMPLES / "spray_carriage_servo.toml"
BUILDABLE = sorted(p for p in EXAMPLES.glob("*.toml") if "too_short" not in p.stem)


def numbers(value, place=""):
    """Yield every number of a document with its place."""
    if isinstance(value, dict):
        for key, below in value.items():
            yield from numbers(below, f"{place}.{key}")
    elif isinstance(value, (list, tuple)):
        for i, below in enumerate(value):
            yield from numbers(below, f"{place}[{i}]")
    elif isinstance(value, (int, float)) and not isinstance(value, bool):
        yield place, value


@pytest.fixture(scope="module")
def demo():
    plan = size(load_spec(SERVO))
    alignment = align(plan, expansions_of(plan))
    return plan, alignment, alignment_document(alignment)


@pytest.mark.parametrize("example", BUILDABLE, ids=lambda p: p.stem)
def test_every_number_in_the_summary_of_an_example_is_finite(example, tmp_path):
    made = build(example, tmp_path, only=["summary"])
    document = json.loads((made.folder / "summary.json").read_text(encoding="utf-8"))
    found = dict(numbers(document["alignment"]))
    assert len(found) > 50
    assert [place for place, value in found.items() if not math.isfinite(value)] == []


def test_lengths_are_mm_and_angles_deg(demo):
    _, alignment, document = demo
    assert document["offset"]["unit"] == "mm"
    assert document["offset"]["p95"] == alignment.offset.p95
    assert document["angle"]["unit"] == "deg"
    for name in ("worst", "p50", "p95", "p9973", "limit"):
        assert document["angle"][name] == pytest.approx(getattr(alignment.angle, name) * 180 / math.pi)
    assert document["angle"]["limit"] == pytest.approx(1.0)  # as the preset gives it, in deg
    assert document["heat"]["angle"] == pytest.approx(alignment.heat.angle * 180 / math.pi)


def test_chances_are_not_scaled_with_the_unit():
    tight = sized(coupling={"allow_angular": 0.03})
    document = alignment_document(align(tight))
    assert 0 < document["angle"]["exceeding"] < 1
    assert document["angle"]["exceeding"] == align(tight).angle.exceeding


def test_shares_make_a_whole_and_name_their_terms(demo):
    plan, alignment, document = demo
    assert sum(share["of_variance"] for share in document["shares"]) == pytest.approx(1.0)
    assert sum(share["of_worst"] for share in document["shares"]) == pytest.approx(1.0)
    assert {share["id"] for share in document["shares"]} == {term.id for term in alignment.terms if term.offset_factor}
    known = {note.id for note in plan.annotations} | set(plan.records)
    assert {share["characteristic"] for share in document["shares"]} <= known


def test_shares_of_the_angle_make_a_whole_in_degrees(demo):
    _, alignment, document = demo
    assert sum(share["of_variance"] for share in document["shares_angle"]) == pytest.approx(1.0)
    total = sum(share["greatest"] for share in document["shares_angle"])
    assert total == pytest.approx(math.degrees(alignment.angle.worst))
    assert {share["id"] for share in document["shares_angle"]} == {t.id for t in alignment.terms if t.angle_factor}


def test_the_worst_reaction_is_that_of_the_worst_offset(demo):
    _, alignment, document = demo
    likely, worst = document["reaction"]["force"], document["reaction_worst"]["force"]
    assert worst / likely == pytest.approx(alignment.offset.worst / alignment.offset.judged)


def test_each_step_says_what_it_changes_and_leaves_a_smaller_offset(demo):
    plan, alignment, document = demo
    assert document["tightening"]
    for step in document["tightening"]:
        assert step["key"] in plan.records
        assert step["before"] != step["after"]
        assert step["p95"] == pytest.approx(alignment.offset.p95 - step["gain"])
        assert step["gain"] > 0
    causes = [cause for decision in document["decisions"] for cause in decision["causes"]]
    assert sorted(causes) == sorted(step["id"] for step in document["tightening"])


def test_what_is_not_known_is_null():
    document = alignment_document(align(sized()))
    assert document["heat"] is None
    assert document["ball_life_ratio"] is None
    assert document["offset"]["limit"] is None
    assert document["coupling_use"]["worst"] is None
    assert document["reaction"]["force"] is None


def test_arrangements_stand_in_the_alignment_and_only_where_asked_for(demo):
    plan, _, document = demo
    whole = {"alignment": document, "status": "x"}
    assert with_arrangements(whole, ()) is whole
    rows = arrangements(plan, 0.2)
    longer = with_arrangements(whole, rows)
    assert [row["id"] for row in longer["alignment"]["arrangements"]] == ["block", "plate_dowelled", "plate_screwed"]
    assert "arrangements" not in document
    assert longer["status"] == "x"


def test_a_row_of_arrangements_says_what_must_be_held(demo):
    row = arrangements(demo[0], 0.2)[1]
    document = arrangement_document(row)
    assert document["held"] == [{"what": held.what, "value": held.value} for held in row.held]
    assert document["p95"] == row.p95
    assert 0 <= document["exceeding"] <= 1
