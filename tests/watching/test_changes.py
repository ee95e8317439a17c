"""Differences between two builds, from the demo with single keys changed."""

from pathlib import Path

import pytest

from blockgen.outputs import show
from blockgen.pipeline import BuildResult, design
from blockgen.spec.load import parse_spec
from blockgen.watching.changes import NONE, Change, Changes, changes
from tests.examples import SERVO

TEXT = SERVO.read_text(encoding="utf-8")


def built(*swaps):
    text = TEXT
    for old, new in swaps:
        assert old in text
        text = text.replace(old, new)
    made = design(parse_spec(text, str(SERVO)))
    return BuildResult(Path("out"), {}, made.plan, made.findings, made.status)


@pytest.fixture(scope="module")
def demo():
    return built()


def test_a_build_does_not_differ_from_itself(demo):
    assert changes(demo, built()) == Changes()


def test_comments_and_lines_change_nothing(demo):
    assert changes(demo, built(("schema = 1", "# a word\n\nschema = 1"))) == Changes()


def test_a_key_and_all_that_follows_from_it(demo):
    now = built(('journal_reach = "46 mm"', 'journal_reach = "47 mm"'))
    found = changes(demo, now)
    assert found.asked[0] == Change("screw.journal_reach", "46 mm", "47 mm")
    named = {change.name: change for change in found.sizes}
    for key in demo.plan.dimensions:
        differs = demo.plan.records[key].value != now.plan.records[key].value
        assert (key in named) == differs
    assert named["length"].before.startswith(show.with_unit(demo.plan.records["length"].value, "mm"))
    assert named["length"].now.startswith(show.with_unit(now.plan.records["length"].value, "mm"))


def test_a_verdict_that_turns_comes_with_the_status_and_the_screws(demo):
    now = built(('screw = "M8"', 'screw = "M6"'))
    found = changes(demo, now)
    turned = {turn.now.id: (turn.before, turn.now.verdict) for turn in found.checks if turn.now}
    assert turned["base_slip"] == ("pass", "fail")
    assert found.status == Change("Status", demo.status, now.status)
    assert any("M8" in c.before and "M6" in c.now for c in found.screws)


def test_there_and_back_is_the_same_the_other_way_round(demo):
    now = built(('screw = "M8"', 'screw = "M6"'))
    there, back = changes(demo, now), changes(now, demo)
    assert {(c.name, c.before, c.now) for c in there.sizes} == {(c.name, c.now, c.before) for c in back.sizes}
    verdicts = {(t.before, t.now.verdict if t.now else NONE) for t in there.checks}
    assert verdicts == {(t.now.verdict if t.now else NONE, t.before) for t in back.checks}


def test_what_is_no_longer_given_is_shown_as_gone_and_its_checks_as_not_assessed(demo):
    found = changes(demo, built(('thrust = "2.4 kN"\n', "")))
    assert Change("screw.thrust", "2400 N", NONE) in found.asked
    assert ("pass", "not_assessed") in {(t.before, t.now.verdict) for t in found.checks if t.now}
