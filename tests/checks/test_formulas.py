"""Each check has its formula written down."""

import pytest

from blockgen.alignment.chain import align
from blockgen.checks import check
from blockgen.checks.formulas import formula_of
from tests.sizing.strategies import COMPLETE, REQUIRED, sized

PLANS = {
    "required": {"start": REQUIRED},
    "complete": {"start": COMPLETE},
    "tapped": {"motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}},
    "pocket": {"block": {"window_floor": 30, "relief": 1}, "base": {"dowels": True}},
    "below": {"base": {"screw_from": "below"}},
    "limits": {"base": {"length_available": 300, "width_available": 300, "height_limit": 300}},
    "keyed": {"motor": {"shaft_end": "keyed"}, "block": {"coating_thickness": 0.02}},
    "upright": {"job": {"gravity": "-x"}},
}


@pytest.mark.parametrize("name", PLANS)
def test_every_check_has_a_formula(name):
    plan = sized(**PLANS[name])
    found = check(plan, align(plan))
    assert found
    assert [f.id for f in found if not formula_of(f.id)] == []


def test_an_unknown_check_has_none():
    assert formula_of("no_such_check") == ""
