"""Which geometrical tolerances need a datum, against a public table.

Aerospace community database, "Geometrical characteristics",
aerospace-community.eu/Database/GeometricalCharacteristics, columns Characteristic and Datum needed. Reached as
excerpts of stored copies of that page.
"""

import pytest

from tests.sizing.strategies import sized

DATUM_NEEDED = {"flatness": False, "parallelism": True, "perpendicularity": True, "coaxiality": True, "position": True}


@pytest.mark.parametrize(("kind", "needed"), DATUM_NEEDED.items())
def test_datums_stand_where_they_are_needed(kind, needed):
    notes = [note for note in sized().annotations if note.kind == kind]
    assert notes
    assert {bool(note.datums) for note in notes} == {needed}


def test_every_datum_that_is_named_is_there():
    notes = sized().annotations
    there = {note.text for note in notes if note.kind == "datum"}
    assert {letter for note in notes for letter in note.datums} <= there
