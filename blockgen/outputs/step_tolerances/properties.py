"""What is no tolerance to the format: surface textures, threads, call-outs in words, the general tolerance."""

from __future__ import annotations

from blockgen.outputs.part21 import Typed
from blockgen.outputs.step_tolerances.records import CallOut, Texture
from blockgen.outputs.step_tolerances.writer import Writer

OWN = "user defined attribute"
"""Description of a property that programs list by name, as they do not know what it means."""
PLAIN = "REPRESENTATION"


def write_texture(writer: Writer, texture: Texture) -> None:
    """Write a texture as the part on surface conditions (ISO 10303-1110) does: how it is made, and parameter Ra."""
    on, removal = writer.aspect(texture.target), writer.text("material removal condition", "material removal required")
    surface = writer.described("surface texture", "", on, PLAIN, "surface texture", [removal])
    measure = Typed("LENGTH_MEASURE", texture.roughness)
    value = writer.entities.add(
        "MEASURE_REPRESENTATION_ITEM", "characteristic value", measure, writer.micrometre()
    )  # fmt: skip
    items = [writer.text("measuring method", "Ra"), value]
    kind, title = "SURFACE_TEXTURE_REPRESENTATION", "surface texture parameter"
    parameter = writer.described("surface_condition", "", on, kind, title, items)
    general = writer.entities.add("GENERAL_PROPERTY", "", "surface_condition", None)
    writer.entities.add("GENERAL_PROPERTY_ASSOCIATION", "", None, general, parameter)
    writer.entities.add("PROPERTY_DEFINITION_RELATIONSHIP", title, "", surface, parameter)


def write_call_out(writer: Writer, call_out: CallOut) -> None:
    """Write a call-out as a property of the user's own; its representation is named by the characteristic."""
    texts = [writer.text(name, text) for name, text in call_out.texts.items()]
    lengths = [writer.item(name, "LENGTH_MEASURE", value) for name, value in call_out.lengths.items()]
    on, items = writer.aspect(call_out.target), (*texts, *lengths)
    definition = writer.described(call_out.name, OWN, on, PLAIN, call_out.id, items)
    general = writer.entities.add("GENERAL_PROPERTY", "", call_out.name, OWN)
    writer.entities.add("GENERAL_PROPERTY_ASSOCIATION", OWN, None, general, definition)


def write_general(writer: Writer, name: str) -> None:
    """Write the class of the general tolerance, which holds for every size without limits of its own."""
    item = writer.text("tolerance class", name)
    writer.described("default tolerances", "", writer.model.shape, PLAIN, "default tolerances", [item])
