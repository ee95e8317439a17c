"""Every value on the page is that of the summary."""

import json
import re

import pytest

NUMBER = re.compile(r"-?\d+(?:\.\d+)?(?:e[+-]?\d+)?")


def line_of(shown, identity):
    """Return the summary line of what unfolds to an element."""
    return shown.parents[shown.by_id[identity]][0]


def numbers(value):
    return [float(value)] if isinstance(value, (int, float)) and not isinstance(value, bool) else []


@pytest.mark.parametrize(("place", "kind"), [("dimensions", "dimension"), ("inputs", "value"), ("making", "value")])
def test_every_value_is_that_of_the_summary(contents, shown, place, kind):
    entries = contents.document[place]
    assert entries
    for key, entry in entries.items():
        line = line_of(shown, f"{kind}-{key}")
        assert [number for number, _ in shown.figures(line)] == numbers(entry["value"]), key
        assert shown.words(line).endswith(entry["origin"]), key


def test_derivations_name_rule_inputs_and_source(contents, shown):
    for key, entry in contents.document["dimensions"].items():
        words = shown.words(shown.by_id[f"dimension-{key}"])
        assert " ".join(entry["rule"].partition("; ")[0].split()) in words, key
        assert " ".join(entry["source"].split()) in words, key
        links = {a.get("href") for a in shown.by_id[f"dimension-{key}"].iter() if a.get("href")}
        assert len(links) == len({of["ref"] for of in entry["inputs"].values()}), key


def test_limits_stand_as_least_and_greatest_size(shown):
    assert "From 45 mm to 45.025 mm" in shown.words(shown.by_id["dimension-bearing_bore"])


def test_every_check_has_value_limit_and_margin(contents, shown):
    for check in contents.document["checks"]:
        item = shown.by_id[f"check-{check['id']}"]
        wanted = [check[name] for name in ("value", "limit", "margin") if check[name] is not None]
        assert [number for number, _ in shown.figures(item)][: len(wanted)] == [float(w) for w in wanted], check["id"]
        words = shown.words(item)
        for part in ("title", "explanation", "formula", "source"):
            assert " ".join(check[part].removeprefix("not assessed: ").split()) in words, (check["id"], part)


def test_failures_come_first_then_warnings_then_what_is_open(contents, shown):
    verdicts = {check["id"]: check["verdict"] for check in contents.document["checks"]}
    order = [verdicts[name.removeprefix("check-")] for name in shown.by_id if name.startswith("check-")]
    assert order == sorted(order, key=["fail", "warn", "not_assessed", "pass"].index)
    assert len(order) == len(verdicts)


def test_the_alignment_is_that_of_the_summary(contents, shown):
    alignment = contents.document["alignment"]
    names = ("offset", "offset_static", "offset_rotating", "angle", "angle_static", "angle_rotating")
    for name, row in zip(names, shown.rows("Offset and angle of the shafts"), strict=True):
        wanted = [alignment[name][level] for level in ("p50", "p95", "p9973", "worst", "limit")]
        assert [number for number, _ in shown.figures(row)] == [w for w in wanted if w is not None], name
    section = shown.words(shown.by_id["alignment"])
    for share in (*alignment["shares"], *alignment["shares_angle"]):
        assert share["id"].replace("_", " ") in section


def test_screws_and_mass_are_those_of_the_summary(contents, shown):
    document = contents.document
    for fastener, row in zip(document["fasteners"], shown.rows("What to order"), strict=True):
        wanted = [fastener[name] for name in ("count", "length", "torque", "preload", "engagement")]
        assert [number for number, _ in shown.figures(row)] == [float(w) for w in wanted if w is not None]
    for line, row in zip(document["torque_card"], shown.rows("Torque card"), strict=True):
        assert [number for number, _ in shown.figures(row)] == line["steps"]
    assert document["mass"]["value"] in [number for number, _ in shown.figures(shown.by_id["first"])]


def test_constraints_are_those_of_the_summary(contents, shown):
    rows = shown.rows("Constraints along the axis")
    for constraint, row in zip(contents.document["layout"]["constraints"], rows, strict=True):
        names = ("room", "room_after_tolerances", "value", "limit")
        assert [number for number, _ in shown.figures(row)] == [constraint[name] for name in names]


def test_what_to_ask_for_assumptions_and_cautions_are_all_there(contents, shown):
    document = contents.document
    assert len(shown.rows("Values to ask for")) == len(document["missing"])
    assert len(shown.rows("Other values that were not given")) == sum(not a["mates"] for a in document["assumptions"])
    for caution in document["cautions"]:
        assert caution in shown.words(shown.by_id["cautions"])


def test_a_number_as_it_is_shown_agrees_with_the_exact_one(shown):
    """Whatever the unit it is shown in: itself, thousands or hundredths."""
    figures = shown.figures(shown.root)
    assert len(figures) > 1000
    for exact, words in figures:
        number = NUMBER.match(words).group()
        mantissa = number.partition("e")[0]
        places = len(mantissa.partition(".")[2])
        grain = 0.5000001 * 10.0**-places if "e" not in number else abs(float(number)) * 0.01
        factors = {"kN": 1e-3, "%": 100.0}
        factor = next((f for unit, f in factors.items() if words.endswith(unit)), 1.0)
        whole = max(grain, 0.5 if abs(float(number)) >= 1000 else 0.0, abs(exact) * factor * 0.1 * ("%" in words))
        assert abs(float(number) - exact * factor) <= whole, words


def test_the_summary_itself_is_inside(contents, shown):
    assert json.loads(shown.words(shown.by_id["summary-data"])) == contents.document
