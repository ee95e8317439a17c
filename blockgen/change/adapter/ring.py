"""A ring in the motor bore of the block: outside as the old bore, inside as the new pilot needs it."""

from __future__ import annotations

from dataclasses import replace

from blockgen.alignment.terms import terms_of
from blockgen.change.adapter.chain import clearance_term, coaxiality_term, share
from blockgen.change.adapter.data import Adapter, AdapterBody, ChainShare
from blockgen.change.adapter.marks import ring_annotations
from blockgen.change.adapter.practice import decided, ledger_of
from blockgen.change.rework.attempts import Tried, best_of, try_all
from blockgen.change.rework.fit import half_flange, specified
from blockgen.change.rework.operations import operations
from blockgen.errors import InfeasibleError, InputError
from blockgen.plan import Feature, Plan, Segment
from blockgen.record import Band, Ledger, Record
from blockgen.sizing.size import plan_from
from blockgen.sizing.sources import CP, cited
from blockgen.standards.iso286 import limits
from blockgen.standards.materials import material

MATERIAL = "S355J2"
_HAIR = 1e-6
_RUNOUTS = ("motor.spigot_runout", "motor.face_runout", "motor.shaft_runout")


def ring(old: Plan, new: Plan) -> Adapter | str:
    """Return the ring that lets the new pilot sit in the old bore, or why there is none."""
    ledger = ledger_of(old, new)
    refusal = _no_room(ledger, new)
    if refusal:
        return refusal
    found = _block_for_it(old, new, ledger)
    if isinstance(found, str):
        return found
    return _sized(old, new, ledger, *found)


def _no_room(ledger: Ledger, new: Plan) -> str:
    """Return why a ring is not possible whatever is done to the block; empty where it may be."""
    wide, narrow = ledger.number("old.motor_bore"), ledger.number("motor_bore")
    wall, least = (wide - narrow) / 2, ledger.number("adapter.ring_wall")
    if wall <= 0:
        return f"no ring: the old bore of {wide:g} mm is not wider than the new pilot bore of {narrow:g} mm"
    if wall < least - _HAIR:
        return f"no ring: its wall would be {wall:g} mm, {least:g} mm is the least"
    seat = min(half_flange(new)) - wide / 2 - ledger.number("practice.lead_in")
    asked = ledger.number("practice.contact_ring")
    if seat < asked - _HAIR:
        return (
            f"no ring: around the old bore of {wide:g} mm the new flange would have a seat of {seat:.3g} mm, "
            f"{asked:g} mm is the least"
        )
    return ""


def _block_for_it(old: Plan, new: Plan, ledger: Ledger) -> tuple[Tried, Plan] | str:
    """Return the old block with the new motor's holes, the ring standing for its pilot, or why there is none."""
    try:
        as_pilot = plan_from(_ring_as_pilot(old, new, ledger))
    except (InfeasibleError, InputError) as error:
        return f"no ring: {error}"
    best = best_of(try_all(old, as_pilot))
    if best.target is None or not best.feasible:
        return f"no ring: {'; '.join(dict.fromkeys(reason.text for reason in best.reasons[:2]))}"
    return best, best.target


def _ring_as_pilot(old: Plan, new: Plan, ledger: Ledger) -> dict[str, Record]:
    """Return the new spec with the ring's outside in place of the motor's pilot."""
    asked = specified(new)
    for key in ("motor.pilot_upper", "motor.pilot_lower"):
        asked.pop(key, None)
    plain = is_plain(old)
    length = _length(old, new, ledger)
    fit = ledger["adapter.ring_fit_plain" if plain else "adapter.ring_fit"]
    ring_values = {
        "motor.pilot_diameter": (ledger.number("old.motor_bore"), "mm"),
        "motor.pilot_fit": (fit.value, ""),
        "motor.pilot_length": (length, "mm"),
        "block.bore_fit": (old.text("block.bore_fit"), ""),
    }
    stood_for = {k: Record(k, v, unit, "given", "the ring's outside") for k, (v, unit) in ring_values.items()}
    kept = {key: replace(new.records[key], origin="given") for key in _RUNOUTS if key in new.records}
    return {**asked, **kept, **stood_for}


def is_plain(old: Plan) -> bool:
    """Tell whether the old motor bore goes through its wall without a shoulder."""
    return old.number("motor_through_bore") >= old.number("motor_bore") - _HAIR


def _length(old: Plan, new: Plan, ledger: Ledger) -> float:
    """Return the length of the ring, mm: as the old bore takes it, and no shorter than the new pilot."""
    if is_plain(old):
        return max(new.number("motor.pilot_length"), ledger.number("adapter.ring_length"))
    return max(
        old.number("motor_bore_depth") - ledger.number("practice.pilot_depth_extra"), new.number("motor.pilot_length")
    )


def _sized(old: Plan, new: Plan, ledger: Ledger, found: Tried, block: Plan) -> Adapter:
    outer, inner = old.number("motor_bore"), new.records["motor_bore"]
    fit = ledger.text("adapter.ring_fit_plain" if is_plain(old) else "adapter.ring_fit")
    _decide(ledger, outer, fit, block.number("motor.pilot_length"))
    edge, length = ledger.number("adapter.edge"), ledger.number("adapter.length")
    bore = new.number("motor_bore")
    hole = _through(bore, length, edge, inner)
    body = AdapterBody(length, outer, 0.0, 0.0, 0.0, 0.0, edge)
    todo = operations(old, block, found.found.made if found.found else (), found.attempt.shift)
    low, high = block.number("length_min"), block.number("length_max")
    return Adapter(
        kind="ring",
        title=f"ring {outer:g} / {bore:g} x {length:g} in the motor bore",
        pain=1 + len(todo) + (1 if found.attempt.turn else 0),
        why_pain=f"one turned part, {len(todo) or 'no'} operations on the block",
        records=decided(ledger),
        body=body,
        features=(hole,),
        annotations=ring_annotations(ledger, hole),
        fasteners=tuple(f for f in block.fasteners if f.where == "motor_flange"),
        operations=todo,
        length_interval=(low, high),
        length=block.number("length"),
        turn=found.attempt.turn,
        chain=_chain(old, new, ledger, block, fit),
        material=MATERIAL,
        density=material(MATERIAL).density,
        remarks=tuple(_remarks(old, fit)),
    )


def _chain(old: Plan, new: Plan, ledger: Ledger, block: Plan, fit: str) -> ChainShare:
    """Return what the ring does to the shafts: its clearance in the block, and that of the pilot in the ring."""
    added = (
        clearance_term("adapter_ring_clearance", old.records["motor_bore"], old.number("motor_bore"), fit),
        coaxiality_term("adapter_coaxiality", ledger.number("adapter.coaxiality")),
    )
    rest = [term for term in terms_of(block) if term.id != "motor_pilot_clearance"]
    pilot = [term for term in terms_of(new) if term.id == "motor_pilot_clearance"]
    return share(new, (*rest, *pilot, *added), added)


def _decide(ledger: Ledger, outer: float, fit: str, length: float) -> None:
    """Enter the ring's sizes."""
    outside = limits(outer, fit)
    band = Band(outside.upper, outside.lower, fit)
    using: tuple[str, ...] = ("old.motor_bore", "adapter.ring_fit", "adapter.ring_fit_plain")
    ledger.decide(
        "adapter.outside",
        outer,
        "mm",
        "old.motor_bore; in its bore",
        using,
        cited("iso286_grades", "iso286_deviations"),
        band=band,
    )
    inner = ledger["motor_bore"]
    band = Band(inner.upper, inner.lower, inner.fit)
    ledger.decide(
        "adapter.bore", inner.value, "mm", "motor_bore; the new pilot", ("motor_bore",), inner.source, band=band
    )
    rule = "old.motor_bore_depth - practice.pilot_depth_extra, at least motor.pilot_length; plain: adapter.ring_length"
    using = ("old.motor_bore_depth", "practice.pilot_depth_extra", "motor.pilot_length", "adapter.ring_length")
    ledger.decide("adapter.length", length, "mm", rule, using, CP)
    wall = (outer - ledger.number("motor_bore")) / 2
    ledger.decide(
        "adapter.wall", wall, "mm", "(adapter.outside - adapter.bore) / 2", ("adapter.outside", "adapter.bore")
    )


def _through(diameter: float, length: float, edge: float, size: Record) -> Feature:
    """Return the bore of the ring, its mouth towards the motor."""
    radius = diameter / 2
    profile = (
        Segment("mouth_chamfer", 0.0, radius + edge, edge, radius),
        Segment("bore", edge, radius, length, radius),
    )
    text = f"{diameter:g} {size.fit} ({size.upper or 0:+.3f}/{size.lower or 0:+.3f}) through"
    return Feature(
        "bore", "bore", "bore", "motor_face", (length, 0.0, 0.0), (-1.0, 0.0, 0.0), diameter, length, through=True,
        profile=profile, opens_into=("motor_face", "block_face"), fit=size.fit, upper=size.upper, lower=size.lower,
        call_out=text, keys={"diameter": "adapter.bore"},
    )  # fmt: skip


def _remarks(old: Plan, fit: str) -> list[str]:
    told = [f"outside {fit}: bored in place, swept to the bearing bore, the ring adds nothing to the offset"]
    if is_plain(old):
        told.append("nothing but the press fit holds it along the shaft: check the fit of the bore that was made")
    return told
