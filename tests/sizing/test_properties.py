"""Rules that hold for every valid spec, over a wide range of random ones."""

import math

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from blockgen.checks import check
from blockgen.errors import InfeasibleError
from blockgen.mechanics.ligaments import least_wall, wall_to_face
from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec
from tests.sizing.strategies import changed, sized_or_left, steps, tables, toml

USUAL = settings(max_examples=60, derandomize=True, deadline=None, suppress_health_check=list(HealthCheck))
FEW = settings(max_examples=20, derandomize=True, deadline=None, suppress_health_check=list(HealthCheck))
FACES = ("bearing_seat", "motor_seat", "base", "top", "side_plus_y", "side_minus_y")


@USUAL
@given(tables())
def test_a_spec_gives_a_plan_or_says_why_none_exists(spec):
    outcome = outcome_of(spec)
    if isinstance(outcome, InfeasibleError):
        assert outcome.conflicts
        assert all(c.deficit > 0 and c.facts and c.keys for c in outcome.conflicts)
    else:
        assert {f.verdict for f in check(outcome)} <= {"pass", "warn", "fail", "not_assessed"}


def outcome_of(spec):
    """Return the plan, or the error that says why there is none; any other error is a fault."""
    try:
        return size(parse_spec(toml(spec)))
    except InfeasibleError as error:
        return error


@USUAL
@given(tables())
def test_seat_holes_stand_on_the_axes_of_the_mating_parts(spec):
    plan = sized_or_left(spec)
    height = spec["base"]["shaft_height"]
    for end, name in (("motor", "motor"), ("bearing", "bearing")):
        found = [f for f in plan.features if f.face == f"{end}_seat" and f.kind != "bore"]
        places = expected(spec[name])
        assert len(found) == len(places)
        for feature, (y, z) in zip(found, places, strict=True):
            assert math.dist(feature.position[1:], (y, height + z)) < 1e-6


def expected(flange):
    """Return hole places (y, z) of a flange of the strategy, in order."""
    if "bolt_positions" in flange:
        return flange["bolt_positions"]
    if "bolt_spacing_y" in flange:
        y, z = flange["bolt_spacing_y"] / 2, flange["bolt_spacing_z"] / 2
        return [(y, z), (-y, z), (-y, -z), (y, -z)]
    count, start = flange["bolt_count"], flange["bolt_angle"]
    turns = [math.radians(start + i * 360 / count) for i in range(count)]
    return [(flange["bolt_circle"] / 2 * math.cos(a), flange["bolt_circle"] / 2 * math.sin(a)) for a in turns]


@USUAL
@given(tables())
def test_base_screws_and_dowels_stand_clear(spec):
    plan = sized_or_left(spec)
    failed = {f.title for f in check(plan) if f.verdict == "fail"}
    upright = [f for f in plan.features if f.group in {"base_screws", "base_threads", "dowels", "lifting_threads"}]
    for feature in upright:
        for other in plan.features:
            if other is feature or other.id in feature.opens_into or feature.id in other.opens_into:
                continue
            wall = least_wall(feature, other)
            told = any(feature.id in title or other.id in title for title in failed)
            assert wall >= 2.4 or told, (feature.id, other.id, wall)


@USUAL
@given(tables())
def test_no_cavity_reaches_outside_in_silence(spec):
    plan = sized_or_left(spec)
    failed = {f.title for f in check(plan) if f.verdict == "fail"}
    for feature in plan.features:
        for face in FACES:
            if face != feature.face and face not in feature.opens_into:
                told = any(feature.id in title and face in title for title in failed)
                assert wall_to_face(feature, plan.body, face) > 0 or told, (feature.id, face)


@USUAL
@given(tables())
def test_flanges_lie_wholly_on_their_seats(spec):
    plan = sized_or_left(spec)
    edge = max(plan.body.edge_chamfer, plan.body.outer_fillet)
    shaft = spec["base"]["shaft_height"]
    for end in ("motor", "bearing"):
        flange = spec[end]
        size_ = flange.get("flange_size")
        half_y, half_z = (flange.get(k, size_) / 2 for k in ("flange_width", "flange_height"))
        assert half_y + edge < plan.body.width / 2
        assert shaft + half_z + plan.body.edge_chamfer < plan.body.height


@USUAL
@given(tables())
def test_the_coupling_sits_as_the_layout_asks(spec):
    plan = sized_or_left(spec)
    number, coupling = plan.number, spec["coupling"]
    start, end = number("coupling_position"), number("coupling_position") + coupling["length"]
    assert start >= spec["bearing"]["nut_reach"] + 2 - 1e-6
    assert end <= number("length") - spec["motor"]["pilot_length"] - 2 + 1e-6
    assert number("shaft_gap") >= coupling["gap_min"] - 1e-6
    for grip, least in (("journal_grip", "journal_grip_min"), ("motor_grip", "motor_grip_min")):
        assert number(f"coupling.{least}") - 1e-6 <= number(grip) <= number("coupling.grip_max") + 1e-6


@USUAL
@given(tables())
def test_the_graph_of_inputs_is_whole_and_has_no_circle(spec):
    plan = sized_or_left(spec)
    done: set[str] = set()
    for record in plan.records.values():
        assert record.rule or record.origin in {"given", "preset"}, record.key
        for given_ in record.inputs.values():
            assert given_.ref in plan.records
    waiting = {key: {i.ref for i in r.inputs.values()} for key, r in plan.records.items()}
    while waiting:
        free = [key for key, refs in waiting.items() if refs <= done]
        assert free, sorted(waiting)[:5]
        done.update(free)
        for key in free:
            del waiting[key]


@FEW
@given(tables(), steps(1, 20))
def test_a_higher_shaft_makes_a_higher_block(spec, more):
    low = sized_or_left(spec)
    high = sized_or_left(changed(spec, base={"shaft_height": spec["base"]["shaft_height"] + more}))
    assert high.number("height") >= low.number("height")


@FEW
@given(tables(), steps(1, 6))
def test_a_thicker_pilot_never_makes_a_shallower_bore(spec, more):
    short = sized_or_left(changed(spec, block={"motor_wall": 30}))
    longer = changed(spec, block={"motor_wall": 30}, motor={"pilot_length": spec["motor"]["pilot_length"] + more})
    assert sized_or_left(longer).number("motor_bore_depth") >= short.number("motor_bore_depth")


@FEW
@given(tables(), st.sampled_from(("10.9", "12.9")))
def test_a_stronger_screw_never_asks_for_less_thread(spec, grade):
    plain = sized_or_left(spec)
    strong = sized_or_left(changed(spec, base={"property_class": grade, "screw": plain.text("base_screw")}))
    assert strong.number("base_engagement_least") >= plain.number("base_engagement_least")


@FEW
@given(tables())
def test_more_strip_safety_never_asks_for_less_thread(spec):
    plain = sized_or_left(changed(spec, limits={"strip_safety": 1.0}))
    safer = sized_or_left(changed(spec, limits={"strip_safety": 1.6}))
    for end in ("bearing", "motor"):
        before, after = (p.records[f"{end}_engagement_least"].value for p in (plain, safer))
        assert before is None or after >= before


@FEW
@given(tables())
def test_what_was_sized_can_be_given(spec):
    plan = sized_or_left(spec)
    sizes = {
        key: plan.number(key) for key in ("length", "bearing_wall", "motor_wall", "window_width", "width", "height")
    }
    again = sized_or_left(changed(spec, block=sizes))
    assert {key: again.number(key) for key in sizes} == sizes
    assert again.records["base_pattern"].value == plan.records["base_pattern"].value


@FEW
@given(tables())
def test_order_of_keys_makes_no_difference(spec):
    plan = sized_or_left(spec)
    turned = {name: dict(reversed(keys.items())) for name, keys in reversed(spec.items())}
    again = size(parse_spec(toml(turned)))
    assert again.features == plan.features
    assert again.annotations == plan.annotations
