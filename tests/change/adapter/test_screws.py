"""Tests of the screws of a plate, lengths by hand from the usual ones: M8 comes 16, 20, 25, 30 long."""

import pytest

from blockgen.change.adapter.holes import Group
from blockgen.change.adapter.plate import least_thickness
from blockgen.change.adapter.screws import Joint, Screws
from blockgen.standards.threads import thread

UNKNOWN = Joint("adapter_to_block", Group("block_screws", thread("M6"), ((0.0, 1.0),), True), None, False, 0, 0, None)


def motor(flange=10.0, least=8.0):
    """Return M8 through a flange into the plate."""
    group = Group("motor_screws", thread("M8"), ((0.0, 1.0),), True)
    return Joint("motor_to_adapter", group, flange, False, least, 0.0, None)


def block(sunk=8.5, least=12.0, depth=14.0):
    """Return M8 through the plate into the block, heads sunk."""
    group = Group("block_screws", thread("M8"), ((0.0, 1.0),), False)
    return Joint("adapter_to_block", group, -sunk, True, least, depth, None)


@pytest.mark.parametrize(("thickness", "length"), [(9.5, None), (10.0, 20.0), (18.0, 20.0)])
def test_a_screw_into_the_plate_reaches_least_engagement_and_not_through(thickness, length):
    """Flange 10 and least engagement 8: from 18 to 10 plus the plate."""
    assert motor().length(thickness) == length


@pytest.mark.parametrize(
    ("thickness", "length", "engaged"), [(12.5, 16.0, 12.0), (13.0, None, None), (15.0, 20.0, 13.5)]
)
def test_a_screw_through_the_plate_reaches_least_engagement_and_not_the_bottom(thickness, length, engaged):
    """What is left under the head is the plate less 8.5; from 12 to 14 mm lie in the thread."""
    made = block().fastener(thickness)
    assert (made.length, made.engagement) == (length, engaged)


def test_a_plate_is_made_thicker_until_its_screws_exist():
    assert least_thickness(Screws((UNKNOWN, motor())), 9.5, 12.0, 0.5) == 10.0


def test_where_no_thickness_has_its_screws_the_least_is_taken_and_told():
    screws = Screws((UNKNOWN, motor()))
    assert least_thickness(screws, 9.0, 9.5, 0.5) == 9.0
    assert list(screws.missing(9.0)) == ["motor screws"]


def test_a_flange_of_unknown_thickness_hinders_nothing():
    assert Screws((UNKNOWN, UNKNOWN)).are_made(9.0)


def test_no_room_gives_no_thickness():
    assert least_thickness(Screws((UNKNOWN, UNKNOWN)), 9.0, 8.5, 0.5) is None
