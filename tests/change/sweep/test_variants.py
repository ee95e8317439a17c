import copy
import json
from itertools import product

import pytest

from blockgen.change.sweep.axes import read_axes
from blockgen.change.sweep.variants import Variants
from blockgen.errors import InputError
from blockgen.spec.load import Shelf, parse_spec
from blockgen.spec.read import parse_document
from tests.sizing.strategies import COMPLETE, toml

TABLES = copy.deepcopy(COMPLETE) | {"material.bronze": {"density": 8800, "youngs_modulus": 110000}}
TABLES["base"]["material"] = "Bronze"
TABLES["motor"] = {"preset": "servo-80"}
FAMILY = '[[family]]\npreset = "servo-80"\n'
ASKED = (
    "motor.preset=servo-80,servo-100",
    "motor.pilot_length=3,4",
    "block.material=cast-tooling-plate,bronze,EN AW-6082-T6",
    "material.bronze.density=8700,8900",
    "family.0.preset=servo-80,servo-60",
    "base.dowels=true,1",
    "limits.slip_safety=1.5,2",
)


def variants(*asked, text=None):
    text = text or toml(TABLES) + FAMILY
    document, shelf = parse_document(text, "spec.toml"), Shelf()
    axes = read_axes(asked, document, shelf, sampled=False)
    return axes, Variants(document, shelf, axes)


def edited(axes, point):
    """Return the spec read from a file with the values written into it."""
    tables = copy.deepcopy(TABLES)
    family = FAMILY
    for axis, value in zip(axes, point, strict=True):
        if axis.table == "family":
            family = f"[[family]]\npreset = {json.dumps(value)}\n"
        else:
            tables.setdefault(".".join(axis.place[:-1]), {})[axis.place[-1]] = value
    return parse_spec(toml(tables) + family)


def seen(spec):
    """Return all of a spec but the lines, which a value of the command line does not have."""
    return [(k, repr(r.value), r.unit, r.origin, r.rule, r.source) for k, r in spec.records.items()], spec.preset_files


@pytest.mark.slow
def test_a_variant_is_the_spec_with_the_values_written_into_it():
    axes, found = variants(*ASKED)
    for point in product(*(axis.values for axis in axes)):
        assert seen(found.spec(point)) == seen(edited(axes, point))


def test_a_variant_that_cannot_be_is_told_and_the_next_one_is_right():
    axes, found = variants("motor.shaft_diameter=19,81", "screw.thrust=1000,2000")
    with pytest.raises(InputError, match=r"motor\.shaft_diameter"):
        found.spec((81.0, 1000.0))
    assert seen(found.spec((19.0, 2000.0))) == seen(edited(axes, (19.0, 2000.0)))


def test_what_contradicts_the_spec_is_told():
    _, found = variants("motor.bolt_spacing_y=60,70", text=toml(COMPLETE))
    with pytest.raises(InputError, match="give one of them"):
        found.spec((60.0,))
