"""Which parts are meant to touch or to overlap: read from the plan, in this one place, never from the solids."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from blockgen.geometry.stand_ins.fasteners import PIN_CHAMFER
from blockgen.geometry.stand_ins.part import AssemblyPart
from blockgen.geometry.stand_ins.sizes import stand_in_sizes
from blockgen.mechanics.overlap import Piece, overlap_volume
from blockgen.plan import Feature, Plan
from blockgen.record import Ledger
from blockgen.standards.screws import cap_screw


@dataclass(frozen=True, slots=True)
class Contact:
    """One planned contact.

    Args:
        why: What holds the two together.
        overlaps: True where solids overlap by plan.
        volume: Common volume by plan, mm3; None where it cannot be told, as in a maker's model.
    """

    why: str
    overlaps: bool = False
    volume: float | None = None


Contacts = Mapping[frozenset[str], Contact]


def planned_contacts(plan: Plan, parts: Sequence[AssemblyPart]) -> Contacts:
    """Return the planned contacts by the ids of both parts.

    Args:
        plan: Sized plan.
        parts: Parts of its assembly.
    """
    ids = {part.id for part in parts}
    found = [*_seats(), *_centring(plan), *_screws(plan, parts), *_pins(plan)]
    return {frozenset((a, b)): contact for a, b, contact in found if a in ids and b in ids}


Found = tuple[str, str, Contact]


def _seats() -> Iterator[Found]:
    yield "block", "base_plate", Contact("base face on the base plate")
    yield "block", "bearing_unit", Contact("flange on its seat, pilot in its bore")
    yield "block", "motor", Contact("flange on its seat, pilot in its bore")
    yield "bearing_unit", "journal", Contact("screw seat in the bearing, shoulder against it")
    yield "coupling", "journal", Contact("journal in its hub")
    yield "coupling", "motor", Contact("motor shaft in its hub")


def _centring(plan: Plan) -> Iterator[Found]:
    for end, part in (("bearing", "bearing_unit"), ("motor", "motor")):
        if plan.text(f"{end}.pilot_form") == "recessed":
            ring = f"{end}_centring_ring"
            yield ring, "block", Contact("centring ring in its bore")
            yield ring, part, Contact("centring ring in the recess of the flange")


def _screws(plan: Plan, parts: Sequence[AssemblyPart]) -> Iterator[Found]:
    """Yield screws on their seats and in their threads, group by group."""
    groups, sizes = {fastener.where: fastener for fastener in plan.fasteners}, stand_in_sizes(plan)
    own = {part.id: part.stand_in for part in parts}
    if "base" in groups:
        below = plan.text("base.screw_from") == "below"
        under, threaded = ("base_plate", "block") if below else ("block", "base_plate")
        holes = _holes(plan.features, "base_threads") if below else _holes(plan.base_features, "plate_threads")
        engaged = (plan.number("base_engagement"), cap_screw(groups["base"].size).diameter / 2)
        for number, hole in enumerate(holes, 1):
            screw, ring = f"base_screw_{number}", f"base_washer_{number}"
            yield ring, under, Contact("washer on its seat")
            yield screw, ring if ring in own else under, Contact("head on its seat")
            yield screw, threaded, _thread(*engaged, hole, hole.thread_depth)
    for end, part in (("bearing", "bearing_unit"), ("motor", "motor")):
        if f"{end}_flange" in groups:
            radius = cap_screw(groups[f"{end}_flange"].size).diameter / 2
            yield from _flange(
                plan, sizes, (end, part), radius, makers=part in own and not own[part] and part != "block"
            )


def _flange(
    plan: Plan, sizes: Ledger, names: tuple[str, str], radius: float, *, makers: bool
) -> Iterator[Found]:  # fmt: skip
    """Yield the screws of a flange: head on the flange and thread in the block, or the other way round."""
    end, part = names
    length, thick = sizes.number(f"{end}_screw_length"), sizes.number(f"{end}.flange_thickness")
    if sizes.text(f"{end}.fastening") != "tapped":
        for number, hole in enumerate(_holes(plan.features, f"{end}_threads"), 1):
            screw = f"{end}_screw_{number}"
            yield screw, part, Contact("head on the flange")
            # Where the length is only a stand-in's, nothing is said against it but that it fits into the hole.
            deep = hole.thread_depth if plan.text(f"{end}_screw_length") else hole.depth
            yield screw, "block", _thread(length - thick, radius, hole, deep)
        return
    engaged = min(length - plan.number(f"{end}_wall"), thick)
    known = plan.text(f"{end}.flange_thickness") and not makers  # else nobody knows how deep the flange is tapped
    drill = sizes.number(f"{end}.tap_drill") / 2
    inside = overlap_volume(((0.0, radius, engaged, radius),), ((0.0, drill, thick, drill),))
    for number, _ in enumerate(_holes(plan.features, f"{end}_holes"), 1):
        screw = f"{end}_screw_{number}"
        yield screw, "block", Contact("head on the wall")
        yield screw, part, Contact("thread in the flange", overlaps=True, volume=inside if known else None)


def _holes(features: Sequence[Feature], group: str) -> list[Feature]:
    return [feature for feature in features if feature.group == group]


def _thread(engaged: float, radius: float, hole: Feature, deepest: float | None) -> Contact:
    """Return a screw in its tapped hole: by plan it overlaps no deeper than ``deepest`` mm, else the whole hole."""
    deep = min(engaged, hole.depth if deepest is None else deepest)
    volume = overlap_volume(((0.0, radius, deep, radius),), _pieces(hole))
    return Contact(f"thread in {hole.id}", overlaps=True, volume=volume)


def _pieces(hole: Feature) -> list[Piece]:
    return [(p.start, p.start_radius, p.end, p.end_radius) for p in hole.profile if p.end > p.start]


def _pins(plan: Plan) -> Iterator[Found]:
    """Yield the pins: each overlaps its pilot holes in block and plate, which are reamed together when fitted."""
    fastener = next((f for f in plan.fasteners if f.where == "dowel"), None)
    if fastener is None:
        return
    diameter = plan.number("dowel_diameter")
    length = fastener.length or 4 * diameter
    below = min(length / 2, plan.number("base.thickness"))
    for number, hole in enumerate(_holes(plan.features, "dowels"), 1):
        above = _mirrored(hole, plan.body.height)
        yield f"dowel_{number}", "block", _pin(diameter, length - below, above, hole.id)
    for number, hole in enumerate(_holes(plan.base_features, "plate_dowels"), 1):
        yield f"dowel_{number}", "base_plate", _pin(diameter, below, _pieces(hole), hole.id)


def _pin(diameter: float, deep: float, hole: Sequence[Piece], name: str) -> Contact:
    """Return a pin that stands in a hole by ``deep`` mm from the joint."""
    radius, chamfer = diameter / 2, PIN_CHAMFER * diameter
    body = ((0.0, radius, deep - chamfer, radius), (deep - chamfer, radius, deep, radius - chamfer))
    return Contact(f"pin in {name}", overlaps=True, volume=overlap_volume(body, hole))


def _mirrored(hole: Feature, height: float) -> list[Piece]:
    """Return the pieces of a hole counted from the base face upwards, for a mouth in the top."""
    if hole.axis[2] > 0:
        return _pieces(hole)
    return [(height - end, r1, height - start, r0) for start, r0, end, r1 in _pieces(hole)]
