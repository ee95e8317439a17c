"""What motor and bearing unit have in common: outline of the flange, holes, centring ring."""

from __future__ import annotations

from OCP.TopoDS import TopoDS_Shape, TopoDS_Wire

from blockgen.geometry.stand_ins.part import AssemblyPart, Colour
from blockgen.geometry.stand_ins.shapes import X, circle, moved, rectangle, rod, turned
from blockgen.plan import Plan
from blockgen.record import Ledger

Places = tuple[tuple[float, float], ...]

RING: Colour = (0.78, 0.70, 0.45)


def hole_places(plan: Plan, end: str) -> Places:
    """Return the centres (y, z) of a flange's holes from the shaft axis, mm, as the block has them."""
    origin = plan.frames[f"{end}_seat"].origin
    groups = (f"{end}_threads", f"{end}_holes")
    holes = [f.position for f in plan.features if f.group in groups]
    return tuple((y - origin[1], z - origin[2]) for _, y, z in holes)


def outline(sizes: Ledger, end: str, along: float) -> TopoDS_Wire:
    """Return the outline of a flange in the plane x = along, mm."""
    if sizes.text(f"{end}.flange_shape") == "round":
        return circle(sizes.number(f"{end}.flange_size") / 2, along)
    if sizes.known(f"{end}.flange_width") and sizes.known(f"{end}.flange_height"):
        return rectangle(sizes.number(f"{end}.flange_width"), sizes.number(f"{end}.flange_height"), along)
    side = sizes.number(f"{end}.flange_size")
    return rectangle(side, side, along)


def hole_tools(sizes: Ledger, end: str, places: Places, start: float, end_at: float) -> list[TopoDS_Shape]:
    """Return tools for the holes of a flange between two planes, mm."""
    key = "tap_drill" if sizes.text(f"{end}.fastening") == "tapped" else "bolt_hole"
    radius = sizes.number(f"{end}.{key}") / 2
    return [rod((start, y, z), X, radius, end_at - start) for y, z in places]


def centring_ring(plan: Plan, sizes: Ledger, end: str) -> tuple[AssemblyPart, ...]:
    """Return the loose ring that joins a recessed flange to its bore; nothing for a proud pilot."""
    if sizes.text(f"{end}.pilot_form") != "recessed" or sizes.text(f"{end}.pilot_direction") == "away":
        return ()
    into = 1.0 if end == "bearing" else -1.0
    deep, recess = sizes.number(f"{end}.pilot_length"), sizes.number(f"{end}.recess_depth")
    outer, inner = sizes.number(f"{end}.pilot_diameter") / 2, sizes.number(f"{end}.ring_inner_diameter") / 2
    low, high = sorted((into * deep, -into * recess))
    shape = turned(((low, inner), (low, outer), (high, outer), (high, inner)))
    name = f"centring ring {2 * outer:g} x {2 * inner:g} x {high - low:g}"
    place = moved(plan.frames[f"{end}_seat"].origin)
    group = "drive" if end == "motor" else "bearing"
    frame = f"centre of the {end} seat"
    return (AssemblyPart(f"{end}_centring_ring", name, group, shape, place, RING, stand_in=True, frame=frame),)
