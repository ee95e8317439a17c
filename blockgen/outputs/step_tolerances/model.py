"""The entities of the kernel's text that tolerances hang on: shape, representation, unit and faces."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from blockgen.errors import KernelError
from blockgen.outputs.part21 import Ref

MILLIMETRE = r"\(\s*LENGTH_UNIT\(\s*\)\s*NAMED_UNIT\(\s*\*\s*\)\s*SI_UNIT\(\s*\.MILLI\.\s*,\s*\.METRE\.\s*\)\s*\)\s*;"
"""The kernel may break a line between any two words."""


@dataclass(frozen=True, slots=True)
class Model:
    """What is there already.

    Args:
        shape: Shape of the product.
        solid: Representation that holds the solid.
        context: Context of that representation, with its units.
        millimetre: The length unit of the context.
        faces: Faces of the solid by face id.
        last: Greatest number of an entity.
    """

    shape: Ref
    solid: Ref
    context: Ref
    millimetre: Ref
    faces: Mapping[str, tuple[Ref, ...]]
    last: int


def read_model(data: str, tokens: Mapping[str, str]) -> Model:
    """Find the entities in the data of a file with one solid.

    Args:
        data: Text of the DATA section; names of faces are tokens still, and no text of the spec stands in it.
        tokens: Face id by the token that the face is named with.

    Raises:
        KernelError: the kernel wrote something else than one solid in millimetres.
    """
    shape = _one(r"#(\d+) = PRODUCT_DEFINITION_SHAPE\(", data, "shape of a product")
    solid = _one(r"#(\d+) = ADVANCED_BREP_SHAPE_REPRESENTATION\(", data, "solid")
    context = _one(rf"#{solid.number} = ADVANCED_BREP_SHAPE_REPRESENTATION\([^;]*?#(\d+)\s*\);", data, "context")
    units = re.search(rf"#{context.number} = [^;]*?GLOBAL_UNIT_ASSIGNED_CONTEXT\s*\(\s*\(([^)]*)\)", data)
    numbers = "|".join(re.findall(r"\d+", units[1])) if units else "0"
    millimetre = _one(rf"#({numbers}) = {MILLIMETRE}", data, "length unit of a millimetre")
    last = max(int(number) for number in re.findall(r"^#(\d+) =", data, re.MULTILINE))
    return Model(shape, solid, context, millimetre, _faces(data, tokens), last)


def _faces(data: str, tokens: Mapping[str, str]) -> Mapping[str, tuple[Ref, ...]]:
    faces: dict[str, tuple[Ref, ...]] = {}
    for number, token in re.findall(r"#(\d+) = ADVANCED_FACE\(\s*'(@\d+@)'", data):
        face_id = tokens[token]
        faces[face_id] = (*faces.get(face_id, ()), Ref(int(number)))
    return faces


def _one(pattern: str, data: str, what: str) -> Ref:
    found = re.findall(pattern, data)
    if len(found) != 1:
        raise KernelError(f"the kernel wrote {len(found)} entities for the {what}, one was expected")
    return Ref(int(found[0]))
