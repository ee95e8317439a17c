"""Characteristics of the block's outside, its window, its relief and its edges."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockgen.plan import Annotation, Feature, Pocket
from blockgen.record import Ledger
from blockgen.sizing.characteristic import with_limits
from blockgen.sizing.sources import CP


def outside(ledger: Ledger) -> Iterable[Annotation]:
    """Yield length, width and height, and where the shaft lies in them."""
    half = ledger.number("width") / 2
    ledger.decide("axis_to_side", half, "mm", "width / 2; shaft in the middle of the block", ("width",), CP)
    for key, face, where, reason in (
        ("length", "motor_seat", "length", "distance of the seats: grips and gap"),
        ("shaft_height", "bearing_bore.bore", "", "shaft to guide"),
        ("axis_to_side", "bearing_bore.bore", "", "places the shaft across the block"),
        ("width", "side_plus_y", "width", "room for flanges and base screws"),
        ("height", "top", "height", "room for the flanges"),
    ):
        covers = f"block.{where}" if where else f"bearing_bore.{key}"
        feature = face.split(".", maxsplit=1)[0]
        value = ledger.number(key)
        yield with_limits(
            ledger,
            Annotation(f"block.{key}", "distance", feature, face, value, covers=(covers,), ref=key, reason=reason),
        )


def window(ledger: Ledger, feature: Feature, box: Pocket) -> Iterable[Annotation]:
    """Yield what fixes the window: place and length along the shaft, place and width across, corners, floor."""
    across = 1 if box.axis == "z" else 2
    start, width = box.low[across] + (ledger.number("axis_to_side") if across == 1 else 0.0), box.high[across]
    low, high = ("side_minus_y", "side_plus_y") if across == 1 else ("low", "high")
    length = box.high[0] - box.low[0]
    for name, kind, part, value, key, reason in (
        ("position", "distance", "bearing_wall", box.low[0], "bearing_wall", "wall that carries the bearing unit"),
        ("length", "distance", "motor_wall", length, "window_length", "room for the coupling"),
        ("across", "distance", low, start, None, "wall beside the window"),
        ("width", "distance", high, width - box.low[across], "window_width", "room for coupling and keys"),
        ("corner_radius", "radius", "corner", box.corner_radius, "window_corner_radius", "cutter runs round"),
    ):
        text = "4 × R{}" if kind == "radius" else ""
        yield _of(ledger, "window", name, kind, feature.face_id(part), value, key, reason, text)
    if not box.open_low:
        yield _of(ledger, "window", "floor", "distance", "window.floor", box.low[2], "block.window_floor",
                  "floor under the coupling")  # fmt: skip


def relief(ledger: Ledger, feature: Feature, box: Pocket) -> Iterable[Annotation]:
    """Yield what fixes the relief of the base face."""
    reason = "the block stands on its two ends"
    for name, value, key in (
        ("position", box.low[0], None),
        ("length", box.high[0] - box.low[0], None),
        ("depth", feature.depth, "block.relief"),
    ):
        yield _of(ledger, "relief", name, "distance", "relief", value, key, reason)


def edges(ledger: Ledger, features: Sequence[Feature]) -> Iterable[Annotation]:
    """Yield fillet and chamfer of the outside, and the chamfers of the mouths, equal ones together."""
    fillet, chamfer = ledger.number("block.outer_fillet"), ledger.number("block.edge_chamfer")
    if fillet > 0:
        yield _of(ledger, "block", "outer_fillet", "radius", "outer_fillet", fillet, "block.outer_fillet",
                  "no sharp upright edges", "4 × R{}")  # fmt: skip
    if chamfer > 0:
        yield _of(ledger, "block", "edge_chamfer", "chamfer", "edges", chamfer, "block.edge_chamfer", "no sharp edges",
                  "outside edges {} × 45°")  # fmt: skip
    yield from _mouths(ledger, features)


def _mouths(ledger: Ledger, features: Sequence[Feature]) -> Iterable[Annotation]:
    legs: dict[float, list[str]] = {}
    for feature in features:
        if feature.profile and feature.profile[0].part == "mouth_chamfer":
            groups = legs.setdefault(round(feature.profile[0].end, 6), [])
            groups += [feature.group] if feature.group not in groups else []
    for number, (leg, groups) in enumerate(legs.items(), 1):
        names = "all" if len(legs) == 1 else ", ".join(group.replace("_", " ") for group in groups)
        text = f"mouths of {'bores and holes' if names == 'all' else names} {{}} × 45°"
        note = Annotation(
            f"mouths_{number}.chamfer", "chamfer", groups[0], f"{groups[0]}.mouth_chamfer", leg, text=text,
            covers=tuple(f"{group}.mouth" for group in groups), reason="parts enter without catching",
        )  # fmt: skip
        yield with_limits(ledger, note)


def _of(
    ledger: Ledger,
    feature: str,
    name: str,
    kind: str,
    face: str,
    value: float,
    ref: str | None,
    reason: str,
    text: str = "",
) -> Annotation:
    covers = (f"{feature}.{name}",)
    note = Annotation(f"{feature}.{name}", kind, feature, face, value, covers=covers, text=text, ref=ref, reason=reason)
    return with_limits(ledger, note)
