"""The cavities of the block and the holes of the base plate, from decided sizes."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from blockgen.plan import Feature, Pocket, Point
from blockgen.record import Ledger
from blockgen.sizing.base_screws import BaseScrew
from blockgen.sizing.cavities import (
    BoreSize,
    Place,
    TapSize,
    bore,
    clearance_hole,
    counterbored_hole,
    relief,
    tapped_hole,
    window,
)
from blockgen.sizing.mating import Flange
from blockgen.sizing.seats import SeatThread, least_cavity_wall, point_length
from blockgen.sizing.walls import hole_place

INWARD: dict[str, Point] = {"bearing": (1.0, 0.0, 0.0), "motor": (-1.0, 0.0, 0.0)}
Positions = Sequence[tuple[float, float]]
# A relief lies between two pads: with more rows of screws a clamped pad would hang over it.
_RELIEF_ROWS = 2


def _seat_point(ledger: Ledger, end: str, y: float = 0.0, z: float = 0.0) -> Point:
    return (0.0 if end == "bearing" else ledger.number("length"), y, round(ledger.number("shaft_height") + z, 9))


def bore_feature(ledger: Ledger, end: str) -> Feature:
    """Return the pilot bore of one seat."""
    record = ledger[f"{end}_bore"]
    size = BoreSize(
        ledger.number(f"{end}_bore"),
        ledger.number(f"{end}_bore_depth"),
        ledger.number(f"{end}_through_bore"),
        ledger.number(f"{end}_wall"),
        ledger.number("practice.lead_in"),
        record.fit or "",
        record.upper or 0.0,
        record.lower or 0.0,
    )
    keys = {"diameter": f"{end}_bore", "depth": f"{end}_bore_depth", "through_diameter": f"{end}_through_bore"}
    place = Place(f"{end}_bore", f"{end}_bore", f"{end}_seat", _seat_point(ledger, end), INWARD[end], keys)
    return bore(place, size)


def window_feature(ledger: Ledger) -> Feature:
    """Return the window as a box with rounded corners."""
    start, end = ledger.number("bearing_wall"), ledger.number("length") - ledger.number("motor_wall")
    half, radius = ledger.number("window_width") / 2, ledger.number("window_corner_radius")
    shaft, floor = ledger.number("shaft_height"), ledger.number("block.window_floor")
    if ledger.text("block.window_axis") == "y":
        side = ledger.number("width") / 2
        box = Pocket(
            "y", (start, -side, shaft - half), (end, side, shaft + half), radius, open_low=True, open_high=True
        )
    else:
        low, high = (start, -half, floor), (end, half, ledger.number("height"))
        box = Pocket("z", low, high, radius, open_low=floor <= 0, open_high=True)
    keys = {"length": "window_length", "width": "window_width", "corner_radius": "window_corner_radius"}
    return window(box, ledger.number("window_width"), keys)


def seat_features(ledger: Ledger, flange: Flange, seat: SeatThread | None, name: str = "") -> list[Feature]:
    """Return the holes of one seat: tapped, or clearance holes for a tapped flange.

    Args:
        ledger: Ledger of a sized block.
        flange: The flange, with the holes that are wanted.
        seat: Its tapped holes; None for a tapped flange.
        name: What ids and keys begin with, where it is not the end: a further motor of a family.
    """
    name = name or flange.end
    return [
        _clearance(ledger, flange, name, (i, y, z)) if seat is None else _tapped(ledger, flange, seat, name, (i, y, z))
        for i, (y, z) in enumerate(flange.positions, 1)
    ]


def _clearance(ledger: Ledger, flange: Flange, name: str, at: tuple[int, float, float]) -> Feature:
    end, (index, y, z) = flange.end, at
    place = Place(f"{name}_hole_{index}", f"{name}_holes", f"{end}_seat", _seat_point(ledger, end, y, z), INWARD[end])
    return clearance_hole(
        place, flange.hole, ledger.number(f"{end}_wall"), ledger.number("block.hole_chamfer"), "window"
    )


def _tapped(ledger: Ledger, flange: Flange, seat: SeatThread, name: str, at: tuple[int, float, float]) -> Feature:
    end, screw, (index, y, z) = flange.end, flange.thread, at
    wall = ledger.number(f"{end}_wall")
    keys = {"thread": f"{name}_thread", "thread_depth": f"{name}_thread_depth", "depth": f"{name}_drill_depth"}
    place = Place(
        f"{name}_thread_{index}", f"{name}_threads", f"{end}_seat", _seat_point(ledger, end, y, z), INWARD[end], keys
    )
    size = TapSize(screw.call_out, screw.diameter, screw.tap_drill, seat.thread_depth, seat.drill_depth, seat.point)
    through = wall < seat.blind_wall and hole_place(ledger, screw, screw.tap_drill / 2, y, z) == "inside"
    return tapped_hole(place, size, "window" if through else None, wall)


def base_feature(ledger: Ledger, screw: BaseScrew, index: int, x: float, y: float) -> Feature:
    """Return one base screw's hole: counterbored from above, or tapped from below."""
    height = ledger.number("height")
    if screw.from_below:
        keys = {"thread": "base_screw", "thread_depth": "base_thread_depth", "depth": "base_drill_depth"}
        place = Place(f"base_thread_{index}", "base_threads", "base", (x, y, 0.0), (0.0, 0.0, 1.0), keys)
        return tapped_hole(place, _tap(ledger, screw))
    keys = {
        "diameter": "base_screw_hole",
        "counterbore_diameter": "base_counterbore_diameter",
        "counterbore_depth": "base_counterbore_depth",
    }
    place = Place(f"base_screw_{index}", "base_screws", "top", (x, y, height), (0.0, 0.0, -1.0), keys)
    head = (screw.head, ledger.number("base_counterbore_depth"))
    return counterbored_hole(place, screw.hole, head, height, ledger.number("block.hole_chamfer"), "base")


def _tap(ledger: Ledger, screw: BaseScrew) -> TapSize:
    drill = screw.thread.tap_drill
    point = point_length(drill, ledger.number("practice.drill_point_angle"))
    depth, drilled = ledger.number("base_thread_depth"), ledger.number("base_drill_depth")
    return TapSize(screw.thread.call_out, screw.thread.diameter, drill, depth, drilled, point)


def relief_feature(ledger: Ledger, screw: BaseScrew, positions: Positions) -> Feature | None:
    """Return the relief of the base face between two rows of base screws; None without one or without room."""
    depth = ledger.number("block.relief")
    if depth <= 0:
        return None
    rim = max(ledger.number("practice.counterbore_rim"), least_cavity_wall(ledger, screw.thread.diameter))
    keep = screw.hole / 2 + rim
    rows = sorted({x for x, _ in positions})
    gaps = [(low + keep, high - keep) for low, high in pairwise(rows)]
    start, end = max(gaps, key=lambda gap: gap[1] - gap[0], default=(0.0, 0.0))
    if len(rows) != _RELIEF_ROWS or end - start < keep:
        ledger.remark("The base face has no relief: the base screws leave no room for it between two rows.")
        return None
    side = ledger.number("width") / 2
    box = Pocket("y", (start, -side, 0.0), (end, side, depth), 0.0, open_low=True, open_high=True)
    return relief(box, ("window",), {"depth": "block.relief"})


def block_features(
    ledger: Ledger,
    flanges: tuple[Flange, Flange],
    seats: tuple[SeatThread | None, SeatThread | None],
    screw: BaseScrew,
    positions: Positions,
) -> tuple[Feature, ...]:
    """Return every cavity of the block but dowels and lifting threads, bores first."""
    features = [bore_feature(ledger, "bearing"), bore_feature(ledger, "motor"), window_feature(ledger)]
    for flange, seat in zip(flanges, seats, strict=True):
        features += seat_features(ledger, flange, seat)
    features += [base_feature(ledger, screw, i, x, y) for i, (x, y) in enumerate(positions, 1)]
    ground = relief_feature(ledger, screw, positions)
    return (*features, ground) if ground else tuple(features)
