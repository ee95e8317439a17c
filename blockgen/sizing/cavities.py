"""Features from sizes: turned profiles of bores and holes, boxes of window and relief. No decisions are made here."""

from __future__ import annotations

from dataclasses import dataclass, field

from blockgen.plan import Feature, Pocket, Point, Segment


@dataclass(frozen=True, slots=True)
class Place:
    """Where a cavity starts: id, group of alike features, outside face, mouth centre in mm, axis into the material."""

    id: str
    group: str
    face: str
    position: Point
    axis: Point
    keys: dict[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class BoreSize:
    """A pilot bore: diameter, depth, opening behind it, wall and chamfer leg in mm; fit with deviations."""

    diameter: float
    depth: float
    through_diameter: float
    wall: float
    chamfer: float
    fit: str
    upper: float
    lower: float


@dataclass(frozen=True, slots=True)
class TapSize:
    """A tapped hole: thread call-out, nominal and tap-drill diameter, full thread, drill depth and point in mm."""

    call_out: str
    nominal: float
    drill: float
    thread_depth: float
    drill_depth: float
    point: float


def _mouth(radius: float, chamfer: float) -> tuple[Segment, ...]:
    return (Segment("mouth_chamfer", 0.0, radius + chamfer, chamfer, radius),) if chamfer > 0 else ()


def bore(place: Place, size: BoreSize) -> Feature:
    """Return a pilot bore, stepped or plain, that opens into the window."""
    radius, inner = size.diameter / 2, size.through_diameter / 2
    depth = min(size.depth, size.wall)
    pieces = [*_mouth(radius, size.chamfer), Segment("bore", size.chamfer, radius, depth, radius)]
    if depth < size.wall:
        pieces.append(Segment("shoulder", depth, radius, depth, inner))
        pieces.append(Segment("through", depth, inner, size.wall, inner))
    text = f"{size.diameter:g} {size.fit} ({size.upper:+.3f}/{size.lower:+.3f})"
    if depth < size.wall:
        text += f" depth {depth:g}, then {size.through_diameter:g} through"
    else:
        text += " through"
    return Feature(
        place.id, "bore", place.group, place.face, place.position, place.axis, size.diameter, depth, through=True,
        profile=tuple(pieces), opens_into=(place.face, "window"), fit=size.fit, upper=size.upper, lower=size.lower,
        call_out=text, keys=place.keys,
    )  # fmt: skip


def tapped_hole(place: Place, size: TapSize, exit_into: str | None = None, exit_depth: float = 0.0) -> Feature:
    """Return a tapped hole, modelled by its tap drill.

    Args:
        place: Where it starts.
        size: Its sizes.
        exit_into: Cavity or face into which it breaks out, or None for a blind hole.
        exit_depth: Length of a through hole, mm.
    """
    radius = size.drill / 2
    chamfer = max((size.nominal - size.drill) / 2, 0.0)
    depth = exit_depth if exit_into else size.drill_depth
    pieces = [*_mouth(radius, chamfer), Segment("thread", chamfer, radius, depth, radius)]
    if exit_into is None:
        pieces.append(Segment("point", depth, radius, depth + size.point, 0.0))
    thread_depth = min(size.thread_depth, depth)
    text = f"{size.call_out} through" if exit_into else f"{size.call_out} depth {thread_depth:g} / drill {depth:g}"
    opens = (place.face, exit_into) if exit_into else (place.face,)
    return Feature(
        place.id, "tapped_hole", place.group, place.face, place.position, place.axis, size.drill, depth,
        through=exit_into is not None, profile=tuple(pieces), opens_into=opens, thread=size.call_out,
        thread_depth=exit_depth if exit_into else thread_depth, call_out=text, keys=place.keys,
    )  # fmt: skip


def clearance_hole(place: Place, diameter: float, length: float, chamfer: float, into: str) -> Feature:
    """Return a plain through hole of a diameter and length in mm."""
    radius = diameter / 2
    pieces = (*_mouth(radius, chamfer), Segment("hole", chamfer, radius, length, radius))
    return Feature(
        place.id, "clearance_hole", place.group, place.face, place.position, place.axis, diameter, length, through=True,
        profile=pieces, opens_into=(place.face, into), call_out=f"diam {diameter:g} through", keys=place.keys,
    )  # fmt: skip


def counterbored_hole(
    place: Place, diameter: float, head: tuple[float, float], length: float, chamfer: float, into: str
) -> Feature:
    """Return a through hole with a counterbore.

    Args:
        place: Where it starts.
        diameter: Through hole, mm.
        head: Counterbore diameter and depth, mm.
        length: Whole length, mm.
        chamfer: Leg at the mouth, mm.
        into: Face or cavity into which it breaks out.
    """
    wide, sunk = head[0] / 2, head[1]
    pieces = (
        *_mouth(wide, chamfer),
        Segment("counterbore", chamfer, wide, sunk, wide),
        Segment("seat", sunk, wide, sunk, diameter / 2),
        Segment("hole", sunk, diameter / 2, length, diameter / 2),
    )
    text = f"diam {diameter:g} through, counterbore diam {head[0]:g} depth {sunk:g}"
    return Feature(
        place.id, "counterbored_hole", place.group, place.face, place.position, place.axis, diameter, length,
        through=True, profile=pieces, opens_into=(place.face, into), counterbore_diameter=head[0],
        counterbore_depth=sunk, call_out=text, keys=place.keys,
    )  # fmt: skip


def dowel_hole(place: Place, pin: float, pilot: float, seat: float, length: float) -> Feature:
    """Return a dowel hole from above: relieved over the pin, then pilot-drilled for reaming with the base.

    Args:
        place: Where it starts.
        pin: Pin diameter, mm.
        pilot: Pilot-drilled diameter, mm.
        seat: Length of the pilot-drilled part, mm.
        length: Whole length, mm.
    """
    wide, sunk = pin / 2 + 0.5, length - seat
    pieces = (
        Segment("relief", 0.0, wide, sunk, wide),
        Segment("seat", sunk, wide, sunk, pilot / 2),
        Segment("hole", sunk, pilot / 2, length, pilot / 2),
    )
    text = (
        f"diam {pilot:g} through the lowest {seat:g}, diam {2 * wide:g} above; "
        f"ream diam {pin:g} H7 together with the base "
        "at assembly"
    )
    return Feature(
        place.id, "dowel_hole", place.group, place.face, place.position, place.axis, pilot, length, through=True,
        profile=pieces, opens_into=(place.face, "base"), counterbore_diameter=2 * wide, counterbore_depth=sunk,
        call_out=text, keys=place.keys,
    )  # fmt: skip


def window(box: Pocket, width: float, keys: dict[str, str]) -> Feature:
    """Return the window; its mouth lies in the top face, or in side_plus_y for a window across."""
    middle = tuple((low + high) / 2 for low, high in zip(box.low, box.high, strict=True))
    if box.axis == "z":
        face, position, axis = "top", (middle[0], middle[1], box.high[2]), (0.0, 0.0, -1.0)
        opens = ("top", "base") if box.open_low else ("top",)
        depth = box.high[2] - box.low[2]
    else:
        face, position, axis = "side_plus_y", (middle[0], box.high[1], middle[2]), (0.0, -1.0, 0.0)
        opens, depth = ("side_plus_y", "side_minus_y"), box.high[1] - box.low[1]
    bores = ("bearing_bore", "motor_bore")
    size = f"{box.high[0] - box.low[0]:g} x {width:g}"
    through = box.open_low
    text = f"window {size} {'through' if through else f'depth {depth:g}'}, corner radius {box.corner_radius:g}"
    return Feature(
        "window", "window", "window", face, position, axis, width, depth, through=through, pocket=box,
        opens_into=(*opens, *bores), call_out=text, keys=keys,
    )  # fmt: skip


def relief(box: Pocket, crossed: tuple[str, ...], keys: dict[str, str]) -> Feature:
    """Return the relief of the base face between its two end pads."""
    depth = box.high[2] - box.low[2]
    position = ((box.low[0] + box.high[0]) / 2, 0.0, 0.0)
    opens = ("base", "side_plus_y", "side_minus_y", *crossed)
    return Feature(
        "relief", "relief", "relief", "base", position, (0.0, 0.0, 1.0), box.high[0] - box.low[0], depth,
        through=True, pocket=box, opens_into=opens, call_out=f"relief depth {depth:g}", keys=keys,
    )  # fmt: skip
