import pytest

from blockgen.making.lifting import CAUTION, lifting
from blockgen.making.stock import stock
from tests.making.ways import WAYS
from tests.sizing.strategies import sized


def of(**changes):
    plan = sized(**changes)
    return lifting(plan, stock(plan))


def test_light_blocks_are_lifted_by_hand():
    loads, records = of()
    assert [load.what for load in loads] == ["stock", "block"]
    assert not any(load.hoist for load in loads)
    assert records == ()


def test_a_heavy_block_takes_a_hoist_and_its_lifting_threads():
    loads, _ = of(**WAYS["heavy"])
    assert all(load.hoist for load in loads)
    assert "2 M8 threads" in loads[1].remark


def test_motor_and_coupling_are_added_where_their_masses_are_known():
    loads, (record,) = of(motor={"mass": 14}, coupling={"mass": 0.5})
    assert loads[2].what == "block with motor and coupling"
    assert loads[2].mass == pytest.approx(loads[1].mass + 14.5)
    assert loads[2].hoist
    assert record.inputs["motor.mass"].ref == "motor.mass"


def test_a_coupling_alone_is_no_load_of_its_own():
    assert len(of(coupling={"mass": 0.5})[0]) == 2


def test_the_caution_leaves_the_last_word_to_local_rules():
    assert "local rules" in CAUTION
