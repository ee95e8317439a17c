"""Which records are dimensions of the block, in the order in which the summary shows them."""

DIMENSIONS = (
    "length", "width", "height", "shaft_height", "length_min", "length_max", "length_low", "length_high",
    "bearing_wall", "motor_wall", "side_wall", "window_length", "window_width", "window_corner_radius",
    "bearing_bore", "bearing_bore_depth", "bearing_through_bore",
    "motor_bore", "motor_bore_depth", "motor_through_bore",
    "coupling_position", "shaft_gap", "journal_grip", "motor_grip",
    "bearing_thread", "bearing_engagement", "bearing_thread_depth", "bearing_drill_depth", "bearing_screw_length",
    "motor_thread", "motor_engagement", "motor_thread_depth", "motor_drill_depth", "motor_screw_length",
    "base_screw", "base_screw_count", "base_screw_hole", "base_washer", "base_counterbore_diameter",
    "base_counterbore_depth", "base_screw_length",
    "base_engagement", "base_thread_depth", "base_drill_depth", "base_pattern", "base_preload",
    "base_preload_least", "base_torque",
    "dowel_diameter", "lifting_thread",
)  # fmt: skip
