import pytest

from blockgen.change.sweep.axes import read_axes
from blockgen.errors import InputError
from blockgen.spec.load import Shelf
from blockgen.spec.read import parse_document
from tests.sizing.strategies import COMPLETE, toml

FAMILY = '[material.bronze]\ndensity = 8800\n[[family]]\npreset = "servo-80"\n'


def axes(*asked, sampled=False, text=None):
    text = text or toml(COMPLETE)
    return read_axes(asked, parse_document(text, "spec.toml"), Shelf(), sampled=sampled)


def problem(*asked, **options):
    with pytest.raises(InputError) as caught:
        axes(*asked, **options)
    return caught.value.problems


@pytest.mark.parametrize(
    ("asked", "values", "unit"),
    [
        ("base.shaft_height=60, 65,70", (60.0, 65.0, 70.0), "mm"),
        ("base.shaft_height=2.5 in,3 in", (63.5, 76.2), "mm"),
        ("base.shaft_height=60:70:5", (60.0, 65.0, 70.0), "mm"),
        ("base.shaft_height=6 cm:70 mm:0.5 cm", (60.0, 65.0, 70.0), "mm"),
        ("base.shaft_height=60:69:5", (60.0, 65.0), "mm"),
        ("block.edge_chamfer=0.1:0.5:0.1", (0.1, 0.2, 0.3, 0.4, 0.5), "mm"),
        ("thermal.block_temperature=68 degF:86 degF:9 degF", (20.0, 25.0, 30.0), "degC"),
        ("base.friction=10 %,0.2", (0.1, 0.2), ""),
        ("base.screw_count=4:8:2", (4, 6, 8), ""),
        ("base.dowels=true,false", (True, False), ""),
        ("base.screw=M8,M10", ("M8", "M10"), ""),
        ('job.title="one, two",three', ("one, two", "three"), ""),
        ("base.hole_positions=[[1, 2], [3, 4]],[[5, 6]]", (((1.0, 2.0), (3.0, 4.0)), ((5.0, 6.0),)), "mm"),
        ("motor.preset=servo-80,iec-63-ft75", ("servo-80", "iec-63-ft75"), ""),
    ],
)
def test_values_come_in_default_units_and_in_their_order(asked, values, unit):
    (axis,) = axes(asked)
    assert repr(axis.values) == repr(values)  # 1, 1.0 and true are not the same
    assert axis.unit == unit
    assert not axis.continuous


def test_a_range_without_step_is_for_a_sample():
    (axis,) = axes("base.shaft_height=60:70", sampled=True)
    assert (axis.values, axis.continuous) == ((60.0, 70.0), True)
    (counted,) = axes("base.screw_count=4:6", sampled=True)
    assert (counted.values, counted.continuous) == ((4, 5, 6), False)
    assert "--sample" in problem("base.shaft_height=60:70")[0].remedy


def test_keys_of_own_materials_and_of_the_family_can_be_varied():
    text = toml(COMPLETE) + FAMILY
    assert axes("material.bronze.density=8000,8800", text=text)[0].place == ("material", "bronze", "density")
    assert axes("family.0.preset=servo-80,servo-100", text=text)[0].place == ("family", 0, "preset")


@pytest.mark.parametrize(
    ("asked", "key", "said"),
    [
        ("base.shaft_heigt=1,2", "base.shaft_heigt", "did you mean shaft_height"),
        ("bse.shaft_height=1,2", "bse.shaft_height", "did you mean base.shaft_height"),
        ("base=1,2", "base", "name a key of it"),
        ("family.1.preset=servo-80", "family.1.preset", "family.0.KEY"),
        ("material.brass.density=1", "material.brass.density", "material.NAME.KEY"),
        ("base.shaft_height=60,70 kg", "base.shaft_height", "a unit at every number"),
        ("base.shaft_height=60 kg", "base.shaft_height", "a length"),
        ("base.shaft_height=1:70:1 mm", "base.shaft_height", "a unit at every number"),
        ("base.shaft_height=70:60:5", "base.shaft_height", "a low end below the high end"),
        ("base.shaft_height=60:70:-5", "base.shaft_height", "a step above zero"),
        ("base.shaft_height=60:70:1e-9", "base.shaft_height", "a larger step"),
        ("base.shaft_height=60,,70", "base.shaft_height", "comma too many"),
        ("base.shaft_height=60,60.0", "base.shaft_height", "each value once"),
        ("base.screw=M8:M10:1", "base.screw", "only numbers have a range"),
        ("base.screw_count=4:5:0.5", "base.screw_count", "whole numbers"),
        ("base.screw=M8,X9", "base.screw", "metric thread"),
        ("block.window_axis=z,q", "block.window_axis", "one of"),
        ("motor.preset=servo-80,servo-81", "motor.preset", "did you mean"),
        ("motor.preset=bellows-45", "motor.preset", "preset for [motor]"),
        ("motor.model=a.step", "motor.model", "sizing or checks"),
        ("base.hole_positions=[[1, 2]", "base.hole_positions", "lists of pairs"),
        ("base.shaft_height", "base.shaft_height", "KEY=A,B,C"),
        ("=5", "--vary", "KEY=A,B,C"),
    ],
)
def test_what_is_wrong_is_told_with_its_key(asked, key, said):
    (found,) = problem(asked)
    assert (found.file, found.key) == ("command line", key)
    assert said in f"{found.expected} {found.remedy}"


def test_all_that_is_wrong_is_told_at_once():
    found = problem("base.screw=X9", "base.shaft_height=60,70", "base.nothing=1", "base.shaft_height=80")
    assert [p.key for p in found] == ["base.screw", "base.nothing", "base.shaft_height"]
    assert found[2].found == "varied twice"


def test_nothing_varied_is_wrong():
    assert problem()[0].key == "--vary"
