"""Random families: one block that every motor sees alike, or words; few here, as many as one likes by hand."""

from dataclasses import replace

import pytest

from blockgen.alignment.chain import align
from blockgen.alignment.heat import expansions_of
from blockgen.change.family import told_of_family
from blockgen.checks import check
from blockgen.errors import FamilyError, InputError
from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec
from tests.random_specs.families import families, text_of
from tests.random_specs.verify import built

# One hole in inches and in mm: less than this apart, mm.
NEAR = 0.01


def made(seed, count):
    """Yield the plans of random families, and the least set of blocks where one block cannot take them."""
    for tables, further in families(seed, count):
        try:
            spec = parse_spec(text_of(tables, further))
        except InputError:
            continue  # two keys that contradict one another were drawn
        try:
            with told_of_family(spec):
                yield size(spec)
        except FamilyError as error:
            yield error


def block(plan):
    """Return the block without the names of its holes, places to what inches round to."""
    own = [f for f in plan.features if f.face == "motor_seat" and f.kind != "bore"]
    holes = sorted((f.diameter, f.depth, f.thread or "") for f in own)
    rest = [replace(f, keys={}) for f in plan.features if f not in own]
    return plan.body, holes, rest, plan.base_features


def nearest(feature, plan):
    """Return how far the nearest hole of a plan's motor seat is from a feature, mm."""
    apart = [
        max(abs(a - b) for a, b in zip(feature.position, f.position, strict=True))
        for f in plan.features
        if f.face == "motor_seat" and f.kind == feature.kind
    ]
    return min(apart)


def test_the_same_seed_gives_the_same_families():
    assert list(families(3, 20)) == list(families(3, 20))
    assert {len(further) for _, further in families(3, 60)} == {1, 2, 3, 4, 5}


@pytest.mark.slow
def test_random_families_are_one_block_for_every_motor_or_told_why_not():
    outcomes = list(made(seed=20, count=150))
    plans = [outcome for outcome in outcomes if not isinstance(outcome, FamilyError)]
    assert len(plans) > 30
    assert all(error.splits for error in outcomes if isinstance(error, FamilyError))
    for plan in plans:
        assert all(block(other) == block(plan) for other in plan.others)
        assert all(nearest(f, other) < NEAR for other in plan.others for f in plan.features if f.face == "motor_seat")
        codes = [finding.id for finding in check(plan, align(plan, expansions_of(plan)))]
        assert len(set(codes)) == len(codes)
        told = [of for record in plan.records.values() for of in record.inputs.values() if of.ref]
        assert all(plan.records[of.ref].value == of.value for of in told)


@pytest.mark.slow
def test_the_solid_of_a_random_family_is_one_and_has_the_holes_and_walls_of_all():
    plans = (plan for plan in made(seed=9, count=80) if not isinstance(plan, FamilyError))
    further = [plan for plan in plans if any(f.group.startswith("motor_2_") for f in plan.features)]
    assert len(further) > 4
    for plan in further[:8]:
        assert built(plan) == []
