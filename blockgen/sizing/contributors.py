"""What puts journal and motor shaft out of line, each naming the characteristic it stands for.

Only the list is made here; the alignment adds it up.
"""

from __future__ import annotations

from typing import Literal

from blockgen.plan import Contributor
from blockgen.record import Ledger
from blockgen.sizing.bores import known_limits
from blockgen.sizing.sources import CP, cited
from blockgen.standards.flanges import runout_class, shaft_runout

End = Literal["bearing", "motor"]


def assume_runouts(ledger: Ledger) -> None:
    """Assume run-outs that the data sheets do not give: IEC 60072-1 normal class at the motor, CP at the bearing."""
    spigot, shaft = ledger.number("motor.pilot_diameter"), ledger.number("motor.shaft_diameter")
    source = cited("iec_runout")
    for key, value, using in (
        ("motor.spigot_runout", runout_class(spigot, "spigot", "normal"), "motor.pilot_diameter"),
        ("motor.face_runout", runout_class(spigot, "face", "normal"), "motor.pilot_diameter"),
        ("motor.shaft_runout", shaft_runout(shaft, "normal"), "motor.shaft_diameter"),
    ):
        if not ledger.known(key):
            rule = "normal class by diameter, full indicator movement"
            ledger.decide(key, value, "mm", rule, (using,), source, origin="assumed")
    for key in ("bearing.runout", "bearing.face_runout"):
        if not ledger.known(key):
            ledger.decide(key, 0.01, "mm", "full indicator movement of a usual unit", (), CP, origin="assumed")


def pilot_clearance(ledger: Ledger, end: str) -> tuple[float, float]:
    """Return least and greatest diametral clearance of a pilot in its bore in mm; negative where it is tight."""
    bore, size = ledger[f"{end}_bore"], ledger.number(f"{end}.pilot_diameter")
    if ledger.known(f"{end}.pilot_upper") and ledger.known(f"{end}.pilot_lower"):
        upper, lower = ledger.number(f"{end}.pilot_upper"), ledger.number(f"{end}.pilot_lower")
    else:
        band = known_limits(size, ledger.text(f"{end}.pilot_fit"), f"{end}.pilot_fit")
        upper, lower = band.upper, band.lower
    return round((bore.lower or 0.0) - upper, 6), round((bore.upper or 0.0) - lower, 6)


def contributors(ledger: Ledger) -> tuple[Contributor, ...]:
    """Return the contributors of the one-piece block; offsets in mm, angles in rad, discs by radius."""
    assume_runouts(ledger)
    coaxial = Contributor(
        "bore_coaxiality", "both", "offset", "disc", ledger.number("block.coaxiality") / 2, None,
        ledger.number("length"), False, "motor_bore.coaxiality",
    )  # fmt: skip
    ends: tuple[End, ...] = ("bearing", "motor")
    return (
        *(_clearance(ledger, end) for end in ends),
        coaxial,
        *(_seat_tilt(ledger, end) for end in ends),
        _run_out(ledger, "motor", "offset", "motor.spigot_runout"),
        _run_out(ledger, "motor", "angle", "motor.face_runout"),
        _run_out(ledger, "motor", "offset", "motor.shaft_runout", rotating=True),
        _run_out(ledger, "bearing", "offset", "bearing.runout"),
        _run_out(ledger, "bearing", "angle", "bearing.face_runout"),
        *_journal(ledger),
    )


def _journal(ledger: Ledger) -> tuple[Contributor, ...]:
    """Return the journal's run-out where it is given; a screw maker's sheet or the inspection tells it."""
    known = ledger.known("screw.journal_runout")
    return (_run_out(ledger, "bearing", "offset", "screw.journal_runout", rotating=True),) if known else ()


def _seat_x(ledger: Ledger, end: End) -> float:
    return 0.0 if end == "bearing" else ledger.number("length")


def _seat_tilt(ledger: Ledger, end: End) -> Contributor:
    """Return the tilt of a seat: its perpendicularity zone over the measuring diameter."""
    angle = ledger.number("block.seat_perpendicularity") / measuring_diameter(ledger, end)
    name = f"{end}_seat"
    characteristic = "bearing_bore.perpendicularity" if end == "bearing" else "motor_seat.parallelism"
    return Contributor(
        f"{name}_perpendicularity", end, "angle", "disc", angle, None, _seat_x(ledger, end), False, characteristic
    )


def _run_out(
    ledger: Ledger, end: End, quantity: Literal["offset", "angle"], key: str, *, rotating: bool = False
) -> Contributor:
    """Return a run-out given as full indicator movement: half of it as offset, over the measuring diameter as angle."""
    movement = ledger.number(key)
    size = movement / 2 if quantity == "offset" else movement / measuring_diameter(ledger, end)
    name = key.replace(".", "_")
    return Contributor(name, end, quantity, "disc", size, None, _seat_x(ledger, end), rotating, key)


def _clearance(ledger: Ledger, end: End) -> Contributor:
    return Contributor(
        f"{end}_pilot_clearance", end, "offset", "clearance", None, pilot_clearance(ledger, end),
        _seat_x(ledger, end), False, f"{end}_bore.diameter",
    )  # fmt: skip


def measuring_diameter(ledger: Ledger, end: str) -> float:
    """Return the diameter in mm over which face run-out and seat tilt count: the bolt circle, else the pilot."""
    return ledger.number_or(f"{end}.bolt_circle", ledger.number(f"{end}.pilot_diameter"))
