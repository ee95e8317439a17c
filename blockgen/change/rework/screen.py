"""The coarse screen, without the kernel: bodies, bores, windows and holes of two plans against each other."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import product
from typing import Literal

from blockgen.change.rework.data import Leftover, Reason
from blockgen.change.rework.fit import moved_feature
from blockgen.change.rework.leftover import axis_index, concentric, cut_back, leftover, radius_at, widest
from blockgen.mechanics.ligaments import FACES
from blockgen.plan import Body, Feature, Plan, Pocket
from blockgen.standards.threads import thread

State = Literal["same", "grown", "new"]
ENDS = ("bearing", "motor")
_HAIR = 1e-6
_STEP = 1e-4
_HOLES = frozenset({"tapped_hole", "clearance_hole", "counterbored_hole", "dowel_hole"})


@dataclass(frozen=True, slots=True)
class Made:
    """How a feature of the new block comes about: it is there already, grown from an old one, or new."""

    feature: Feature
    state: State
    old: Feature | None = None


@dataclass(frozen=True, slots=True)
class Screen:
    """What the two plans show without a solid.

    Args:
        reasons: What stands against it.
        leftovers: Cavities that stay without use, or wider or deeper than needed.
        made: Every feature of the new block.
        staying: Cavities of the old plan that may stay open, in the old block's coordinates.
    """

    reasons: tuple[Reason, ...]
    leftovers: tuple[Leftover, ...]
    made: tuple[Made, ...]
    staying: tuple[Feature, ...]


def faced(old: Plan, new: Body, shift: float) -> dict[str, float]:
    """Return what is cut off each outside face, mm; negative where something would have to be added."""
    side = (old.body.width - new.width) / 2
    cuts = {
        "bearing_seat": shift,
        "motor_seat": old.body.length - shift - new.length,
        "side_minus_y": side,
        "side_plus_y": side,
        "top": old.body.height - new.height,
        "base": 0.0,
    }
    return {face: round(cut, 9) for face, cut in cuts.items()}


def screen(old: Plan, target: Plan, shift: float) -> Screen:
    """Compare two plans without a solid.

    Args:
        old: Plan of the block that exists.
        target: Plan of the block that it shall become.
        shift: The new bearing seat plane lies at this x of the old block, mm.
    """
    cuts = faced(old, target.body, shift)
    there = {f.id: _as_left(f, cuts, shift) for f in old.features}
    reasons = [*_outside(old, target, cuts)]
    leftovers: list[Leftover] = []
    made = [_made(feature, there) for feature in target.features]
    used = {each.old.id for each in made if each.old is not None}
    staying: set[str] = set()
    for each in made:
        if each.old is not None:
            told, left = _judged(each, target)
            reasons += told
            leftovers += left
            staying |= {entry.id for entry in left if entry.sound}
    for feature in old.features:
        now = there[feature.id]
        if feature.id not in used and now is not None:
            told, left = _unused(now, target)
            reasons += told
            leftovers += left
            staying |= {entry.id for entry in left if entry.sound}
    kept = tuple(f for f in old.features if f.id in staying)
    return Screen(tuple(reasons), tuple(leftovers), tuple(made), kept)


def _as_left(feature: Feature, cuts: dict[str, float], shift: float) -> Feature | None:
    """Return an old cavity in the new block's coordinates, its face cut back; None where nothing is left."""
    here = moved_feature(feature, -shift)
    return here if feature.pocket is not None else cut_back(here, cuts.get(feature.face, 0.0))


def _outside(old: Plan, target: Plan, cuts: dict[str, float]) -> Iterator[Reason]:
    """Yield where the outside would have to grow."""
    names = {
        "bearing_seat": "at the bearing end", "motor_seat": "at the motor end", "side_plus_y": "on each side",
        "top": "on top",
    }  # fmt: skip
    for face, name in names.items():
        if cuts[face] < -_HAIR:
            yield Reason("grow", f"{-cuts[face]:g} mm would have to be added {name}", -cuts[face], "mm", face)
    before, after = old.text("block.material"), target.text("block.material")
    if before != after:
        text = f"the block is of {before or 'a material not named'} and shall be of {after or 'one not named'}"
        yield Reason("material", text, None, "", "block")
    yield from _of_the_shaft(old, target)
    for name, had, asked in (
        ("edge chamfer", old.body.edge_chamfer, target.body.edge_chamfer),
        ("rounding of the upright edges", old.body.outer_fillet, target.body.outer_fillet),
    ):
        if had > asked + _HAIR and not _edges_cut_off(cuts, had):
            text = f"the {name} is {had:g} mm and shall be {asked:g} mm: the edges lack material"
            yield Reason("grow", text, had - asked, "mm", "edges")


def _of_the_shaft(old: Plan, target: Plan) -> Iterator[Reason]:
    """Yield that the shaft would have to move up or down."""
    height = target.number("shaft_height") - old.number("shaft_height")
    if abs(height) > _HAIR:
        before, after = old.number("shaft_height"), target.number("shaft_height")
        text = f"the shaft stands at {before:g} mm and shall stand at {after:g} mm: both bores move"
        yield Reason("height_of_shaft", text, abs(height), "mm", "base")


def _edges_cut_off(cuts: dict[str, float], size: float) -> bool:
    return all(cuts[face] >= size for face in ("side_plus_y", "top", "bearing_seat", "motor_seat"))


def _made(feature: Feature, there: dict[str, Feature | None]) -> Made:
    """Return how a feature of the new block comes about."""
    if feature.kind not in _HOLES:
        before = there.get(feature.id)
        if before is None:
            return Made(feature, "new")
        return Made(feature, "same" if _alike(before, feature) else "grown", before)
    for before in there.values():
        if before is not None and concentric(before, feature):
            return Made(feature, "same" if _alike(before, feature) else "grown", before)
    return Made(feature, "new")


def _alike(first: Feature, second: Feature) -> bool:
    """Tell whether an old cavity holds a new one already, so that nothing is cut."""
    if first.pocket is not None or second.pocket is not None:
        return _same_pocket(first.pocket, second.pocket)
    threaded = (first.thread_depth or 0.0) >= (second.thread_depth or 0.0) - _HAIR
    finer = first.kind != "bore" or _same_size(first, second)
    return first.thread == second.thread and threaded and finer and not _sticks_out(second, first)


def _same_size(first: Feature, second: Feature) -> bool:
    return abs(first.diameter - second.diameter) <= _HAIR and first.fit == second.fit


def _same_pocket(first: Pocket | None, second: Pocket | None) -> bool:
    if first is None or second is None:
        return False
    corners = zip((*first.low, *first.high), (*second.low, *second.high), strict=True)
    sharp = first.corner_radius <= second.corner_radius + _HAIR
    return first.axis == second.axis and sharp and all(abs(a - b) <= _HAIR for a, b in corners)


def _depths(*features: Feature) -> list[float]:
    """Return the places just inside each end of every piece, mm."""
    ends = {d for f in features for s in f.profile for d in (s.start, s.end)}
    return sorted({max(d + e, 0.0) for d in ends for e in (-_STEP, _STEP)})


def _sticks_out(inner: Feature, outer: Feature) -> list[float]:
    """Return the depths in mm at which one turned cavity is wider than another, the chamfer of its mouth left out."""
    mouth = max((s.end for s in inner.profile if s.part == "mouth_chamfer"), default=0.0)
    return [d for d in _depths(inner, outer) if d > mouth and radius_at(inner, d) > radius_at(outer, d) + _STEP]


Judged = tuple[list[Reason], list[Leftover]]


def _judged(made: Made, target: Plan) -> Judged:
    """Judge an old cavity that the new block uses again."""
    before, after = made.old, made.feature
    if before is None:
        return [], []
    if after.pocket is not None or before.pocket is not None:
        return _window(before, after), []
    return _bore(before, after, target) if after.kind == "bore" else _hole(before, after, target)


def _window(before: Feature, after: Feature) -> list[Reason]:
    """Return where an old window is larger than the new one inside the block."""
    first, second = before.pocket, after.pocket
    if first is None or second is None:
        return [Reason("window", f"{before.call_out} stands where {after.call_out} shall be", None, "mm", before.id)]
    if first.axis != second.axis:
        return [Reason("window", "the window is cut the other way", None, "mm", before.id)]
    over = [
        *((second.low[i] - first.low[i], f"at its low {name} side") for i, name in enumerate("xyz")),
        *((first.high[i] - second.high[i], f"at its high {name} side") for i, name in enumerate("xyz")),
    ]
    across = 2 if first.axis == "z" else 1
    most = [(o, w) for k, (o, w) in enumerate(over) if o > _HAIR and not (k % 3 == across and _runs_out(first, k))]
    found = [Reason("window", f"the {before.id} is {o:g} mm too large {w}", o, "mm", before.id) for o, w in most]
    lost = 0.0 if found else corner_lacks(first, second)
    if lost > _HAIR:
        radii = f"{first.corner_radius:g} mm and shall be {second.corner_radius:g} mm"
        text = f"the corner radius of the {before.id} is {radii}: {lost:.3g} mm of the corner would have to be added"
        found.append(Reason("window", text, round(lost, 6), "mm", before.id))
    return found


def corner_lacks(first: Pocket, second: Pocket) -> float:
    """Return by how much in mm a corner of an old window reaches beyond the rounder one of a new window about it."""
    across = 1 if first.axis == "z" else 2
    grown = [(first.low[i] - second.low[i], second.high[i] - first.high[i]) for i in (0, across)]
    inner, outer = first.corner_radius, second.corner_radius
    if inner >= outer:
        return 0.0
    centres = (math.hypot(*(max(outer - by - inner, 0.0) for by in both)) for both in product(*grown))
    return max(apart + inner - outer for apart in centres)


def _runs_out(pocket: Pocket, side: int) -> bool:
    """Tell whether a window is open at one of its ends along its own axis: there its box means nothing."""
    return pocket.open_low if side < len("xyz") else pocket.open_high


def _bore(before: Feature, after: Feature, target: Plan) -> Judged:
    """Judge an old bore against the new one: wider never, deeper where a shoulder stays."""
    end = after.id.removesuffix("_bore")
    if before.diameter > after.diameter + _HAIR:
        missing = (before.diameter - after.diameter) / 2
        text = f"the {end} bore is {before.diameter:g} and shall be {after.diameter:g}: {missing:g} mm on the radius"
        return [Reason("bore", f"{text} would have to be added", missing, "mm", before.id)], []
    if abs(before.diameter - after.diameter) <= _HAIR and (before.upper or 0.0) > (after.upper or 0.0) + _HAIR:
        text = f"the {end} bore was made to {before.call_out} and shall be {after.call_out}: it may be too wide"
        return [Reason("bore", text, (before.upper or 0.0) - (after.upper or 0.0), "mm", before.id)], []
    if not _sticks_out(before, after):
        return [], []
    return _deeper_bore(before, after, target, end)


def _deeper_bore(before: Feature, after: Feature, target: Plan, end: str) -> Judged:
    """Judge an old bore that reaches further behind the pilot than the new one."""
    wall, shoulder = target.number(f"{end}_wall"), target.number("practice.bore_shoulder")
    deeper = before.depth > after.depth + _HAIR
    stepped = deeper and before.depth < wall - _HAIR
    left = wall - before.depth if stepped else wall - after.depth
    sound = not stepped or left >= shoulder - _HAIR
    what = f"{before.diameter:g} stays {before.depth:g} mm deep" if deeper else "the opening behind it stays wider"
    note = f"{what}; the pilot sits {after.depth:g} mm deep as planned"
    entry = Leftover(
        before.id, before.kind, before.face, before.position, before.call_out, round(left, 4), shoulder,
        "window", sound, note,
    )  # fmt: skip
    text = f"only {left:g} mm would be left behind the {end} bore, {shoulder:g} mm are asked for"
    return ([] if sound else [Reason("pilot", text, shoulder - left, "mm", before.id)]), [entry]


def _hole(before: Feature, after: Feature, target: Plan) -> Judged:
    """Judge an old hole on the axis of a new one: it must vanish in it, or may be deeper."""
    if before.thread and after.thread and before.thread != after.thread:
        major = thread(before.thread.rpartition("-")[0]).diameter
        if after.diameter < major - _STEP:
            text = f"{before.thread} stands where {after.thread} shall be cut: its thread is not drilled away"
            return [Reason("hole", text, major - after.diameter, "mm", after.id)], []
    out = _sticks_out(before, after)
    if not out:
        return [], []
    end = after.profile[-1].end
    if any(d < min(end, after.depth) - _STEP for d in out):
        over = max(radius_at(before, d) - radius_at(after, d) for d in out if d < end)
        text = f"{before.call_out} stands where {after.call_out} shall be: {over:.3g} mm too wide on the radius"
        return [Reason("hole", text, over, "mm", after.id)], []
    return _deeper_hole(before, after, target)


def _deeper_hole(before: Feature, after: Feature, target: Plan) -> Judged:
    """Judge an old hole that is deeper than the new one: its end keeps its walls to all else."""
    beyond = cut_back(before, after.profile[-1].end)
    others = [f for f in target.features if f.id != after.id]
    entry = None if beyond is None else _without(beyond, target, others)
    if entry is None:
        return [], []
    told = [] if entry.sound else [_too_near(entry)]
    return told, [entry]


def _without(hole: Feature, target: Plan, others: Sequence[Feature]) -> Leftover | None:
    entry = leftover(hole, replace(target, features=tuple(others)))
    return None if entry is None else replace(entry, note="used again; stays deeper than asked for")


def _unused(hole: Feature, target: Plan) -> Judged:
    """Judge an old cavity that the new block does not use."""
    if hole.kind not in _HOLES:
        return [Reason("window", f"{hole.call_out} is there and shall not be", None, "mm", hole.id)], []
    entry = leftover(hole, target)
    if entry is None or not _inside(hole, target.body):
        return [], []
    return ([] if entry.sound else [_too_near(entry)]), [entry]


def _inside(hole: Feature, body: Body) -> bool:
    """Tell whether any of a hole still lies in the block; the ends may have been cut off beside it."""
    reach = widest(hole) if axis_index(hole) != 0 else 0.0
    return -reach < hole.position[0] + _HAIR and hole.position[0] - _HAIR < body.length + reach


def _too_near(entry: Leftover) -> Reason:
    what, missing = f"the old {entry.id} ({entry.what})", round(entry.required - entry.wall, 4)
    asked = f"{entry.required:g} mm are asked for"
    if "contact ring" in entry.beside:
        text = f"{what} leaves {entry.wall:.3g} mm of the {entry.beside}, {asked}"
        return Reason("seat", text, missing, "mm", entry.id)
    through = "breaks out through" if entry.beside in FACES else "runs into"
    how = through if entry.wall <= 0 else f"leaves a wall of {entry.wall:.3g} mm to"
    return Reason("too_near", f"{what} {how} the new {entry.beside}, {asked}", missing, "mm", entry.id)
