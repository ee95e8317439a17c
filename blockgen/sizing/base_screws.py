"""Base screws: thread from the thrust, where they stand, counterbore, length, engagement in the base plate."""

from __future__ import annotations

import math
from dataclasses import dataclass

from blockgen.errors import InputError, Problem
from blockgen.mechanics.slip import slip_safety
from blockgen.record import Ledger
from blockgen.sizing.joint import known_thread, screw_preload, sure_preload
from blockgen.sizing.rounding import up
from blockgen.sizing.seats import decide_engagement
from blockgen.sizing.sources import CP, cited
from blockgen.standards.din974 import counterbore
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.materials import Material
from blockgen.standards.screws import cap_screw, preferred_length
from blockgen.standards.threads import Thread, thread

# Flange size in mm up to which a thread is usual (common practice, no source).
_USUAL_BY_FLANGE = (
    (32.0, "M4"), (45.0, "M5"), (62.0, "M6"), (85.0, "M8"), (150.0, "M10"), (200.0, "M12"), (math.inf, "M16"),
)  # fmt: skip
# A window across leaves room for base screws in the four corners only.
_ACROSS = 4
# Screws of more than three sizes above the usual one find no place beside the window.
_STEPS_UP = 4
_SIZES = ("M4", "M5", "M6", "M8", "M10", "M12", "M16", "M20")


@dataclass(frozen=True, slots=True)
class BaseScrew:
    """One base screw's sizes, mm.

    Args:
        thread: Its thread.
        hole: Clearance hole.
        head: Counterbore diameter.
        from_below: True where the block is tapped and the screws come through the base plate.
    """

    thread: Thread
    hole: float
    head: float
    from_below: bool

    @property
    def radius(self) -> float:
        """Greatest radius of its cavity in the block, mm."""
        return self.thread.diameter / 2 if self.from_below else self.head / 2


def screw_count(ledger: Ledger) -> int:
    """Return the number of base screws: of the given pattern, else as asked for."""
    if ledger.known("base.hole_positions"):
        return len(ledger.points("base.hole_positions"))
    return int(ledger.number("base.screw_count"))


def decide_base_screw(ledger: Ledger) -> BaseScrew:
    """Decide the base screws' thread: given, or usual for the flange and large enough for the thrust."""
    grade, count = ledger.text("base.property_class"), screw_count(ledger)
    _require_count(ledger, count)
    using = (
        "base.screw", "motor.flange_size", "bearing.flange_size", "screw.thrust", "base.friction", "limits.slip_safety",
        "base.property_class", "base.screw_count", "base.tightening",
    )  # fmt: skip
    if ledger.known("base.screw"):
        name = ledger.text("base.screw")
        ledger.decide("base_screw", name, "", "given", using, origin=ledger["base.screw"].origin)
    else:
        name, rule = _choose(ledger, grade, count)
        ledger.decide("base_screw", name, "", rule, using, "VDI 2230 preload form; size by flange: common practice")
    screw = known_thread(name, "base.screw")
    ledger.decide("base_screw_pitch", screw.pitch, "mm", "of the thread", ("base_screw",), cited("metric_threads"))
    ledger.decide(
        "base_screw_diameter", screw.diameter, "mm", "of the thread", ("base_screw",), cited("metric_threads")
    )
    below = ledger.text("base.screw_from") == "below"
    hole, head = clearance_hole(screw.size), counterbore(screw.size).diameter
    ledger.decide("base_screw_hole", hole, "mm", "clearance hole, medium", ("base_screw",), cited("iso273"))
    ledger.decide("base_counterbore_diameter", head, "mm", "series 1", ("base_screw",), cited("din974"))
    return BaseScrew(screw, hole, head, below)


def _require_count(ledger: Ledger, count: int) -> None:
    """Refuse a count that cannot stand on both sides of the shaft, unless the pattern itself is given."""
    across, locked = ledger.text("block.window_axis") == "y", ledger.known("base.hole_positions")
    wrong = count != _ACROSS if across else count < 2 or count % 2
    if wrong and not locked:
        expected = f"{_ACROSS} for a window across" if across else "an even number, half of them on each side"
        remedy = "change the count, or give base.hole_positions"
        raise InputError([Problem("", None, "base.screw_count", str(count), expected, remedy)])


def _choose(ledger: Ledger, grade: str, count: int) -> tuple[str, str]:
    flange = max(ledger.number_or("motor.flange_size", 0.0), ledger.number_or("bearing.flange_size", 0.0))
    usual = next(name for limit, name in _USUAL_BY_FLANGE if flange <= limit)
    if not ledger.known("screw.thrust"):
        return usual, f"usual for a flange of {flange:g}; no thrust is given, so slip is not assessed"
    wanted = ledger.number("limits.slip_safety")
    start = _SIZES.index(usual)
    for name in _SIZES[start : start + _STEPS_UP]:
        safety = base_slip(ledger, thread(name), grade, count)
        if safety >= wanted:
            why = f"{count} screws hold the thrust, slip {safety:.2f} >= {wanted:g}"
            return name, f"smallest from {usual} up (usual for a flange of {flange:g}) of which {why}"
    return (
        name,
        f"two sizes above {usual}, usual for a flange of {flange:g}; even {count} of these do not hold the thrust",
    )


def base_slip(ledger: Ledger, screw: Thread, grade: str, count: int) -> float:
    """Return the safety against slip of the base joint under the thrust, screws loaded alike."""
    sure = sure_preload(ledger, screw_preload(ledger, screw, grade))
    return slip_safety(count * sure, 0.0, ledger.number("base.friction"), abs(ledger.number("screw.thrust")))


def screw_wall(ledger: Ledger, screw: BaseScrew) -> float:
    """Enter the least wall in mm that a base screw needs around it."""
    if screw.from_below:
        key = "practice.thread_edge_least" if ledger.text("block.window_axis") == "y" else "practice.thread_edge"
        value = 2 * ledger.number(key) * screw.thread.diameter
        rule = f"2 x {key} x base_screw_diameter; tapped from below"
    else:
        value = screw.head + 2 * ledger.number("practice.counterbore_rim")
        rule, key = "base_counterbore_diameter + 2 x practice.counterbore_rim", "practice.counterbore_rim"
    ledger.decide(
        "base_screw_wall", value, "mm", rule, ("base_counterbore_diameter", "base_screw_diameter", key),
        f"{cited('din974')}; rims: {CP}",
    )  # fmt: skip
    return value


def least_side_wall(ledger: Ledger) -> float:
    """Enter the least wall in mm beside the window: for the base screws, or floor and roof of a window across."""
    if ledger.text("block.window_axis") == "y":
        rule, key = "floor and roof of a window across", "practice.roof_least"
    else:
        rule, key = "wall around a base screw", "base_screw_wall"
    ledger.decide("side_wall_least", ledger.number(key), "mm", rule, (key,), CP)
    return ledger.number(key)


def decide_base_length(ledger: Ledger, screw: BaseScrew, base: Material) -> None:
    """Decide screw length, counterbore depth and engagement of the base screws in mm."""
    grade = ledger.text("base.property_class")
    if screw.from_below:
        return
    least = decide_engagement(ledger, "base_engagement_least", screw.thread, base, grade)
    head = cap_screw(screw.thread.size)
    standard = up(head.head_height + ledger.number("practice.counterbore_sunk"), 0.5)
    height = ledger.number("height")
    most = max(least, ledger.number("base.thickness"))
    length = _screw_length(ledger, screw, height - standard + least, height - standard + most)
    clamped = min(height - standard, length - least)
    using: tuple[str, ...] = (
        "height", "base_screw", "base_engagement_least", "base.thickness", "practice.screw_slenderness",
        "practice.counterbore_sunk",
    )  # fmt: skip
    deepened = clamped < height - standard
    if deepened:
        ledger.remark(f"The base counterbores are deepened so that {length:g} mm screws reach.")
    why = "counterbore deepened to use it" if deepened else "with the counterbore just over the head"
    slender = ledger.number("practice.screw_slenderness")
    rule = f"preferred length, at most {slender:g} d or one that reaches; {why}"
    ledger.decide("base_screw_length", length, "mm", rule, using, cited("iso4762_lengths"))
    depth = round(height - clamped, 6)
    rule = "height + base_engagement_least - base_screw_length" if deepened else "head height + 0.4..0.6, up to 0.5"
    ledger.decide("base_counterbore_depth", depth, "mm", rule, (*using, "base_screw_length"), CP)
    rule = "base_screw_length - (height - base_counterbore_depth)"
    using = ("base_screw_length", "height", "base_counterbore_depth")
    rule += "; at most the base plate"
    engaged = min(length - clamped, ledger.number("base.thickness"))
    ledger.decide("base_engagement", round(engaged, 6), "mm", rule, (*using, "base.thickness"), "")


def _screw_length(ledger: Ledger, screw: BaseScrew, at_least: float, at_most: float) -> float:
    """Return a preferred length in mm: one that reaches with the plain counterbore, else a less slender one."""
    name, slender = screw.thread.size, ledger.number("practice.screw_slenderness") * screw.thread.diameter
    reaching = preferred_length(name, at_least, at_most)
    if reaching is not None and reaching <= slender:
        return reaching
    # The counterbore takes what the screw is too short for, but not deeper than a counterbore can be cut.
    deepest = ledger.number("practice.counterbore_ratio") * screw.head
    least = ledger.number("height") - deepest + ledger.number("base_engagement_least")
    lengths = cap_screw(name).lengths
    shorter = [v for v in lengths if v <= min(slender, at_most)] or [lengths[0]]
    if shorter[-1] >= least:
        return shorter[-1]
    return next((v for v in lengths if v >= least), lengths[-1])


def decide_thread_from_below(ledger: Ledger, screw: BaseScrew, block: Material) -> None:
    """Decide the tapped holes in the base face and the screws that come through the base plate, mm."""
    if not screw.from_below:
        return
    from blockgen.standards.din76 import drill_runout

    engagement = decide_engagement(
        ledger, "base_engagement_least", screw.thread, block, ledger.text("base.property_class")
    )
    plate = ledger.number("base.thickness")
    length = preferred_length(screw.thread.size, plate + engagement) or cap_screw(screw.thread.size).lengths[-1]
    rule = "shortest preferred length through the base plate with the least engagement"
    using = ("base.thickness", "base_engagement_least", "base_screw")
    ledger.decide("base_screw_length", length, "mm", rule, using, cited("iso4762_lengths"))
    ledger.decide(
        "base_engagement", length - plate, "mm", "base_screw_length - base.thickness", (*using, "base_screw_length"), ""
    )
    depth = up(length - plate + 2 * screw.thread.pitch, 0.5)
    ledger.decide(
        "base_thread_depth",
        depth,
        "mm",
        "base_engagement + 2 x base_screw_pitch; up to 0.5",
        ("base_engagement", "base_screw_pitch"),
        "",
    )
    drill = up(depth + drill_runout(screw.thread), 0.5)
    ledger.decide(
        "base_drill_depth",
        drill,
        "mm",
        f"base_thread_depth + {drill_runout(screw.thread):.4g}; run-out, up to 0.5",
        ("base_thread_depth",),
        cited("din76"),
    )
