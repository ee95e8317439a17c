"""The stand-ins of all presets give their presets' values back, in any pose, and as STEP files in any unit."""

from pathlib import Path

import cadquery as cq
import pytest

from blockgen.geometry.stand_ins.bearing_unit import bearing_unit
from blockgen.geometry.stand_ins.motor import motor
from blockgen.geometry.stand_ins.sizes import stand_in_sizes
from blockgen.reading.part import read_part, reading_of
from blockgen.reading.read_file import StepModel
from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec
from blockgen.spec.presets import list_presets, read_preset
from blockgen.spec.starter import starter_spec
from tests.reading.made_motors import as_free_form, posed
from tests.reading.score import agrees
from tests.reading.units import write_in

pytestmark = pytest.mark.slow

NAMES = sorted((p.kind, p.name) for p in list_presets() if p.kind in {"motor", "bearing"})
# What a model does not show: where the ground part of a shaft ends.
NOT_SHOWN = {"shaft_smooth_length"}


def stand_in(kind, name):
    plan = size(parse_spec(starter_spec(**{kind: name})))
    return {"motor": motor, "bearing": bearing_unit}[kind](plan, stand_in_sizes(plan)).shape


def wrong(reading, name):
    known = read_preset(name, None, reading.part).values
    found = {k: (reading.value(k), v) for k, v in known.items() if k not in NOT_SHOWN and reading.value(k) is not None}
    return {k: pair for k, pair in found.items() if not agrees(*pair)}


@pytest.mark.parametrize(("kind", "name"), NAMES, ids=[n for _, n in NAMES])
def test_a_preset_is_read_back(kind, name):
    shape = stand_in(kind, name)
    for pose, form in ((0, lambda s: s), (7, lambda s: s), (8, as_free_form)):
        reading = reading_of(StepModel(form(posed(shape, pose)), "mm", 1), "a model", kind)
        assert not wrong(reading, name)
        least = {"pilot_diameter", "pilot_length", "bolt_circle", "bolt_count", "bolt_angle", "flange_size"}
        least |= {"shaft_diameter", "shaft_length"} if kind == "motor" else {"nut_reach", "nut_outer_diameter"}
        assert not {key for key in least if reading.value(key) is None}


@pytest.mark.parametrize("unit", ["MM", "INCH", "M", "CM", "FT"])
@pytest.mark.parametrize("name", ["nema-34", "servo-80"])
def test_the_unit_changes_no_value(name, unit, tmp_path):
    file = write_in(unit, posed(stand_in("motor", name), 4), tmp_path / "motor.step")
    reading = read_part(file, "motor")
    assert not wrong(reading, name)
    assert reading.unit == {"INCH": "in"}.get(unit, unit.lower())


def test_inch_sizes_are_named_in_inches(tmp_path):
    file = write_in("MM", stand_in("motor", "nema-34"), tmp_path / "motor.step")
    evidence = {f.key: f.evidence for f in read_part(file, "motor").found}
    assert evidence["pilot_diameter"].endswith("= 2.875 in")
    assert evidence["bolt_circle"].endswith("= 3.875 in")
    assert " in" not in evidence["shaft_diameter"].split("axis")[-1]


def test_a_file_of_another_writer(tmp_path):
    file = tmp_path / "motor.step"
    cq.exporters.export(cq.Workplane(obj=cq.Shape.cast(stand_in("motor", "servo-100"))), str(file))
    assert "AUTOMOTIVE_DESIGN" in Path(file).read_text()
    assert not wrong(read_part(file, "motor"), "servo-100")


def test_an_assembly_with_places(tmp_path):
    """Parts of their own in places of their own: the motor and a cover far from it."""
    assembly = cq.Assembly(name="motor with cover")
    place = cq.Location(cq.Vector(120, -40, 77), cq.Vector(1, 2, 3), 66)
    assembly.add(cq.Shape.cast(stand_in("motor", "servo-60")), name="motor", loc=place)
    assembly.add(cq.Workplane().box(30, 20, 4), name="cover", loc=cq.Location(cq.Vector(0, 0, 300)))
    assembly.export(str(tmp_path / "motor.step"))
    reading = read_part(tmp_path / "motor.step", "motor")
    assert reading.solids == 2
    reading_ = {f.key: f.value for f in reading.found if f.key != "body_length"}
    known = read_preset("servo-60", None, "motor").values
    assert all(agrees(v, known[k]) for k, v in reading_.items() if k in known and k not in NOT_SHOWN)
