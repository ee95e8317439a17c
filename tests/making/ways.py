"""Plans of different making: what the block can be like."""

WAYS = {
    "usual": {},
    "across": {"block": {"window_axis": "y"}},
    "below": {"base": {"screw_from": "below"}},
    "dowels": {"base": {"dowels": 6}},
    "relief": {"block": {"relief": 0.5}},
    "rounded": {"block": {"outer_fillet": 4}},
    "tapped": {"motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}},
    "floor": {"block": {"window_floor": 30}},
    "coated": {"block": {"finish": "hard anodised", "coating_thickness": 0.03}},
    "iron": {"block": {"material": "EN-GJL-250"}},
    "step": {"bearing": {"pilot_diameter": 60, "flange_size": 90, "bolt_circle": 80}},
    "heavy": {"motor": {"flange_size": 260}, "base": {"shaft_height": 170}, "block": {"material": "S355J2"}},
}
