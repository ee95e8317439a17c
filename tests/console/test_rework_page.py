"""Tests of how rework and adapters are printed and written."""

import json

import pytest

from blockgen.change.rework.data import Reason
from blockgen.change.rework.document import rework_document
from blockgen.change.rework.rework import rework_and_adapter
from blockgen.change.rework.rows import grouped, leftover_rows, markdown
from blockgen.console import plain
from blockgen.console.rework_page import rework_parts
from tests.change import blocks


def printed(change, width=80):
    return list(plain.lines(list(rework_parts(change)), width))


@pytest.mark.parametrize("width", [80, 120])
def test_a_feasible_rework_lists_operations(width):
    lines = printed(rework_and_adapter(blocks.old(), blocks.other(pilot_diameter=75), prove=False), width)
    assert all(len(line) <= width for line in lines)
    assert "1. bore the motor seat to 75 H7 (+0.030/+0.000), depth 4" in lines
    assert not any("Adapters" in line for line in lines)


@pytest.mark.parametrize("width", [80, 120])
def test_a_refused_rework_tells_why_and_shows_the_adapter(width):
    lines = printed(rework_and_adapter(blocks.old(), blocks.other(pilot_diameter=60), prove=False), width)
    text = "\n".join(lines)
    assert all(len(line) <= width for line in lines)
    assert "cannot be re-machined" in text
    assert "ring 70 / 60 x 3" in text
    assert "k6 +0.021/+0.002" in text


def test_the_document_is_plain_data_with_reasons_and_records():
    change = rework_and_adapter(blocks.old(), blocks.other(pilot_diameter=60), prove=False)
    document = json.loads(json.dumps(rework_document(change), allow_nan=False))
    assert document["feasible"] is False
    assert document["reasons"][0]["amount"] == 5.0
    adapter = document["adapters"][0]
    assert adapter["dimensions"]["adapter.outside"]["fit"] == "k6"
    assert adapter["dimensions"]["adapter.outside"]["inputs"]["old.motor_bore"]["value"] == 70.0
    assert adapter["chain"]["offset"]["worst"][1] > adapter["chain"]["offset"]["worst"][0]
    assert 0.01 < adapter["mass"] < 0.05


def test_markdown_has_the_tables_of_an_adapter():
    text = "\n".join(markdown(rework_and_adapter(blocks.old(), blocks.other(pilot_diameter=60), prove=False)))
    assert "## Rework of the block that exists" in text
    assert "| outside | 70 mm | k6 +0.021/+0.002 |" in text
    assert "coaxiality" in text


def test_alike_reasons_are_told_once():
    reasons = [Reason("too_near", f"the old hole_{i} runs into the new hole_{i}", 3.0, "mm", "x") for i in (1, 2)]
    assert list(grouped(reasons)) == ["the old hole runs into the new hole (2 times)"]
    assert list(grouped(reasons[:1])) == ["the old hole_1 runs into the new hole_1"]


def test_alike_leftovers_share_a_row_with_the_thinnest_wall():
    from blockgen.change.rework.data import Leftover

    def left(number, wall):
        return Leftover(f"hole_{number}", "tapped_hole", "top", (0.0, 0.0, 0.0), "M6", wall, 3.0, "window", sound=True)

    assert list(leftover_rows([left(1, 5.0), left(2, 4.0)])) == [("2 x hole", "M6", "4 mm", "3 mm", "window", "yes")]
