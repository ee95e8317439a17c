"""Sizes that stand-ins need and a spec may leave out: every default in one place, each a record with its rule."""

from __future__ import annotations

import math
from collections.abc import Iterable

from blockgen.plan import Plan
from blockgen.record import Ledger, Record
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.screws import preferred_length
from blockgen.standards.threads import thread

CP = "common practice, no source"
MEMORY = "from memory"

SEAT_SERIES = (4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 17.0, *(float(d) for d in range(20, 205, 5)))
"""Bores of rolling bearings, mm (ISO 15 series, from memory)."""

HEAD_POCKET = 1.7
"""Width of the pocket for the head of a clamp screw over the diameter of its hole (common practice, no source)."""

_LEAST_WALL = 2.0  # of a sleeve that is built about a diameter, mm


def stand_in_sizes(plan: Plan) -> Ledger:
    """Return the plan's records and, for what stand-ins need beyond them, assumed ones.

    Args:
        plan: Sized plan.
    """
    ledger = Ledger(record for record in plan.records.values() if record.value is not None)
    _motor(ledger)
    _bearing(ledger)
    _screw(ledger)
    _coupling(ledger)
    _screw_lengths(ledger)
    _assume(ledger, "base.plate_margin", 20.0, "base plate shown around the block")
    return ledger


def assumed_sizes(plan: Plan) -> tuple[Record, ...]:
    """Return the records that the stand-ins had to add to those of the plan, in order."""
    return tuple(r for r in stand_in_sizes(plan) if r.key not in plan.records or plan.records[r.key].value is None)


def note_of(ledger: Ledger, plan: Plan, table: str) -> str:
    """Return what was assumed about one part in one line; empty where nothing was.

    Args:
        ledger: Records with the stand-ins' own.
        plan: Sized plan.
        table: Start of the keys, such as ``motor``.
    """
    return ", ".join(_told(r) for r in ledger if r.key.startswith(f"{table}.") and r.key not in plan.records)


def _told(record: Record) -> str:
    return f"{record.key} {record.value:g} mm" if isinstance(record.value, float) else f"{record.key} {record.value}"


def _assume(ledger: Ledger, key: str, value: float, rule: str, using: Iterable[str] = (), source: str = CP) -> None:
    if not ledger.known(key):
        ledger.decide(key, float(value), "mm", rule, using, source, origin="assumed")


def _side(ledger: Ledger, end: str) -> tuple[float, str]:
    """Return side or diameter of a flange, the shorter side of a rectangular one, and its key."""
    keys = [f"{end}.{name}" for name in ("flange_size", "flange_width", "flange_height")]
    return min((ledger.number(key), key) for key in keys if ledger.known(key))


def _motor(ledger: Ledger) -> None:
    (side, key), shaft = _side(ledger, "motor"), ledger.number("motor.shaft_diameter")
    thick = max(5.0, round(0.1 * side))
    _assume(ledger, "motor.flange_thickness", thick, f"0.1 x {key}, to the nearest 1, at least 5", (key,))
    _assume(ledger, "motor.body_size", side, f"equals {key}", (key,))
    _assume(ledger, "motor.body_length", round(1.5 * side), f"1.5 x {key}, to the nearest 1", (key,))
    _flange_hole(ledger, "motor")
    if ledger.text("motor.shaft_end") == "flat":
        rule = "0.08 x motor.shaft_diameter, to the nearest 0.1"
        _assume(ledger, "motor.flat_depth", round(0.08 * shaft, 1), rule, ("motor.shaft_diameter",))
    if ledger.text("motor.shaft_end") == "keyed":
        _key(ledger)
    if ledger.text("motor.pilot_form") == "recessed":
        _recess(ledger, "motor")


def _key(ledger: Ledger) -> None:
    """Enter width, length and what stands out of the shaft."""
    shaft, smooth = ledger.number("motor.shaft_diameter"), ledger.number("motor.shaft_smooth_length")
    width = max(2.0, round(shaft / 4))
    rule = "motor.shaft_diameter / 4, to the nearest 1, at least 2"
    _assume(ledger, "motor.key_width", width, rule, ("motor.shaft_diameter",))
    rule = "0.8 x motor.shaft_smooth_length, to the nearest 1"
    _assume(ledger, "motor.key_length", round(0.8 * smooth), rule, ("motor.shaft_smooth_length",))
    proud = min(3.5, round(0.4 * ledger.number("motor.key_width"), 1))
    rule = "0.4 x motor.key_width, at most 3.5; what stands out of the shaft"
    _assume(ledger, "motor.key_proud", proud, rule, ("motor.key_width",), f"ISO 773, {MEMORY}")


def _recess(ledger: Ledger, end: str) -> None:
    """Enter how deep the recess of a flange is: its pilot length as far as the flange leaves a floor."""
    depth = min(ledger.number(f"{end}.pilot_length"), 0.8 * ledger.number(f"{end}.flange_thickness"))
    rule, using = f"{end}.pilot_length, at most 0.8 x {end}.flange_thickness", (f"{end}.pilot_length",)
    _assume(ledger, f"{end}.recess_depth", depth, rule, using)
    rule = f"{end}.pilot_diameter - 2 x 5; a ring of 5 mm wall, or as much as the bore behind it leaves"
    inner = max(ledger.number(f"{end}.pilot_diameter") - 10.0, ledger.number(f"{end}_through_bore") - 2.0)
    inner = min(inner, ledger.number(f"{end}.pilot_diameter") - 2 * _LEAST_WALL)
    _assume(ledger, f"{end}.ring_inner_diameter", inner, rule, (f"{end}.pilot_diameter",))


def _flange_hole(ledger: Ledger, end: str) -> None:
    """Enter the hole in a flange: clearance for its screw, or the tap drill where the flange is tapped."""
    screw = thread(ledger.text(f"{end}_thread"))
    if ledger.text(f"{end}.fastening") == "tapped":
        rule = f"tap drill of {screw.designation}"
        _assume(ledger, f"{end}.tap_drill", screw.tap_drill, rule, (f"{end}_thread",), "ISO 261, ISO 2306")
        return
    rule = f"clearance hole of {screw.designation}, medium"
    _assume(ledger, f"{end}.bolt_hole", clearance_hole(screw.size), rule, (f"{end}_thread",), "ISO 273")


def _bearing(ledger: Ledger) -> None:
    side, key = _side(ledger, "bearing")
    rule = f"0.15 x {key}, to the nearest 1, at least 6"
    _assume(ledger, "bearing.flange_thickness", max(6.0, round(0.15 * side)), rule, (key,))
    _flange_hole(ledger, "bearing")
    _shoulder(ledger)
    _seat(ledger)
    seat, pilot = ledger.number("screw.seat_diameter"), ledger.number("bearing.pilot_diameter")
    nut = min(round(1.8 * seat), ledger.number("bearing_through_bore") - 2.0, pilot)
    rule = "1.8 x screw.seat_diameter, at most the pilot and 2 less than the bore that it passes"
    _assume(ledger, "bearing.nut_outer_diameter", max(nut, seat + _LEAST_WALL), rule, ("screw.seat_diameter",))
    if ledger.text("bearing.pilot_form") == "recessed":
        _recess(ledger, "bearing")


def _shoulder(ledger: Ledger) -> None:
    """Enter where the screw's shoulder lies: the stack ends with the housing, else the flange's rear."""
    key, into = "bearing.shoulder_offset", ledger.text("bearing.pilot_direction") == "into_wall"
    front = ledger.number("bearing.pilot_length") if into else 0.0
    if ledger.known("bearing.stack_length"):
        rule = "bearing.stack_length - bearing.pilot_length: the stack ends with the housing"
        _assume(ledger, key, ledger.number("bearing.stack_length") - front, rule, ("bearing.stack_length",))
    rule = "equals bearing.flange_thickness: the shoulder lies in the plane of the flange's rear"
    _assume(ledger, key, ledger.number("bearing.flange_thickness"), rule, ("bearing.flange_thickness",))


def _seat(ledger: Ledger) -> None:
    """Enter the diameter of the screw in its bearing, which is that of the lock nut's thread too."""
    journal = ledger.number("screw.journal_diameter")
    room = ledger.number("bearing.pilot_diameter") - 2 * _LEAST_WALL
    if ledger.known("bearing.nut_outer_diameter"):
        room = min(room, ledger.number("bearing.nut_outer_diameter") - _LEAST_WALL)
    seat = next((d for d in SEAT_SERIES if journal < d <= room), journal)
    rule = "next bore of rolling bearings above screw.journal_diameter that pilot and nut leave room for"
    _assume(ledger, "screw.seat_diameter", seat, rule, ("screw.journal_diameter",), f"ISO 15 series, {MEMORY}; {CP}")


def _screw(ledger: Ledger) -> None:
    seat = ledger.number("screw.seat_diameter")
    using = ("screw.seat_diameter",)
    _assume(ledger, "screw.diameter", math.ceil(1.3 * seat), "1.3 x screw.seat_diameter, up to 1", using)
    side, key = _side(ledger, "bearing")
    _assume(ledger, "screw.shown_length", round(0.8 * side), f"0.8 x {key}, to the nearest 1", (key,))
    offset = ledger.number("bearing.shoulder_offset")
    if ledger.known("bearing.stack_length"):
        rule = "bearing.stack_length - 2; the nut clamps the stack and not the shoulder"
        _assume(ledger, "screw.seat_length", ledger.number("bearing.stack_length") - 2.0, rule)
    into = ledger.text("bearing.pilot_direction") == "into_wall"
    rule = "from the shoulder to the end of the housing"
    reach = ledger.number("bearing.pilot_length") if into else 0.0
    _assume(ledger, "screw.seat_length", max(offset + reach, 1.0), rule, ("bearing.shoulder_offset",))


def _coupling(ledger: Ledger) -> None:
    outer = ledger.number("coupling.outer_diameter")
    using = ("coupling.outer_diameter",)
    great = max(ledger.number("screw.journal_diameter"), ledger.number("motor.shaft_diameter"))
    if ledger.text("coupling.kind") != "rigid":
        rule = "0.92 x coupling.outer_diameter, at least 2 more than the thicker shaft"
        _assume(ledger, "coupling.waist_diameter", min(outer, max(0.92 * outer, great + _LEAST_WALL)), rule, using)
    room = (outer - great) / 2 - 1.0
    hole = max(min(max(3.0, round(0.12 * outer)), round(room / HEAD_POCKET, 1)), 0.0)
    rule = "0.12 x coupling.outer_diameter, as far as the wall of the hub allows; left out below 1.5"
    _assume(ledger, "coupling.clamp_hole", hole, rule, using)


def _screw_lengths(ledger: Ledger) -> None:
    """Enter the length of flange screws where the plan could choose none, since the flange's thickness is not given."""
    for end in ("bearing", "motor"):
        thick, engaged = ledger.number(f"{end}.flange_thickness"), ledger.number(f"{end}_engagement")
        size = thread(ledger.text(f"{end}_thread")).size
        length = preferred_length(size, thick + engaged) or thick + engaged
        using = (f"{end}.flange_thickness", f"{end}_engagement")
        _assume(ledger, f"{end}_screw_length", length, f"preferred length of at least {' + '.join(using)}", using)
