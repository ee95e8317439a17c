"""The block grows where the base screws would not fit otherwise, and says so."""

from tests.sizing.strategies import sized


def test_a_block_is_widened_for_its_screws_and_says_so():
    plan = sized(base={"screw_count": 6}, block={"window_width": 51})
    assert plan.number("width") > plan.number("width_least") - 1
    assert any("mm wide so that the base screws" in note for note in plan.notes)


def test_a_wide_block_is_not_widened():
    plan = sized(block={"width": 140})
    assert plan.number("width") == 140
    assert not any("mm wide so that" in note for note in plan.notes)


def test_screws_stand_beside_a_small_bearing_flange():
    plan = sized()
    for screw in (f for f in plan.features if f.group == "base_screws"):
        assert abs(screw.position[1]) > plan.number("window_width") / 2 + plan.number("base_counterbore_diameter") / 2
