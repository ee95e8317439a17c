"""What the shop does to the old block, in its words and in order, with the values of the target plan."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from blockgen.change.rework.data import Operation, Value
from blockgen.change.rework.demands import coating, has_other_limits, measuring, seat_is_cut
from blockgen.change.rework.screen import Made, faced
from blockgen.plan import Feature, Plan
from blockgen.sizing.mating import circle_positions

_HAIR = 1e-6
_FACES = {
    "bearing_seat": "bearing seat", "motor_seat": "motor seat", "top": "top", "base": "base face",
    "side_plus_y": "side +y", "side_minus_y": "side -y",
}  # fmt: skip


def operations(old: Plan, target: Plan, made: Sequence[Made], shift: float) -> tuple[Operation, ...]:
    """Return the operations: what is measured first, then outside, window, bores, holes, edges, and the coating.

    Args:
        old: Plan of the block that exists.
        target: Plan of the block that it becomes.
        made: How each feature of the target comes about.
        shift: What is faced off the bearing end, mm.
    """
    cuts = faced(old, target.body, shift)
    outside = [*_facing(old, target, cuts), *_milling(target, cuts)]
    todo = [each for each in made if each.state != "same"]
    inside = [
        *(op for each in todo if each.feature.pocket is not None for op in _pocket(each)),
        *(op for each in todo if each.feature.kind == "bore" for op in _bore(each)),
        *_holes([e for e in todo if e.feature.pocket is None and e.feature.kind != "bore"], target),
    ]
    cut = [*outside, *inside, *_edges(old, target, anew=bool(outside or inside))]
    return (*measuring(old, target, made, cuts), *cut, *coating(old, target, cut=bool(cut)))


def _facing(old: Plan, target: Plan, cuts: dict[str, float]) -> Iterator[Operation]:
    for face, name in (("bearing_seat", "bearing end"), ("motor_seat", "motor end")):
        cut = cuts[face]
        if cut > _HAIR:
            length = target.body.length
            text = f"face {cut:g} mm off the {name}; length {old.body.length:g} becomes {length:g}"
            yield Operation("face", text, {"off": cut, "length": length})


def _milling(target: Plan, cuts: dict[str, float]) -> Iterator[Operation]:
    if cuts["side_plus_y"] > _HAIR:
        cut, width = cuts["side_plus_y"], target.body.width
        yield Operation("mill", f"mill {cut:g} mm off each side; width {width:g}", {"off": cut, "width": width})
    if cuts["top"] > _HAIR:
        cut, height = cuts["top"], target.body.height
        yield Operation("mill", f"mill {cut:g} mm off the top; height {height:g}", {"off": cut, "height": height})


def _pocket(made: Made) -> Iterator[Operation]:
    """Yield what is milled in a window or relief."""
    feature, before = made.feature, made.old
    pocket = feature.pocket
    if pocket is None:
        return
    if before is None or before.pocket is None:
        yield Operation("window", f"mill the {feature.call_out}", {"diameter": feature.diameter}, (feature.id,))
        return
    low, high = before.pocket.low[0] - pocket.low[0], pocket.high[0] - before.pocket.high[0]
    ways = [f"{v:g} mm towards the {end}" for v, end in ((low, "bearing"), (high, "motor")) if v > _HAIR]
    size = f"{feature.id} to {feature.call_out.removeprefix('window ').removeprefix('relief ')}"
    text = f"mill the {size}" + (f": {' and '.join(ways)}" if ways else "")
    if pocket.corner_radius < before.pocket.corner_radius - _HAIR and not ways:
        text = f"mill the corners of the {feature.id} to radius {pocket.corner_radius:g}"
        yield Operation("window", text, {"corner_radius": pocket.corner_radius}, (feature.id,))
    elif ways or not _only_shorter(made):
        yield Operation("window", text, {"towards_bearing": low, "towards_motor": high}, (feature.id,))


def _only_shorter(made: Made) -> bool:
    """Tell whether a pocket only ends where the block ends now."""
    first, second = made.old.pocket if made.old else None, made.feature.pocket
    if first is None or second is None:
        return False
    ends = zip((*first.low, *second.high), (*second.low, *first.high), strict=True)
    return all(wide <= narrow + _HAIR for wide, narrow in ends)


def _bore(made: Made) -> Iterator[Operation]:
    """Yield the boring of one end: pilot bore and what is behind it."""
    after, before = made.feature, made.old
    end = after.id.removesuffix("_bore")
    limits = f"{after.fit or ''} ({after.upper or 0:+.3f}/{after.lower or 0:+.3f})".strip()
    depth = "through" if after.depth >= after.profile[-1].end - _HAIR else f"depth {after.depth:g}"
    wider = before is None or before.diameter < after.diameter - _HAIR or has_other_limits(before, after)
    deeper = not wider and seat_is_cut(made)
    values: dict[str, Value] = {"diameter": after.diameter, "depth": after.depth, "fit": after.fit or ""}
    if wider:
        yield Operation("bore", f"bore the {end} seat to {after.diameter:g} {limits}, {depth}", values, (after.id,))
    elif deeper:
        yield Operation("bore", f"deepen the {end} seat {after.diameter:g} {limits} to {depth}", values, (after.id,))
    behind, was = 2 * after.profile[-1].end_radius, 2 * before.profile[-1].end_radius if before else 0.0
    if behind > was + _HAIR and depth != "through":
        yield Operation(
            "bore", f"open the hole behind the {end} seat to {behind:g}, through", {"diameter": behind}, (after.id,)
        )


def _holes(made: Sequence[Made], target: Plan) -> Iterator[Operation]:
    """Yield the holes by groups of alike ones."""
    groups: dict[tuple[str, str, str], list[Made]] = {}
    for each in made:
        groups.setdefault((each.feature.group, each.state, each.feature.call_out), []).append(each)
    for (_, state, _), members in sorted(groups.items(), key=lambda item: item[1][0].feature.id):
        feature = members[0].feature
        where = _where([m.feature for m in members], target)
        what, values = hole_words(feature)
        if state == "grown":
            before = members[0].old
            deeper = feature.thread and before is not None and before.thread == feature.thread
            verb = "deepen" if deeper else "open up"
            text, name = f"{verb} {len(members)} holes to {what}, {where}", "deepen"
        else:
            text, name = (
                f"{_verb(feature)} {len(members)} x {what}, {where}",
                "drill_tap" if feature.thread else "drill",
            )
        yield Operation(name, text, {"count": len(members), **values}, tuple(m.feature.id for m in members))


def _verb(feature: Feature) -> str:
    return "drill and tap" if feature.thread else "drill"


def hole_words(feature: Feature) -> tuple[str, dict[str, Value]]:
    """Return what a hole is, in the shop's words, and its figures."""
    if feature.thread:
        depth = "through" if feature.through else f"depth {feature.thread_depth:g} (drill {feature.depth:g})"
        values: dict[str, Value] = {
            "thread": feature.thread,
            "depth": feature.thread_depth or 0.0,
            "drill_depth": feature.depth,
        }
        return f"{feature.thread}, {depth}", values
    return feature.call_out.removeprefix("diam "), {"diameter": feature.diameter, "depth": feature.depth}


def _where(features: Sequence[Feature], target: Plan) -> str:
    """Return where holes stand: on a circle about the shaft where they do, else their places."""
    face = _FACES.get(features[0].face, features[0].face)
    if features[0].face.endswith("_seat"):
        places = [(f.position[1], f.position[2] - target.number("shaft_height")) for f in features]
        return f"{circle_words(places)}, {face}"
    places = [(f.position[0], f.position[1]) for f in features]
    listed = ", ".join(f"({x:.5g}, {y:.5g})" for x, y in places)
    return f"from the {face} at x, y = {listed}"


def circle_words(places: Sequence[tuple[float, float]]) -> str:
    """Return places (y, z) about the axis as a bolt circle with its first angle, else as a list, mm and deg."""
    radius = math.hypot(*places[0])
    start = min(math.degrees(math.atan2(z, y)) % 360 for y, z in places)
    even = circle_positions(2 * radius, len(places), start)
    left = [place for place in places if min(math.dist(place, other) for other in even) > 0.001]
    if not left and all(abs(math.hypot(*place) - radius) < 0.001 for place in places):
        return f"on circle {2 * radius:.5g} at {start:.4g} deg"
    return "at y, z = " + ", ".join(f"({y:.5g}, {z:.5g})" for y, z in places)


def _edges(old: Plan, target: Plan, *, anew: bool) -> Iterator[Operation]:
    """Yield what is done to edges: upright ones rounded more, outer ones and mouths broken wider, new ones broken."""
    radius, size, mouth = target.body.outer_fillet, target.body.edge_chamfer, target.number("block.hole_chamfer")
    if radius > old.body.outer_fillet + _HAIR:
        yield Operation("edges", f"round the upright edges to radius {radius:g}", {"radius": radius})
    outer = "all" if size > old.body.edge_chamfer + _HAIR or radius > old.body.outer_fillet + _HAIR else "new"
    mouths = "all " if mouth > old.number("block.hole_chamfer") + _HAIR else ""
    if anew or outer == "all" or mouths:
        text = f"break {outer} outer edges {size:g} mm, {mouths}hole mouths {mouth:g} mm, deburr"
        yield Operation("edges", text, {"chamfer": size})
