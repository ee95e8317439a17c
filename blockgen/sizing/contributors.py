"""What puts journal and motor shaft out of line, each naming the characteristic it stands for.

Only the list is made here; the chain that adds it up is not part of sizing.
"""

from __future__ import annotations

from blockgen.plan import Contributor
from blockgen.record import Ledger
from blockgen.sizing.defaults import CP
from blockgen.standards.flanges import runout_class, shaft_runout
from blockgen.standards.iso286 import limits


def assume_runouts(ledger: Ledger) -> None:
    """Assume run-outs that the data sheets do not give: IEC 60072-1 normal class at the motor, CP at the bearing."""
    spigot, shaft = ledger.number("motor.pilot_diameter"), ledger.number("motor.shaft_diameter")
    source = "IEC 60072-1, normal class, as reprinted"
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
        band = limits(size, ledger.text(f"{end}.pilot_fit"))
        upper, lower = band.upper, band.lower
    return round((bore.lower or 0.0) - upper, 6), round((bore.upper or 0.0) - lower, 6)


def contributors(ledger: Ledger) -> tuple[Contributor, ...]:
    """Return the contributors of the one-piece block; offsets in mm, angles in rad, discs by radius."""
    assume_runouts(ledger)
    length, number = ledger.number("length"), ledger.number
    coaxial, square = number("block.coaxiality") / 2, number("block.seat_perpendicularity")
    motor_seat, bearing_seat = measuring_diameter(ledger, "motor"), measuring_diameter(ledger, "bearing")
    rows = [_clearance(ledger, "bearing", 0.0), _clearance(ledger, "motor", length)]
    for name, end, quantity, radius, rotating, characteristic in (
        ("bore coaxiality", "both", "offset", coaxial, False, "motor_bore.coaxiality"),
        ("bearing seat perpendicularity", "bearing", "angle", square / bearing_seat, False, "bearing_seat.perpendicularity"),
        ("motor seat perpendicularity", "motor", "angle", square / motor_seat, False, "motor_seat.perpendicularity"),
        ("motor spigot run-out", "motor", "offset", number("motor.spigot_runout") / 2, False, "motor.spigot_runout"),
        ("motor face run-out", "motor", "angle", number("motor.face_runout") / motor_seat, False, "motor.face_runout"),
        ("motor shaft run-out", "motor", "offset", number("motor.shaft_runout") / 2, True, "motor.shaft_runout"),
        ("bearing unit run-out", "bearing", "offset", number("bearing.runout") / 2, False, "bearing.runout"),
        ("bearing unit face run-out", "bearing", "angle", number("bearing.face_runout") / bearing_seat, False, "bearing.face_runout"),
    ):  # fmt: skip
        seat = 0.0 if end == "bearing" else length
        identifier = name.replace(" ", "_").replace("-", "_")
        rows.append(Contributor(identifier, end, quantity, "disc", radius, None, seat, rotating, characteristic))  # type: ignore[arg-type]
    return tuple(rows)


def _clearance(ledger: Ledger, end: str, seat: float) -> Contributor:
    least, most = pilot_clearance(ledger, end)
    band = (max(least, 0.0), max(most, 0.0))
    side = "bearing" if end == "bearing" else "motor"
    return Contributor(
        f"{end}_pilot_clearance", side, "offset", "clearance", None, band, seat, False, f"{end}_bore.diameter"
    )


def measuring_diameter(ledger: Ledger, end: str) -> float:
    """Return the diameter in mm over which face run-out and seat tilt count: the bolt circle, else the pilot."""
    return ledger.number_or(f"{end}.bolt_circle", ledger.number(f"{end}.pilot_diameter"))
