"""Base screws: thread from the thrust, where they stand, counterbore, length, engagement in the base plate."""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.errors import InputError, Problem
from blockgen.record import Ledger
from blockgen.sizing.base_choice import decide_screw_and_count
from blockgen.sizing.head import decide_head
from blockgen.sizing.joint import known_thread, screw_reserve
from blockgen.sizing.rounding import up
from blockgen.sizing.seats import decide_engagement
from blockgen.sizing.sources import CP, cited
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.materials import Material
from blockgen.standards.screws import cap_screw, preferred_length
from blockgen.standards.threads import Thread

# A window across leaves room for base screws in the four corners only.
_ACROSS = 4


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


def decide_base_screw(ledger: Ledger, block: Material) -> BaseScrew:
    """Decide the base screws' count, thread, hole, washer and counterbore.

    Args:
        ledger: Completed ledger with the loads; entries are added.
        block: Material of the block, on which the heads press.
    """
    _require_count(ledger)
    decide_screw_and_count(ledger)
    screw = known_thread(ledger.text("base_screw"), "base.screw")
    using = ("base_screw",)
    ledger.decide("base_screw_pitch", screw.pitch, "mm", "of the thread", using, cited("metric_threads"))
    ledger.decide("base_screw_diameter", screw.diameter, "mm", "of the thread", using, cited("metric_threads"))
    hole = clearance_hole(screw.size)
    ledger.decide("base_screw_hole", hole, "mm", "clearance hole, medium", using, cited("iso273"))
    below = ledger.text("base.screw_from") == "below"
    head = decide_head(ledger, screw, hole, block, from_below=below)
    return BaseScrew(screw, hole, head, below)


def _require_count(ledger: Ledger) -> None:
    """Refuse a count that cannot stand on both sides of the shaft, unless the pattern itself is given."""
    count = int(ledger.number("base.screw_count"))
    across, locked = ledger.text("block.window_axis") == "y", ledger.known("base.hole_positions")
    wrong = count != _ACROSS if across else count < 2 or count % 2
    if wrong and not locked:
        expected = f"{_ACROSS} for a window across" if across else "an even number, half of them on each side"
        remedy = "change the count, or give base.hole_positions"
        raise InputError([Problem("", None, "base.screw_count", str(count), expected, remedy)])


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
    least = decide_engagement(ledger, "base_engagement_least", screw.thread, base, grade, _working_load(ledger, screw))
    head, washer = cap_screw(screw.thread.size), ledger.number_or("base_washer_thickness", 0.0)
    standard = up(head.head_height + washer + ledger.number("practice.counterbore_sunk"), 0.5)
    # What the screw clamps: the block under the counterbore, and the washer.
    height, plain = ledger.number("height"), ledger.number("height") - standard + washer
    most = max(least, ledger.number("base.thickness"))
    length = _screw_length(ledger, screw, plain + least, plain + most)
    clamped = min(plain, length - least)
    using: tuple[str, ...] = (
        "height", "base_screw", "base_engagement_least", "base.thickness", "practice.screw_slenderness",
        "practice.counterbore_sunk", "base_washer_thickness",
    )  # fmt: skip
    deepened = clamped < plain
    if deepened:
        ledger.remark(f"The base counterbores are deepened so that {length:g} mm screws reach.")
    why = "counterbore deepened to use it" if deepened else "with the counterbore just over the head"
    slender = ledger.number("practice.screw_slenderness")
    rule = f"preferred length, at most {slender:g} d or one that reaches; {why}"
    ledger.decide("base_screw_length", length, "mm", rule, using, cited("iso4762_lengths"))
    depth = round(height + washer - clamped, 6)
    over = " + base_washer_thickness" if washer else ""
    rule = f"head height{' + washer' if washer else ''} + 0.4..0.6, up to 0.5"
    if deepened:
        rule = f"height + base_engagement_least - base_screw_length{over}"
    ledger.decide("base_counterbore_depth", depth, "mm", rule, (*using, "base_screw_length"), CP)
    rule = f"base_screw_length - (height - base_counterbore_depth{over})"
    using = ("base_screw_length", "height", "base_counterbore_depth", "base_washer_thickness")
    rule += "; at most the base plate"
    engaged = min(length - clamped, ledger.number("base.thickness"))
    ledger.decide("base_engagement", round(engaged, 6), "mm", rule, (*using, "base.thickness"), "")


def _working_load(ledger: Ledger, screw: BaseScrew) -> float:
    """Return the load in N that the thread must hold beside the preload: all that a check leaves to the screw."""
    if not ledger.known("slip_safety_wanted"):
        return 0.0
    return screw_reserve(ledger, screw.thread, ledger.text("base.property_class"))


def _screw_length(ledger: Ledger, screw: BaseScrew, at_least: float, at_most: float) -> float:
    """Return a preferred length in mm: one that reaches with the plain counterbore, else a less slender one."""
    name, slender = screw.thread.size, ledger.number("practice.screw_slenderness") * screw.thread.diameter
    reaching = preferred_length(name, at_least, at_most)
    if reaching is not None and reaching <= slender:
        return reaching
    # The counterbore takes what the screw is too short for, but not deeper than a counterbore can be cut.
    deepest = ledger.number("practice.counterbore_ratio") * screw.head
    washer = ledger.number_or("base_washer_thickness", 0.0)
    least = ledger.number("height") - deepest + washer + ledger.number("base_engagement_least")
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

    grade = ledger.text("base.property_class")
    engagement = decide_engagement(
        ledger, "base_engagement_least", screw.thread, block, grade, _working_load(ledger, screw)
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
