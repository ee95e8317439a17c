"""What the mating parts ask of the seats: flange outline, hole positions, thread or clearance hole."""

from __future__ import annotations

import math
from dataclasses import dataclass

from blockgen.errors import InputError, Problem
from blockgen.record import Ledger
from blockgen.sizing.joint import known_thread
from blockgen.sizing.sources import CP, cited
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.screws import cap_screw_sizes
from blockgen.standards.threads import Thread, thread, thread_for_clearance_hole

# Threads tried for a hole that is not given (common practice, no source).
_SMALLEST = "M2.5"
_USUAL_THREADS = ("M3", "M4", "M5", "M6", "M8", "M10", "M12", "M16", "M20")


@dataclass(frozen=True, slots=True)
class Flange:
    """One mating flange, seen along the shaft; y and z in mm from the shaft axis.

    Args:
        end: bearing or motor.
        round: True for a round outline.
        half_width: Half the outline in y, mm.
        half_height: Half the outline in z, mm.
        positions: Hole centres (y, z), mm.
        hole: Clearance hole diameter, mm: in the flange, or in the block for a tapped flange.
        thread: The screws' thread.
        tapped: True where the flange itself is tapped and the block has clearance holes.
    """

    end: str
    round: bool
    half_width: float
    half_height: float
    positions: tuple[tuple[float, float], ...]
    hole: float
    thread: Thread
    tapped: bool


def circle_positions(circle: float, count: int, angle: float) -> tuple[tuple[float, float], ...]:
    """Return hole centres (y, z) in mm on a bolt circle in mm, first hole at ``angle`` in deg from +y towards +z."""
    step = 2 * math.pi / count
    start = math.radians(angle)
    return tuple(
        (round(circle / 2 * math.cos(start + i * step), 9), round(circle / 2 * math.sin(start + i * step), 9))
        for i in range(count)
    )


def hole_positions(ledger: Ledger, end: str) -> tuple[tuple[float, float], ...]:
    """Return the hole centres (y, z) of a flange in mm, from free positions, spacings or bolt circle."""
    if ledger.known(f"{end}.bolt_positions"):
        return ledger.points(f"{end}.bolt_positions")
    if ledger.known(f"{end}.bolt_spacing_y"):
        y, z = ledger.number(f"{end}.bolt_spacing_y") / 2, ledger.number(f"{end}.bolt_spacing_z") / 2
        return ((y, z), (-y, z), (-y, -z), (y, -z))
    count = int(ledger.number(f"{end}.bolt_count"))
    return circle_positions(ledger.number(f"{end}.bolt_circle"), count, ledger.number(f"{end}.bolt_angle"))


def _outline(ledger: Ledger, end: str) -> tuple[float, float]:
    if ledger.known(f"{end}.flange_width") and ledger.known(f"{end}.flange_height"):
        return ledger.number(f"{end}.flange_width") / 2, ledger.number(f"{end}.flange_height") / 2
    half = ledger.number(f"{end}.flange_size") / 2
    return half, half


def _room_at_holes(ledger: Ledger, end: str, positions: tuple[tuple[float, float], ...]) -> float:
    """Return the least distance in mm from a hole centre to the pilot or to the flange outline."""
    width, height = _outline(ledger, end)
    pilot = ledger.number(f"{end}.pilot_diameter") / 2
    if ledger.text(f"{end}.flange_shape") == "round":
        return min(min(math.hypot(y, z) - pilot, width - math.hypot(y, z)) for y, z in positions)
    return min(min(math.hypot(y, z) - pilot, width - abs(y), height - abs(z)) for y, z in positions)


def _assume_hole(ledger: Ledger, end: str, positions: tuple[tuple[float, float], ...]) -> None:
    """Assume the largest usual clearance hole that is not wider than the room beside it."""
    room = _room_at_holes(ledger, end, positions)
    fitting = [s for s in _USUAL_THREADS if clearance_hole(s) <= room] or [_USUAL_THREADS[0]]
    rule = f"largest usual hole whose diameter is at most the {room:.1f} mm beside its centre (ISO 273 medium)"
    using = (f"{end}.flange_size", f"{end}.bolt_circle", f"{end}.pilot_diameter")
    value = clearance_hole(fitting[-1])
    ledger.decide(f"{end}.bolt_hole", value, "mm", rule, using, f"{CP}; {cited('iso273')}", origin="assumed")


def _screw_thread(ledger: Ledger, end: str) -> Thread:
    if ledger.known(f"{end}.bolt_thread"):
        return known_thread(ledger.text(f"{end}.bolt_thread"), f"{end}.bolt_thread")
    hole = ledger.number(f"{end}.bolt_hole")
    found = thread_for_clearance_hole(hole) if hole >= clearance_hole(_SMALLEST, "fine") else None
    if found is None:
        remedy = f"correct the hole, or give {end}.bolt_thread"
        raise InputError([Problem("", None, f"{end}.bolt_hole", f"{hole:g} mm", "a clearance hole of ISO 273", remedy)])
    return found if found.size in cap_screw_sizes() else thread(_largest_usual(hole))


def _largest_usual(hole: float) -> str:
    """Return the largest usual thread whose screw passes a hole in mm, for a hole of a size without such screws."""
    return [size for size in (_SMALLEST, *_USUAL_THREADS) if clearance_hole(size, "fine") <= hole][-1]


def _threads(screw: Thread) -> str:
    return cited("metric_threads" if screw.series == "M" else "unified_threads")


def flange(ledger: Ledger, end: str) -> Flange:
    """Return one flange and enter its assumed hole, its thread and the block's clearance hole.

    Args:
        ledger: Completed ledger; entries are added.
        end: bearing or motor.

    Raises:
        InputError: no thread of the tables fits the hole.
    """
    positions = hole_positions(ledger, end)
    tapped = ledger.text(f"{end}.fastening") == "tapped"
    if not ledger.known(f"{end}.bolt_hole") and not ledger.known(f"{end}.bolt_thread"):
        _assume_hole(ledger, end, positions)
    screw = _screw_thread(ledger, end)
    using = (f"{end}.bolt_thread", f"{end}.bolt_hole")
    if ledger.known(f"{end}.bolt_thread"):
        given = ledger[f"{end}.bolt_thread"]
        ledger.decide(f"{end}_thread", screw.designation, "", given.rule, using, given.source, origin=given.origin)
    else:
        rule = "thread whose clearance hole is the flange's hole"
        source = f"{cited('iso273' if screw.series == 'M' else 'inch_clearance_holes')}; {_threads(screw)}"
        ledger.decide(f"{end}_thread", screw.designation, "", rule, using, source)
    ledger.decide(f"{end}_thread_diameter", screw.diameter, "mm", "of the thread", (f"{end}_thread",), _threads(screw))
    ledger.decide(f"{end}_thread_pitch", screw.pitch, "mm", "of the thread", (f"{end}_thread",), _threads(screw))
    hole = ledger.number(f"{end}.bolt_hole") if not tapped and ledger.known(f"{end}.bolt_hole") else None
    width, height = _outline(ledger, end)
    shape_round = ledger.text(f"{end}.flange_shape") == "round"
    hole = clearance_hole(screw.size) if hole is None else hole
    return Flange(end, shape_round, width, height, positions, hole, screw, tapped)
