"""Records of what solids showed."""

import pytest

from blockgen.evidence.clearance_limits import LIMITS, limit
from blockgen.evidence.clearances import Clearances, Pair


def test_what_is_planned_is_not_counted():
    assert Pair("a", "b", "clash", 0.0, 12.0, 10.0).beyond == 2.0
    assert Pair("a", "b", "engaged", 0.0, 8.0, 10.0).beyond == 0.0
    assert Pair("a", "b", "clash", 0.0, 12.0).beyond == 12.0


def test_the_greatest_clash_comes_first():
    pairs = (Pair("a", "b", "clash", 0.0, 1.0), Pair("a", "c", "clear", 3.0, 0.0), Pair("b", "c", "clash", 0.0, 5.0))
    assert [pair.name for pair in Clearances(pairs, (), (), 0).clashes] == ["b and c", "a and b"]


@pytest.mark.parametrize("key", LIMITS)
def test_each_limit_has_reason_and_source(key):
    record = LIMITS[key]
    assert record.rule
    assert record.source
    assert record.origin == "assumed"
    assert limit(key) == record.value
