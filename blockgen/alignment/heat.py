"""What heat does to the alignment: pilots that come loose, and a screw that no longer lies level with its guide."""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.alignment.scatter import known
from blockgen.alignment.terms import Term, coupling_centre, tilt
from blockgen.plan import Plan

REFERENCE = 20.0  # degC at which sizes hold (ISO 1, remembered)


@dataclass(frozen=True, slots=True)
class Expansions:
    """Coefficients of linear expansion, 1/K."""

    block: float
    motor_flange: float
    bearing_housing: float
    nut_side: float


@dataclass(frozen=True, slots=True)
class Temperatures:
    """Temperatures in degC: as assembled, the block in service, the machine at the nut in service."""

    assembly: float
    block: float
    nut_side: float


@dataclass(frozen=True, slots=True)
class HeatEffect:
    """What heat does.

    Args:
        motor_growth: Growth of the diametral clearance of the motor pilot, mm; negative where it gets tighter.
        bearing_growth: The same at the bearing pilot.
        height_error: Screw above the guide's line at the block, mm; positive where the block grows more.
        nut_distance: Distance over which the screw bends, mm; None where it is not given.
        angle: Slope of the journal from it, rad; None where the distance is not given.
    """

    motor_growth: float
    bearing_growth: float
    height_error: float
    nut_distance: float | None
    angle: float | None


def clearance_growth(diameter: float, hole: float, shaft: float, rise: float) -> float:
    """Return the growth of a diametral clearance in mm.

    Args:
        diameter: mm.
        hole: Expansion of the part with the hole, 1/K.
        shaft: Expansion of the part in it, 1/K.
        rise: Rise of temperature of both, K.

    Source: linear expansion: D (alpha_hole - alpha_shaft) dT.
    """
    return diameter * (hole - shaft) * rise


def height_error(height: float, block: float, block_rise: float, nut_side: float, nut_rise: float) -> float:
    """Return how much more the block grows than the nut's side, mm.

    Args:
        height: Shaft height above the base, mm.
        block: Expansion of the block, 1/K.
        block_rise: Rise of the block since assembly, K.
        nut_side: Expansion of the nut's side, 1/K.
        nut_rise: Its rise since assembly, K.

    Source: linear expansion: h (alpha_block dT_block - alpha_nut dT_nut).
    """
    return height * (block * block_rise - nut_side * nut_rise)


def expansions_of(plan: Plan) -> Expansions:
    """Return the coefficients of a plan: of its materials, and of the usual ones for what the makers do not say."""
    return Expansions(
        plan.number("block_expansion"),
        plan.number("practice.motor_flange_expansion"),
        plan.number("practice.bearing_housing_expansion"),
        plan.number("base_expansion"),
    )


def temperatures_of(plan: Plan) -> Temperatures | None:
    """Return the temperatures of a plan; None where one of them is not given."""
    keys = ("thermal.assembly_temperature", "thermal.block_temperature", "thermal.nut_side_temperature")
    if any(key not in plan.records for key in keys):
        return None
    return Temperatures(*(plan.number(key) for key in keys))


def heat_effect(plan: Plan, expansions: Expansions, warm: Temperatures) -> HeatEffect:
    """Return what heat does to the plan; pilots count from 20 degC, where sizes hold, the height from assembly."""
    rise = warm.block - REFERENCE
    motor = clearance_growth(plan.number("motor_bore"), expansions.block, expansions.motor_flange, rise)
    bearing = clearance_growth(plan.number("bearing_bore"), expansions.block, expansions.bearing_housing, rise)
    block_rise, nut_rise = warm.block - warm.assembly, warm.nut_side - warm.assembly
    error = height_error(plan.number("shaft_height"), expansions.block, block_rise, expansions.nut_side, nut_rise)
    given = "screw.nut_distance_min" in plan.records
    distance = plan.number("screw.nut_distance_min") if given else None
    return HeatEffect(motor, bearing, error, distance, error / distance if distance else None)


def heat_term(plan: Plan, effect: HeatEffect) -> Term | None:
    """Return the slope of the journal as a known term; the screw falls towards the nut where the block grows more."""
    if effect.angle is None:
        return None
    slope = known(0.0, effect.angle)
    return tilt("heat_screw_to_guide", "bearing", slope, coupling_centre(plan), "screw.nut_distance_min")
