"""What works on the block: thrust either way, weight of what moves, weight and torque of the motor.

Only what the spec gives is a load; what is not given is named, never assumed.
"""

from __future__ import annotations

from collections.abc import Mapping

from blockgen.mechanics.loads import DOWN, STANDARD_GRAVITY, Force, Vector, weight
from blockgen.record import Ledger, Record
from blockgen.sizing.sources import CP

Records = Mapping[str, Record]

_SENSES = (("thrust_towards_motor", "towards_motor", "+x"), ("thrust_away", "away", "-x"))


def known(records: Records, key: str) -> bool:
    """Tell whether a value is there."""
    return key in records and records[key].value is not None


def number(records: Records, key: str, otherwise: float = 0.0) -> float:
    """Return a number, or ``otherwise`` where none is there."""
    value = records[key].value if key in records else None
    return value if isinstance(value, (int, float)) and not isinstance(value, bool) else otherwise


def down(records: Records) -> str:
    """Return which way is down: ``-z`` where nothing is said."""
    return str(records["job.gravity"].value) if known(records, "job.gravity") else "-z"


def vertical(records: Records) -> bool:
    """Tell whether the axis stands upright, so that what it moves can fall."""
    return down(records).endswith("x")


def decide_loads(ledger: Ledger) -> None:
    """Enter the thrust either way in N and the safety asked of friction; nothing where no thrust is given."""
    if not ledger.known("screw.thrust") or ledger.number("screw.thrust") == 0:
        return
    upright, gravity = ledger.text("job.gravity").endswith("x"), ledger.text("job.gravity")
    using = ("screw.thrust", "screw.thrust_direction", "job.gravity", "screw.moved_mass")
    for key, sense, falling in _SENSES:
        acts = ledger.text("screw.thrust_direction") in {sense, "both"}
        value, rule = (abs(ledger.number("screw.thrust")), "screw.thrust") if acts else (0.0, "0")
        if upright and gravity == falling and ledger.known("screw.moved_mass"):
            value += weight(ledger.number("screw.moved_mass"))
            rule += f" + screw.moved_mass x {STANDARD_GRAVITY}; the weight of what is moved pulls this way"
        elif not acts:
            rule = "no thrust is said to act this way"
        ledger.decide(key, round(value, 3), "N", rule, using, "elementary statics")
    _decide_slip_safety(ledger)


def _decide_slip_safety(ledger: Ledger) -> None:
    limit, reverses = ledger.number("limits.slip_safety"), ledger["screw.reversing"].value is not False
    using = ("limits.slip_safety", "practice.reversing_factor", "screw.reversing")
    if ledger["limits.slip_safety"].origin != "assumed":
        ledger.decide("slip_safety_wanted", limit, "", "limits.slip_safety; given, taken as it stands", using, CP)
    elif reverses:
        value = round(limit * ledger.number("practice.reversing_factor"), 6)
        rule = "limits.slip_safety x practice.reversing_factor; the thrust reverses"
        ledger.decide("slip_safety_wanted", value, "", rule, using, CP)
    else:
        rule = "limits.slip_safety; the thrust does not reverse"
        ledger.decide("slip_safety_wanted", limit, "", rule, using, CP)


def motor_weight(records: Records) -> Vector:
    """Return the weight of the motor as a vector in N; zero where its mass is not given."""
    x, y, z = DOWN[down(records)]
    pull = weight(number(records, "motor.mass"))
    return x * pull, y * pull, z * pull


def motor_torque(records: Records) -> float:
    """Return the greatest torque of the motor in N*m, either way round; the rated one where no other is given."""
    return number(records, "motor.peak_torque", number(records, "motor.rated_torque"))


def base_cases(records: Records) -> tuple[tuple[Force, ...], ...]:
    """Return the loads on the block that occur at different times: thrust towards the motor, away, and none."""
    height, length = number(records, "shaft_height"), number(records, "length")
    hanging = Force(motor_weight(records), (length + number(records, "motor.centre_of_mass"), 0.0, height))
    thrusts = (number(records, "thrust_towards_motor"), -number(records, "thrust_away"), 0.0)
    return tuple((Force((thrust, 0.0, 0.0), (0.0, 0.0, height)), hanging) for thrust in thrusts)


def missing_for_slip(records: Records) -> tuple[str, ...]:
    """Return the keys of loads along the base joint that are not given."""
    wanted = ["screw.thrust"]
    if vertical(records):
        wanted += ["screw.moved_mass", "motor.mass"]
    elif down(records) != "-z":
        wanted += ["motor.mass", "motor.centre_of_mass"]
    return tuple(key for key in wanted if not known(records, key))


def missing_for_opening(records: Records) -> tuple[str, ...]:
    """Return the keys of loads that tilt the block and are not given."""
    wanted = ["screw.thrust", "motor.mass", "motor.centre_of_mass", "motor.peak_torque"]
    if vertical(records):
        wanted.insert(1, "screw.moved_mass")
    return tuple(key for key in wanted if not known(records, key))


def missing_for_pull(records: Records) -> tuple[str, ...]:
    """Return the keys of loads on the bearing flange that are not given."""
    wanted = ("screw.thrust", "screw.moved_mass") if vertical(records) else ("screw.thrust",)
    return tuple(key for key in wanted if not known(records, key))
