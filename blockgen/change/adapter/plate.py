"""A plate between block and motor: its own spigot and bore, screws to the old pattern, holes for the new one."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from blockgen.alignment.terms import terms_of
from blockgen.change.adapter.chain import clearance_term, coaxiality_term, on_old_block, parallelism_term, share
from blockgen.change.adapter.data import Adapter, AdapterBody, ChainShare
from blockgen.change.adapter.holes import Group, clash, clear_of_flange, features_of, outside_of, spigot_in_the_way
from blockgen.change.adapter.layout import PlateRoom, plate_layout, too_narrow
from blockgen.change.adapter.marks import plate_annotations
from blockgen.change.adapter.practice import decided, ledger_of
from blockgen.change.adapter.screws import Screws, screw_lengths
from blockgen.change.rework.data import Operation
from blockgen.change.rework.fit import half_flange, turned, window_end
from blockgen.plan import Feature, Plan, Segment
from blockgen.record import Band, Ledger
from blockgen.sizing.axial import Layout
from blockgen.sizing.joint import known_thread
from blockgen.sizing.mating import hole_positions
from blockgen.sizing.rounding import down, up
from blockgen.sizing.seats import FLANGE_CLASS, decide_engagement
from blockgen.sizing.sources import CP, cited
from blockgen.standards.iso286 import limits
from blockgen.standards.materials import material
from blockgen.standards.threads import Thread

MATERIAL = "S355J2"
_HAIR = 1e-6


@dataclass(frozen=True, slots=True)
class Fitted:
    """Where a plate lies: what is faced off the block, thickness, length from seat to seat, mm; and its layouts."""

    faced: float
    thickness: float
    length: float
    nominal: Layout
    toleranced: Layout


def plate(old: Plan, new: Plan, turn: float = 0.0) -> Adapter | str:
    """Return the plate that joins old block and new motor, or why there is none.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that is wanted; its motor, coupling and bearing side count.
        turn: Angle by which the motor is turned, deg.
    """
    ledger = ledger_of(old, new)
    groups = _groups(old, new, turn)
    if not groups[0].tapped and not groups[1].tapped and groups[0].head_side != groups[1].head_side:
        shape = new.text("motor.flange_shape") == "round"
        if not clear_of_flange(groups[0], half_flange(new), is_round=shape):
            return "no plate: the motor is screwed on from behind, and covers the screws that hold the plate"
    _decide_bores(ledger, old, new)
    least = _decide_least(ledger, groups)
    narrow = too_narrow(old, new) or _shaft_passes(ledger)
    if narrow:
        return narrow
    found = _fit(old, new, ledger, groups, least)
    if isinstance(found, str):
        return found
    features = (*_bores(ledger, found.thickness), *(f for g in groups for f in features_of(g, found.thickness)))
    near = clash(features, new) or spigot_in_the_way(features, ledger.number("adapter.outside"), new)
    if near:
        return f"no plate: {near}"
    as_turned = replace(new, records=turned(new.records, new, turn))
    body = _decide_outside(ledger, as_turned, groups, found)
    if isinstance(body, str):
        return body
    return _adapter(old, new, ledger, groups, found, (body, features, turn))


def _groups(old: Plan, new: Plan, turn: float) -> tuple[Group, Group]:
    """Return the screws into the block and those of the motor."""
    old_tapped = old.text("motor.fastening") != "tapped"
    places = hole_positions(Ledger(old.records.values()), "motor")
    into_block = Group("block_screws", _thread(old), places, not old_tapped)
    records = turned(new.records, new, turn)
    theirs = hole_positions(Ledger(records.values()), "motor")
    motor_tapped = new.text("motor.fastening") == "tapped"
    return into_block, Group(
        "motor_screws", _thread(new), theirs, not motor_tapped, "block" if motor_tapped else "motor"
    )


def _thread(plan: Plan) -> Thread:
    return known_thread(plan.text("motor_thread"), "motor.bolt_thread")


def _decide_bores(ledger: Ledger, old: Plan, new: Plan) -> None:
    """Enter spigot, bore for the new pilot, and the opening behind it."""
    _decide_spigot(ledger, old)
    size = new.records["motor_bore"]
    band = Band(size.upper, size.lower, size.fit)
    ledger.decide(
        "adapter.bore", size.value, "mm", "motor_bore; the new pilot", ("motor_bore",), size.source, band=band
    )
    depth = new.number("motor.pilot_length") + ledger.number("practice.pilot_depth_extra")
    using = ("motor.pilot_length", "practice.pilot_depth_extra")
    ledger.decide("adapter.bore_depth", depth, "mm", "motor.pilot_length + practice.pilot_depth_extra", using, CP)
    _decide_opening(ledger)


def _decide_spigot(ledger: Ledger, old: Plan) -> None:
    """Enter diameter and length of the spigot."""
    outer, fit_class = old.number("motor_bore"), ledger.text("adapter.spigot_fit")
    outside = limits(outer, fit_class)
    band = Band(outside.upper, outside.lower, fit_class)
    source = cited("iso286_grades", "iso286_deviations")
    using: tuple[str, ...] = ("old.motor_bore", "adapter.spigot_fit")
    ledger.decide("adapter.outside", outer, "mm", "old.motor_bore; spigot in the old bore", using, source, band=band)
    length, using = ledger.number("adapter.spigot_length"), ("adapter.spigot_length",)
    ledger.decide("adapter.spigot", length, "mm", "adapter.spigot_length; usual", using, CP)
    depth = length + ledger.number("adapter.spigot_play")
    using = ("adapter.spigot", "adapter.spigot_play")
    ledger.decide("adapter.seat_depth", depth, "mm", "adapter.spigot + adapter.spigot_play; in the block", using, CP)


def _decide_opening(ledger: Ledger) -> None:
    """Enter the opening behind the bore for the new pilot."""
    wanted = ledger.number("coupling.swing_diameter") + 2 * ledger.number("coupling.clearance")
    wall, shoulder = ledger.number("adapter.ring_wall"), ledger.number("practice.bore_shoulder")
    most = min(ledger.number("adapter.outside") - 2 * wall, ledger.number("adapter.bore") - 2 * shoulder)
    rule = f"swing + 2 x clearance = {wanted:g}, at most {most:g}: wall of the spigot and shoulder of the bore"
    using = ("coupling.swing_diameter", "coupling.clearance", "adapter.outside", "adapter.bore", "adapter.ring_wall")
    ledger.decide("adapter.opening", round(min(wanted, most), 6), "mm", rule, using, CP)


def _shaft_passes(ledger: Ledger) -> str:
    """Return why the shaft does not pass the opening; empty where it does."""
    needed = ledger.number("motor.shaft_diameter") + 2 * ledger.number("practice.bar_clearance")
    opening = ledger.number("adapter.opening")
    if opening < needed:
        return f"no plate: the shaft needs an opening of {needed:g} mm, {opening:g} mm is the most"
    return ""


def _decide_least(ledger: Ledger, groups: tuple[Group, Group]) -> float:
    """Enter the least thickness, mm: pilot and shoulder, sunk heads, threads."""
    wants = [ledger.number("adapter.bore_depth") + ledger.number("adapter.shoulder")]
    for group in groups:
        if group.tapped:
            key = f"adapter.{group.name}_engagement"
            wants.append(decide_engagement(ledger, key, group.thread, material(MATERIAL), FLANGE_CLASS))
        else:
            wants.append(group.sunk + ledger.number("adapter.clamp_least"))
    least = up(max(wants), ledger.number("adapter.thickness_step"))
    rule = (
        f"greatest of pilot with shoulder {wants[0]:g}, block screws {wants[1]:g}, motor screws {wants[2]:g}; up to 0.5"
    )
    using = ("adapter.bore_depth", "adapter.shoulder", "adapter.clamp_least", "adapter.motor_screws_engagement",
             "adapter.block_screws_engagement")  # fmt: skip
    ledger.decide("adapter.thickness_least", least, "mm", rule, using, CP)
    return least


def _fit(old: Plan, new: Plan, ledger: Ledger, groups: tuple[Group, Group], least: float) -> Fitted | str:
    """Return where the plate lies: as the block is, else with as little as possible faced off its motor end."""
    step, nearest = ledger.number("adapter.thickness_step"), ""
    for count in range(int(ledger.number("adapter.facing_most") / step) + 1):
        faced = round(count * step, 6)
        trouble = _faced_too_far(old, ledger, faced)
        if trouble:
            return f"no plate: {nearest or trouble}" + (f"; {trouble}" if nearest else "")
        nominal, toleranced = plate_layout(new, _room(old, ledger, faced))
        if not nominal.feasible:
            nearest = nearest or "no place along the shaft holds the coupling once a plate lies before the block"
            continue
        use = toleranced if toleranced.feasible else nominal
        rest = old.body.length - faced
        most = min(ledger.number("adapter.thickness_most"), down(use.high, step / 10) - rest)
        thick = least_thickness(
            screw_lengths(ledger, old, new, groups, faced), max(least, up(use.low - rest, step)), most, step
        )
        if thick is not None:
            return Fitted(faced, thick, round(rest + thick, 6), nominal, toleranced)
        nearest = nearest or (
            f"block and plate of {least:g} mm would be {old.body.length + least:g} mm long from seat to seat, "
            f"{use.low:.4g} to {use.high:.4g} mm are feasible"
        )
    return f"no plate: {nearest}"


def least_thickness(screws: Screws, least: float, most: float, step: float) -> float | None:
    """Return the least thickness for which usual screws are made, else the least at all; None where there is no room.

    Args:
        screws: Both groups.
        least: Least thickness, mm.
        most: Greatest thickness, mm.
        step: Step of thickness, mm.
    """
    steps = range(int((most - least + _HAIR) / step) + 1) if most >= least - _HAIR else range(0)
    thicknesses = [round(least + count * step, 6) for count in steps]
    return next((thick for thick in thicknesses if screws.are_made(thick)), thicknesses[0] if thicknesses else None)


def _room(old: Plan, ledger: Ledger, faced: float) -> PlateRoom:
    return PlateRoom(
        bearing_wall=old.number("bearing_wall"),
        bearing_opening=old.number("bearing_through_bore"),
        window_end=window_end(old),
        block_length=old.body.length - faced,
        spigot=ledger.number("adapter.spigot"),
        behind_window=old.number("motor_through_bore"),
        opening=ledger.number("adapter.opening"),
        thickness_tolerance=ledger.number("adapter.thickness_tolerance"),
    )


def _faced_too_far(old: Plan, ledger: Ledger, faced: float) -> str:
    """Return why the block cannot be faced so far; empty where it can."""
    behind = old.number("motor_wall") - faced - ledger.number("adapter.seat_depth")
    shoulder = ledger.number("practice.bore_shoulder")
    if _stepped(old) and behind < shoulder - _HAIR:
        return f"the block leaves {behind:g} mm behind the seat of the spigot, {shoulder:g} mm is the least"
    if faced <= 0:
        return ""
    wall, least = old.number("motor_wall") - faced, old.number("practice.wall_least")
    if wall < least - _HAIR:
        return f"facing {faced:g} mm off the block would leave a motor wall of {wall:g} mm, {least:g} mm is the least"
    if "motor_engagement_least" not in old.records or old.records["motor_engagement_least"].value is None:
        return ""
    thread, asked = old.number("motor_thread_depth") - faced, old.number("motor_engagement_least")
    if thread < asked - _HAIR:
        return f"facing {faced:g} mm off the block would leave {thread:g} mm of its threads, {asked:g} mm is the least"
    return ""


def _bores(ledger: Ledger, thickness: float) -> tuple[Feature, ...]:
    """Return the bore for the pilot with the opening behind it; it runs through the spigot too."""
    bore, depth, opening = (ledger.number(f"adapter.{name}") for name in ("bore", "bore_depth", "opening"))
    edge, end = ledger.number("adapter.edge"), thickness + ledger.number("adapter.spigot")
    r, inner, size = bore / 2, opening / 2, ledger["adapter.bore"]
    profile = (
        Segment("mouth_chamfer", 0.0, r + edge, edge, r),
        Segment("bore", edge, r, depth, r),
        Segment("shoulder", depth, r, depth, inner),
        Segment("through", depth, inner, end, inner),
    )
    text = (
        f"{bore:g} {size.fit} ({size.upper or 0:+.3f}/{size.lower or 0:+.3f}) depth {depth:g}, then {opening:g} through"
    )
    return (
        Feature(
            "bore", "bore", "bore", "motor_face", (thickness, 0.0, 0.0), (-1.0, 0.0, 0.0), bore, depth, through=True,
            profile=profile, opens_into=("motor_face", "block_face"), fit=size.fit, upper=size.upper,
            lower=size.lower, call_out=text, keys={"diameter": "adapter.bore", "depth": "adapter.bore_depth"},
        ),
    )  # fmt: skip


def _decide_outside(ledger: Ledger, new: Plan, groups: tuple[Group, Group], found: Fitted) -> AdapterBody | str:
    """Enter thickness and outline; the plate ends above the base face."""
    margin = ledger.number("practice.flange_margin") + ledger.number("adapter.edge")
    rim = ledger.number("practice.rim") + ledger.number("adapter.edge")
    half = half_flange(new)
    reach = [(half[0] + margin, half[1] + margin, half[1] + margin)]
    reach += [tuple(value + rim for value in outside_of(g.places, g.radius)) for g in groups]  # type: ignore[misc] # three each
    across, above, below = (up(max(side), 1.0) for side in zip(*reach, strict=True))
    room = new.number("shaft_height") - ledger.number("practice.body_clearance")
    if max(side[2] for side in reach) > room + _HAIR:
        return f"no plate: it reaches {below:g} mm below the shaft, the base face leaves {room:g} mm"
    below = min(below, room)
    thick = found.thickness
    tolerance = Band(ledger.number("adapter.thickness_tolerance"), -ledger.number("adapter.thickness_tolerance"))
    rule = "least thickness, or more where the shafts or usual screw lengths ask for it"
    ledger.decide("adapter.thickness", thick, "mm", rule, ("adapter.thickness_least", "old.length"), CP, band=tolerance)
    for name, value in (("half_width", across), ("above", above), ("below", below)):
        rule = "flange with margin, or outermost hole with rim; up to 1"
        ledger.decide(
            f"adapter.{name}", value, "mm", rule, ("motor.flange_size", "practice.flange_margin", "practice.rim"), CP
        )
    spigot, outside, edge = (ledger.number(f"adapter.{name}") for name in ("spigot", "outside", "edge"))
    return AdapterBody(thick, outside, spigot, across, above, below, edge)


Made = tuple[AdapterBody, tuple[Feature, ...], float]


def _adapter(old: Plan, new: Plan, ledger: Ledger, groups: tuple[Group, Group], found: Fitted, made: Made) -> Adapter:
    body, features, turn = made
    low, high = found.nominal.coupling_range(found.length)
    screws = screw_lengths(ledger, old, new, groups, found.faced)
    joined = on_old_block(old, new, old.body.length - found.faced, (found.length, (low + high) / 2))
    todo = tuple(_operations(old, found, ledger.number("adapter.seat_depth")))
    return Adapter(
        kind="plate",
        title=_title(body, turn),
        pain=4 + 2 * len(todo) + (1 if turn else 0),
        why_pain="a milled and turned part, longer by its thickness" + (", the block is cut too" if todo else ""),
        records=decided(ledger),
        body=body,
        features=features,
        annotations=plate_annotations(ledger, features),
        fasteners=screws.fasteners(found.thickness),
        operations=todo,
        length_interval=(found.nominal.low, found.nominal.high),
        length=found.length,
        turn=turn,
        chain=_chain(old, new, ledger, joined),
        material=MATERIAL,
        density=material(MATERIAL).density,
        remarks=tuple(_remarks(new, found, groups, screws)),
    )


def _chain(old: Plan, new: Plan, ledger: Ledger, joined: Plan) -> ChainShare:
    """Return what the plate does to the shafts; ``joined`` is the new arrangement on the old block, plate included."""
    spigot, fit = ledger.number("adapter.outside"), ledger.text("adapter.spigot_fit")
    added = (
        clearance_term("adapter_spigot_clearance", old.records["motor_bore"], spigot, fit),
        coaxiality_term("adapter_coaxiality", ledger.number("adapter.coaxiality")),
        parallelism_term(joined, ledger.number("adapter.parallelism"), joined.number("length")),
    )
    return share(new, (*terms_of(joined), *added), added)


def _title(body: AdapterBody, turn: float) -> str:
    size = f"{2 * body.half_width:g} x {body.top + body.bottom:g} x {body.thickness:g}"
    return f"plate {size} between block and motor" + (f", motor turned by {turn:g} deg" if turn else "")


def _stepped(old: Plan) -> bool:
    return old.number("motor_through_bore") < old.number("motor_bore") - _HAIR


def _operations(old: Plan, found: Fitted, depth: float) -> Iterator[Operation]:
    """Yield what is done to the block: faced, and its seat deepened to ``depth`` in mm where the spigot asks for it."""
    if found.faced > 0:
        length = round(old.body.length - found.faced, 6)
        text = f"face {found.faced:g} mm off the motor end; length {old.body.length:g} becomes {length:g}"
        yield Operation("face", text, {"off": found.faced, "length": length})
    if _stepped(old) and old.number("motor_bore_depth") - found.faced < depth - _HAIR:
        seat = f"{old.number('motor_bore'):g} {old.records['motor_bore'].fit}"
        text = f"deepen the motor seat {seat} to depth {depth:g}"
        yield Operation("bore", text, {"diameter": old.number("motor_bore"), "depth": depth}, ("motor_bore",))


def _remarks(new: Plan, found: Fitted, groups: tuple[Group, Group], screws: Screws) -> Iterator[str]:
    out = found.thickness
    yield f"the motor hangs {out:g} mm further out: its joint and first frequency are not checked with the plate"
    for name in screws.missing(found.thickness):
        yield f"no usual length of the {name} reaches between least engagement and full depth: shorten a longer one"
    if not found.toleranced.feasible:
        yield "no length holds with all tolerances against it; only the nominal values fit"
    if not groups[1].tapped:
        yield "screw the motor to the plate first, then the plate to the block"
    elif not groups[0].tapped:
        yield "screw the plate to the block first, its heads lie under the motor flange"
    if new.text("job.gravity") not in ("", "-z"):
        yield "the axis does not lie level: hold the screw before the motor comes off"
