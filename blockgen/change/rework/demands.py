"""What the new design asks of surfaces that no cut makes anew: held closer than they were made to, or coated."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from blockgen.change.rework.data import Operation
from blockgen.change.rework.screen import Made
from blockgen.outputs import show
from blockgen.plan import Annotation, Feature, Plan

_HAIR = 1e-9
_DATUM_FACES = {"A": "bearing_seat", "B": "bearing_bore", "C": "base"}
_ZONES = frozenset({"flatness", "perpendicularity", "parallelism", "coaxiality", "position", "texture"})
_SIZES = frozenset({"size", "distance", "depth", "radius"})
_ALONG_THE_SHAFT = frozenset({"motor_seat", "window"})


def measuring(old: Plan, target: Plan, made: Sequence[Made], cuts: Mapping[str, float]) -> Iterator[Operation]:
    """Yield what must be measured before anything is cut, as the block was made to wider limits.

    Args:
        old: Plan of the block that exists.
        target: Plan of the block that it becomes.
        made: How each feature of the target comes about.
        cuts: What is cut off each outside face, mm.
    """
    anew = surfaces_cut(made, cuts)
    before = {mark.id: mark for mark in old.annotations}
    closer = [
        (before[mark.id], mark)
        for mark in target.annotations
        if mark.id in before and not _made_anew(mark, anew) and _is_closer(before[mark.id], mark)
    ]
    if closer:
        listed = ", ".join(f"{_name(mark)} {_limits(mark)} (made to {_limits(was)})" for was, mark in closer)
        text = f"measure first what is held closer now and not cut anew, go on only where it holds: {listed}"
        yield Operation("measure", text, {mark.id: _limits(mark) for _, mark in closer})


def surfaces_cut(made: Sequence[Made], cuts: Mapping[str, float]) -> frozenset[str]:
    """Return features, groups and outside faces that are cut anew."""
    todo = [
        each.feature for each in made if each.state != "same" and (each.feature.kind != "bore" or seat_is_cut(each))
    ]
    names = {name for feature in todo for name in (feature.id, feature.group)}
    return frozenset(names | {face for face, cut in cuts.items() if cut > _HAIR})


def seat_is_cut(made: Made) -> bool:
    """Tell whether the seat of a pilot is bored wider, to other limits or deeper, not only what lies behind it."""
    before, after = made.old, made.feature
    if before is None or before.diameter < after.diameter - _HAIR or has_other_limits(before, after):
        return True
    return before.depth < after.depth - _HAIR


def has_other_limits(before: Feature, after: Feature) -> bool:
    """Tell whether two bores are held to other limits."""
    return (before.upper, before.lower) != (after.upper, after.lower)


def _made_anew(mark: Annotation, anew: frozenset[str]) -> bool:
    """Tell whether a cut decides about a characteristic: its surface is cut, or what it is measured from."""
    datums = {_DATUM_FACES[letter] for letter in mark.datums if letter in _DATUM_FACES}
    if mark.kind == "distance" and mark.feature in _ALONG_THE_SHAFT:
        datums.add("bearing_seat")
    return bool(anew & {mark.feature, *datums})


def _is_closer(was: Annotation, now: Annotation) -> bool:
    if was.value is None or now.value is None:
        return False
    if now.kind in _ZONES:
        return now.value < was.value - _HAIR
    if now.kind not in _SIZES or None in (was.upper, was.lower, now.upper, now.lower):
        return False
    upper, lower = (now.upper or 0.0) - (was.upper or 0.0), (now.lower or 0.0) - (was.lower or 0.0)
    return abs(now.value - was.value) <= _HAIR and (upper < -_HAIR or lower > _HAIR)


def _name(mark: Annotation) -> str:
    if mark.kind in _ZONES:
        return f"{mark.kind} of the {show.plain_id(mark.feature)}"
    return show.plain_id(mark.id).replace(",", "")


def _limits(mark: Annotation) -> str:
    value = show.number(mark.value or 0.0)
    if mark.kind == "texture":
        return f"Ra {value}"
    if mark.kind in _ZONES:
        return f"{'diam ' if mark.diametral else ''}{value}"
    return f"{value} {show.deviations(mark.fit, mark.upper, mark.lower)}"


def coating(old: Plan, target: Plan, *, cut: bool) -> Iterator[Operation]:
    """Yield the coating that the new design asks for, where the block has none or loses part of it.

    Args:
        old: Plan of the block that exists.
        target: Plan of the block that it becomes.
        cut: Whether the block is cut.
    """
    had, asked = _coat(old), _coat(target)
    if asked and (cut or had != asked):
        strip = "strip the old coating, then " if had and not cut else ""
        yield Operation(
            "coat", f"{strip}coat: {asked}; mask bores, seats, base face, threads and dowel holes", {"finish": asked}
        )


def _coat(plan: Plan) -> str:
    """Return finish and thickness in words; empty for bare metal."""
    finish, thick = plan.text("block.finish"), plan.number("block.coating_thickness")
    name = "" if finish in ("", "none") else finish
    return show.joined((name or ("coating" if thick else ""), f"{thick:g} mm thick" if thick else ""))
