"""Physical nonsense is refused with both keys and both values."""

import pytest

NONSENSE = [
    ({"motor": {"pilot_diameter": "-70 mm"}}, ["motor.pilot_diameter"], "more than zero"),
    ({"motor": {"shaft_length": 0}}, ["motor.shaft_length"], "more than zero"),
    ({"bearing": {"nut_reach": -1}}, ["bearing.nut_reach"], "zero or more"),
    ({"block": {"relief": -1}}, ["block.relief"], "zero or more"),
    ({"coupling": {"bore_min": 20, "bore_max": 10}}, ["coupling.bore_min", "coupling.bore_max"], "empty"),
    ({"coupling": {"grip_min": 20, "grip_max": 19}}, ["coupling.grip_min", "coupling.grip_max"], "empty"),
    ({"coupling": {"grip_min": 30}}, ["coupling.length", "coupling.grip_min"], "at least two grips"),
    ({"coupling": {"hub_length": 30}}, ["coupling.length", "coupling.hub_length"], "at least two hubs"),
    ({"coupling": {"bore_max": 45}}, ["coupling.bore_max", "coupling.outer_diameter"], "no hub"),
    ({"coupling": {"swing_diameter": 40}}, ["coupling.outer_diameter", "coupling.swing_diameter"], "swing"),
    ({"coupling": {"hub_length": 20, "clamp_position": 20}}, ["coupling.clamp_position"], "clamp screw"),
    (
        {"motor": {"bolt_circle": 72, "bolt_hole": 6.6}},
        ["motor.bolt_circle", "motor.pilot_diameter"],
        "outside the pilot",
    ),
    ({"motor": {"bolt_circle": "116 mm"}}, ["motor.bolt_circle", "motor.flange_size"], "inside the flange"),
    ({"motor": {"bolt_circle": 105, "bolt_hole": 9}}, ["motor.bolt_hole"], "inside the flange"),
    ({"motor": {"bolt_angle": 0}}, ["motor.bolt_circle"], "inside the flange"),
    ({"bearing": {"flange_shape": "round", "bolt_hole": 6.6}}, ["bearing.bolt_circle"], "inside the flange"),
    (
        {"motor": {"flange_size": None, "flange_width": 84, "flange_height": 72, "bolt_hole": 9}},
        ["motor.bolt_circle", "motor.flange_height"],
        "inside the flange",
    ),
    (
        {"motor": {"bolt_circle": None, "bolt_spacing_y": 50, "bolt_spacing_z": 40}},
        ["motor.bolt_spacing_y", "motor.bolt_spacing_z"],
        "outside the pilot",
    ),
    (
        {"motor": {"bolt_circle": None, "bolt_spacing_y": 50}},
        ["motor.bolt_spacing_y"],
        "bolt_spacing_y and bolt_spacing_z together",
    ),
    (
        {"bearing": {"flange_size": None, "flange_width": 90}},
        ["bearing.flange_width"],
        "flange_width and flange_height",
    ),
    (
        {"motor": {"bolt_circle": None, "bolt_positions": [[36, 30], [36, 31]], "bolt_hole": 5}},
        ["motor.bolt_positions", "motor.bolt_hole"],
        "do not overlap",
    ),
    ({"motor": {"bolt_count": 24, "bolt_hole": 12, "flange_size": 130}}, ["motor.bolt_hole"], "do not overlap"),
    ({"motor": {"pilot_upper": -0.03, "pilot_lower": 0}}, ["motor.pilot_upper", "motor.pilot_lower"], "not below"),
    ({"motor": {"pilot_upper": 0}}, ["motor.pilot_upper"], "pilot_lower as well"),
    ({"motor": {"pilot_fit": "H7"}}, ["motor.pilot_fit"], "small letters for a proud one"),
    ({"motor": {"pilot_fit": "h7", "pilot_form": "recessed"}}, ["motor.pilot_fit"], "capitals for a recessed"),
    ({"motor": {"pilot_diameter": 80}}, ["motor.pilot_diameter", "motor.flange_size"], "larger than its pilot"),
    ({"motor": {"shaft_smooth_length": 41}}, ["motor.shaft_smooth_length", "motor.shaft_length"], "smooth"),
    ({"motor": {"key_length": 41}}, ["motor.key_length", "motor.shaft_length"], "key"),
    ({"motor": {"key_width": 19}}, ["motor.key_width", "motor.shaft_diameter"], "narrower"),
    ({"motor": {"pilot_length": 40}}, ["motor.pilot_length", "motor.shaft_length"], "inside the pilot"),
    ({"motor": {"shaft_diameter": 71}}, ["motor.shaft_diameter", "motor.pilot_diameter"], "through the pilot"),
    ({"motor": {"shaft_fit": "H6"}}, ["motor.shaft_fit"], "class of a shaft"),
    ({"motor": {"centre_of_mass": 90, "body_length": 80}}, ["motor.centre_of_mass"], "behind the motor"),
    ({"motor": {"rated_torque": 3, "peak_torque": 2}}, ["motor.rated_torque", "motor.peak_torque"], "peak"),
    ({"motor": {"fastening": "tapped", "bolt_hole": 6}}, ["motor.fastening", "motor.bolt_hole"], "bolt_thread for"),
    ({"motor": {"fastening": "clearance", "bolt_thread": "M6"}}, ["motor.fastening"], "bolt_hole for one"),
    ({"motor": {"flange_shape": "rectangle"}}, ["motor.flange_shape", "motor.flange_size"], "for a rectangle"),
    ({"screw": {"journal_diameter": 45}}, ["screw.journal_diameter", "bearing.pilot_diameter"], "through the unit"),
    ({"screw": {"journal_smooth_length": 44}}, ["screw.journal_smooth_length", "screw.journal_reach"], "at most"),
    (
        {"screw": {"shoulder_to_end": 50}, "bearing": {"shoulder_offset": 17}},
        ["screw.journal_reach", "screw.shoulder_to_end", "bearing.shoulder_offset"],
        "a reach of 33 mm",
    ),
    ({"bearing": {"nut_outer_diameter": 15}}, ["screw.journal_diameter", "bearing.nut_outer_diameter"], "nut"),
    ({"bearing": {"nut_outer_diameter": 30, "spanner_diameter": 28}}, ["bearing.spanner_diameter"], "spanner"),
    ({"base": {"motor_shaft_height": 66}}, ["base.shaft_height", "base.motor_shaft_height"], "same height"),
    ({"base": {"shaft_height": 35}}, ["motor.pilot_diameter", "base.shaft_height"], "cut the base"),
    ({"base": {"height_limit": 60}}, ["base.shaft_height", "base.height_limit"], "above the limit"),
    ({"base": {"screw_count": 4, "hole_positions": [[9, 40]]}}, ["base.screw_count"], "as many screws"),
    ({"base": {"screw": "M8", "hole_positions": [[9, 40], [9, 47]]}}, ["base.hole_positions", "base.screw"], "apart"),
    ({"base": {"friction": 1.4}}, ["base.friction"], "at most 1"),
    ({"block": {"height": 60}}, ["base.shaft_height", "block.height"], "above the block"),
    ({"block": {"length": 120}, "base": {"length_available": 110}}, ["base.length_available"], "too long"),
    ({"block": {"length": 90, "bearing_wall": 30, "motor_wall": 30, "window_length": 40}}, ["block.length"], "holds"),
    ({"block": {"width": 90, "side_wall": 25, "window_width": 50}}, ["block.width", "block.side_wall"], "holds"),
    ({"block": {"window_corner_radius": 4, "cutter_diameter": 10}}, ["block.cutter_diameter"], "cutter's radius"),
    ({"block": {"window_floor": 65}}, ["block.window_floor", "base.shaft_height"], "bury the shaft"),
    ({"block": {"bore_fit": "h7"}}, ["block.bore_fit"], "class of a hole"),
    ({"thermal": {"block_temperature": -300}}, ["thermal.block_temperature"], "above -273.15 degC"),
    ({"limits": {"probability": 1}}, ["limits.probability"], "at most"),
]


@pytest.mark.parametrize(("change", "keys", "words"), NONSENSE)
def test_nonsense_is_refused(problems_with, change, keys, words):
    problems = problems_with(**change)
    shown = "\n".join(map(str, problems))
    assert all(key in shown for key in keys)
    assert words in shown
    assert problems[0].line is not None


@pytest.mark.parametrize(
    "change",
    [
        {"coupling": {"allow_parallel": 0, "gap_min": 0, "clearance": 0}, "block": {"relief": 0, "window_floor": 0}},
        {"motor": {"pilot_upper": 0, "pilot_lower": -0.03}},
        {"motor": {"pilot_form": "recessed", "pilot_fit": "H7"}},
        {"motor": {"bolt_hole": 6.6}, "bearing": {"flange_shape": "round", "flange_size": 75, "bolt_hole": 6.6}},
        {"motor": {"shaft_smooth_length": 40, "key_length": 40}, "base": {"motor_shaft_height": "65 mm"}},
        {"thermal": {"block_temperature": -20}, "limits": {"first_frequency": 0}},
        {"screw": {"shoulder_to_end": 60}, "bearing": {"shoulder_offset": 17}},
    ],
)
def test_what_is_unusual_but_possible_passes(load_with, change):
    assert load_with(**change).records


def test_values_of_presets_are_judged_too(problems_with):
    (problem,) = problems_with(
        coupling={"outer_diameter": None, "length": None, "preset": "bellows-45", "grip_min": 22}
    )
    assert problem.found == "coupling.grip_min = 22 mm, coupling.grip_max = 20 mm (preset bellows-45)"


def test_family_motors_are_judged_too(text_with, required, to_toml):
    from blockgen.errors import InputError
    from blockgen.spec.load import parse_spec

    motor = to_toml({"x": {**required["motor"], "key_length": 50}}).removeprefix("[x]\n")
    with pytest.raises(InputError, match=r"family\.0\.key_length = 50 mm, family\.0\.shaft_length = 40 mm"):
        parse_spec(text_with() + "[[family]]\n" + motor)
