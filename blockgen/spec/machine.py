"""Tables of the job, the machine and the block itself."""

from __future__ import annotations

import re
from typing import Annotated, Literal

from blockgen.spec.table import Table, key
from blockgen.spec.values import (
    Angle,
    Day,
    Density,
    Expansion,
    FileName,
    FitClass,
    Frequency,
    Length,
    LongText,
    MetricThread,
    Number,
    Pairs,
    Pattern,
    PropertyClass,
    Ratio,
    Stiffness,
    Stress,
    SwitchOrLength,
    Temperature,
    Text,
)

_FIT_PAIR = re.compile(r"[A-Za-z]{1,2}[0-9]{1,2}(?:/[A-Za-z]{1,2}[0-9]{1,2})?")
_GENERAL = re.compile(r"(?:ISO 2768-)?[fmcv][HKL]?")
FitPair = Annotated[str | None, Pattern((_FIT_PAIR,), 'a tolerance class or a fit such as "H7" or "H7/m6"')]
GeneralTolerance = Annotated[str | None, Pattern((_GENERAL,), 'a general tolerance such as "ISO 2768-mK"')]
Language = Annotated[str | None, Pattern((re.compile("[a-z]{2}"),), 'a language as two small letters, such as "en"')]


class Job(Table):
    """What is being made, for whom."""

    number: Annotated[str | None, FileName("a job number")] = key(
        "Number of the job; names the output folder and files.", required=True
    )
    title: Text = key("Title of the drawing.")
    revision: Annotated[str | None, FileName("a revision")] = key("Revision, part of the file names.")
    author: Text = key("Who made the spec.")
    project: Text = key("Machine or project.")
    gravity: Literal["-z", "+z", "+x", "-x", "+y", "-y"] | None = key("Which way is down, in the block's axes.")


class Base(Table):
    """What the block stands on, and how it is held."""

    shaft_height: Length = key("Screw axis above the base face.", required=True)
    motor_shaft_height: Length = key("Height that the motor's side asks for; must equal shaft_height.")
    length_available: Length = key("Room along the axis.")
    width_available: Length = key("Room across.")
    height_limit: Length = key("Highest point that the block may reach above the base.")
    material: Text = key("Material of the base.")
    thickness: Length = key("Thickness of the base plate.")
    bed_stiffness: Stiffness = key(
        "Stiffness of the base under the block, in every direction; counts with --stiffness only."
    )
    screw: MetricThread = key("Thread of the base screws, such as M10.")
    screw_count: Number = key("Number of base screws.")
    screw_from: Literal["above", "below"] | None = key("above: counterbored in the block; below: block tapped.")
    property_class: PropertyClass = key("Property class of the base screws.")
    hole_positions: Pairs = key("Centres [x, y] of the base screws; locks the pattern.")
    friction: Ratio = key("Friction coefficient between block and base.")
    tightening: Literal["torque_wrench", "torque_wrench_calibrated", "angle", "hand"] | None = key(
        "How the screws are tightened, which sets the scatter of their preload."
    )
    dowels: SwitchOrLength = key("True, false or the diameter of the dowel pins.")


class Block(Table):
    """The block: what is left out is sized, what is given is checked."""

    material: Text = key("Material of the block.")
    finish: Text = key("Surface finish, such as hard anodised.")
    coating_thickness: Length = key("Growth of a coated surface.")
    length: Length = key("Length between the seat planes.")
    width: Length = key("Width across the axis.")
    height: Length = key("Height above the base.")
    bearing_wall: Length = key("Thickness of the wall at the bearing unit.")
    motor_wall: Length = key("Thickness of the wall at the motor.")
    side_wall: Length = key("Thickness of the side walls.")
    window_width: Length = key("Width of the window.")
    window_length: Length = key("Length of the window along the axis.")
    window_axis: Literal["z", "y"] | None = key("Direction in which the window is milled.")
    window_floor: Length = key("Material left under the window; 0 mills it through.")
    window_corner_radius: Length = key("Corner radius of the window.")
    cutter_diameter: Length = key("Cutter for the window.")
    bore_fit: FitClass = key("ISO 286 class of both pilot bores.")
    coaxiality: Length = key("Diameter of the tolerance zone of one pilot bore to the other.")
    seat_perpendicularity: Length = key("Width of the tolerance zone of a seat to its bore's axis.")
    base_flatness: Length = key("Flatness of the base face.")
    height_tolerance: Length = key("Shaft height may differ by this, either way.")
    length_tolerance: Length = key("Length may differ by this, either way.")
    outer_fillet: Length = key("Radius of the upright outside edges; 0 leaves them chamfered.")
    edge_chamfer: Length = key("Chamfer of the outside edges.")
    hole_chamfer: Length = key("Chamfer of hole mouths beyond the thread or hole radius.")
    relief: Length = key("Depth of the relief between two pads in the base face; 0 for none.")


class Limits(Table):
    """What is asked of the result."""

    parallel: Length = key("Parallel offset allowed, instead of the coupling's.")
    angular: Angle = key("Angle allowed, instead of the coupling's.")
    axial: Length = key("Axial movement allowed, instead of the coupling's.")
    coupling_use: Ratio = key("Share of the coupling's capacity that may be used.")
    probability: Ratio = key("Probability at which misalignment is judged, such as 0.95.")
    slip_safety: Ratio = key("Safety against slip of the base joint.")
    separation_safety: Ratio = key("Safety against a gap in the base joint.")
    strip_safety: Ratio = key("Safety against stripping of threads.")
    block_stiffness_ratio: Ratio = key("Stiffness of the block over that of the drive.")
    first_frequency: Frequency = key("Least first frequency of the motor on its wall.")


class Thermal(Table):
    """Temperatures."""

    assembly_temperature: Temperature = key("When it is assembled.")
    block_temperature: Temperature = key("Block in service.")
    nut_side_temperature: Temperature = key("Machine at the nut in service.")


class Material(Table):
    """A material of the user's own."""

    kind: Literal["steel", "aluminium", "cast_iron"] | None = key("Family, which sets thread engagement.")
    density: Density = key("Density.")
    youngs_modulus: Stress = key("Young's modulus.")
    poisson: Ratio = key("Poisson's ratio.")
    yield_strength: Stress = key("Yield or 0.2 % proof strength.")
    tensile_strength: Stress = key("Tensile strength.")
    shear_strength: Stress = key("Shear strength, for stripping.")
    expansion: Expansion = key("Thermal expansion.")
    bearing_pressure: Stress = key("Pressure allowed under a screw head.")
    source: LongText = key("Where the values come from.")


class Drawing(Table):
    """The drawing."""

    projection: Literal["first", "third"] | None = key("Projection method.")
    sheet: Literal["A4", "A3", "A2", "A1", "A0"] | None = key("Sheet size.")
    date: Day = key("Date of the drawing; without it none is printed.")
    language: Language = key("Language of the drawing.")
    general_tolerance: GeneralTolerance = key("General tolerance of the drawing.")
    number_format: Literal["point", "comma"] | None = key("Decimal sign of the drawing.")


class Plate(Table):
    """Values of the separate arrangement: a motor plate and a foot-mounted bearing unit."""

    plate_thickness: Length = key("Thickness of the motor plate.")
    plate_height_tolerance: Length = key("Axis height of the plate may differ by this, either way.")
    unit_height_tolerance: Length = key("Axis height of the foot-mounted unit may differ by this, either way.")
    dowel_fit: FitPair = key("Fit of the dowel pins.")
    slot_fit: FitPair = key("Fit of the locating slot.")
    plate_perpendicularity: Length = key("Width of the tolerance zone of the plate's face to its foot.")
    foot_flatness: Length = key("Flatness of the feet.")
    dowel_diameter: Length = key("Diameter of the pins that locate plate and unit.")
    dowel_position: Length = key("Pin holes may stand off by this across the axis, either way.")
    dowel_spacing: Length = key("Distance of the two pins, or of the screws, of one part across the axis.")
    unit_foot_length: Length = key("Length of the foot-mounted unit's foot along the shaft.")
