"""The starter spec loads as it is, and an old spec takes new parts."""

import pytest

from blockgen.checks import check
from blockgen.errors import InputError
from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec
from blockgen.spec.presets import list_presets
from blockgen.spec.starter import starter_spec

PRESETS = list_presets()


def names(kind):
    return [p.name for p in PRESETS if p.kind == kind]


def test_the_starter_loads_and_is_short():
    text = starter_spec()
    live = [line for line in text.splitlines() if line and not line.startswith(("#", "["))]
    assert 15 <= len(live) <= 30
    assert all("#" in line for line in live if line != "schema = 1")
    assert parse_spec(text).records["motor.shaft_length"].value == 40.0


def test_the_starter_is_feasible():
    plan = size(parse_spec(starter_spec()))
    assert plan.number("length_high") - plan.number("length_low") >= 2.0


def test_every_commented_key_may_be_switched_on():
    lines = [line.removeprefix("# ") if " = " in line.split("  #")[0] else line for line in starter_spec().splitlines()]
    lines.remove('# Quantities are texts with a unit ("40 mm", "2.875 in"); bare numbers are mm, deg, N, N*m, kg.')
    assert parse_spec("\n".join(lines)).records["screw.thrust"].value == 2000.0


@pytest.mark.parametrize("motor", names("motor"))
@pytest.mark.parametrize("bearing", names("bearing"))
def test_it_loads_with_every_pair_of_presets(motor, bearing):
    spec = parse_spec(starter_spec(motor, bearing, "bellows-45"))
    assert spec.records["motor.shaft_length"].origin == "preset"
    assert [n for n, _ in spec.preset_files] == sorted([motor, bearing, "bellows-45"])


def feasible(**parts):
    plan = size(parse_spec(starter_spec(**parts)))
    assert plan.records["length_low"].value is not None
    assert [f.id for f in check(plan) if f.verdict == "fail"] == []


@pytest.mark.parametrize("preset", [p for p in PRESETS if p.kind != "material"], ids=lambda p: p.name)
def test_it_is_feasible_with_each_preset_alone(preset):
    feasible(**{preset.kind: preset.name})


@pytest.mark.parametrize("bearing", names("bearing"))
@pytest.mark.parametrize("motor", ["nema-23", "servo-80", "servo-180"])
def test_it_is_feasible_with_a_motor_and_any_bearing_unit(motor, bearing):
    feasible(motor=motor, bearing=bearing)


def test_it_says_that_its_numbers_are_examples():
    assert "invented examples" in starter_spec(motor="servo-80")


def test_a_preset_of_another_kind_is_refused():
    with pytest.raises(InputError, match='"bellows-45", a preset of kind coupling'):
        starter_spec(motor="bellows-45")


def test_an_unknown_preset_is_refused():
    with pytest.raises(InputError, match="did you mean"):
        starter_spec(motor="servo-8")
