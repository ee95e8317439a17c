"""How many base screws of which thread: usual for the flange, then stronger until friction holds the thrust."""

from __future__ import annotations

import math

from blockgen.mechanics.loads import Force
from blockgen.mechanics.slip import slip_safety
from blockgen.record import Ledger
from blockgen.sizing.base_joint import base_slip
from blockgen.sizing.joint import known_thread, screw_preload, sure_preload
from blockgen.sizing.loads import Records, base_cases
from blockgen.standards.threads import thread

# Flange size in mm up to which a thread is usual (common practice, no source).
_USUAL_BY_FLANGE = (
    (32.0, "M4"), (45.0, "M5"), (62.0, "M6"), (85.0, "M8"), (150.0, "M10"), (200.0, "M12"), (math.inf, "M16"),
)  # fmt: skip
# Screws of more than three sizes above the usual one find no place beside the window.
_STEPS_UP = 4
_SIZES = ("M4", "M5", "M6", "M8", "M10", "M12", "M16", "M20")
_MORE = 6
_SOURCE = "VDI 2230 preload form; size by flange: common practice"
_USING = (
    "base.screw", "motor.flange_size", "bearing.flange_size", "thrust_towards_motor", "thrust_away", "base.friction",
    "slip_safety_wanted", "limits.separation_safety", "base.property_class", "base.screw_count", "base.tightening",
)  # fmt: skip

Choice = tuple[str, int]


def usual_screw(ledger: Ledger) -> tuple[float, str]:
    """Return the greater flange in mm and the thread that is usual for it."""
    keys = ("motor.flange_size", "family_motor_flange_size", "bearing.flange_size")
    flange = max(ledger.number_or(key, 0.0) for key in keys)
    return flange, next(name for limit, name in _USUAL_BY_FLANGE if flange <= limit)


def given_count(ledger: Ledger) -> int:
    """Return the count of the given pattern, else as asked for."""
    if ledger.known("base.hole_positions"):
        return len(ledger.points("base.hole_positions"))
    return int(ledger.number("base.screw_count"))


def choices(ledger: Ledger) -> tuple[Choice, ...]:
    """Return thread and count that may be taken, first choice first: larger before more."""
    usual = usual_screw(ledger)[1]
    start, count = _SIZES.index(usual), given_count(ledger)
    names = _SIZES[start : start + _STEPS_UP]
    if ledger.known("base.screw"):
        names = (ledger.text("base.screw"),)
    free = (
        ledger["base.screw_count"].origin == "assumed"
        and not ledger.known("base.hole_positions")
        and ledger.text("block.window_axis") != "y"
    )
    return tuple((name, n) for n in ((count, _MORE) if free else (count,)) for name in names)


def decide_screw_and_count(ledger: Ledger) -> None:
    """Decide thread and number of the base screws, given ones as they are; ``base_screw_choice`` settles both."""
    if ledger.known("base.screw"):
        known_thread(ledger.text("base.screw"), "base.screw")
    (name, count), why = _settled(ledger) or _chosen(ledger)
    screw_given, count_given = ledger.known("base.screw"), len({n for _, n in choices(ledger)}) == 1
    if screw_given:
        ledger.decide("base_screw", name, "", "given", _USING, origin=ledger["base.screw"].origin)
    else:
        ledger.decide("base_screw", name, "", why, _USING, _SOURCE)
    using = ("base.hole_positions", "base.screw_count", "base_screw")
    rule = "base.screw_count" if count_given or count != _MORE else f"more than the usual number: {why}"
    if ledger.known("base.hole_positions"):
        rule = "number of given positions"
    ledger.decide("base_screw_count", count, "", rule, using, _SOURCE)


def _settled(ledger: Ledger) -> tuple[Choice, str] | None:
    if not ledger.known("base_screw_choice"):
        return None
    name, count = str(ledger["base_screw_choice"].value).split(" x ")[::-1]
    return (name, int(count)), ledger["base_screw_choice"].rule


def _chosen(ledger: Ledger) -> tuple[Choice, str]:
    open_choices = choices(ledger)
    flange, usual = usual_screw(ledger)
    if not ledger.known("slip_safety_wanted"):
        return open_choices[0], f"usual for a flange of {flange:g}; no thrust is given, so slip is not assessed"
    wanted, records = ledger.number("slip_safety_wanted"), ledger.frozen()
    cases = base_cases(records)
    for name, count in open_choices:
        safety = _expected_slip(ledger, records, cases, (name, count))
        if safety >= wanted:
            why = f"{count} screws hold the thrust, slip {safety:.2f} >= {wanted:g}"
            return (name, count), f"smallest from {usual} up (usual for a flange of {flange:g}) of which {why}"
    name, count = [choice for choice in open_choices if choice[1] == open_choices[0][1]][-1]
    why = "does not hold the thrust either" if len(open_choices) == 1 else "none of them holds the thrust"
    return (name, count), f"largest considered from {usual}, usual for a flange of {flange:g}, up; {why}"


def _expected_slip(ledger: Ledger, records: Records, cases: tuple[tuple[Force, ...], ...], choice: Choice) -> float:
    """Return the safety against slip before the screws are placed: loaded alike, unless the pattern is given."""
    name, count = choice
    sure = sure_preload(ledger, screw_preload(ledger, thread(name), ledger.text("base.property_class")))
    if ledger.known("base.hole_positions"):
        return base_slip(records, ledger.points("base.hole_positions"), sure)
    friction, least = ledger.number("base.friction"), math.inf
    for forces in cases:
        along, across, up = (math.fsum(f.vector[i] for f in forces) for i in (0, 1, 2))
        least = min(least, slip_safety(count * sure, max(up, 0.0), friction, math.hypot(along, across)))
    return least
