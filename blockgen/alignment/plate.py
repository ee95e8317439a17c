"""The separate arrangement as a vector chain: motor plate and foot-mounted bearing unit, each screwed to the base.

Heights and pitch move the shafts along z only, side errors and yaw along y only; run-outs stay as they are. A
foot-mounted unit has no pilot, and there is no common boring of two seats.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from blockgen.alignment.scatter import Scatter
from blockgen.alignment.terms import Term, coupling_centre, shift, terms_of, tilt
from blockgen.plan import Plan
from blockgen.standards.iso286 import fit

# what belongs to the line-bored block alone, by the end of the characteristic
_OF_THE_BLOCK = ("bearing_bore.diameter", ".coaxiality", ".perpendicularity", ".parallelism")


@dataclass(frozen=True, slots=True)
class PlateValues:
    """Values of the separate arrangement, mm.

    Args:
        plate_thickness: Thickness of the motor plate, which is the length of its foot along the shaft.
        plate_height_tolerance: Axis height of the plate may differ by this, either way.
        unit_height_tolerance: Axis height of the unit may differ by this, either way.
        dowel_fit: Fit of the pin that locates a part, hole first.
        slot_fit: Fit of the slot for its second pin, hole first.
        plate_perpendicularity: Zone of the plate's face to its foot, over the shaft height.
        foot_flatness: Flatness of each foot.
        dowel_diameter: Diameter of the pins.
        dowel_position: Pin holes may stand off by this across the axis, either way, in each part and its base.
        dowel_spacing: Distance of the two pins, or of the screws, of one part across the axis.
        unit_foot_length: Length of the unit's foot along the shaft.
    """

    plate_thickness: float
    plate_height_tolerance: float
    unit_height_tolerance: float
    dowel_fit: str
    slot_fit: str
    plate_perpendicularity: float
    foot_flatness: float
    dowel_diameter: float
    dowel_position: float
    dowel_spacing: float
    unit_foot_length: float


@dataclass(frozen=True, slots=True)
class Play:
    """How a part may lie across the axis: its side error and the side error of its second locating point, mm."""

    side: float
    second: float


def plate_values(plan: Plan) -> PlateValues:
    """Return the values of a plan's ``plate.`` records, which sizing has completed with defaults."""
    return PlateValues(
        plate_thickness=plan.number("plate.plate_thickness"),
        plate_height_tolerance=plan.number("plate.plate_height_tolerance"),
        unit_height_tolerance=plan.number("plate.unit_height_tolerance"),
        dowel_fit=plan.text("plate.dowel_fit"),
        slot_fit=plan.text("plate.slot_fit"),
        plate_perpendicularity=plan.number("plate.plate_perpendicularity"),
        foot_flatness=plan.number("plate.foot_flatness"),
        dowel_diameter=plan.number("plate.dowel_diameter"),
        dowel_position=plan.number("plate.dowel_position"),
        dowel_spacing=plan.number("plate.dowel_spacing"),
        unit_foot_length=plan.number("plate.unit_foot_length"),
    )


def loosest(diameter: float, fit_pair: str) -> float:
    """Return the greatest diametral clearance of a fit in mm, 0 where it is always tight.

    Args:
        diameter: mm.
        fit_pair: Hole and shaft, ``H7/m6``; a single class is a hole with an m6 pin.

    Source: ISO 286-1.
    """
    hole, _, shaft = fit_pair.partition("/")
    return max(fit(diameter, hole, shaft or "m6").max_clearance, 0.0)


def dowelled(values: PlateValues) -> Play:
    """Return the play of a part with one pin in a hole and one in a slot."""
    pin = loosest(values.dowel_diameter, values.dowel_fit) / 2
    slot = loosest(values.dowel_diameter, values.slot_fit) / 2
    return Play(values.dowel_position + pin, values.dowel_position + slot)


def screwed(plan: Plan) -> Play:
    """Return the play of a part held by its screws alone: it may lie anywhere in their clearance holes."""
    side = (plan.number("base_screw_hole") - plan.number("base_screw_diameter")) / 2
    return Play(side, side)


def separate_terms(plan: Plan, values: PlateValues, play: Play) -> tuple[Term, ...]:
    """Return the terms of the separate arrangement at the same coupling and the same motor.

    Side error and yaw of one part are taken as independent, which overstates the corners of screw holes a little.
    """
    stay = [term for term in terms_of(plan) if not term.characteristic.endswith(_OF_THE_BLOCK)]
    return (*stay, *_heights(plan, values), *_sides(plan, values, play))


def _heights(plan: Plan, values: PlateValues) -> Sequence[Term]:
    """Return what moves along z: heights, squareness of the plate, and how its foot and the unit's rest."""
    centre, length = coupling_centre(plan), plan.number("length")
    square = values.plate_perpendicularity / plan.number("shaft_height")
    plate_foot, unit_foot = (values.foot_flatness / n for n in (values.plate_thickness, values.unit_foot_length))
    return (
        shift("plate_height", "motor", up(values.plate_height_tolerance), "plate.plate_height_tolerance"),
        shift("unit_height", "bearing", up(values.unit_height_tolerance), "plate.unit_height_tolerance"),
        tilt("plate_squareness", "motor", up(square), centre - length, "plate.plate_perpendicularity"),
        tilt("plate_foot", "motor", up(plate_foot), centre - length, "plate.foot_flatness"),
        tilt("unit_foot", "bearing", up(unit_foot), centre, "plate.foot_flatness"),
    )


def _sides(plan: Plan, values: PlateValues, play: Play) -> Sequence[Term]:
    """Return what moves along y: side errors, and yaw over the distance of the locating points."""
    centre, length = coupling_centre(plan), plan.number("length")
    yaw = across((play.side + play.second) / values.dowel_spacing)
    return (
        shift("plate_side", "motor", across(play.side), "plate.dowel_position"),
        shift("unit_side", "bearing", across(play.side), "plate.dowel_position"),
        tilt("plate_yaw", "motor", yaw, centre - length, "plate.slot_fit"),
        tilt("unit_yaw", "bearing", yaw, centre, "plate.slot_fit"),
    )


def up(half: float) -> Scatter:
    """Return an error along z, uniform either way."""
    return Scatter("uniform_z", half)


def across(half: float) -> Scatter:
    """Return an error along y, uniform either way."""
    return Scatter("uniform_y", half)
