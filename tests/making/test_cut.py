import pytest

from blockgen.making.cut import groups
from tests.making.ways import WAYS
from tests.sizing.strategies import sized


@pytest.mark.parametrize("way", WAYS)
def test_groups_hold_every_feature_once_under_names_that_differ(way):
    plan = sized(**WAYS[way])
    found = groups(plan)
    assert sum(group.count for group in found) == len(plan.features)
    assert len({group.name for group in found}) == len(found)


def test_setup_follows_the_face():
    found = {group.name: group.end for group in groups(sized(base={"screw_from": "below"}))}
    assert found["base_threads"] == "base"
    assert found["bearing_threads"] == found["motor_threads"] == "ends"
    assert {g.name: g.end for g in groups(sized())}["base_screws"] == "top"


def test_count_is_said_only_where_there_are_several():
    times = {group.name: group.times for group in groups(sized())}
    assert (times["window"], times["base_screws"]) == ("", "4 x ")
