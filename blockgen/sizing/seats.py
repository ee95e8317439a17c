"""Tapped holes on the two seats: engagement, full thread, drill depth and drill point."""

from __future__ import annotations

import math
from dataclasses import dataclass

from blockgen.mechanics.stripping import least_engagement_against_stripping
from blockgen.record import Ledger
from blockgen.sizing.flange_joint import bearing_pull, motor_screw_pull
from blockgen.sizing.joint import screw_preload, screw_reserve, thread_limits
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounding import up
from blockgen.sizing.sources import CP, cited
from blockgen.standards.din76 import drill_runout
from blockgen.standards.iso898 import property_class
from blockgen.standards.materials import Material
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import Thread

FLANGE_CLASS = "8.8"


def lengths_source(screw: Thread) -> str:
    """Return the citation of the preferred lengths of a thread's screws."""
    return cited("iso4762_lengths" if screw.series == "M" else "asme_b18_3_lengths")


@dataclass(frozen=True, slots=True)
class SeatThread:
    """What a tapped hole on a seat needs, mm.

    Args:
        engagement: Least thread engagement of the screw.
        thread_depth: Full thread.
        drill_depth: Cylindrical depth of the tap-drill hole.
        point: Length of the drill point.
        blind_wall: Thickness that a blind hole asks for.
    """

    engagement: float
    thread_depth: float
    drill_depth: float
    point: float
    blind_wall: float


def point_length(diameter: float, angle: float) -> float:
    """Return the length in mm of a drill point, diameter in mm, full angle in deg."""
    return diameter / 2 / math.tan(math.radians(angle / 2))


def decide_engagement(
    ledger: Ledger, key: str, screw: Thread, into: Material, grade: str, working: float = 0.0
) -> float:
    """Decide the engagement in mm of a screw in a material: the usual floor, or more where the thread would strip.

    Args:
        ledger: Ledger with the practice values; an entry is added.
        key: Key of the entry.
        screw: Thread of the screw.
        into: Material of the tapped part.
        grade: Property class of the screw.
        working: Load in N that it must hold beside its full preload.
    """
    factor_key = f"practice.engagement_{into.kind}"
    floor = ledger.number(factor_key) * screw.diameter
    safety = ledger.number("limits.strip_safety")
    preload = screw_preload(ledger, screw, grade)
    tensile = property_class(grade, screw.diameter).tensile
    force = preload + working
    needed = least_engagement_against_stripping(force, safety, thread_limits(screw), into.tensile_strength, tensile)
    value = up(max(floor, needed), 0.5)
    rule = (
        f"greater of {floor:.1f} (factor x d, {screw.designation} in {into.name}) and {needed:.1f} (no thread strips "
        f"at {safety:g} x the full preload {preload / 1000:.1f} kN of class {grade}"
        f"{f' and a load of {working / 1000:.1f} kN' if working else ''}), up to 0.5"
    )
    using = (
        factor_key, "limits.strip_safety", "practice.preload_use", "practice.thread_friction", "thrust_away",
        "motor.mass", "motor.centre_of_mass",
    ) if working else (
        factor_key, "limits.strip_safety", "practice.preload_use", "practice.thread_friction",
    )  # fmt: skip
    ledger.decide(key, value, "mm", rule, using, "FED-STD-H28/2 areas, VDI 2230 preload form; floor: common practice")
    return value


def decide_seat_thread(ledger: Ledger, flange: Flange, block: Material) -> SeatThread | None:
    """Decide a seat's tapped holes; None where the flange is tapped and the block has clearance holes."""
    end, screw = flange.end, flange.thread
    if flange.tapped:
        _no_seat_thread(ledger, end)
        return None
    working = _working_load(ledger, flange)
    least = decide_engagement(ledger, f"{end}_engagement_least", screw, block, FLANGE_CLASS, working)
    engagement = _decide_flange_screw(ledger, flange, least)
    depth = up(engagement + ledger.number("practice.thread_extra_pitches") * screw.pitch, 0.5)
    rule = f"{end}_engagement + practice.thread_extra_pitches x {end}_thread_pitch; up to 0.5"
    using: tuple[str, ...] = (f"{end}_engagement", "practice.thread_extra_pitches", f"{end}_thread_pitch")
    alike = f"{end}_thread_depth_alike"
    if ledger.number_or(alike, 0.0) > depth:
        depth, rule, using = ledger.number(alike), f"{alike}; holes of one thread are drilled alike", (alike, *using)
    ledger.decide(f"{end}_thread_depth", depth, "mm", rule, using, CP)
    drill = up(depth + drill_runout(screw), 0.5)
    rule = f"{end}_thread_depth + {drill_runout(screw):.4g}; run-out of {screw.designation}, up to 0.5"
    ledger.decide(f"{end}_drill_depth", drill, "mm", rule, (f"{end}_thread_depth",), cited("din76"))
    point = point_length(screw.tap_drill, ledger.number("practice.drill_point_angle"))
    clear = max(screw.pitch, least_cavity_wall(ledger, screw.diameter))
    rule = f"{end}_drill_depth + {point:.3f} + {clear:.3g}; drill point and wall behind it"
    blind = round(drill + point + clear, 6)
    ledger.decide(f"{end}_blind_wall", blind, "mm", rule, (f"{end}_drill_depth",), CP)
    return SeatThread(least, depth, drill, point, blind)


def _working_load(ledger: Ledger, flange: Flange) -> float:
    """Return the load in N that a flange screw's thread must hold beside the preload; 0 where none is given.

    Thrust pulls on the bearing's screws, weight on the motor's. What is more than the screw itself can take on is no
    reason for a longer thread; the checks tell it.
    """
    records = ledger.frozen()
    if flange.end == "bearing":
        load = bearing_pull(records) / len(flange.positions)
    else:
        load = motor_screw_pull(records, flange.positions)
    return min(load, screw_reserve(ledger, flange.thread, FLANGE_CLASS))


def _decide_flange_screw(ledger: Ledger, flange: Flange, least: float) -> float:
    """Decide screw length and engagement in mm of a screw through the flange; the engagement follows the length."""
    end, key = flange.end, f"{flange.end}_screw_length"
    using = (f"{end}.flange_thickness", f"{end}_engagement_least")
    if not ledger.known(f"{end}.flange_thickness"):
        rule = f"{end}.flange_thickness is not given, so no length can be chosen"
        ledger.decide(key, None, "mm", rule, (), lengths_source(flange.thread))
        ledger.decide(f"{end}_engagement", least, "mm", "the least engagement", using)
        return least
    clamped, lengths = ledger.number(f"{end}.flange_thickness"), cap_screw(flange.thread.size).lengths
    length = next((n for n in lengths if n >= clamped + least), lengths[-1])
    rule = "shortest preferred length of at least flange thickness + least engagement"
    ledger.decide(key, length, "mm", rule, using, lengths_source(flange.thread))
    rule = f"{end}_screw_length - {end}.flange_thickness"
    value = round(max(length - clamped, 0.0), 6)
    ledger.decide(f"{end}_engagement", value, "mm", rule, (key, f"{end}.flange_thickness"), "")
    return value


def _no_seat_thread(ledger: Ledger, end: str) -> None:
    rule = f"{end} flange is tapped: the block has clearance holes"
    for name in ("thread_depth", "drill_depth", "engagement_least"):
        ledger.decide(f"{end}_{name}", None, "mm", rule, (f"{end}.fastening",), "")


def least_cavity_wall(ledger: Ledger, diameter: float) -> float:
    """Return the least wall in mm between a hole of a diameter in mm and any other cavity."""
    return max(ledger.number("practice.cavity_factor") * diameter, ledger.number("practice.cavity_floor"))
