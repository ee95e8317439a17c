"""Added and removed volume against what one works out by hand."""

import math

import pytest

from tests.change.sides import SERVO_TEXT, WIDER, laid

pytestmark = pytest.mark.slow


def total(lumps):
    return sum(lump.volume for lump in lumps)


def test_a_bore_that_grows_takes_away_a_ring():
    """Pi / 4 * (72^2 - 70^2) * 4 mm, and at the mouth the chamfer of 0.5 mm on a diameter that is 2 mm larger.

    By Pappus' rule a chamfer c on a radius r takes c^2 / 2 * 2 pi (r + c / 3); from r to r + 1 that is pi c^2 more.
    """
    volumes = laid(SERVO_TEXT, WIDER).volumes
    ring = math.pi / 4 * (72**2 - 70**2) * 4 + math.pi * 0.5**2
    assert total(volumes.removed) == pytest.approx(ring, abs=1e-3)
    assert volumes.added == ()
    assert volumes.old - volumes.new == pytest.approx(ring, abs=1e-2)
    assert volumes.removed[0].box == pytest.approx((109.0, -36.5, 28.5, 113.0, 36.5, 101.5), abs=1e-5)
    back = laid(WIDER, SERVO_TEXT).volumes
    assert total(back.added) == pytest.approx(ring, abs=1e-3)
    assert back.removed == ()


def test_a_block_laid_on_itself_leaves_nothing():
    volumes = laid(SERVO_TEXT, SERVO_TEXT + "\n").volumes
    assert volumes.added == volumes.removed == ()
    assert volumes.old == volumes.new


def test_old_less_removed_and_with_added_is_new():
    volumes = laid(SERVO_TEXT, SERVO_TEXT.replace("servo-80", "servo-100")).volumes
    assert len(volumes.added) > 1
    assert len(volumes.removed) > 1
    assert volumes.old + total(volumes.added) - total(volumes.removed) == pytest.approx(volumes.new, rel=1e-7)
    assert [lump.volume for lump in volumes.added] == sorted((lump.volume for lump in volumes.added), reverse=True)
