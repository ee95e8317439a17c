"""A preliminary design: what it waits for is told, and every link has its place."""

from pathlib import Path

import pytest

from blockgen.outputs.report.page import page
from tests.outputs.report.conftest import contents_of
from tests.outputs.report.reading import Page

REQUIRED = Path(__file__).resolve().parents[2] / "required_keys.toml"


@pytest.fixture(scope="module")
def preliminary():
    return contents_of(REQUIRED)


@pytest.fixture(scope="module")
def shown_preliminary(preliminary):
    return Page(page(preliminary))


def test_every_link_has_its_place(shown_preliminary):
    links = {of.get("href")[1:] for of in shown_preliminary.all("a") if of.get("href").startswith("#")}
    assert links <= set(shown_preliminary.by_id)


def test_what_waits_and_is_no_check_is_told_in_words(preliminary, shown_preliminary):
    assert preliminary.document["status"].startswith("PRELIMINARY")
    words = [shown_preliminary.words(row[2]) for row in shown_preliminary.rows("Values to ask for")]
    assert "status of the design (assumed geometry that mates)" in words


def test_the_top_counts_what_is_open(preliminary, shown_preliminary):
    document = preliminary.document
    mating = sum(one["mates"] for one in document["assumptions"])
    words = shown_preliminary.words(shown_preliminary.by_id["first"])
    assert f"What is open: {mating} values assumed for what mates, " in words
    assert f"{len(document['missing'])} values to ask for" in words


def test_an_assumed_material_is_marked_at_the_top(preliminary, shown_preliminary):
    assert preliminary.document["inputs"]["block.material"]["origin"] == "assumed"
    assert f"{preliminary.document['mass']['material']} (assumed)" in shown_preliminary.words(
        shown_preliminary.by_id["first"]
    )
