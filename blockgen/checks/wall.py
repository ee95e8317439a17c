"""Estimates of stiffness: end walls as beams, block against screw and bearing, motor nodding on its wall.

They are for a first look and neither safe nor unsafe; only finite elements confirm them. So they warn and never fail.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from blockgen.checks.finding import Finding, Question, at_least, not_assessed, remark
from blockgen.mechanics.beams import (
    body_inertia,
    cantilever_stiffness,
    in_series,
    nodding_frequency,
    shear_modulus,
    spanning_stiffness,
    strip_rotation_stiffness,
    strip_torsion_stiffness,
)
from blockgen.plan import Plan
from blockgen.sizing.loads import known

_BEAM = "Timoshenko beams on the net section beside the bore; an estimate"
_DOUBT = "an estimate until finite elements confirm it"


def wall(plan: Plan) -> Iterator[Finding]:
    """Yield the estimates of stiffness and of the motor's first frequency."""
    yield stiffness_ratio(plan)
    yield first_frequency(plan)


def _elastic(plan: Plan) -> tuple[float, float]:
    modulus = plan.number("block_youngs_modulus")
    return modulus, shear_modulus(modulus, plan.number("block_poisson"))


def _upright(plan: Plan) -> bool:
    """True where the window is cut from above, so that side walls stand beside it."""
    return plan.text("block.window_axis") == "z"


def standing_strips(plan: Plan, end: str) -> float:
    """Return the net width in mm of a wall beside its bore."""
    return plan.number("width") - plan.number(f"{end}_bore")


def spanning_strips(plan: Plan, end: str) -> float:
    """Return the net height in mm of a wall above and below its bore."""
    return plan.number("height") - plan.number(f"{end}_bore")


def block_stiffness(plan: Plan) -> tuple[float, float]:
    """Return stiffness at the shaft along it in N/mm: of the standing wall alone, and with what the side walls hold.

    Beside its foot the wall is held by the side walls of a window from above: it spans between them, and they carry
    on to the base as standing plates as long as the block.
    """
    modulus, shear = _elastic(plan)
    height, thick = plan.number("shaft_height"), plan.number("bearing_wall")
    alone = cantilever_stiffness(standing_strips(plan, "bearing"), height, thick, modulus, shear)
    if not _upright(plan):
        return alone, alone
    across = spanning_stiffness(spanning_strips(plan, "bearing"), plan.number("window_width"), thick, modulus, shear)
    sides = cantilever_stiffness(2 * plan.number("side_wall"), height, plan.number("length"), modulus, shear)
    return alone, alone + in_series(across, sides)


def stiffness_ratio(plan: Plan) -> Finding:
    """Compare the block's stiffness with that of screw and bearing in series."""
    ask = Question(
        "block_stiffness", "Block's stiffness over that of screw and bearing in series (estimate)",
        ("bearing_wall", "bearing_bore", "shaft_height", "width", "height", "window_width", "side_wall", "length",
         "block_youngs_modulus", "block_poisson", "screw.axial_stiffness", "bearing.axial_stiffness",
         "limits.block_stiffness_ratio"),
        "the block may cost the drive more stiffness than it should: a thicker bearing wall, a lower shaft",
        _BEAM, "warn",
    )  # fmt: skip
    alone, whole = block_stiffness(plan)
    needed = ("screw.axial_stiffness", "bearing.axial_stiffness")
    missing = tuple(key for key in needed if not known(plan.records, key))
    size = f"about {whole / 1000:.3g} N/um at the shaft, {alone / 1000:.3g} N/um of them from the standing wall alone"
    if missing:
        blank = not_assessed(plan, ask, " and ".join(missing), *missing)
        return replace(blank, explanation=f"{blank.explanation}; block {size}, {_DOUBT}")
    drive = in_series(*(plan.number(key) for key in needed))
    ratio = whole / 1000 / drive
    cost = f"block {size}, screw and bearing {drive:.3g} N/um: the block takes {1 / (1 + ratio):.0%}; {_DOUBT}"
    ask, limit = replace(ask, miss=f"{ask.miss}; {cost}"), plan.number("limits.block_stiffness_ratio")
    if alone / 1000 / drive < limit <= ratio:
        between = f"between {alone / 1000 / drive:.2g} (standing wall alone) and {ratio:.3g} (side walls helping)"
        return remark(plan, ask, "not_assessed", f"{between} against {limit:g}: too rough to tell; {cost}")
    return at_least(plan, ask, ratio, limit, "", cost)


def rotation_stiffness(plan: Plan) -> float:
    """Return the stiffness of the motor wall against nodding, N*mm/rad."""
    modulus, shear = _elastic(plan)
    thick, height = plan.number("motor_wall"), plan.number("shaft_height")
    foot = strip_rotation_stiffness(standing_strips(plan, "motor"), height, thick, modulus)
    if not _upright(plan):
        return foot
    span = plan.number("window_width")
    return foot + strip_torsion_stiffness(spanning_strips(plan, "motor"), span, thick, shear)


def first_frequency(plan: Plan) -> Finding:
    """Compare the first frequency of the motor on its wall with the one asked for."""
    ask = Question(
        "motor_frequency", "First frequency of the motor on its wall (estimate)",
        ("motor.mass", "motor.centre_of_mass", "motor.body_size", "motor.body_length", "motor_wall", "motor_bore",
         "shaft_height", "window_width", "block_youngs_modulus", "limits.first_frequency"),
        "the motor may nod on its wall within the drive's bandwidth: a thicker motor wall, a lower shaft, a prop; "
        f"{_DOUBT}",
        f"{_BEAM}; motor as a rigid bar", "warn",
    )  # fmt: skip
    needed = ("motor.mass", "motor.centre_of_mass")
    missing = tuple(key for key in needed if not known(plan.records, key))
    if missing:
        return not_assessed(plan, ask, " and ".join(missing), *missing)
    hertz = _frequency(plan)
    if not known(plan.records, "limits.first_frequency"):
        blank = not_assessed(plan, ask, "limits.first_frequency")
        text = f"; about {hertz:.0f} Hz, usual is 3 times the bandwidth of the drive; {_DOUBT}"
        return replace(blank, explanation=blank.explanation + text)
    return at_least(plan, ask, hertz, plan.number("limits.first_frequency"), "Hz", _DOUBT)


def _frequency(plan: Plan) -> float:
    """Return the nodding frequency, Hz; a motor whose size is not given counts as a point."""
    mass, arm = plan.number("motor.mass"), plan.number("motor.centre_of_mass")
    sized = known(plan.records, "motor.body_size") and known(plan.records, "motor.body_length")
    inertia = body_inertia(mass, plan.number("motor.body_size"), plan.number("motor.body_length")) if sized else 0.0
    return nodding_frequency(rotation_stiffness(plan), mass, max(arm, 1.0), inertia)
