"""The whole sheet: rows that fit a page, a reason for every number, the same at every run."""

import os
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings

from blockgen.making.practice import PRACTICE
from blockgen.making.setup_sheet import once, setup_sheet
from blockgen.pipeline import design
from tests.making.ways import WAYS
from tests.sizing.strategies import sized, sized_or_left, tables

ROOT = Path(__file__).parents[2]
EXAMPLES = ("servo", "large", "stepper")
# What a column of an A4 table takes in two lines of small print: setup, what, tool, remark.
COLUMNS = (18, 75, 50, 95)


def example(name):
    return setup_sheet(design(ROOT / f"presets/examples/spray_carriage_{name}.toml").plan)


@pytest.mark.parametrize("way", WAYS)
def test_rows_have_the_columns_of_their_table_and_fit_a_page(way):
    sheet = setup_sheet(sized(**WAYS[way]))
    for table in sheet.tables:
        assert table.rows
        assert all(len(row) == len(table.columns) for row in table.rows)
    for row in sheet.setups.rows:
        assert all(len(cell) <= most for cell, most in zip(row, COLUMNS, strict=True)), row


@pytest.mark.parametrize("way", WAYS)
def test_inputs_point_at_records_that_exist(way):
    plan = sized(**WAYS[way])
    records = setup_sheet(plan).records
    known = set(plan.records) | {record.key for record in records}
    for record in records:
        assert {i.ref for i in record.inputs.values()} - {None} <= known, record.key
        assert record.rule, record.key
        assert record.source, record.key


@pytest.mark.parametrize("way", WAYS)
def test_no_record_is_told_twice_with_another_value(way):
    plan = sized(**WAYS[way])
    records = setup_sheet(plan).records
    keys = [record.key for record in records]
    assert len(keys) == len(set(keys))
    assert not set(keys) & set(plan.records)


def test_practice_values_are_shown():
    keys = {record.key for record in setup_sheet(sized()).records}
    assert set(PRACTICE) <= keys


def test_once_keeps_the_first():
    first, *_ = PRACTICE.values()
    assert once((first, first)) == (first,)


@pytest.mark.parametrize("name", EXAMPLES)
def test_examples_have_a_sheet(name):
    sheet = example(name)
    assert sheet.title.startswith("GL-040")
    assert any("finish-bore" in row[1] for row in sheet.setups.rows)


@settings(max_examples=25, deadline=None, suppress_health_check=list(HealthCheck))
@given(tables())
def test_every_block_that_can_be_sized_has_a_sheet(spec):
    plan = sized_or_left(spec)
    sheet = setup_sheet(plan)
    text = "\n".join(cell for table in sheet.tables for row in table.rows for cell in row)
    assert "nan" not in text
    assert "None" not in text
    for feature in plan.features:
        if feature.kind != "window":
            assert f"{round(feature.diameter, 2):g}" in text, feature.id


SCRIPT = "from tests.making.test_setup_sheet import example; print(example('servo'))"


def test_the_sheet_does_not_depend_on_the_hash_seed():
    printed = {
        subprocess.run(
            [sys.executable, "-c", SCRIPT], cwd=ROOT,
            env={**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT)},
            capture_output=True, text=True, check=True, timeout=60,
        ).stdout
        for seed in ("0", "7")
    }  # fmt: skip
    assert len(printed) == 1
    assert "GL-040-11" in printed.pop()
