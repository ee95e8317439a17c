"""From spec to plan as a whole."""

import json

import pytest

from blockgen.errors import InputError
from blockgen.sizing.size import plan_from, size
from blockgen.spec.load import parse_spec
from tests.sizing.strategies import COMPLETE, REQUIRED, changed, sized, toml

# The contract's list of dimension keys.
CONTRACT = (
    "length", "width", "height", "shaft_height", "bearing_wall", "motor_wall", "side_wall", "window_length",
    "window_width", "bearing_bore", "motor_bore", "bearing_bore_depth", "motor_bore_depth", "bearing_through_bore",
    "motor_through_bore", "shaft_gap", "motor_grip", "journal_grip", "coupling_position", "length_min", "length_max",
    "length_low", "length_high", "base_screw_length", "motor_thread_depth", "motor_drill_depth", "bearing_thread_depth",
    "bearing_drill_depth",
)  # fmt: skip
WAYS = {
    "usual": {},
    "tapped": {"motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}},
    "below": {"base": {"screw_from": "below"}},
    "across": {"block": {"window_axis": "y"}},
    "pocket": {"block": {"window_floor": 30}},
}


@pytest.mark.parametrize("way", WAYS)
def test_the_contract_s_dimensions_are_there(way):
    assert set(CONTRACT) <= set(sized(**WAYS[way]).dimensions)


def test_the_required_keys_give_a_block():
    plan = sized(REQUIRED)
    assert set(CONTRACT) <= set(plan.dimensions)
    assert len(plan.features) == 3 + 4 + 4 + 4


GIVEN = {"width": 130, "height": 115, "bearing_wall": 26, "motor_wall": 25, "window_width": 52, "length": 106,
         "window_corner_radius": 10}  # fmt: skip


@pytest.mark.parametrize("key", GIVEN)
def test_a_given_size_is_kept(key):
    plan = sized(block={key: GIVEN[key]})
    assert plan.number(key) == GIVEN[key]
    assert plan.records[key].origin == "given"


def test_all_given_sizes_are_kept_together():
    plan = sized(block=GIVEN)
    assert {key: plan.number(key) for key in GIVEN} == GIVEN


def test_the_length_lies_in_the_interval_and_the_parts_add_up():
    plan = sized()
    assert plan.number("length_min") <= plan.number("length_low") <= plan.number("length")
    assert plan.number("length") <= plan.number("length_high") <= plan.number("length_max")
    assert plan.number("length") == pytest.approx(
        plan.number("bearing_wall") + plan.number("window_length") + plan.number("motor_wall")
    )
    grips = plan.number("journal_grip") + plan.number("motor_grip") + plan.number("shaft_gap")
    assert grips == pytest.approx(plan.number("coupling.length"))


def test_order_of_keys_and_tables_makes_no_difference():
    turned = {table: dict(reversed(keys.items())) for table, keys in reversed(COMPLETE.items())}
    one, two = size(parse_spec(toml(COMPLETE))), size(parse_spec(toml(turned)))
    for name in ("features", "base_features", "annotations", "contributors", "fasteners", "ligaments", "notes", "body"):
        assert getattr(one, name) == getattr(two, name), name
    assert {k: r.value for k, r in one.records.items()} == {k: r.value for k, r in two.records.items()}


def test_units_make_no_difference():
    inches = changed(COMPLETE, base={"shaft_height": "2.5 in"}, coupling={"length": "6 cm"})
    mm = changed(COMPLETE, base={"shaft_height": 63.5}, coupling={"length": 60})
    assert sized(inches).features == sized(mm).features


def test_the_plan_is_plain_data():
    plan = sized()
    values = {key: record.value for key, record in plan.records.items()}
    assert json.loads(json.dumps(values))["length"] == plan.number("length")


def test_sizing_does_not_change_the_spec():
    spec = parse_spec(toml(COMPLETE))
    before = dict(spec.records)
    assert plan_from(spec.records) == plan_from(spec.records)
    assert dict(spec.records) == before


@pytest.mark.parametrize("way", WAYS)
def test_every_record_has_a_rule_and_every_reference_exists(way):
    plan = sized(**WAYS[way])
    for record in plan.records.values():
        assert record.rule or record.origin in {"given", "preset"}, record.key
        for given in record.inputs.values():
            assert given.ref in plan.records


def test_a_mirrored_pattern_gives_a_mirrored_block():
    points = [[36, 10], [-30, 22], [-10, -36]]
    mirrored = [[-y, z] for y, z in points]
    start = {"pilot_diameter": 50, "bolt_circle": None, "flange_size": 90}
    one = sized(motor={**start, "bolt_positions": points})
    two = sized(motor={**start, "bolt_positions": mirrored})
    assert one.body == two.body
    assert one.records["base_pattern"].value == two.records["base_pattern"].value


@pytest.mark.parametrize(
    ("change", "key"),
    [
        ({"block": {"bore_fit": "D10"}}, "bore_fit"),
        ({"motor": {"pilot_fit": "c11"}}, "pilot_fit"),
        ({"motor": {"pilot_fit": "h4"}}, "pilot_fit"),
        ({"motor": {"bolt_hole": 2.0}}, "bolt_hole"),
        ({"base": {"screw": "M22"}}, "screw"),
        ({"motor": {"bolt_hole": None, "bolt_thread": "M7"}}, "bolt_thread"),
    ],
)
def test_what_no_table_holds_is_an_input_error_that_names_its_key(change, key):
    with pytest.raises(InputError, match=key):
        sized(**change)


USUAL = {2.9: "M2.5", 3.0: "M2.5", 3.2: "M3", 3.4: "M3", 4.5: "M4", 5.5: "M5", 6.6: "M6", 7: "M6", 9: "M8", 11: "M10",
         13.5: "M12", 14: "M12"}  # fmt: skip


@pytest.mark.parametrize(("hole", "thread"), USUAL.items())
def test_usual_holes_have_their_usual_screws(hole, thread):
    plan = sized(
        motor={"bolt_hole": hole, "bolt_circle": 110, "flange_size": 140, "flange_thickness": 12, "shaft_length": 60},
        base={"shaft_height": 90},
    )
    assert plan.text("motor_thread") == thread


@pytest.mark.parametrize("hole", [4.0, 4.2, 20.0])
def test_a_hole_between_the_usual_screws_gives_one_of_them_or_an_input_error(hole):
    change = {"bolt_hole": hole, "bolt_circle": 110, "flange_size": 160, "shaft_length": 80, "flange_thickness": 12}
    try:
        plan = sized(motor=change, base={"shaft_height": 95})
    except InputError as error:
        told = str(error)
    else:
        told = "bolt_hole" if plan.number("motor_thread_diameter") < hole else "a screw that does not pass"
    assert "bolt_hole" in told


def test_a_problem_of_sizing_names_file_and_line():
    text = toml(changed(COMPLETE, base={"screw": "M64"}))
    spec = parse_spec(text, "axis.toml")
    line = next(i for i, row in enumerate(text.splitlines(), 1) if row.startswith("screw ="))
    with pytest.raises(InputError, match="M64") as caught:
        size(spec)
    assert [(p.file, p.line, p.key) for p in caught.value.problems] == [("axis.toml", line, "base.screw")]
