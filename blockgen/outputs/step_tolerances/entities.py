"""From the records to the entities of ISO 10303-242 that carry them."""

from __future__ import annotations

from blockgen.outputs.step_tolerances.dimensions import write_distance, write_size
from blockgen.outputs.step_tolerances.model import Model
from blockgen.outputs.step_tolerances.properties import write_call_out, write_general, write_texture
from blockgen.outputs.step_tolerances.records import CallOut, Datum, Distance, Record, Size, Texture, Tolerances, Zone
from blockgen.outputs.step_tolerances.writer import Writer
from blockgen.outputs.step_tolerances.zones import write_zone


def entities_of(tolerances: Tolerances, model: Model) -> str:
    """Return the entities as text that goes behind the last entity of the file."""
    writer = Writer(model)
    for record in tolerances.records:
        if isinstance(record, Datum):
            writer.datum(record)
    for record in tolerances.records:
        _write(writer, record)
    if tolerances.general:
        write_general(writer, tolerances.general)
    return writer.entities.text()


def _write(writer: Writer, record: Record) -> None:
    match record:
        case Size():
            write_size(writer, record)
        case Distance():
            write_distance(writer, record)
        case Zone():
            write_zone(writer, record)
        case Texture():
            write_texture(writer, record)
        case CallOut():
            write_call_out(writer, record)
        case Datum():
            pass  # written before all others
