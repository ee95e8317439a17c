"""Stripping: the weaker thread decides."""

from dataclasses import replace

import pytest

from blockgen.checks.strip import strip
from tests.sizing.strategies import sized

PLAN = sized(base={"screw": "M10", "screw_count": 4})
BASE = next(f for f in PLAN.fasteners if f.where == "base")


def test_engagement_is_linear_and_load_divides():
    plain = strip(PLAN, BASE, "base", "base", 0.0)
    longer = strip(PLAN, replace(BASE, engagement=2 * BASE.engagement), "base", "base", 0.0)
    loaded = strip(PLAN, BASE, "base", "base", BASE.preload)
    assert longer.value == pytest.approx(2 * plain.value, rel=1e-3)
    assert loaded.value == pytest.approx(plain.value / 2, rel=1e-3)


def test_a_softer_part_strips_first():
    in_steel, in_aluminium = (strip(PLAN, BASE, "base", part, 0.0).value for part in ("base", "block"))
    assert in_aluminium < in_steel


def test_a_short_engagement_fails():
    assert strip(PLAN, replace(BASE, engagement=3.0), "base", "base", 0.0).verdict == "fail"


def test_without_an_engagement_it_is_not_assessed():
    bearing = next(f for f in PLAN.fasteners if f.where == "bearing_flange")
    finding = strip(PLAN, replace(bearing, engagement=None), "bearing", "block", 0.0)
    assert finding.missing == ("bearing.flange_thickness",)
