"""What the 3D view of the report shows, as plain data: meshes, parts, faces of the block, a deformed block."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Any

from blockgen.evidence.stiffness.field import Field
from blockgen.outputs.report.scene_explode import shifts
from blockgen.outputs.report.scene_faces import shown_face
from blockgen.outputs.report.scene_numbers import along, box_of, integers, quantised, reals, runs
from blockgen.outputs.report.scene_parts import colour, label
from blockgen.outputs.report.scene_still import Patch, still
from blockgen.outputs.tidy import tidy
from blockgen.plan import Plan

if TYPE_CHECKING:
    from OCP.TopoDS import TopoDS_Shape

    from blockgen.geometry.block import BlockSolid
    from blockgen.geometry.facets import Facets
    from blockgen.geometry.stand_ins.part import AssemblyPart
    from blockgen.outputs.report.scene_numbers import Array

SCHEMA = 1

MOST = 20_000
"""Triangles above which a part is meshed more coarsely; the block of the demo has 6932."""

COARSER = ((0.5, 0.5), (1.5, 0.8))
"""Distance from the surface, mm, and angle between triangles, rad, that are tried then."""


def scene(plan: Plan, block: BlockSolid, parts: Sequence[AssemblyPart], field: Field | None = None) -> dict[str, Any]:
    """Return all that the view draws. Coordinates are those of the block, mm; the same input gives the same data.

    Args:
        plan: What was decided.
        block: Its solid.
        parts: The block and the parts about it, where they stand.
        field: A block under load; None where no finite elements were asked for.

    Raises:
        KernelError: a face could not be meshed.
    """
    from blockgen.geometry.facets import face_ids

    meshes = _meshes(parts)
    numbers = {name: number for number, name in enumerate(meshes)}
    placed = {part.id: _placed(meshes[part.name].points, part) for part in parts}
    boxes = {part_id: box_of(points) for part_id, points in placed.items()}
    shift = shifts(plan, boxes)
    return {
        "schema": SCHEMA,
        "unit": "mm",
        "meshes": [_mesh(facets) for facets in meshes.values()],
        "parts": [_part(part, numbers[part.name], boxes[part.id], shift[part.id]) for part in parts],
        "faces": [shown_face(plan, face_id) for face_id in face_ids(block)],
        "still": still([_patch(placed[part.id], meshes[part.name], part) for part in parts]),
        "field": None if field is None else _field(field),
    }


def _meshes(parts: Sequence[AssemblyPart]) -> dict[str, Facets]:
    """Return the triangles by the name of the part, since alike parts have one shape."""
    shapes = {part.name: part.shape for part in reversed(parts)}
    return {part.name: _facets(shapes[part.name]) for part in {p.name: p for p in parts}.values()}


def _facets(shape: TopoDS_Shape) -> Facets:
    """Return the triangles of a shape: fewer where a maker's model would swell the page, as few as COARSER allows."""
    from blockgen.geometry.facets import facets

    made = facets(shape)
    for deflection, angle in COARSER:
        if len(made.triangles) > MOST:
            made = facets(shape, deflection, angle)
    return made


def _mesh(facets: Facets) -> dict[str, Any]:
    return {
        "points": quantised(facets.points),
        "triangles": integers(facets.triangles),
        "runs": runs(facets.faces),
        "edges": integers(facets.edges),
    }


def _part(part: AssemblyPart, mesh: int, box: Sequence[float], shift: Sequence[float]) -> dict[str, Any]:
    shown: dict[str, Any] = tidy(
        {
            "id": part.id,
            "label": label(part),
            "name": part.name,
            "colour": colour(part.id),
            "mesh": mesh,
            "place": _matrix(part),
            "box": box,
            "shift": shift,
            "stand_in": part.stand_in,
            "note": "; ".join(text for text in (part.note, part.warning) if text),
        }
    )
    return shown


def _patch(points: Array, facets: Facets, part: AssemblyPart) -> Patch:
    return Patch(points, facets.triangles, facets.faces, colour(part.id))


def _matrix(part: AssemblyPart) -> list[float]:
    """Return the three rows of the part's place, four numbers each."""
    return [part.location.Value(row, column) for row in (1, 2, 3) for column in (1, 2, 3, 4)]


def _placed(points: Array, part: AssemblyPart) -> Array:
    import numpy as np

    rows = [_matrix(part)[start : start + 4] for start in (0, 4, 8)]
    return np.stack([along(points, row[:3]) + row[3] for row in rows], axis=1)


def _field(field: Field) -> Mapping[str, Any]:
    """Return a field; ``greatest`` is the stress at the end of its scale: what lies above it grows with the mesh."""
    import numpy as np

    return {
        "points": quantised(np.array(field.points)),
        "triangles": integers(np.array(field.triangles)),
        "edges": integers(np.array(field.edges)),
        "displacement": reals(np.array(field.displacement)),
        "stress": reals(np.array(field.stress)),
        "greatest": tidy(field.stress_away),
        "words": f"{field.case}; {field.support}; flanges {field.flanges}",
    }
