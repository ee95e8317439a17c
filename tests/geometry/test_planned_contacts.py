"""Planned contacts come from the plan alone."""

import math

import pytest

from tests.geometry.assemblies import WAYS, assembly, with_sizes

pytestmark = pytest.mark.slow


def contacts(way="usual", plan=None):
    from blockgen.geometry.planned_contacts import planned_contacts

    made = assembly(way)
    return planned_contacts(plan or made.plan, made.parts)


@pytest.mark.parametrize("way", WAYS)
def test_each_screw_has_one_seat_and_one_thread(way):
    found = contacts(way)
    for part in assembly(way).parts:
        if "_screw_" in part.id:
            mine = [contact for pair, contact in found.items() if part.id in pair]
            seats = [contact for contact in mine if contact.why.startswith("head")]
            threads = [contact for contact in mine if contact.overlaps]
            assert (len(seats), len(threads)) == (1, 1), part.id


def test_what_a_part_is_held_in_is_what_it_may_overlap():
    for way in WAYS:
        held = {frozenset((part.id, other)) for part in assembly(way).parts for other in part.held_in}
        assert held == {pair for pair, contact in contacts(way).items() if contact.overlaps}


def test_a_thread_overlaps_by_the_ring_between_tap_drill_and_nominal_diameter():
    plan = assembly().plan
    engaged = plan.number("bearing_engagement")
    hole = plan.feature("bearing_thread_1")
    mouth = max(p.end for p in hole.profile if p.part == "mouth_chamfer")
    ring = math.pi / 4 * (6.0**2 - hole.diameter**2)
    found = contacts()[frozenset(("bearing_screw_1", "block"))].volume
    assert ring * (engaged - mouth) < found < ring * engaged


def test_no_more_than_the_full_thread_is_planned():
    plan = assembly().plan
    longer = with_sizes(plan, bearing_screw_length=plan.number("bearing_screw_length") + 10)
    hole = plan.feature("bearing_thread_1")
    most = math.pi / 4 * (6.0**2 - hole.diameter**2) * plan.number("bearing_thread_depth")
    assert contacts(plan=longer)[frozenset(("bearing_screw_1", "block"))].volume < most


def test_nothing_is_planned_between_coupling_and_block():
    assert frozenset(("coupling", "block")) not in contacts()
