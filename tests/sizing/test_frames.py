"""Named frames sit where the mating parts sit."""

import pytest

from tests.sizing.strategies import sized


def test_frames():
    plan = sized()
    frames = plan.frames
    assert frames["bearing_seat"].origin == (0.0, 0.0, 65.0)
    assert frames["motor_seat"].origin == (plan.number("length"), 0.0, 65.0)
    assert frames["base"].origin == (0.0, 0.0, 0.0)
    middle = plan.number("coupling_position") + 30
    assert frames["coupling_centre"].origin == pytest.approx((middle, 0.0, 65.0))


def test_axes_are_square_unit_vectors():
    for frame in sized().frames.values():
        assert sum(a * b for a, b in zip(frame.x, frame.z, strict=True)) == 0
        assert sum(a * a for a in frame.x) == sum(a * a for a in frame.z) == 1
