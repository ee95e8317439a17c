"""Width and height of the block: flanges wholly on their seats, window and side walls inside."""

from __future__ import annotations

from collections.abc import Sequence

from blockgen.record import Ledger
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounding import up

_SOURCE = "common practice, no source"


def seat_margin(ledger: Ledger, edge: str) -> float:
    """Return what must show around a flange in mm, edge break or fillet included.

    Args:
        ledger: Completed ledger.
        edge: ``side`` for the vertical edges, ``flat`` for those at base and top.
    """
    broken = ledger.number("block.edge_chamfer")
    if edge == "side":
        broken = ledger.number("block.outer_fillet") or broken
    return ledger.number("practice.flange_margin") + broken


def decide_width(ledger: Ledger, flanges: Sequence[Flange], side_wall: float, screw_span: float) -> float:
    """Decide the block width in mm.

    Args:
        ledger: Ledger with window_width.
        flanges: Both flanges.
        side_wall: Least side wall for the base screws, mm.
        screw_span: Least width in mm at which the base screws pass the seat holes; 0 where they do anyway.
    """
    across = ledger.text("block.window_axis") == "y"
    broad = max(flanges, key=lambda f: f.half_width)
    seat = 2 * (broad.half_width + seat_margin(ledger, "side"))
    cavity = 0.0 if across else ledger.number("window_width") + 2 * side_wall
    if ledger.known("block.side_wall") and not across and not ledger.known("block.width"):
        return _width_of_given_wall(ledger, max(seat, cavity, screw_span))
    wants = [
        (f"{broad.end} flange and the seat around it", seat),
        ("window and two side walls", cavity),
        ("base screws clear of the seat holes", screw_span),
    ]
    what, least = max(wants, key=lambda item: item[1])
    using = (
        "motor.flange_size", "bearing.flange_size", "practice.flange_margin", "block.edge_chamfer",
        "block.outer_fillet", "window_width", "side_wall_least",
    )  # fmt: skip
    return _enter(ledger, "width", least, what, using)


def _width_of_given_wall(ledger: Ledger, least: float) -> float:
    value = ledger.number("window_width") + 2 * ledger.number("block.side_wall")
    using = ("window_width", "block.side_wall")
    ledger.decide("width", value, "mm", "window width + 2 given side walls", using)
    ledger.decide("width_least", least, "mm", "flange seats, window with side walls, base screws", using, _SOURCE)
    return value


def decide_height(ledger: Ledger, flanges: Sequence[Flange], roof: float) -> float:
    """Decide the block height in mm: shaft height plus the higher flange and the seat around it.

    Args:
        ledger: Completed ledger.
        flanges: Both flanges.
        roof: Least wall above a window across, mm; 0 for a window from above.
    """
    high = max(flanges, key=lambda f: f.half_height)
    shaft = ledger.number("base.shaft_height")
    wants = [
        (
            f"shaft height, {high.end} flange and the seat above it",
            shaft + high.half_height + seat_margin(ledger, "flat"),
        ),
        ("shaft height, window across and its roof", shaft + ledger.number("window_width") / 2 + roof if roof else 0.0),
    ]
    what, least = max(wants, key=lambda item: item[1])
    using = (
        "base.shaft_height", "motor.flange_size", "bearing.flange_size", "practice.flange_margin", "block.edge_chamfer",
    )  # fmt: skip
    return _enter(ledger, "height", least, what, using)


def _enter(ledger: Ledger, key: str, least: float, what: str, using: tuple[str, ...]) -> float:
    given = f"block.{key}"
    step = ledger.number("practice.size_step")
    if ledger.known(given):
        value, origin = ledger.number(given), ledger[given].origin
        ledger.decide(
            key, value, "mm", f"given; at least {least:.2f} for {what}", (given, *using), _SOURCE, origin=origin
        )
    else:
        value = up(least, step)
        ledger.decide(key, value, "mm", f"{what} = {least:.2f}, up to the next {step:g}", using, _SOURCE)
    ledger.decide(f"{key}_least", least, "mm", what, using, _SOURCE)
    return value


def decide_side_wall(ledger: Ledger) -> float:
    """Enter the side wall that is left beside the window (floor and roof for a window across), mm."""
    window = ledger.number("window_width")
    if ledger.text("block.window_axis") == "y":
        low = ledger.number("base.shaft_height") - window / 2
        value = min(low, ledger.number("height") - ledger.number("base.shaft_height") - window / 2)
        rule = "lesser of floor and roof of the window across"
        using: tuple[str, ...] = ("height", "base.shaft_height", "window_width")
    else:
        value = (ledger.number("width") - window) / 2
        rule, using = "(width - window width) / 2", ("width", "window_width")
    ledger.decide("side_wall", value, "mm", rule, using, "")
    return value
