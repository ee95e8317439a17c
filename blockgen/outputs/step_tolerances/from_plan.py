"""From the plan's characteristics to the records of the file."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from blockgen.outputs.step_tolerances.records import (
    CallOut,
    Datum,
    Distance,
    Record,
    Size,
    SizeName,
    Target,
    Texture,
    Tolerances,
    Zone,
)
from blockgen.outputs.step_tolerances.targets import edge_faces, ends_of, members, target_of
from blockgen.plan import Annotation, Plan

WORDS = "semantic text"
"""Name of the property for a call-out in words."""


def tolerances_of(plan: Plan, present: Sequence[str]) -> Tolerances:
    """Return the tolerances of a plan.

    Args:
        plan: Plan with its characteristics.
        present: Ids of the faces that the solid has. One that is not there is left out; so is a characteristic without
            any face, and a zone without one of its datums.
    """
    found, lost = [], []
    for note in plan.annotations:
        make = _MAKERS.get(note.kind)
        record = _kept(make(note, plan, present), frozenset(present)) if make else None
        found += [record] if record else []
        lost += [] if record else [note.id]
    letters = {record.letter for record in found if isinstance(record, Datum)}
    hanging = [record.id for record in found if isinstance(record, Zone) and not set(record.datums) <= letters]
    records = tuple(record for record in found if record.id not in hanging)
    general = plan.text("drawing.general_tolerance") if records else ""
    return Tolerances(records, general, (*lost, *hanging))


def _kept(record: Record, present: frozenset[str]) -> Record | None:
    """Return the record without the faces that are not there, or None where none is left."""
    if isinstance(record, Distance):
        start, end = _there(record.start, present), _there(record.end, present)
        return replace(record, start=start, end=end) if start and end else None
    if record.target is None:
        return record
    target = _there(record.target, present)
    return replace(record, target=target) if target else None


def _there(target: Target, present: frozenset[str]) -> Target | None:
    faces = tuple(face for face in target.faces if face in present)
    return replace(target, faces=faces) if faces else None


def _datum(note: Annotation, plan: Plan, _: Sequence[str]) -> Record:
    return Datum(note.id, note.text, target_of(note, plan))


def _size(note: Annotation, plan: Plan, _: Sequence[str]) -> Record:
    upper, lower = _own_limits(note)
    name: SizeName = "radius" if note.kind == "radius" else "diameter"
    return Size(note.id, name, target_of(note, plan), note.value or 0.0, upper, lower, note.fit)


def _distance(note: Annotation, plan: Plan, _: Sequence[str]) -> Record:
    """Return a distance; what no two faces define becomes a call-out of the hole."""
    ends = ends_of(note, plan)
    if ends is None:
        return _measured("drilled depth", note, plan, {})
    upper, lower = _own_limits(note)
    return Distance(note.id, *ends, note.value or 0.0, upper, lower)


def _own_limits(note: Annotation) -> tuple[float | None, float | None]:
    return (None, None) if note.general else (note.upper, note.lower)


def _zone(note: Annotation, plan: Plan, _: Sequence[str]) -> Record:
    return Zone(note.id, note.kind, target_of(note, plan), note.value or 0.0, note.datums, note.diametral)


def _texture(note: Annotation, plan: Plan, _: Sequence[str]) -> Record:
    return Texture(note.id, None if note.feature == "block" else target_of(note, plan), note.value or 0.0)


def _thread(note: Annotation, plan: Plan, _: Sequence[str]) -> Record:
    first = members(plan, note.feature)[0]
    texts = {"designation": first.thread or ""}
    if "{}" not in note.text:
        return CallOut(note.id, "thread", target_of(note, plan), {**texts, "depth": "through"}, {})
    return _measured("thread", note, plan, texts)


def _measured(name: str, note: Annotation, plan: Plan, texts: Mapping[str, str]) -> Record:
    """Return a call-out with a depth, and its deviations where they are its own."""
    upper, lower = _own_limits(note)
    lengths = {"depth": note.value, "upper deviation": upper, "lower deviation": lower}
    given = {key: value for key, value in lengths.items() if value is not None}
    return CallOut(note.id, name, target_of(note, plan), texts, given)


def _words(note: Annotation, plan: Plan, present: Sequence[str]) -> Record:
    target = edge_faces(note, plan, present) if note.kind == "chamfer" else target_of(note, plan)
    return CallOut(note.id, WORDS, target, {note.id: note.text.replace("{}", f"{note.value or 0.0:g}")}, {})


_FORM = ("flatness", "perpendicularity", "parallelism", "coaxiality", "position")
_Maker = Callable[[Annotation, Plan, Sequence[str]], Record]
_MAKERS: Mapping[str, _Maker] = {
    "datum": _datum,
    "size": _size,
    "radius": _size,
    "distance": _distance,
    "depth": _distance,
    "thread": _thread,
    "texture": _texture,
    "chamfer": _words,
    "note": _words,
    **dict.fromkeys(_FORM, _zone),
}
