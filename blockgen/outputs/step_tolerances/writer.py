"""What all tolerances of a file share: numbered entities, aspects, datum systems, units, lengths, properties."""

from __future__ import annotations

from collections.abc import Iterable

from blockgen.outputs.part21 import Entities, Ref, Sign, Typed
from blockgen.outputs.step_tolerances.aspects import Aspects
from blockgen.outputs.step_tolerances.model import Model
from blockgen.outputs.step_tolerances.records import Datum, Target


class Writer:
    """Entities of one file as they are written."""

    def __init__(self, model: Model) -> None:
        """Start behind the last entity of the model."""
        self.model = model
        self.entities = Entities(model.last)
        self._aspects = Aspects(self.entities, model)
        self._datums: dict[str, Ref] = {}
        self._systems: dict[tuple[str, ...], Ref] = {}
        self._micrometre: Ref | None = None

    def datum(self, datum: Datum) -> None:
        """Write a datum; all of them come before what stands on their faces."""
        self._datums[datum.letter] = self._aspects.datum(datum)

    def aspect(self, target: Target | None) -> Ref:
        """Return the aspect of a target; the shape of the part without one."""
        return self._aspects.of(target) if target else self.model.shape

    def system(self, letters: tuple[str, ...]) -> Ref:
        """Return the datum system of some letters in order, each place with a compartment of its own."""
        if letters not in self._systems:
            add, shape = self.entities.add, self.model.shape
            places = [
                add("DATUM_REFERENCE_COMPARTMENT", "", "", shape, False, self._datums[letter], None)
                for letter in letters
            ]
            self._systems[letters] = add("DATUM_SYSTEM", "|".join(letters), "", shape, False, places)
        return self._systems[letters]

    def length(self, value: float) -> Ref:
        """Return a deviation or the width of a zone, mm."""
        measure = Typed("LENGTH_MEASURE", value)
        return self.entities.add("LENGTH_MEASURE_WITH_UNIT", measure, self.model.millimetre)

    def item(self, name: str, measure: str, value: float) -> Ref:
        """Return a length as a named item of a representation, mm."""
        return self.entities.add_together(
            LENGTH_MEASURE_WITH_UNIT=(),
            MEASURE_REPRESENTATION_ITEM=(),
            MEASURE_WITH_UNIT=(Typed(measure, value), self.model.millimetre),
            REPRESENTATION_ITEM=(name,),
        )

    def text(self, name: str, text: str) -> Ref:
        """Return a text as a named item of a representation."""
        return self.entities.add("DESCRIPTIVE_REPRESENTATION_ITEM", name, text)

    def micrometre(self) -> Ref:
        """Return the unit of roughness."""
        if self._micrometre is None:
            unit = (Sign(".MICRO."), Sign(".METRE."))
            self._micrometre = self.entities.add_together(LENGTH_UNIT=(), NAMED_UNIT=(Sign("*"),), SI_UNIT=unit)
        return self._micrometre

    def described(self, name: str, description: str, on: Ref, kind: str, title: str, items: Iterable[Ref]) -> Ref:
        """Return a property of an aspect or of the part, represented by some items."""
        add = self.entities.add
        definition = add("PROPERTY_DEFINITION", name, description, on)
        representation = add(kind, title, tuple(items), self.model.context)
        add("PROPERTY_DEFINITION_REPRESENTATION", definition, representation)
        return definition
