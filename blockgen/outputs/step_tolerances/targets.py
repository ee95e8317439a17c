"""The faces of a characteristic: all members of a group, both ends of a distance."""

from __future__ import annotations

from collections.abc import Sequence

from blockgen.outputs.step_tolerances.records import Target
from blockgen.plan import Annotation, Feature, Plan

_OUTSIDE = {
    "block.length": ("bearing_seat", "motor_seat"),
    "block.width": ("side_minus_y", "side_plus_y"),
    "block.height": ("base", "top"),
    "window.position": ("bearing_seat", "window.bearing_wall"),
    "window.length": ("window.bearing_wall", "window.motor_wall"),
    "window.floor": ("base", "window.floor"),
    "relief.position": ("bearing_seat", "relief.bearing_wall"),
    "relief.length": ("relief.bearing_wall", "relief.motor_wall"),
    "relief.depth": ("base", "relief.roof"),
}
"""Faces between which a distance runs."""

_ACROSS = {
    "z": {"window.across": ("side_minus_y", "window.side_minus_y"),
          "window.width": ("window.side_minus_y", "window.side_plus_y")},
    "y": {"window.across": ("base", "window.floor"), "window.width": ("window.floor", "window.roof")},
}  # fmt: skip
"""The same across a window, by the axis along which it is cut."""

_TO_AXIS = {"block.shaft_height": "base", "block.axis_to_side": "side_minus_y"}
"""Faces from which a distance runs to the axis of the shaft."""

_CORNERS = tuple(f"window.corner_{number}" for number in range(1, 5))
_UPRIGHT = tuple(f"corner.{number}" for number in range(1, 5))


def members(plan: Plan, group: str) -> tuple[Feature, ...]:
    """Return the features of a group, or the one feature of that id."""
    return tuple(f for f in plan.features if group in (f.group, f.id))


def target_of(note: Annotation, plan: Plan) -> Target:
    """Return what a characteristic stands on: the faces of all members of its group, else its one face."""
    if note.kind == "radius":
        return Target(note.feature, _UPRIGHT if note.feature == "block" else _CORNERS, pattern=True)
    group, part = members(plan, note.feature), note.face.rpartition(".")[2]
    if not group or "." not in note.face:
        return Target(note.feature, (note.face,))
    return Target(note.feature, tuple(feature.face_id(part) for feature in group), pattern=len(group) > 1)


def ends_of(note: Annotation, plan: Plan) -> tuple[Target, Target] | None:
    """Return the two ends of a distance or depth; None where no two faces define it."""
    if note.kind == "depth":
        return _depth(note, plan)
    if note.id in _TO_AXIS:
        bore = Target("bearing_bore", ("bearing_bore.bore",), axis=True)
        return _face(_TO_AXIS[note.id]), bore
    pair = _OUTSIDE.get(note.id) or _across(plan).get(note.id)
    return (_face(pair[0]), _face(pair[1])) if pair else None


def edge_faces(note: Annotation, plan: Plan, present: Sequence[str]) -> Target:
    """Return the chamfers that one call-out covers; a mouth inside a relief may have been cut away."""
    if note.feature == "block":
        named = ("edge_break.",) if plan.body.outer_fillet else ("edge_break.", "corner.")
        return Target("edges", tuple(face for face in present if face.startswith(named)), pattern=True)
    groups = [covered.removesuffix(".mouth") for covered in note.covers]
    mouths = [f.face_id("mouth_chamfer") for group in groups for f in members(plan, group)]
    return Target("mouths", tuple(face for face in mouths if face in present), pattern=True)


def _depth(note: Annotation, plan: Plan) -> tuple[Target, Target] | None:
    """Return mouth and floor; the end of a drilled hole is a point, not a face."""
    group = members(plan, note.feature)
    if not group or note.face.endswith(".thread"):
        return None
    return _face(group[0].face), target_of(note, plan)


def _across(plan: Plan) -> dict[str, tuple[str, str]]:
    pocket = next((f.pocket for f in plan.features if f.kind == "window"), None)
    return _ACROSS[pocket.axis] if pocket else {}


def _face(face: str) -> Target:
    return Target(face, (face,))
