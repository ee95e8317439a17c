"""Entities of a few records on made-up faces, read back."""

from __future__ import annotations

from blockgen.outputs.step_tolerances.entities import entities_of
from blockgen.outputs.step_tolerances.records import Datum, Target, Tolerances
from tests.outputs import part21_reader as reader
from tests.outputs.step_tolerances.faces import model_of

FACES = ("base", "bearing_seat", "bore", "hole_1", "hole_2")
BASE, SEAT, BORE = (Target(name, (name,)) for name in ("base", "bearing_seat", "bore"))
HOLES = Target("holes", ("hole_1", "hole_2"), pattern=True)
A = Datum("datum.A", "A", SEAT)
C = Datum("datum.C", "C", BASE)
MM = reader.Ref(4)


def written(*records, general=""):
    """Return the entities by number."""
    return reader.Reader(entities_of(Tolerances(records, general, ()), model_of(FACES))).entities()


def only(entities, name):
    """Return the attributes of the one entity of a type."""
    (found,) = reader.of_type(entities, name).values()
    return found


def items(entities, representation):
    """Return the numbers in a representation by name."""
    found = {}
    for ref in representation[1]:
        leaves = entities[ref.number]
        if "REPRESENTATION_ITEM" in leaves:
            measure, unit = leaves["MEASURE_WITH_UNIT"]
            assert unit == MM
            found[leaves["REPRESENTATION_ITEM"][0]] = measure
    return found
