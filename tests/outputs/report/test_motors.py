"""A family: each motor stands on the page with its own lengths and its own constraints."""

import pytest

from blockgen.outputs.report.page import page
from tests.examples import FOLDER
from tests.outputs.report.conftest import contents_of
from tests.outputs.report.reading import Page, Strict


@pytest.fixture(scope="module")
def family():
    return contents_of(FOLDER / "spray_carriage_family.toml")


@pytest.fixture(scope="module")
def shown_family(family):
    text = page(family)
    Strict(text)
    return Page(text)


def test_each_motor_has_its_row_with_the_figures_of_the_summary(family, shown_family):
    rows = shown_family.rows("Each motor on the block")
    for motor, row in zip(family.document["family"], rows, strict=True):
        assert shown_family.words(row[0]) == motor["motor"]
        names = ("length_min", "length_max", "coupling_position", "journal_grip", "motor_grip", "shaft_gap", "torque")
        assert [number for number, _ in shown_family.figures(row)] == [motor[name] for name in names]


def test_links_lead_to_the_checks_of_each_motor(shown_family):
    links = {of.get("href")[1:] for of in shown_family.by_id["family"].iter() if of.get("href")}
    assert len(links) == 2
    assert links <= set(shown_family.by_id)


def test_constraints_name_their_motor(family, shown_family):
    motors = {constraint["motor"] for constraint in family.document["layout"]["constraints"]}
    assert motors == {motor["motor"] for motor in family.document["family"]}
    words = [shown_family.words(row[0]) for row in shown_family.rows("Constraints along the axis")]
    assert all(any(f", with {motor} " in word for motor in motors) for word in words)


def test_a_single_motor_has_no_such_section(contents, shown):
    assert "family" not in shown.by_id
    assert {constraint["motor"] for constraint in contents.document["layout"]["constraints"]} == {None}
