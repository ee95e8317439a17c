"""Faces of a plan, by name alone: no solid is built."""

from __future__ import annotations

from blockgen.outputs.part21 import Ref
from blockgen.outputs.step_tolerances.model import Model


def all_faces(plan):
    """Return the ids of the faces that a solid of the plan may have."""
    found = ["bearing_seat", "motor_seat", "base", "top", "side_plus_y", "side_minus_y"]
    found += [f"corner.{n}" for n in range(1, 5)] + [f"edge_break.{n}" for n in range(1, 9)]
    for feature in plan.features:
        walls = ("bearing_wall", "motor_wall", "side_minus_y", "side_plus_y", "floor", "roof")
        corners = tuple(f"corner_{n}" for n in range(1, 5))
        pieces = (*walls, *corners) if feature.pocket else tuple(piece.part for piece in feature.profile)
        found += [feature.face_id(piece) for piece in pieces]
    return tuple(found)


def model_of(faces, pieces=None):
    """Return a model whose faces have made-up numbers from 1001 on; ``pieces`` says into how many one is cut."""
    numbers, start = {}, 1001
    for face in faces:
        count = (pieces or {}).get(face, 1)
        numbers[face] = tuple(Ref(start + n) for n in range(count))
        start += count
    return Model(Ref(1), Ref(2), Ref(3), Ref(4), numbers, 5000)
