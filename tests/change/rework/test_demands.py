"""Tests of what is asked of surfaces that no cut makes anew: closer limits, a coating."""

import pytest

from blockgen.change.rework.rework import rework
from blockgen.change.rework.rows import verdict
from tests.change import blocks
from tests.sizing.strategies import sized


def reworked(**block):
    return rework(blocks.old(), sized(block=block), prove=False)


def words(found):
    return [operation.text for operation in found.operations]


@pytest.mark.parametrize(
    ("key", "value", "told"),
    [
        ("coaxiality", 0.005, "coaxiality of the motor bore diam 0.005 (made to diam 0.02)"),
        ("base_flatness", 0.005, "flatness of the base 0.005 (made to 0.02)"),
        ("height_tolerance", 0.005, "block shaft height 65 \u00b10.005 (made to 65 \u00b10.02)"),
        ("length_tolerance", 0.02, "block length 108 \u00b10.02 (made to 108 \u00b10.1)"),
    ],
)
def test_a_closer_limit_on_a_surface_that_is_not_cut_must_be_measured(key, value, told):
    found = reworked(**{key: value})
    assert found.feasible
    assert [operation.id for operation in found.operations] == ["measure"]
    assert told in found.operations[0].text
    assert "without being cut" in verdict(found)
    assert (found.setup, found.obsolete) == ((), ())


def test_a_wider_limit_asks_for_nothing():
    assert reworked(coaxiality=0.05).attempt.how == "nothing"


def test_a_limit_is_not_measured_where_its_surface_is_cut():
    new = sized(motor={"pilot_diameter": 75}, block={"coaxiality": 0.005})
    assert not any("coaxiality" in text for text in words(rework(blocks.old(), new, prove=False)))


def test_a_limit_of_length_is_not_measured_where_the_end_is_faced():
    new = sized(motor={"shaft_length": 38}, block={"length_tolerance": 0.02})
    assert not any("block length" in text for text in words(rework(blocks.old(), new, prove=False)))


def test_a_coating_that_the_block_lacks_is_an_operation():
    found = reworked(finish="anodised", coating_thickness=0.02)
    assert words(found) == ["coat: anodised, 0.02 mm thick; mask bores, seats, base face, threads and dowel holes"]
    assert found.setup == ()


def test_a_coating_that_is_there_already_is_none():
    coated = sized(block={"finish": "anodised"})
    assert rework(coated, coated, prove=False).operations == ()


def test_a_coating_that_is_cut_through_is_stripped_first_and_put_on_last():
    old = sized(block={"finish": "anodised"})
    new = sized(block={"finish": "anodised"}, motor={"pilot_diameter": 75})
    found = rework(old, new, prove=False)
    assert found.operations[-1].id == "coat"
    assert any("strip it first" in text for text in found.setup)


def test_bores_of_one_diameter_and_another_fit_are_bored_and_told_so():
    """H7 to G7: the nominal size is the same, the limits are not."""
    found = reworked(bore_fit="G7")
    assert "bore the motor seat to 70 G7 (+0.040/+0.010), depth 4" in words(found)
    assert any("Both bores are cut" in text for text in found.setup)
