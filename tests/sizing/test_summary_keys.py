"""The dimensions of the summary."""

from blockgen.sizing.summary_keys import DIMENSIONS
from tests.sizing.strategies import sized


def test_each_key_stands_once():
    assert len(set(DIMENSIONS)) == len(DIMENSIONS)


def test_a_plan_shows_its_dimensions_in_that_order():
    shown = sized(base={"dowels": 6}).dimensions
    assert list(shown) == [key for key in DIMENSIONS if key in shown]
    assert "dowel_diameter" in shown
