"""Faces of the block in words, with the feature and the keys of the dimensions that made them."""

from __future__ import annotations

from typing import Any

from blockgen.plan import Feature, Plan

OUTSIDE = {
    "bearing_seat": ("bearing_wall", "length"),
    "motor_seat": ("motor_wall", "length"),
    "side_minus_y": ("width", "side_wall"),
    "side_plus_y": ("width", "side_wall"),
    "base": ("shaft_height", "height"),
    "top": ("height",),
    "corner": ("block.outer_fillet", "block.edge_chamfer"),
    "edge_break": ("block.edge_chamfer",),
}
"""Keys of what an outside face is fixed by."""


def shown_face(plan: Plan, face_id: str) -> dict[str, Any]:
    """Return a face: id, title, feature (None on the outside), keys of its dimensions that the plan has."""
    start, _, piece = face_id.partition(".")
    feature = next((f for f in plan.features if f.id == start), None)
    keys = OUTSIDE.get(start, ()) if feature is None else tuple(feature.keys.values())
    return {
        "id": face_id,
        "title": _outside(start) if feature is None else _of_feature(feature, piece),
        "feature": None if feature is None else feature.id,
        "keys": [key for key in dict.fromkeys(keys) if key in plan.records],
    }


def _outside(start: str) -> str:
    return {"side_minus_y": "side, -y", "side_plus_y": "side, +y", "": "face"}.get(start, start.replace("_", " "))


def _of_feature(feature: Feature, piece: str) -> str:
    named, what = feature.id.replace("_", " "), piece.replace("_", " ")
    return named if not what or what in named else f"{named}, {what}"
