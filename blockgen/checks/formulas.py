"""The formula behind each check, by its id: what the printed value is, and which way it is compared."""

from __future__ import annotations

import re

# Pattern of the id, formula. The first pattern that fits the whole id counts.
_FORMULAS: tuple[tuple[str, str], ...] = (
    (r"\w+_data_sheet", "a reminder, no comparison"),
    (r"axial_layout", "room from the length to the nearer end of the nominal interval >= tolerances of that end"),
    (r"(journal|motor)_grip", "depth of the shaft in its hub >= least grip"),
    (r"shaft_gap", "length - motor shaft length - journal reach >= least gap"),
    (r"stack_on_seat", "least <= stack length - seat length <= most"),
    (r"coupling_bore_\w+", "bore_min <= shaft diameter <= bore_max"),
    (r"coupling_rating", "peak torque <= rated torque"),
    (r"keyed_shaft|lifting|coating|\w+_pilot_fit", "a statement, no comparison"),
    (
        r"\w+_flange_seated",
        "least seat left and right, above and below the flange, edge break off >= margin",
    ),
    (r"\w+_contact_ring", "half flange - half bore - lead-in >= least ring"),
    (r"\w+_pilot_engagement", "min(pilot length, bore depth) - lead-in >= least engagement"),
    (r"bearing_pilot_carried", "bearing wall >= pilot length"),
    (r"motor_above_base", "shaft height - half motor body >= clearance"),
    (r"shaft_(offset|angle)", "|sum of contributors| at the probability asked for <= allowance"),
    (
        r"coupling_use_likely",
        "offset/allowed + angle/allowed + axial/allowed at the probability <= share to be used",
    ),
    (r"coupling_use_worst", "offset/allowed + angle/allowed + axial/allowed in the worst case <= 1"),
    (r"heat", "h (alpha_block dT_block - alpha_nut dT_nut)"),
    (r"ball_life", "(F / (F + reaction))^3"),
    (r"\w+_available", "size <= space"),
    (r"\w+_size", "size >= least size of its rule"),
    (r"thin_wall_\d", "least distance of the two >= least wall"),
    (r"\w+_engagement", "screw length - clamped thickness >= least engagement"),
    (r"\w+_screw_bottoming", "engagement <= full thread"),
    (r"base_rows", "base screws at more than one x"),
    (
        r"base_slip",
        "mu F_V / Q at the worst screw, Q = F/n (+) M_z r / sum r^2, or mu sum(F_V - F_lift) / F >= safety asked for",
    ),
    (r"base_first_slip", "mu (F_V - F_lift) / Q at the worst screw by finite elements >= safety of practice"),
    (r"\w+_opening", "preload over the one at which (sum F_V - F_lift)/A - M c/I = 0 at an edge >= safety asked for"),
    (
        r"base_screw_load",
        "yield point left by tightening / (load factor x M x_i / sum x^2 + heat) >= 1",
    ),
    (r"\w+_head_pressure", "(F_M + what is added) / area under the head or washer <= allowed pressure"),
    (r"\w+_strip", "tau A_S / F_M of the weaker thread, tau = 0.6 Rm >= safety asked for"),
    (r"bearing_pull", "n F_V / thrust that pulls >= safety asked for"),
    (r"motor_torque_slip", "mu F_V sum r / M_peak >= safety asked for"),
    (r"drive_thrust", "2 pi eta M_peak / lead <= thrust"),
    (r"block_stiffness", "k_block / (1/(1/k_screw + 1/k_bearing)) >= ratio; k by Timoshenko beams"),
    (r"motor_frequency", "sqrt(k_theta/(m l^2 + I)) / (2 pi) >= frequency asked for"),
    (r"axial_stiffness", "k_block / (1/(1/k_screw + 1/k_bearing)) >= ratio; k by finite elements"),
    (r"elastic_(tilt|shift)", "|motor bore - bearing bore| under load <= allowance of the coupling"),
    (r"first_frequency", "C M v = v / (2 pi f)^2, C of the motor seat by finite elements >= frequency asked for"),
    (r"block_stress", "greatest von Mises stress <= share that may alternate x tensile strength / safety"),
    (r"falling\w*", "a statement, no comparison"),
    (r"window_cut|counterbore_depth", "depth / diameter <= ratio"),
    (r"coupling_swing", "least distance from the swing to window and corner radii >= clearance"),
    (r"coupling_over_floor", "shaft height - floor - half swing >= clearance"),
    (r"window_floor", "floor - relief >= least floor"),
    (r"motor_screw_heads", "flat half of the end wall - outer edge of a head >= 0"),
    (r"motor_screw_key", "nearest screw - half its diameter - half swing >= clearance"),
    (r"bores_in_one_setup", "lesser of the openings behind both bores >= smaller bore"),
    (r"boring_bar", "length / (bar fraction x smaller bore) <= ratio"),
    (r"nut_spanner", "opening around the nut >= spanner"),
    (r"nut_passes", "opening of the bearing bore >= lock nut"),
    (r"coupling_removal", "way free towards the motor >= grip on the journal"),
    (r"dowels", "two places that keep the least walls"),
    (r"clash_free", "sum of (common volume - planned overlap) over the pairs that clash <= volume of rounding"),
    (r"contacts_made", "planned seats and threads that the solids do not show <= 0"),
    (r"least_clearance", "least distance of the solids >= clearance asked for it"),
    (r"(height|width)_limit", "furthest point of all parts <= space"),
    (r"motor_over_base", "lowest point of the motor's solid >= clearance"),
    (r"key_access_\w+", "swept tools that meet no part >= tools that must reach"),
)


def formula_of(check_id: str) -> str:
    """Return the formula of a check, whichever motor of a family it is about; empty where none is written down."""
    name = check_id.rpartition(".")[2]
    return next((formula for pattern, formula in _FORMULAS if re.fullmatch(pattern, name)), "")
