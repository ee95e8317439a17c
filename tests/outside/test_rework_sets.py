"""Rework against the algebra of sets.

For solids A (old) and B (new) the volumes obey |B - A| + |A and B| = |B| and |A - B| + |A and B| = |A| (additivity of
measure; any textbook of measure theory). The common part is asked of the kernel's intersection, another algorithm than
its difference. A block against itself has neither part.
"""

import pytest

from tests.change import blocks

pytestmark = pytest.mark.slow


@pytest.mark.parametrize("motor", [{"pilot_diameter": 75}, {"pilot_diameter": 60}])
def test_differences_and_common_part_add_up(motor):
    from blockgen.geometry.block import build_block
    from blockgen.geometry.difference import lacking, volume_in
    from blockgen.geometry.meeting import common_volume
    from blockgen.geometry.solid_part import solid_part

    first, second = build_block(blocks.old()), build_block(blocks.other(**motor))
    common = common_volume(solid_part("old", first.shape), solid_part("new", second.shape))
    added, removed = lacking(second.shape, first.shape), lacking(first.shape, second.shape)
    assert volume_in(added) + common == pytest.approx(second.volume, abs=0.05)
    assert volume_in(removed) + common == pytest.approx(first.volume, abs=0.05)


def test_a_block_less_itself_is_empty():
    from blockgen.geometry.difference import added_and_removed

    assert added_and_removed(blocks.old(), blocks.old()) == ((), ())
