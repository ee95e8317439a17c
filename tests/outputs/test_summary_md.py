import re

import pytest

from blockgen.outputs.summary_md import summary_md


@pytest.fixture
def text(plan, findings):
    files = {"summary.md": "summary", "GL-040-11_A_block.step": "block"}
    return summary_md(plan, findings, "NOT FOR MANUFACTURE: bad", "a" * 64, files)


def test_the_status_stands_first(text):
    assert text.split("\n")[2] == "**Status: NOT FOR MANUFACTURE: bad**"


def test_all_sections_are_there_in_their_order(text):
    titles = re.findall(r"^## (.*)$", text, re.MULTILINE)
    assert titles == [
        "Key sizes",
        "Axial layout",
        "Dimensions",
        "Holes, bores and window (mm)",
        "Screws and pins",
        "Torque card",
        "Checks",
        "To ask for",
        "Thinnest walls",
        "Assumed mating geometry",
        "Other values that were not given",
        "Notes of the sizing",
        "Cautions",
        "Files of this set",
    ]


def test_failures_come_first(text):
    verdicts = re.findall(r"^\| (FAIL|WARN|not assessed|pass) \|", text, re.MULTILINE)
    assert verdicts == ["FAIL", "WARN", "not assessed", "pass"]


def test_a_dimension_shows_formula_substitution_result_origin(text):
    assert "| length_min | 80 mm |  | journal reach + shaft length + 15 = 35 + 30 + 15 = 80 mm | sized |" in text


def test_limits_and_margins_are_shown(text):
    assert "| motor_bore | 70 mm | H7 +0.03/0 |" in text
    assert "| -25 % |" in text
    assert "4 x M10 x 50 - 8.8 (ISO 4762)" in text


def test_every_table_keeps_its_columns(text):
    for table in re.findall(r"(?:^\|.*\n)+", text, re.MULTILINE):
        assert len({len(re.findall(r"(?<!\\)\|", row)) for row in table.splitlines()}) == 1


def test_text_of_the_spec_is_harmless(text):
    assert "<b>" not in text
    assert "\x1b" not in text
    assert "\u202e" not in text
    assert "carriage &lt;b>x" in text
    assert "[l](" not in text.replace("\\[l](", "")


def test_only_the_five_thinnest_walls(text):
    assert "hole_4" in text
    assert "hole_5" not in text
