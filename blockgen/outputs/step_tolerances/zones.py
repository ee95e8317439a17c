"""Geometrical tolerances: form, orientation, location, with their datum systems and zones."""

from __future__ import annotations

from blockgen.outputs.part21 import Ref, Value
from blockgen.outputs.step_tolerances.records import Zone
from blockgen.outputs.step_tolerances.writer import Writer

CYLINDER = "cylindrical or circular"
"""Form of a zone that is a cylinder."""


def write_zone(writer: Writer, zone: Zone) -> None:
    """Write a geometrical tolerance, and the form of its zone where that is a cylinder."""
    tolerance = _tolerance(writer, zone)
    if zone.diametral:
        form = writer.entities.add("TOLERANCE_ZONE_FORM", CYLINDER)
        writer.entities.add("TOLERANCE_ZONE", "", "", writer.model.shape, False, (tolerance,), form)


def _tolerance(writer: Writer, zone: Zone) -> Ref:
    common: tuple[Value, ...] = (zone.id, "", writer.length(zone.width), writer.aspect(zone.target))
    name = f"{zone.kind.upper()}_TOLERANCE"
    if not zone.datums:
        return writer.entities.add(name, *common)
    systems = (writer.system(zone.datums),)
    if zone.kind != "position":
        return writer.entities.add(name, *common, systems)
    # A position may stand without datums, so its type does not bring them along.
    return writer.entities.add_together(
        GEOMETRIC_TOLERANCE=common,
        GEOMETRIC_TOLERANCE_WITH_DATUM_REFERENCE=(systems,),
        POSITION_TOLERANCE=(),
    )
