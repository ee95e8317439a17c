"""Facts of the trade: common practice, no source. What a fitter or designer would expect of such a block."""

import pytest

from blockgen.checks import check
from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec
from tests.sizing.strategies import COMPLETE, changed, sized, toml


@pytest.mark.parametrize("material", ["EN AW-6082-T6", "S355J2"])
def test_m10_base_screws_ask_for_side_walls_of_20_to_25_mm(material):
    """Common practice, no source; a washer under the head takes a little more."""
    plan = sized(base={"screw": "M10"}, block={"material": material})
    washer = plan.number("base_counterbore_diameter") - 18 if plan.text("base_washer") else 0
    assert 20 <= plan.number("side_wall_least") - washer <= 25


def test_a_7_mm_clearance_hole_means_m6():
    """Common practice, no source."""
    plan = sized(motor={"bolt_hole": 7.0})
    assert plan.text("motor_thread") == "M6"


@pytest.mark.parametrize(("shorter", "verdict"), [(0.0, "fail"), (2.0, "pass"), (3.0, "pass"), (5.0, "fail")])
def test_the_bearing_seat_is_2_to_3_mm_shorter_than_the_stack(shorter, verdict):
    """Common practice, no source."""
    plan = sized(bearing={"stack_length": 40}, screw={"seat_length": 40 - shorter})
    assert next(f for f in check(plan) if f.id == "stack_on_seat").verdict == verdict


@pytest.mark.parametrize("pilot", [20, 24, 30])
def test_the_wall_of_a_pilot_bore_is_about_as_thick_as_the_bearing_pilot_is_long(pilot):
    """Common practice, no source: in steel, where no thread asks for more."""
    roomy = {"screw": {"journal_reach": 70}, "coupling": {"outer_diameter": 30, "bore_max": 20},
             "bearing": {"pilot_length": pilot, "nut_reach": pilot + 6}, "block": {"material": "S355J2"}}  # fmt: skip
    plan = sized(**roomy)
    assert pilot <= plan.number("bearing_wall") <= pilot + 3


def test_a_rigid_coupling_wants_the_shafts_within_a_quarter_of_a_millimetre(tmp_path):
    """Common practice, no source: 0.25 mm is the most that any rigid coupling of this class is given."""
    tables = changed(COMPLETE, screw={"journal_reach": 42})
    tables["coupling"] = {"preset": "rigid-30"}
    plan = size(parse_spec(toml(tables), preset_folder=tmp_path))
    assert 0 < plan.number("coupling.allow_parallel") <= 0.25
