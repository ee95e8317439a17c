"""A seeded part of the random specs; ``python -m tests.random_specs.run`` tries as many as one likes."""

from collections import Counter

import pytest

from blockgen.spec.load import parse_spec
from tests.random_specs.generate import MATERIALS, spec, specs
from tests.random_specs.run import run, tried
from tests.sizing.strategies import toml


def test_the_same_seed_gives_the_same_specs():
    assert list(specs(3, 20)) == list(specs(3, 20))
    assert list(specs(3, 20)) != list(specs(4, 20))


def test_specs_are_valid_and_spread_over_the_range():
    drawn = list(specs(5, 400))
    for tables in drawn:
        parse_spec(toml(tables))
    flanges = [f for t in drawn for f in (t["motor"], t["bearing"])]
    sizes = [f["flange_size"] for f in flanges if isinstance(f.get("flange_size"), (int, float))]
    assert min(sizes) <= 40
    assert max(sizes) >= 200
    assert {t["block"].get("material") for t in drawn if "block" in t} >= set(MATERIALS)
    assert {t["motor"].get("fastening") for t in drawn} == {None, "tapped"}
    assert {f.get("bolt_count") for f in flanges} >= {2, 3, 4, 5, 6, 8}
    assert any(isinstance(t["base"]["shaft_height"], str) for t in drawn)


def test_what_is_refused_counts_as_a_fault():
    tables = next(specs(1, 1))
    tables["motor"]["flange_size"] = 1
    assert tried((0, tables), solids=0)[1] == "crashed"


@pytest.mark.slow
def test_random_specs_are_answered_or_built_as_planned():
    outcomes, faults = run(seed=20, count=300, solids=30)
    assert faults == {}
    assert outcomes == Counter(
        {"sized": outcomes["sized"], "built": outcomes["built"], "infeasible": outcomes["infeasible"]}
    )
    assert outcomes["built"] > 10


def test_one_spec_depends_on_its_dice_alone():
    import random

    assert spec(random.Random("a"), "N") == spec(random.Random("a"), "N")
