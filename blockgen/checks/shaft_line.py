"""Checks along the shaft: layout after tolerances, grips, gap, stack, bores and rating of the coupling."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.checks.finding import Finding, Question, at_least, at_most, not_assessed, remark, within
from blockgen.plan import Plan

_GEOMETRY = "geometry along the shaft"
_TOO_TIGHT = (
    "feasible with nominal values only: in the worst case of the tolerances a shaft end, nut or key does not fit; "
    "measure journal and motor shaft and set the coupling to them"
)


def shaft_line(plan: Plan) -> Iterator[Finding]:
    """Yield every check along the shaft."""
    yield layout(plan)
    yield from grips(plan)
    yield gap(plan)
    yield stack(plan)
    yield from bore_range(plan)
    yield rating(plan)
    yield from keyed(plan)


def layout(plan: Plan) -> Finding:
    """Compare the worst-case tolerances with the room that the nominal interval leaves on the nearer side."""
    keys = ("length", "length_min", "length_max", "length_low", "length_high")
    low, high = plan.records["length_low"].value, plan.records["length_high"].value
    ask = Question("axial_layout", "Room along the axis against the tolerances", keys, _TOO_TIGHT, _GEOMETRY, "warn")
    if not isinstance(low, (int, float)) or not isinstance(high, (int, float)):
        return remark(plan, ask, "warn", f"{plan.records['length_low'].rule}; {_TOO_TIGHT}")
    length, least, most = plan.number("length"), plan.number("length_min"), plan.number("length_max")
    rooms = ((length - least, low - least), (most - length, most - high))
    room, tolerance = min(rooms, key=lambda pair: pair[0] - pair[1])
    return at_least(plan, ask, room, tolerance)


def grips(plan: Plan) -> Iterator[Finding]:
    """Compare both grips with the least one."""
    for end in ("journal", "motor"):
        shaft = "journal" if end == "journal" else "motor shaft"
        ask = Question(
            f"{end}_grip", f"Depth of the {shaft} in its hub", (f"{end}_grip", f"coupling.{end}_grip_min"),
            f"the {shaft} sits too shallow in its hub", "maker's grip, else 1 x shaft diameter (common practice)",
        )  # fmt: skip
        yield at_least(plan, ask, plan.number(f"{end}_grip"), plan.number(f"coupling.{end}_grip_min"))


def gap(plan: Plan) -> Finding:
    """Compare the gap between the shaft ends with the least one."""
    ask = Question("shaft_gap", "Gap between the shaft ends", ("shaft_gap", "coupling.gap_min"), "the shaft ends touch")
    return at_least(plan, ask, plan.number("shaft_gap"), plan.number("coupling.gap_min"))


def stack(plan: Plan) -> Finding:
    """Compare bearing stack and screw seat: the nut must clamp the stack and not the shoulder."""
    ask = Question(
        "stack_on_seat", "Bearing stack longer than the screw's seat", ("bearing.stack_length", "screw.seat_length"),
        "the lock nut clamps the stack only where the seat is 1..3 mm shorter than the stack",
    )  # fmt: skip
    for key in ("bearing.stack_length", "screw.seat_length"):
        if key not in plan.records:
            return not_assessed(plan, ask, key)
    proud = plan.number("bearing.stack_length") - plan.number("screw.seat_length")
    interval = (plan.number("practice.stack_proud_least"), plan.number("practice.stack_proud_most"))
    return within(plan, ask, proud, interval)


def bore_range(plan: Plan) -> Iterator[Finding]:
    """Compare both shaft diameters with the bores that the coupling can have."""
    for end, key in (("journal", "screw.journal_diameter"), ("motor shaft", "motor.shaft_diameter")):
        ask = Question(
            f"coupling_bore_{end.split(maxsplit=1)[0]}", f"Coupling can be bored for the {end}",
            (key, "coupling.bore_min", "coupling.bore_max"), f"the coupling has no bore for the {end}", "coupling data",
        )  # fmt: skip
        if "coupling.bore_max" not in plan.records:
            yield not_assessed(plan, ask, "coupling.bore_max")
            continue
        value = plan.number(key)
        least = plan.number("coupling.bore_min") if "coupling.bore_min" in plan.records else 0.0
        too_small = value < least
        yield (
            at_least(plan, ask, value, least)
            if too_small
            else at_most(plan, ask, value, plan.number("coupling.bore_max"))
        )


def rating(plan: Plan) -> Finding:
    """Compare the motor's peak torque with the coupling's rating."""
    ask = Question(
        "coupling_rating", "Motor's peak torque against the coupling's rating",
        ("motor.peak_torque", "coupling.rated_torque"), "take a larger coupling or limit the motor's torque",
        "coupling data",
    )  # fmt: skip
    for key in ask.keys:
        if key not in plan.records:
            return not_assessed(plan, ask, key)
    return at_most(plan, ask, plan.number("motor.peak_torque"), plan.number("coupling.rated_torque"), "N*m")


def keyed(plan: Plan) -> Iterator[Finding]:
    """Warn of a keyed or flat shaft end in a clamping hub."""
    shape = plan.text("motor.shaft_end")
    if shape in {"keyed", "flat"}:
        ask = Question("keyed_shaft", "Plain shaft in the clamping hub", ("motor.shaft_end",), "")
        yield remark(
            plan, ask, "warn",
            f"the motor shaft is {shape}: a plain clamping hub grips it unevenly and out of balance; "
            "take a plain shaft, or a hub made for it",
        )  # fmt: skip
