"""Tables of the bought parts: motor, bearing unit, screw and coupling, with every key as a data sheet names it."""

from __future__ import annotations

from typing import Literal

from blockgen.spec.table import Table, key
from blockgen.spec.values import (
    Angle,
    AngularStiffness,
    FitClass,
    Force,
    Inertia,
    Length,
    Mass,
    Number,
    Pairs,
    Ratio,
    SafeName,
    Stiffness,
    Switch,
    Text,
    Thread,
    Torque,
)


class Flanged(Table):
    """What motor and bearing unit have in common: pilot, flange and bolt pattern."""

    preset: SafeName = key("Name of a preset that gives the keys not given here.")
    name: Text = key("Maker's designation, for lists and title block.")
    data_source: Text = key(
        "Where the data come from: data sheet with its date, or the preset; kept in the resolved spec."
    )
    pilot_diameter: Length = key("Diameter of the pilot (spigot) that centres it.", required=True)
    pilot_form: Literal["proud", "recessed"] | None = key("proud: a spigot enters the block; recessed: a bore.")
    pilot_fit: FitClass = key("ISO 286 class of the pilot diameter, such as h7.")
    pilot_upper: Length = key("Upper deviation of the pilot diameter, with its sign, instead of pilot_fit.")
    pilot_lower: Length = key("Lower deviation of the pilot diameter, with its sign, instead of pilot_fit.")
    pilot_length: Length = key("Length of the pilot beyond the mounting face.")
    flange_shape: Literal["square", "round", "rectangle"] | None = key("Outline of the flange.")
    flange_size: Length = key("Side of a square flange, diameter of a round one.", required=True)
    flange_width: Length = key("Width (y) of a rectangular flange.")
    flange_height: Length = key("Height (z) of a rectangular flange.")
    flange_thickness: Length = key("Thickness of the flange under the screw heads.")
    bolt_circle: Length = key("Diameter of the bolt circle.", required=True)
    bolt_count: Number = key("Number of screws on the bolt circle.")
    bolt_angle: Angle = key("Angle of the first screw, from +y, seen from the motor.")
    bolt_spacing_y: Length = key("Hole spacing across, instead of a bolt circle.")
    bolt_spacing_z: Length = key("Hole spacing upwards, instead of a bolt circle.")
    bolt_positions: Pairs = key("Hole centres [y, z] from the axis, instead of a bolt circle.")
    bolt_hole: Length = key("Clearance hole in the flange.")
    face_runout: Length = key("Run-out of the mounting face, full indicator movement.")
    model: Text = key("Path of the maker's STEP file, from the folder of the spec.")


class Motor(Flanged):
    """The motor as its data sheet shows it."""

    fastening: Literal["clearance", "tapped"] | None = key(
        "clearance: holes in the motor flange, block tapped; tapped: flange tapped, screws driven from the window."
    )
    bolt_thread: Thread = key("Thread in a tapped motor flange.")
    shaft_diameter: Length = key("Diameter of the shaft end.", required=True)
    shaft_fit: FitClass = key("ISO 286 class of the shaft end, such as h6 or k6.")
    shaft_length: Length = key("Shaft length from the mounting face, not from the pilot's face.", required=True)
    shaft_smooth_length: Length = key("Cylindrical length from the shaft end that a clamp hub may use.")
    shaft_end: Literal["plain", "keyed", "flat"] | None = key("Form of the shaft end.")
    key_length: Length = key("Length of the key.")
    key_width: Length = key("Width of the key.")
    body_size: Length = key("Side or diameter of the motor's body.")
    body_length: Length = key("Length behind the mounting face.")
    mass: Mass = key("Mass with brake and encoder.")
    centre_of_mass: Length = key("Distance of the centre of mass behind the mounting face.")
    inertia: Inertia = key("Rotor inertia.")
    brake: Switch = key("True with a holding brake.")
    rated_torque: Torque = key("Rated (continuous) torque.")
    peak_torque: Torque = key("Peak torque.")
    spigot_runout: Length = key("Run-out of the spigot to the shaft, full indicator movement.")
    shaft_runout: Length = key("Run-out of the shaft end, full indicator movement.")


class Bearing(Flanged):
    """The flanged fixed-bearing unit."""

    pilot_direction: Literal["into_wall", "away"] | None = key("Which way the pilot points from the seat plane.")
    stack_length: Length = key("Length of bearing and spacers that the lock nut must clamp.")
    shoulder_offset: Length = key(
        "Shaft shoulder to seat plane; positive when the shoulder lies on the screw's side of the seat plane."
    )
    nut_reach: Length = key("Furthest lock nut or seal face beyond the seat plane, towards the motor.")
    nut_outer_diameter: Length = key("Outer diameter of the lock nut.")
    spanner_diameter: Length = key("Room that the spanner needs about the lock nut.")
    runout: Length = key("Radial run-out of the mounted unit, full indicator movement.")
    axial_stiffness: Stiffness = key("Axial stiffness of the unit.")


class Screw(Table):
    """The ball screw's end and its load."""

    journal_diameter: Length = key("Diameter of the journal that the coupling grips.", required=True)
    journal_reach: Length = key("Journal end beyond the bearing seat plane.", required=True)
    shoulder_to_end: Length = key(
        "Shaft shoulder to journal end, instead of journal_reach (with bearing.shoulder_offset)."
    )
    journal_smooth_length: Length = key("Cylindrical length from the journal end that a clamp hub may use.")
    journal_runout: Length = key("Run-out of the journal to the bearing seats, full indicator movement.")
    seat_length: Length = key("Length of the bearing seat on the screw; 1 to 3 mm shorter than bearing.stack_length.")
    lead: Length = key("Lead of the thread.")
    efficiency: Ratio = key("Efficiency of the screw, 0 to 1.")
    thrust: Force = key("Greatest axial force.")
    thrust_direction: Literal["towards_motor", "away", "both"] | None = key("Where the greatest force acts.")
    reversing: Switch = key("True when the thrust changes its direction in service.")
    axial_stiffness: Stiffness = key("Axial stiffness of screw and nut.")
    nut_distance_min: Length = key("Least distance from the bearing seat plane to the nut.")
    moved_mass: Mass = key("Mass that the nut moves.")


class Coupling(Table):
    """The coupling."""

    preset: SafeName = key("Name of a preset that gives the keys not given here.")
    name: Text = key("Maker's designation, for lists.")
    data_source: Text = key(
        "Where the data come from: data sheet with its date, or the preset; kept in the resolved spec."
    )
    kind: Text = key("Kind in trade words: rigid, clamp, bellows, disc, jaw, oldham.")
    outer_diameter: Length = key("Outer diameter of the hubs.", required=True)
    swing_diameter: Length = key("Diameter that turning clamp screws sweep.")
    length: Length = key("Overall length.", required=True)
    bore_min: Length = key("Smallest bore of the size.")
    bore_max: Length = key("Largest bore of the size.")
    hub_length: Length = key("Length of one hub.")
    grip_min: Length = key("Least depth of a shaft in its hub.")
    grip_max: Length = key("Greatest depth of a shaft in its hub.")
    gap_min: Length = key("Least gap between the shaft ends.")
    clamp_position: Length = key("Axis of the clamp screw from the hub's end.")
    clamp_access_radius: Length = key("Half width that the key needs at the clamp screw, clearance not added again.")
    clearance: Length = key("Clearance to hardware and about the swing.")
    flex_spacing: Length = key("Distance between the flexing planes.")
    rated_torque: Torque = key("Rated torque.")
    allow_parallel: Length = key("Parallel offset that it takes.")
    allow_angular: Angle = key("Angle that it takes.")
    allow_axial: Length = key("Axial movement that it takes, either way.")
    radial_stiffness: Stiffness = key("Radial stiffness.")
    angular_stiffness: AngularStiffness = key("Bending stiffness of the flexing part.")
    axial_stiffness: Stiffness = key("Axial stiffness.")
    mass: Mass = key("Mass.")
