"""Tests of what one block has and another one lacks, against sums on paper."""

import math

import pytest

from blockgen.mechanics.volume import frustum
from tests.change import blocks

pytestmark = pytest.mark.slow


def box(*corners):
    from blockgen.geometry.stand_ins.shapes import box as make

    return make(corners[:3], corners[3:])


def test_a_solid_lacks_nothing_in_itself():
    from blockgen.geometry.difference import lacking

    assert lacking(box(0.0, 0.0, 0.0, 10.0, 10.0, 10.0), box(0.0, 0.0, 0.0, 10.0, 10.0, 10.0)) == ()


def test_pieces_come_greatest_first_with_volume_and_box():
    from blockgen.geometry.difference import lacking, volume_in

    lumps = lacking(box(0.0, 0.0, 0.0, 10.0, 10.0, 10.0), box(2.0, -1.0, -1.0, 7.0, 11.0, 11.0))
    assert [lump.volume for lump in lumps] == pytest.approx([300.0, 200.0])
    assert lumps[0].box == pytest.approx((7.0, 0.0, 0.0, 10.0, 10.0, 10.0))
    assert volume_in(lumps) == pytest.approx(500.0)


def test_a_moved_solid_lacks_what_it_left():
    from blockgen.geometry.difference import lacking, moved, volume_in

    cube = box(0.0, 0.0, 0.0, 10.0, 10.0, 10.0)
    assert volume_in(lacking(cube, moved(cube, 3.0))) == pytest.approx(300.0)


def test_a_pocketed_block_against_its_old_self():
    from blockgen.geometry.difference import added_and_removed, volume_in

    added, removed = added_and_removed(blocks.old(), blocks.other(pilot_diameter=74))
    assert added == ()
    mouths = frustum(37.5, 37.0, 0.5) - frustum(35.5, 35.0, 0.5)
    rest = math.pi * (37**2 - 35**2) * 3.5
    assert volume_in(removed) == pytest.approx(mouths + rest, abs=0.01)
