"""Every cure is solved again by a method of the test's own, and the least bit less does not cure."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.errors import InfeasibleError
from blockgen.sizing.axial import LOWER, conflicts
from blockgen.sizing.cures import REMEDIES, describe, find_cures
from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec
from blockgen.spec.tables import MODELS
from tests.sizing.strategies import COMPLETE, changed, sized, toml
from tests.sizing.test_axial import BOUNDS, EXAMPLE, SMALL_BORE, facts

NODES = {"c": (0, 1), "d": (1, 2), "l": (0, 2)}
FLOORS = {"bearing_wall": 12.0, "motor_wall": 12.0}
SHORT = facts(motor__shaft_length=22.0)


def feasible(bounds, values):
    """Tell whether difference constraints hold together: no negative cycle, by repeated relaxation."""
    edges = []
    for bound in bounds:
        start, end = NODES[bound.kind[0]]
        value = bound.value(values)
        edges.append((end, start, -value) if bound.kind in LOWER else (start, end, value))
    at = [0.0, 0.0, 0.0]
    for _ in range(4):
        for start, end, weight in edges:
            at[end] = min(at[end], at[start] + weight)
    return all(at[end] <= at[start] + weight + 2e-5 for start, end, weight in edges)


def test_the_tests_own_method_knows_the_worked_example():
    assert feasible(BOUNDS, EXAMPLE)
    assert not feasible(BOUNDS, SHORT)


def fact(cure):
    """Return the fact that a cure changes; a spec has one grip_min for both shafts."""
    if cure.key == "coupling.grip_min":
        return "coupling.journal_grip_min" if "journal" in cure.kind else "coupling.motor_grip_min"
    return cure.key.removeprefix("block.") if cure.key.endswith("_wall") else cure.key


def together(cure):
    """Return the values that a cure of several changes names, by fact."""
    keys = {remedy.kind.format(longer=word): remedy.key for remedy in REMEDIES for word in ("longer", "shorter")}
    parts = [re.fullmatch(r"(.+): \S+ \S+ mm -> (\S+) mm \(\S+ mm\)", part) for part in cure.text.split("; and ")]
    return {keys[part[1]]: float(part[2]) for part in parts}


def check_cures(bounds, values, cures):
    """Assert that each cure cures, and that slightly less does not."""
    for cure in cures:
        if cure.after is None and not cure.changes:
            assert not cure.verified  # an access hole is no change of the spec
            assert feasible([b for b in bounds if not b.removable], values)
            continue
        assert cure.verified
        if cure.kind == "several changes together":
            assert feasible(bounds, values | together(cure)), cure.text
            continue
        key = fact(cure)
        assert cure.before == values[key]
        assert feasible(bounds, values | {key: cure.after}), cure.text
        back = 0.01 if cure.after < cure.before else -0.01
        assert not feasible(bounds, values | {key: cure.after + back}), cure.text


def test_cures_of_a_short_motor_shaft():
    cures = find_cures(BOUNDS, SHORT, FLOORS)
    check_cures(BOUNDS, SHORT, cures)
    by_key = {fact(c): c.after for c in cures}
    assert by_key["motor.shaft_length"] == pytest.approx(29.0)  # 65 <= d <= C + S - 14
    assert by_key["coupling.motor_grip_min"] == pytest.approx(7.0)
    assert "bearing_wall" not in by_key
    assert "motor_wall" not in by_key  # 7 mm less is below its floor


def test_cures_are_ranked_by_pain():
    cures = find_cures(BOUNDS, SHORT, FLOORS)
    assert len(cures) > 2
    assert [c.rank for c in cures] == sorted(c.rank for c in cures)


def test_two_cycles_are_cured_together():
    values = facts(bearing_wall=24.0, motor_wall=19.0)  # c_min 24 > 21 and d_min 69 > 66
    assert len([c for c in conflicts(BOUNDS, values) if len(c.bounds) == 2]) == 2
    cures = find_cures(BOUNDS, values, FLOORS)
    check_cures(BOUNDS, values, cures)
    assert "coupling.clamp_position" in {c.key for c in cures}
    assert any(c.kind.startswith("radial access hole") for c in cures)


def test_a_sized_wall_is_not_cured_below_its_floor():
    values = facts(bearing_wall=24.0)
    assert "bearing_wall" in {fact(c) for c in find_cures(BOUNDS, values, FLOORS)}
    assert "bearing_wall" not in {fact(c) for c in find_cures(BOUNDS, values, {"bearing_wall": 22.0})}


def test_an_access_hole_does_not_cure_a_small_bore():
    bounds = (*BOUNDS, SMALL_BORE)
    assert "coupling.clamp_access_radius" not in {c.key for c in find_cures(bounds, EXAMPLE, FLOORS)}


@settings(max_examples=60, deadline=None)
@given(
    st.fixed_dictionaries(
        {
            "screw.journal_reach": st.integers(25, 45),
            "motor.shaft_length": st.integers(16, 40),
            "coupling.length": st.integers(40, 60),
            "coupling.grip_max": st.integers(15, 22),
            "bearing.nut_reach": st.integers(5, 28),
            "bearing_wall": st.integers(12, 30),
            "motor_wall": st.integers(12, 30),
            "coupling.clamp_position": st.integers(4, 9),
        }
    )
)
def test_every_cure_of_random_layouts_cures(values):
    values = EXAMPLE | {key: float(value) for key, value in values.items()}
    bounds = (*BOUNDS, SMALL_BORE)
    if not feasible(bounds, values):
        check_cures(bounds, values, find_cures(bounds, values, FLOORS))


def test_two_independent_conflicts_are_cured_by_two_changes():
    values = facts(bearing__nut_reach=25.0, motor__shaft_length=22.0)
    cures = find_cures(BOUNDS, values, FLOORS)
    assert cures
    assert len(together(cures[0])) == 2
    check_cures(BOUNDS, values, cures)


def test_a_conflict_is_told_in_words_with_its_numbers():
    conflict = describe(conflicts(BOUNDS, SHORT)[0], SHORT)
    assert conflict.deficit == pytest.approx(7.0)
    assert "7.00 mm missing" in conflict.title
    assert "motor.shaft_length" in conflict.keys
    assert any("motor.shaft_length = 22 mm" in fact for fact in conflict.facts)
    assert len(conflict.facts) == 2


def infeasible(**changes):
    with pytest.raises(InfeasibleError, match="mm missing") as caught:
        sized(**changes)
    return caught.value


@pytest.mark.parametrize(
    "changes",
    [
        {"motor": {"shaft_length": 24}},
        {"screw": {"journal_reach": 36}},
        {"base": {"length_available": 90}},
        {"block": {"length": 120}},
        {"block": {"bearing_wall": 34}},
    ],
)
def test_a_cure_written_into_the_spec_gives_a_block(changes):
    cures = infeasible(**changes).cures
    assert cures
    tried = 0
    for cure in cures:
        if cure.after is None:
            continue
        table, name = cure.key.split(".")
        text = toml(changed(changed(COMPLETE, **changes), **{table: {name: cure.after}}))
        try:
            spec = parse_spec(text)
        except ValueError:
            continue  # no such part exists, such as a coupling shorter than its hubs
        assert size(spec).number("length") > 0, cure.text
        tried += 1
    assert tried


def test_remedies_name_each_fact_once():
    assert len({r.key for r in REMEDIES}) == len(REMEDIES)


def test_a_given_wall_may_be_made_thinner():
    cures = infeasible(block={"bearing_wall": 34}).cures
    assert any(c.key.endswith("bearing_wall") and c.after == pytest.approx(31.0) for c in cures)


def test_a_longer_journal_is_smooth_over_its_new_length():
    cures = infeasible(screw={"journal_reach": 30}).cures
    assert "screw.journal_reach" in {c.key for c in cures}


@pytest.mark.parametrize("changes", [{"screw": {"journal_reach": 36}}, {"block": {"bearing_wall": 34}}])
def test_a_cure_names_a_key_of_the_spec(changes):
    for cure in (c for c in infeasible(**changes).cures if c.key):
        table, name = cure.key.split(".")
        assert name in MODELS[table].model_fields, cure.key
