"""The bores of both seats: fits, what opens behind them, and how deep the pilots sit."""

from __future__ import annotations

from blockgen.errors import InputError, Problem
from blockgen.record import Band, Ledger
from blockgen.sizing.rounding import up
from blockgen.sizing.sources import CP, cited
from blockgen.standards.iso286 import Limits, limits
from blockgen.standards.tables import quoted

OTHER = {"bearing": "motor", "motor": "bearing"}


def known_limits(size: float, tolerance_class: str, key: str) -> Limits:
    """Return the limits in mm of a class that the spec names.

    Raises:
        InputError: the table has no such class, or not for this size in mm.
    """
    try:
        return limits(size, tolerance_class)
    except ValueError as error:
        expected = f"an ISO 286 class for {size:g} mm"
        raise InputError([Problem("", None, key, quoted(tolerance_class), expected, str(error))]) from error


def decide_pilot_bore(ledger: Ledger, end: str) -> float:
    """Decide a pilot bore in mm with its fit: the pilot's nominal diameter in the block's bore class."""
    nominal, fit = ledger.number(f"{end}.pilot_diameter"), ledger.text("block.bore_fit")
    band = known_limits(nominal, fit, "block.bore_fit")
    recessed = ledger.text(f"{end}.pilot_form") == "recessed"
    rule = f"recess diameter, bored {fit} for a centring ring" if recessed else f"pilot diameter, bored {fit}"
    if recessed:
        ledger.remark(f"The {end} flange has a recess: a loose centring ring of diam {nominal:g} joins it to the bore.")
    using = (f"{end}.pilot_diameter", "block.bore_fit", f"{end}.pilot_fit")
    source = cited("iso286_grades", "iso286_deviations")
    ledger.decide(f"{end}_bore", nominal, "mm", rule, using, source, band=Band(band.upper, band.lower, fit))
    return nominal


def decide_through_bore(ledger: Ledger, end: str) -> float:
    """Decide the opening behind a pilot bore in mm.

    It lets the coupling swing in the wall, the nut and its spanner pass, and the smaller bore of the other seat be
    machined through the larger one, as far as the pilot bore allows.
    """
    pilot, other = ledger.number(f"{end}.pilot_diameter"), ledger.number(f"{OTHER[end]}.pilot_diameter")
    clear = ledger.number("coupling.clearance")
    wants = [ledger.number("coupling.swing_diameter") + 2 * clear]
    if end == "bearing":
        keys = ("bearing.nut_outer_diameter", "bearing.spanner_diameter")
        wants += [ledger.number(key) + 2 * clear for key in keys if ledger.known(key)]
    if pilot > other:
        wants.append(other + 2 * ledger.number("practice.bar_clearance"))
    wanted = up(max(wants), ledger.number("practice.size_step"))
    shoulder = ledger.number("practice.bore_shoulder")
    value = wanted if wanted <= pilot - 2 * shoulder else pilot
    rule = f"opening wanted {wanted:g} (swing, nut and spanner, boring bar to the other seat)" + (
        "" if value == wanted else f"; leaves no shoulder of {shoulder:g}, so the bore goes through plain"
    )
    using = (
        f"{end}.pilot_diameter", "coupling.swing_diameter", "coupling.clearance", "bearing.nut_outer_diameter",
        "bearing.spanner_diameter", "practice.bar_clearance", "practice.bore_shoulder",
    )  # fmt: skip
    ledger.decide(f"{end}_through_bore", value, "mm", rule, using, CP)
    return value


def pilot_seat_depth(ledger: Ledger, end: str) -> float:
    """Return how deep in mm the pilot, or the ring in a recess, asks the bore to be; 0 where none enters the wall."""
    if ledger.text(f"{end}.pilot_direction") == "away":
        return 0.0
    return ledger.number(_pilot_key(ledger, end)) + ledger.number("practice.pilot_depth_extra")


def _pilot_key(ledger: Ledger, end: str) -> str:
    """Return the key of the pilot length that counts: the longest one where the block takes several motors."""
    shared = f"family_{end}_pilot_length"
    return shared if ledger.known(shared) else f"{end}.pilot_length"


def decide_bore_depth(ledger: Ledger, end: str) -> float:
    """Decide the depth of the pilot bore in mm: pilot length and a little, or the whole wall where it is plain."""
    wall = ledger.number(f"{end}_wall")
    wanted = pilot_seat_depth(ledger, end)
    plain = ledger.number(f"{end}_through_bore") >= ledger.number(f"{end}_bore")
    left_too_thin = wall - wanted < ledger.number("practice.bore_shoulder")
    no_pilot = wanted <= 0
    value = wall if plain or left_too_thin or no_pilot else wanted
    if value == wanted:
        rule = f"{_pilot_key(ledger, end)} + practice.pilot_depth_extra"
    elif no_pilot:
        rule = "no pilot enters the wall: the bore goes through plain"
    elif plain:
        rule = "the bore goes through the wall plain"
    else:
        rule = "less than a shoulder would be left: the bore goes through the wall"
    using = (_pilot_key(ledger, end), "practice.pilot_depth_extra", f"{end}_wall", f"{end}_through_bore")
    ledger.decide(f"{end}_bore_depth", value, "mm", rule, using, CP)
    return value
