"""Keys that are called unused decide nothing, and all others stand where sizes, checks or outputs are made."""

import re
from dataclasses import replace
from pathlib import Path

import pytest

import blockgen
from blockgen import check, load_spec
from blockgen.record import Record
from blockgen.sizing.size import plan_from
from blockgen.spec.keys import key_table
from blockgen.spec.not_used import given_not_used, is_used
from blockgen.spec.starter import starter_spec

ROOT = Path(blockgen.__file__).parent
DEMO = ROOT.parent / "presets" / "examples" / "spray_carriage_servo.toml"
TABLE = {info.key: info for info in key_table()}
UNUSED = [key for key in TABLE if not is_used(key)]
# What names, describes or finds a thing and is no figure.
WORDS = {"preset", "name", "model", "author", "project", "title", "finish", "kind", "source"}
COMPARED_AS_READ = {"base.motor_shaft_height"}
USED = {key for key in TABLE if is_used(key) and key.rpartition(".")[2] not in WORDS} - COMPARED_AS_READ
TEXTS = {
    "shaft_fit": "g6",
    "sheet": "A2",
    "language": "de",
    "general_tolerance": "ISO 2768-fH",
    "number_format": "comma",
}
OWN_ALLOY = {
    "kind": "aluminium", "density": 2700.0, "youngs_modulus": 70000.0, "yield_strength": 240.0,
    "tensile_strength": 295.0, "expansion": 2.3e-5, "poisson": 0.33, "bearing_pressure": 260.0,
}  # fmt: skip


def given(key, value):
    return Record(key, value, "", "given", "given in the spec")


def another(key, now):
    """Return a value that differs from the present one."""
    info, name = TABLE[key.replace("material.alloy", "material.NAME")], key.rpartition(".")[2]
    if info.choices and "true" not in info.choices:
        return next(choice for choice in reversed(info.choices) if choice != now)
    if info.choices:
        return not now
    return TEXTS.get(name, "h6" if not info.unit and isinstance(now, str) else 7.0)


def essence(plan):
    """Return all that sizes and checks made, apart from what only lists its inputs."""
    findings = [replace(f, inputs={}) for f in check(plan) if not f.id.endswith("_data_sheet")]
    dimensions = [replace(plan.records[key], inputs={}) for key in plan.dimensions]
    made = (plan.body, plan.features, plan.base_features, plan.fasteners, plan.ligaments, plan.notes)
    return (*made, findings, dimensions, plan.material_density)


@pytest.fixture(scope="module")
def records():
    alloy = {f"material.alloy.{k}": given(f"material.alloy.{k}", v) for k, v in OWN_ALLOY.items()}
    return dict(load_spec(DEMO).records) | alloy | {"block.material": given("block.material", "alloy")}


@pytest.mark.parametrize("key", [key for key in UNUSED if not key.startswith(("drawing", "plate"))])
def test_an_unused_key_decides_nothing(records, key):
    key = key.replace("NAME", "alloy")
    now = records[key].value if key in records else None
    changed = records | {key: given(key, another(key, now))}
    assert changed[key].value != now
    assert essence(plan_from(changed)) == essence(plan_from(records))


def test_a_used_key_would_be_noticed(records):
    changed = records | {"limits.slip_safety": given("limits.slip_safety", 1.6)}
    assert essence(plan_from(changed)) != essence(plan_from(records))


def test_a_key_of_a_further_motor_is_used_as_that_of_the_first_one():
    names = [key.removeprefix("motor.") for key in TABLE if key.startswith("motor.")]
    assert [is_used(f"family.0.{name}") for name in names] == [is_used(f"motor.{name}") for name in names]


@pytest.mark.parametrize("key", sorted(USED))
def test_every_other_key_is_read_somewhere(key):
    name = key.rpartition(".")[2]
    rules = ("sizing", "alignment", "checks", "outputs", "outputs/drawing")
    homes = _sources(*rules, "spec/fingerprint.py", "spec/load.py")
    assert any(re.search(rf"\b{name}\b", text) for text in homes)


def _sources(*places):
    """Return the texts of modules."""
    for place in places:
        files = [ROOT / place] if place.endswith(".py") else sorted((ROOT / place).glob("*.py"))
        yield from (_text(file) for file in files)


def _text(file):
    """Return the text of a module; of the defaults without the rows of their table, since these alone use nothing."""
    text = file.read_text(encoding="utf-8")
    return re.sub(r'(?m)^    \("[\w.]+", .*$', "", text) if file.name == "defaults.py" else text


def test_only_what_was_given_is_told():
    shown = {
        "coupling.mass": given("coupling.mass", 0.2),
        "motor.mass": replace(given("motor.mass", 2.8), origin="preset"),
        "motor.name": given("motor.name", "x"),
        "family.0.mass": given("family.0.mass", 2.0),
        "family.0.name": given("family.0.name", "x"),
        "family.0.inertia": given("family.0.inertia", 1e-4),
        "thermal.block_temperature": given("thermal.block_temperature", 30.0),
        "thermal.assembly_temperature": given("thermal.assembly_temperature", 20.0),
        "motor.inertia": given("motor.inertia", 1e-4),
    }
    assert given_not_used(shown) == ("motor.inertia", "coupling.mass", "family.0.inertia")


def test_the_starter_shows_no_key_that_decides_nothing():
    table, keys = "", []
    for line in starter_spec().splitlines():
        if line.startswith("["):
            table = line.strip("[]")
        found = re.match(r"(?:# )?(\w+) = ", line)
        if found and table:
            keys.append(f"{table}.{found[1]}")
    assert len(keys) > 30
    assert [key for key in keys if not is_used(key)] == []
