"""Aspects of the shape: what a tolerance points at, tied to the faces of the solid.

A face has one aspect, and an aspect one usage of a face, as the schema asks for; a feature of several faces is
composed of theirs.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from blockgen.outputs.part21 import Entities, Ref
from blockgen.outputs.step_tolerances.model import Model
from blockgen.outputs.step_tolerances.records import Datum, Target

PATTERN, PIECES = "pattern of features", "multiple elements"
"""Names of a composition: of equal features, and of the faces of one feature."""


class Aspects:
    """The aspects that were made, so that all tolerances of a feature share one."""

    def __init__(self, entities: Entities, model: Model) -> None:
        """Make none yet."""
        self._entities, self._model = entities, model
        self._made: dict[tuple[Ref, ...], Ref] = {}
        self._axes: dict[Ref, Ref] = {}

    def datum(self, datum: Datum) -> Ref:
        """Make a datum feature and return its datum; datums come first, since their faces then belong to them."""
        feature = self._datum_feature(datum.target)
        letter = self._entities.add("DATUM", "", "", self._model.shape, False, datum.letter)
        self._entities.add("SHAPE_ASPECT_RELATIONSHIP", "", "datum feature", feature, letter)
        return letter

    def of(self, target: Target) -> Ref:
        """Return the aspect of a target."""
        faces = self._faces(target)
        if len(faces) == 1:
            aspect = self._of_face(faces[0], target.faces[0])
        else:
            aspect = self._kept(faces, lambda: self._group(target))
        return self._axis(aspect, target.name) if target.axis else aspect

    def _faces(self, target: Target) -> tuple[Ref, ...]:
        return tuple(face for face_id in target.faces for face in self._model.faces[face_id])

    def _kept(self, faces: tuple[Ref, ...], make: Callable[[], Ref]) -> Ref:
        if faces not in self._made:
            self._made[faces] = make()
        return self._made[faces]

    def _of_face(self, face: Ref, face_id: str) -> Ref:
        return self._kept((face,), lambda: self._tied("SHAPE_ASPECT", face_id, face))

    def _tied(self, kind: str, name: str, face: Ref) -> Ref:
        aspect = self._entities.add(kind, name, "", self._model.shape, True)
        self._entities.add("GEOMETRIC_ITEM_SPECIFIC_USAGE", "", "", aspect, self._model.solid, face)
        return aspect

    def _datum_feature(self, target: Target) -> Ref:
        faces = self._faces(target)
        if len(faces) == 1:
            return self._kept(faces, lambda: self._tied("DATUM_FEATURE", target.faces[0], faces[0]))
        return self._kept(faces, lambda: self._datum_of_pieces(target))

    def _datum_of_pieces(self, target: Target) -> Ref:
        """Return a datum feature that another cavity cut into several faces."""
        aspect = (target.name, "", self._model.shape, True)
        whole = self._entities.add_together(COMPOSITE_SHAPE_ASPECT=(), DATUM_FEATURE=(), SHAPE_ASPECT=aspect)
        self._compose(whole, self._members(target))
        return whole

    def _group(self, target: Target) -> Ref:
        kind = PATTERN if target.pattern else PIECES
        whole = self._entities.add("COMPOSITE_GROUP_SHAPE_ASPECT", kind, target.name, self._model.shape, True)
        self._compose(whole, self._members(target))
        return whole

    def _members(self, target: Target) -> list[Ref]:
        return [self._of_face(face, face_id) for face_id in target.faces for face in self._model.faces[face_id]]

    def _compose(self, whole: Ref, parts: Iterable[Ref]) -> None:
        for part in parts:
            self._entities.add("SHAPE_ASPECT_RELATIONSHIP", "", "", whole, part)

    def _axis(self, aspect: Ref, name: str) -> Ref:
        """Return the middle of a feature, derived from its surface."""
        if aspect not in self._axes:
            middle = self._entities.add("CENTRE_OF_SYMMETRY", f"axis of {name}", "", self._model.shape, False)
            self._entities.add("SHAPE_ASPECT_DERIVING_RELATIONSHIP", "", "", middle, aspect)
            self._axes[aspect] = middle
        return self._axes[aspect]
