"""Every size of one block in the order in which it is decided, in rounds until the window clears its corner radii."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from blockgen.errors import Cure, InfeasibleError
from blockgen.record import Band, Ledger
from blockgen.sizing.axial_sizes import decide_axial
from blockgen.sizing.base_pattern import Positions, seat_obstacles
from blockgen.sizing.base_place import place_base_screws
from blockgen.sizing.base_plate import decide_plate_thread
from blockgen.sizing.base_screws import (
    BaseScrew,
    decide_base_length,
    decide_base_screw,
    decide_thread_from_below,
    least_side_wall,
    screw_wall,
)
from blockgen.sizing.bores import decide_bore_depth, decide_pilot_bore, decide_through_bore
from blockgen.sizing.cures import effort
from blockgen.sizing.family import Member, as_mounted, enter_member
from blockgen.sizing.family_axial import ApartError
from blockgen.sizing.loads import decide_loads
from blockgen.sizing.material import enter_material, resolve_material
from blockgen.sizing.mating import Flange, flange
from blockgen.sizing.outside import decide_height, decide_side_wall
from blockgen.sizing.screw_list import decide_screw_into_flange
from blockgen.sizing.seats import SeatThread, decide_seat_thread
from blockgen.sizing.sources import CP
from blockgen.sizing.walls import behind_window
from blockgen.sizing.window import (
    CUTTERS,
    corner_shortfall,
    decide_corner_clearance,
    decide_corner_radius,
    decide_window_width,
    head_span,
)
from blockgen.standards.materials import Material

_ROUNDS = 8
# Each round widens a little more than what is missing, since the layout moves with the window.
_ROOM_STEP = 0.2
_HAIR = 1e-6
_CORNER = "geometry of the window's corner"


@dataclass(frozen=True, slots=True)
class Parts:
    """The mating parts as sizing sees them."""

    bearing: Flange
    motor: Flange
    bearing_seat: SeatThread | None
    motor_seat: SeatThread | None
    screw: BaseScrew
    block: Material
    base: Material
    others: tuple[Member, ...] = ()

    @property
    def motors(self) -> tuple[Flange, ...]:
        """Return the flanges of all motors that the block takes, one at a time."""
        return self.motor, *(member.flange for member in self.others)


def decide_sizes(start: Ledger, kin: Sequence[Member] = ()) -> tuple[Ledger, Parts, Positions]:
    """Decide every size; again with a wider window where the coupling would come near a corner radius of it.

    Where no layout exists with the wider window, the narrower one stays and a check tells what is left. ``kin`` are the
    further motors of a family.
    """
    start = start.copy()
    parts = _parts(start, kin)  # nothing about them depends on the window
    room, (ledger, positions) = _first_round(start, parts)
    given = start.known("block.window_width")
    for _ in range(_ROUNDS):
        missing = _corner_shortfall(ledger, parts)
        if missing <= _HAIR:
            break
        if (given or missing > start.number("practice.corner_room_most")) and not _cutter_given(start):
            start, missing = _with_long_cutter(start, ledger), 0.0
        elif given:
            break
        room += 0.0 if given else missing + _ROOM_STEP
        try:
            ledger, positions = _one_round(start, parts, room)
        except InfeasibleError:
            otherwise = _over_the_holes(start, parts, room) or _with_smaller_cutter(start, parts)
            ledger, positions = otherwise or (ledger, positions)
            break
    return ledger, parts, positions


def _first_round(start: Ledger, parts: Parts) -> tuple[float, tuple[Ledger, Positions]]:
    """Decide every size with the narrowest window; a wider one in front of the seat holes where no length exists.

    Holes that straddle the edge of the window must end inside the wall and make it thick; a window that is wider than
    the hole pattern lets them break through.
    """
    try:
        return 0.0, _one_round(start, parts, 0.0)
    except InfeasibleError as error:
        failed = [error]
    for room in sorted(_rooms_in_front_of_holes(start, parts)):
        try:
            return room, _one_round(start, parts, room)
        except InfeasibleError as error:
            failed.append(error)
    raise _nearest(failed)


def _nearest(failed: Sequence[InfeasibleError]) -> InfeasibleError:
    """Return the conflict that misses by the least, with the cures of all windows that were tried.

    What parts the motors of a family says more than a window that would be too narrow for one of them anyway.
    """
    cures: dict[str, Cure] = {}
    for cure in (cure for error in failed for cure in error.cures):
        known = cures.get(cure.key)
        if known is None or effort(cure) < effort(known):
            cures[cure.key] = cure
    return InfeasibleError(
        min([e for e in failed if isinstance(e, ApartError)] or failed, key=_missing).conflicts,
        sorted(cures.values(), key=lambda c: (c.rank, effort(c))),
    )


def _missing(error: InfeasibleError) -> float:
    """Return by how many mm a layout misses, its worst conflict counted."""
    return max(conflict.deficit for conflict in error.conflicts)


def _rooms_in_front_of_holes(start: Ledger, parts: Parts, room: float = 0.0) -> set[float]:
    """Return how much wider in mm the window must be so that it covers the seat holes that straddle its edge.

    Args:
        start: Ledger before the window is decided.
        parts: The mating parts.
        room: Width in mm that the window has already been given.
    """
    ledger = start.copy()
    narrow = _window_width(start, parts)
    if room:
        ledger.decide("window_corner_room", room, "mm", "tried")
    decide_window_width(ledger, _widest(ledger, parts))
    if ledger.known("block.window_width"):
        return set()
    across = ledger.text("block.window_axis") == "y"
    rooms = set()
    for flange_here in (parts.bearing, *parts.motors):
        if behind_window(ledger, flange_here) == "straddling":
            reach = max(abs(z) if across else abs(y) for y, z in flange_here.positions)
            rooms.add(2 * reach + flange_here.thread.tap_drill - narrow + _ROOM_STEP)
    return rooms


def _window_width(start: Ledger, parts: Parts) -> float:
    return decide_window_width(start.copy(), _widest(start, parts))


def _widest(ledger: Ledger, parts: Parts) -> Flange:
    """Return the motor flange whose screws take most of the window's width: a tapped one, where there is any."""
    tapped = [flange_here for flange_here in parts.motors if flange_here.tapped]
    return max(tapped, key=lambda f: head_span(ledger, f)) if tapped else parts.motor


def _corner_shortfall(ledger: Ledger, parts: Parts) -> float:
    """Return by how many mm the window must be wider because of its corner radii, whichever motor is mounted."""
    further = (corner_shortfall(as_mounted(ledger, member), member.flange) for member in parts.others)
    return max([corner_shortfall(ledger, parts.motor), *further])


def _over_the_holes(start: Ledger, parts: Parts, room: float) -> tuple[Ledger, Positions] | None:
    """Decide every size with a window that also covers the seat holes at its edge, or None where that does not help."""
    for wider in sorted(r for r in _rooms_in_front_of_holes(start, parts, room) if r > room):
        try:
            ledger, positions = _one_round(start, parts, wider)
        except InfeasibleError:
            continue
        if _corner_shortfall(ledger, parts) <= _HAIR:
            return ledger, positions
    return None


def _cutter_given(ledger: Ledger) -> bool:
    return ledger.known("block.cutter_diameter") or ledger.known("block.window_corner_radius")


def _with_long_cutter(start: Ledger, ledger: Ledger) -> Ledger:
    """Return the start with the smallest cutter that reaches the depth at all: it saves width in the corners."""
    depth, hard = ledger.number("window_cut_depth"), ledger.number("practice.cut_depth_ratio_hard")
    cutter = next((c for c in CUTTERS if depth / c <= hard), CUTTERS[-1])
    again = start.copy()
    rule = (
        f"smallest usual cutter that cuts {depth:.1f} deep at {hard:g} D: a larger one would widen the window too much"
    )
    again.decide("block.cutter_diameter", cutter, "mm", rule, (), CP, origin="assumed")
    return again


def _with_smaller_cutter(start: Ledger, parts: Parts) -> tuple[Ledger, Positions] | None:
    """Decide every size with the largest cutter whose corner radius needs no wider window, or None."""
    if _cutter_given(start):
        return None
    for cutter in reversed(CUTTERS):
        trial = start.copy()
        rule = "smaller than usual: a wider window for its corner radius would leave no feasible length"
        trial.decide("block.cutter_diameter", cutter, "mm", rule, (), CP, origin="assumed")
        ledger, positions = _one_round(trial, parts, 0.0)
        if _corner_shortfall(ledger, parts) <= _HAIR:
            ledger.remark(
                f"The window is cut with a {cutter:g} mm cutter, since a wider window leaves no feasible length."
            )
            return ledger, positions
    return None


def _one_round(start: Ledger, parts: Parts, room: float) -> tuple[Ledger, Positions]:
    """Decide every size from the window on, with ``room`` in mm of extra window width for the corner radius."""
    ledger = start.copy()
    if room:
        rule = "wider because of the corner radius at the end wall, or of seat holes at the window's edge"
        ledger.decide("window_corner_room", round(room, 3), "mm", rule, ("coupling.swing_diameter",), _CORNER)
        ledger.remark(f"The window is {room:.2f} mm wider because of its corner radius or of seat holes at its edge.")
    decide_window_width(ledger, _widest(ledger, parts))
    _inside(ledger, parts)
    return ledger, _outside(ledger, parts)


def _parts(ledger: Ledger, kin: Sequence[Member]) -> Parts:
    decide_loads(ledger)
    block, base = resolve_material(ledger, "block"), resolve_material(ledger, "base")
    enter_material(ledger, "block", block)
    enter_material(ledger, "base", base)
    bearing, motor = flange(ledger, "bearing"), flange(ledger, "motor")
    seats = [decide_seat_thread(ledger, f, block) for f in (bearing, motor)]
    for member in kin:
        enter_member(ledger, member)
    return Parts(bearing, motor, seats[0], seats[1], decide_base_screw(ledger, block), block, base, tuple(kin))


def _inside(ledger: Ledger, parts: Parts) -> None:
    """Decide bores, walls, length and coupling position."""
    for end in ("bearing", "motor"):
        decide_pilot_bore(ledger, end)
        decide_through_bore(ledger, end)
    around_screw = screw_wall(ledger, parts.screw)
    least_side_wall(ledger)
    screws_in_ends = around_screw if ledger.text("block.window_axis") == "y" else 0.0
    decide_axial(ledger, (parts.bearing, parts.bearing_seat), (parts.motor, parts.motor_seat), screws_in_ends,
                 parts.others)  # fmt: skip
    for end in ("bearing", "motor"):
        decide_bore_depth(ledger, end)
    decide_screw_into_flange(ledger, parts.motor)
    length = ledger.number("length") - ledger.number("bearing_wall") - ledger.number("motor_wall")
    ledger.decide(
        "window_length",
        round(length, 6),
        "mm",
        "length - bearing_wall - motor_wall",
        ("length", "bearing_wall", "motor_wall"),
    )


def _outside(ledger: Ledger, parts: Parts) -> Positions:
    """Decide height, base screws, width and window corner radius."""
    flanges = (parts.bearing, parts.motor, *(member.outline for member in parts.others))
    side_wall = ledger.number("side_wall_least")
    height = decide_height(ledger, flanges, side_wall if ledger.text("block.window_axis") == "y" else 0.0)
    tolerance = ledger.number("block.height_tolerance")
    ledger.decide("shaft_height", ledger.number("base.shaft_height"), "mm", "given", ("base.shaft_height",),
                  band=Band(tolerance, -tolerance), origin=ledger["base.shaft_height"].origin)  # fmt: skip
    decide_base_length(ledger, parts.screw, parts.base)
    decide_thread_from_below(ledger, parts.screw, parts.block)
    decide_plate_thread(ledger, parts.screw)
    obstacles = [
        *seat_obstacles(ledger, parts.bearing, parts.bearing_seat),
        *seat_obstacles(ledger, parts.motor, parts.motor_seat),
        *(hole for member in parts.others for hole in seat_obstacles(ledger, member.flange, member.seat)),
    ]
    positions = place_base_screws(ledger, parts.screw, flanges, obstacles, side_wall)
    decide_side_wall(ledger)
    decide_corner_radius(
        ledger, _cut_depth(ledger, height), min(ledger.number("window_width"), ledger.number("window_length"))
    )
    decide_corner_clearance(ledger, parts.motor)
    return positions


def _cut_depth(ledger: Ledger, height: float) -> float:
    """Return the depth in mm that a cutter must reach: half of a through window, all of a pocket."""
    if ledger.text("block.window_axis") == "y":
        return ledger.number("width") / 2
    floor = ledger.number("block.window_floor")
    return height - floor if floor > 0 else height / 2
