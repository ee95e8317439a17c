from dataclasses import replace
from pathlib import Path

import pytest

from blockgen.checks.finding import Finding
from blockgen.console.check_page import build_page, check_page, failures
from blockgen.console.plain import lines
from blockgen.plan import Body, Ligament, Plan
from blockgen.record import Record

FINDINGS = (
    Finding("good", "motor shaft in its hub", 15.0, 14.0, "mm", 0.07, "pass", "holds"),
    Finding("bad", "block under the height limit", 120.0, 110.0, "mm", -0.09, "fail", "lower the shaft height"),
    Finding("open", "base joint against slip", None, None, "", None, "not_assessed", "not assessed: screw.thrust"),
)


@pytest.fixture
def plan():
    records = [
        Record("length", 86.0, "mm", "sized", "middle"),
        Record("bearing.nut_reach", 16.0, "mm", "assumed", "pilot length plus nut"),
        Record("base.thickness", 25.0, "mm", "assumed", "usual base plate"),
        Record("practice.rim", 2.5, "mm", "assumed", "least wall"),
    ]
    walls = tuple(Ligament(f"hole_{n}", "window", 3.0 + n, 3.0) for n in range(7))
    body = Body(86.0, 100.0, 100.0, 0.0, 0.5)
    return Plan({r.key: r for r in records}, ("length",), body, (), (), (), (), (), {}, walls, ("a note",), 2700.0)


@pytest.mark.parametrize("width", [80, 120])
def test_the_page_tells_all_and_fits(plan, width):
    text = list(lines(check_page(plan, FINDINGS, "NOT FOR MANUFACTURE: x"), width))
    assert max(map(len, text)) <= width
    assert text[0] == "Status: NOT FOR MANUFACTURE: x"
    whole = "\n".join(text)
    for word in ("86 x 100 x 100 mm", "hole_4", "bearing.nut_reach = 16 mm", "base.thickness", "a note"):
        assert word in whole
    assert "hole_5" not in whole
    assert "practice.rim" not in whole
    assert text[-1] == "3 checks: 1 pass, 1 FAIL, 1 not assessed. NOT FOR MANUFACTURE: x"


def test_the_end_is_what_matters(plan):
    given = Record("coupling.mass", 0.2, "kg", "given", "given in the spec")
    plan = replace(plan, records={**plan.records, given.key: given})
    text = list(lines(check_page(plan, FINDINGS, "NOT FOR MANUFACTURE: x"), 120))
    starts = (
        "Thinnest walls", "Other values that were not given", "Notes of the sizing", "Checks",
        "Assumed mating geometry", "Given, not used in this version: coupling.mass.",
        "What did not pass, and why", "Result",
    )  # fmt: skip
    places = [next(i for i, line in enumerate(text) if line.startswith(start)) for start in starts]
    assert places == sorted(places)


def test_nothing_is_said_of_unused_keys_where_there_are_none(plan):
    assert "not used" not in "\n".join(lines(check_page(plan, FINDINGS, "x"), 120))


@pytest.mark.parametrize(("strict", "told"), [(False, ["bad"]), (True, ["bad", "worn"])])
def test_failures_alone(strict, told):
    findings = (*FINDINGS, Finding("worn", "a warning", None, None, "", None, "warn", "look"))
    text = list(lines(failures(findings, "NOT FOR MANUFACTURE: x", strict=strict), 100))
    assert text[0] == "Status: NOT FOR MANUFACTURE: x"
    assert [line.split("(")[1].split(")")[0] for line in text[1:]] == told


def test_failures_come_first_and_say_why(plan):
    text = list(lines(check_page(plan, FINDINGS, "NOT FOR MANUFACTURE: x"), 100))
    rows = [line.split()[0] for line in text if line.endswith("%") or line.startswith("not assessed")]
    assert rows == ["FAIL", "not", "pass"]
    assert "- FAIL block under the height limit (bad): lower the shaft height" in text
    assert "- not assessed base joint against slip (open): screw.thrust" in text


def test_a_build_names_its_files_and_what_speaks_against_it():
    page = build_page(Path("out/X_A"), {"X_A_block.step": "block"}, FINDINGS, "NOT FOR MANUFACTURE: x")
    text = list(lines(page, 80))
    assert "- FAIL block under the height limit (bad): lower the shaft height" in text
    assert f"{Path('out/X_A/X_A_block.step')}  block" in text
