"""End walls: the thickness that is usual for this block, and the floor to which it may shrink."""

from __future__ import annotations

from blockgen.record import Ledger
from blockgen.sizing.bores import pilot_seat_depth
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounding import up
from blockgen.sizing.seats import SeatThread, least_cavity_wall
from blockgen.sizing.sources import CP
from blockgen.standards.threads import Thread


def hole_place(ledger: Ledger, screw: Thread, radius: float, y: float, z: float) -> str:
    """Tell whether a hole along x ends in front of the window: ``inside``, ``outside`` or ``straddling``.

    Args:
        ledger: Ledger with window_width.
        screw: Thread of the hole, for the least wall.
        radius: Radius of the hole, mm.
        y: Centre from the shaft axis, mm.
        z: Centre from the shaft axis, mm.
    """
    half = ledger.number("window_width") / 2
    across = ledger.text("block.window_axis") == "y"
    offset = abs(z) if across else abs(y)
    above_floor = ledger.number("base.shaft_height") + z - ledger.number("block.window_floor")
    into = half - offset if across else min(half - offset, above_floor)
    if into >= radius:
        return "inside"
    return "outside" if -into >= radius + least_cavity_wall(ledger, screw.diameter) else "straddling"


def behind_window(ledger: Ledger, flange: Flange) -> str:
    """Return the place of a flange's worst hole: straddling before inside before outside."""
    radius = flange.thread.tap_drill / 2
    places = {hole_place(ledger, flange.thread, radius, y, z) for y, z in flange.positions}
    return next(place for place in ("straddling", "inside", "outside") if place in places)


def wall_range(ledger: Ledger, flange: Flange, seat: SeatThread | None, screw_wall: float) -> tuple[float, float]:
    """Return the floor and the usual thickness of an end wall in mm.

    Args:
        ledger: Ledger with window_width.
        flange: The flange on this wall.
        seat: Its tapped holes; None for clearance holes.
        screw_wall: Wall that vertical base screws in it would need, mm; 0 where they stand elsewhere.
    """
    step = ledger.number("practice.wall_step")
    floor = max(ledger.number("practice.wall_least"), screw_wall)
    usual = max(ledger.number("practice.wall_usual"), floor)
    if flange.end == "bearing":
        pilot = pilot_seat_depth(ledger, "bearing")
        floor = max(floor, ledger.number("practice.pilot_carried") * pilot)
        usual = max(usual, pilot)
    else:
        floor = max(floor, pilot_seat_depth(ledger, "motor") + ledger.number("practice.bore_shoulder"))
    if seat is not None:
        place = behind_window(ledger, flange)
        usual = max(usual, seat.blind_wall if place != "outside" else 0.0)
        floor = max(floor, {"inside": seat.engagement, "straddling": seat.blind_wall, "outside": 0.0}[place])
    return up(floor, step), max(up(usual, step), up(floor, step))


def decide_wall(ledger: Ledger, end: str, value: float, floor: float, usual: float) -> None:
    """Enter an end wall in mm with the reason for its thickness."""
    key = f"{end}_wall"
    using = (
        f"{end}.pilot_length", "practice.pilot_depth_extra", f"{end}_blind_wall", f"{end}_engagement_least",
        f"family_{end}_blind_wall", f"family_{end}_pilot_length",
        "practice.wall_usual", "practice.wall_least",
    )  # fmt: skip
    if ledger.known(f"block.{key}"):
        origin = ledger[f"block.{key}"].origin
        rule = f"given; usual {usual:g}, floor {floor:g}"
        ledger.decide(key, value, "mm", rule, (f"block.{key}", *using), CP, origin=origin)
    else:
        rule = _usual_rule(ledger, end, usual)
        if value < usual:
            rule = f"thinned from the usual {usual:g} so that a length exists (floor {floor:g})"
            ledger.remark(f"The {end} wall is {value:g} mm, thinned from {usual:g} mm so that a length exists.")
        ledger.decide(key, value, "mm", rule, using, CP)
    ledger.decide(f"{key}_least", floor, "mm", "greatest of least wall, pilot carried, thread engagement", using, CP)


def _usual_rule(ledger: Ledger, end: str, usual: float) -> str:
    """Return which of the wants made the usual wall."""
    pilot = pilot_seat_depth(ledger, end) if end == "bearing" else 0.0
    further = ledger.number_or("family_motor_blind_wall", 0.0) if end == "motor" else 0.0
    wants = (
        ("practice.wall_usual; usual wall", ledger.number("practice.wall_usual")),
        (
            f"{end}_blind_wall; tapped holes end in front of the window, up to 0.5",
            ledger.number_or(f"{end}_blind_wall", 0.0),
        ),
        (f"{end}.pilot_length + practice.pilot_depth_extra; the pilot is carried fully, up to 0.5", pilot),
        ("family_motor_blind_wall; deepest tapped holes of the family, up to 0.5", further),
    )
    fitting = [(rule, value) for rule, value in wants if value <= usual + 1e-6]
    return max(fitting, key=lambda want: want[1], default=("as the base screws in it need", 0.0))[0]
