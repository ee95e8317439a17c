"""Holes of the base plate lie under those of the block."""

from tests.sizing.strategies import sized


def test_threads_lie_under_the_screws():
    plan = sized()
    above = [f.position[:2] for f in plan.features if f.group == "base_screws"]
    below = [f.position[:2] for f in plan.base_features]
    assert above == below
    assert {f.axis for f in plan.base_features} == {(0.0, 0.0, -1.0)}


def test_a_thin_plate_is_tapped_through_and_a_thick_one_blind():
    assert all(f.through for f in sized(base={"thickness": 15}).base_features)
    assert not any(f.through for f in sized(base={"thickness": 60}).base_features)


def test_a_through_thread_is_no_deeper_than_the_plate():
    for feature in sized(base={"thickness": 12}).base_features:
        assert feature.thread_depth <= 12
        assert feature.depth <= 12
