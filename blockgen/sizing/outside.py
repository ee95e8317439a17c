"""Width and height of the block: flanges wholly on their seats, window and side walls inside."""

from __future__ import annotations

from collections.abc import Sequence

from blockgen.errors import Conflict, Cure, InfeasibleError
from blockgen.record import Ledger
from blockgen.sizing.mating import Flange
from blockgen.sizing.rounding import up
from blockgen.sizing.sources import CP


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
    edge = "block.outer_fillet" if ledger.number("block.outer_fillet") else "block.edge_chamfer"
    size = _outline(ledger, broad.end, "width")
    wants = [
        (f"{size} + 2 x (practice.flange_margin + {edge})", f"{broad.end} flange on its seat", seat),
        ("window_width + 2 x side_wall_least", "window between side walls", cavity),
        (f"2 x {screw_span / 2:.3f}", "outermost seat hole, its wall, base screw and rim on each side", screw_span),
    ]
    using = (size, "practice.flange_margin", edge, "window_width", "side_wall_least")
    return _enter(ledger, "width", max(wants, key=lambda want: want[2]), using)


def _outline(ledger: Ledger, end: str, side: str) -> str:
    """Return the key of a flange's width or height: of its own, else its size."""
    key = f"{end}.flange_{side}"
    return key if ledger.known(key) else f"{end}.flange_size"


def _width_of_given_wall(ledger: Ledger, least: float) -> float:
    value = ledger.number("window_width") + 2 * ledger.number("block.side_wall")
    using = ("window_width", "block.side_wall")
    ledger.decide("width", value, "mm", "window_width + 2 x block.side_wall; side wall given", using)
    ledger.decide("width_least", least, "mm", "flange seats, window with side walls, base screws", using, CP)
    return value


def decide_height(ledger: Ledger, flanges: Sequence[Flange], roof: float) -> float:
    """Decide the block height in mm: shaft height plus the higher flange and the seat around it.

    Args:
        ledger: Completed ledger.
        flanges: Both flanges.
        roof: Least wall above a window across, mm; 0 for a window from above.
    """
    high = max(flanges, key=lambda f: f.half_height)
    shaft, margin = ledger.number("base.shaft_height"), seat_margin(ledger, "flat")
    size = _outline(ledger, high.end, "height")
    wants = [
        (f"base.shaft_height + {size} / 2 + practice.flange_margin + block.edge_chamfer",
         f"{high.end} flange on its seat", shaft + high.half_height + margin),
        ("base.shaft_height + window_width / 2 + side_wall_least", "roof over the window across",
         shaft + ledger.number("window_width") / 2 + roof if roof else 0.0),
    ]  # fmt: skip
    using = (
        "base.shaft_height",
        size,
        "practice.flange_margin",
        "block.edge_chamfer",
        "window_width",
        "side_wall_least",
    )
    return _enter(ledger, "height", max(wants, key=lambda want: want[2]), using)


def _enter(ledger: Ledger, key: str, want: tuple[str, str, float], using: tuple[str, ...]) -> float:
    """Enter an outside size in mm and the least one: given, or the greatest want (formula, words, mm) rounded up."""
    given, (formula, what, least) = f"block.{key}", want
    step = ledger.number("practice.size_step")
    if ledger.known(given):
        value, origin = ledger.number(given), ledger[given].origin
        rule = f"given; at least {least:.2f} for: {what}"
        ledger.decide(key, value, "mm", rule, (given, *using), CP, origin=origin)
    else:
        value = up(least, step)
        ledger.decide(key, value, "mm", f"{formula}; {what}, up to the next {step:g}", using, CP)
    ledger.decide(f"{key}_least", least, "mm", f"{formula}; {what}", using, CP)
    return value


def _too_low(ledger: Ledger, window: float) -> InfeasibleError:
    """Return the conflict of a window across that would cut through the base face, with its cure."""
    shaft, floor = ledger.number("base.shaft_height"), ledger.number("practice.roof_least")
    least = up(window / 2 + floor, ledger.number("practice.size_step"))
    facts = (f"the window across is {window:g} mm high about the shaft", f"base.shaft_height = {shaft:g} mm")
    title = f"window across / shaft height: {least - shaft:.2f} mm missing"
    conflict = Conflict(title, least - shaft, facts, ("base.shaft_height", "block.window_width"))
    text = f"higher shaft: base.shaft_height {shaft:g} mm -> {least:g} mm"
    raised = Cure("base.shaft_height", "higher shaft", shaft, least, "mm", text, 3, verified=True)
    above = Cure(
        "block.window_axis",
        "window from above",
        None,
        None,
        "",
        'window from above: window_axis = "z"',
        1,
        verified=False,
    )
    return InfeasibleError([conflict], [above, raised])


def decide_side_wall(ledger: Ledger) -> float:
    """Enter the side wall that is left beside the window (floor and roof for a window across), mm.

    Raises:
        InfeasibleError: a window across would cut through the base face.
    """
    window = ledger.number("window_width")
    if ledger.text("block.window_axis") == "y":
        low = ledger.number("base.shaft_height") - window / 2
        if low <= 0:
            raise _too_low(ledger, window)
        value = min(low, ledger.number("height") - ledger.number("base.shaft_height") - window / 2)
        rule = "lesser of floor and roof of the window across"
        using: tuple[str, ...] = ("height", "base.shaft_height", "window_width")
    else:
        value = (ledger.number("width") - window) / 2
        rule, using = "(width - window width) / 2", ("width", "window_width")
    ledger.decide("side_wall", value, "mm", rule, using, "")
    return value
