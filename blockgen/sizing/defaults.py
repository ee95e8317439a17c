"""Every default and every practice value in one place; nothing is assumed anywhere else.

A default carries what it was derived from, so that the summary can show it and the designer can replace it.
"""

from __future__ import annotations

from collections.abc import Mapping

from blockgen.record import Ledger, Record, Value
from blockgen.sizing.sources import CP

# key, value, unit, meaning, source
_PRACTICE: tuple[tuple[str, float, str, str, str], ...] = (
    ("practice.flange_margin", 1.0, "mm", "seat that shows around a flange outline", CP),
    ("practice.size_step", 1.0, "mm", "step to which outside sizes and window width are rounded up", CP),
    ("practice.wall_step", 0.5, "mm", "step of wall thicknesses", CP),
    ("practice.length_step", 0.5, "mm", "step of the block length", CP),
    ("practice.length_fine_step", 0.1, "mm", "step of the block length when 0.5 mm leaves the interval", CP),
    ("practice.wall_least", 12.0, "mm", "thinnest end wall that is considered", CP),
    ("practice.wall_usual", 20.0, "mm", "end wall used when nothing asks for more (usual 20..30)", CP),
    ("practice.roof_least", 8.0, "mm", "thinnest floor or roof of a window across", CP),
    ("practice.pilot_carried", 0.6, "", "least part of the bearing pilot that the wall carries", CP),
    ("practice.pilot_depth_extra", 1.0, "mm", "bore deeper than the pilot is long (0.5..1)", CP),
    ("practice.pilot_engagement_least", 2.0, "mm", "least engagement of a pilot (2..4)", CP),
    ("practice.bore_shoulder", 2.0, "mm", "least shoulder of a stepped bore; below it the bore goes through plain", CP),
    ("practice.bar_clearance", 1.0, "mm", "radial room of the boring bar in the larger bore", CP),
    ("practice.bar_fraction", 0.75, "", "boring bar diameter over bore diameter", CP),
    ("practice.bar_ratio", 4.0, "", "boring bar length to diameter, steel bar", "from memory"),
    ("practice.bar_ratio_damped", 6.0, "", "boring bar length to diameter, damped bar", "from memory"),
    ("practice.cavity_factor", 0.5, "", "wall from a tapped hole to a cavity over the thread's diameter", CP),
    ("practice.cavity_floor", 3.0, "mm", "least wall from a tapped hole to a cavity", CP),
    ("practice.rim", 2.5, "mm", "least wall between plain holes and to an outside face (2..3)", CP),
    ("practice.counterbore_rim", 3.0, "mm", "rim planned around a counterbore (2..3)", CP),
    ("practice.counterbore_sunk", 0.5, "mm", "counterbore deeper than the head is high (0.4..0.6)", CP),
    ("practice.thread_edge", 1.5, "", "tapped hole, centre to edge over diameter (1.5..2)", CP),
    ("practice.thread_edge_least", 1.25, "", "the same where the wall decides over the block's length", CP),
    ("practice.counterbore_ratio", 6.0, "", "depth of a counterbore over its diameter", CP),
    ("practice.screw_spread", 0.5, "", "span of the base screws over the block's length, wanted", CP),
    ("practice.engagement_steel", 1.0, "", "thread engagement over diameter in steel", CP),
    ("practice.engagement_cast_iron", 1.25, "", "thread engagement over diameter in grey iron", CP),
    ("practice.engagement_aluminium", 2.0, "", "thread engagement over diameter in aluminium (1.5..2)", CP),
    ("practice.engagement_flange", 1.25, "", "engagement over diameter in a tapped motor flange", CP),
    ("practice.contact_ring", 3.0, "mm", "least seat ring between bore chamfer and flange edge", CP),
    ("practice.lead_in", 0.5, "mm", "chamfer leg at the mouth of a pilot bore", CP),
    ("practice.thread_extra_pitches", 2.0, "", "full thread beyond the screw, in pitches", CP),
    (
        "practice.screw_slenderness",
        8.0,
        "",
        "base screw length over diameter above which the counterbore is deepened",
        CP,
    ),
    ("practice.drill_point_angle", 118.0, "deg", "point angle of a twist drill", CP),
    ("practice.corner_factor", 1.1, "", "window corner radius over cutter radius", CP),
    ("practice.corner_room_most", 10.0, "mm", "window widened for corner radii before a longer cutter is taken", CP),
    ("practice.tight_pilot", 0.01, "mm", "interference with which a pilot can still be tapped in", CP),
    ("practice.cut_depth_ratio", 3.0, "", "depth of cut over cutter diameter, normal", CP),
    ("practice.cut_depth_ratio_hard", 5.0, "", "depth of cut over cutter diameter, difficult above", CP),
    ("practice.lifting_mass", 15.0, "kg", "block mass above which lifting threads are cut", CP),
    ("practice.lifting_size", 8.0, "mm", "thread of the lifting points", CP),
    ("practice.key_clearance", 1.0, "mm", "room around a screw head for head and key", CP),
    ("practice.thread_friction", 0.12, "", "friction in thread and under head, lightly oiled", "VDI 2230, from memory"),
    ("practice.preload_use", 0.9, "", "part of the yield point used by tightening", "VDI 2230, from memory"),
    ("practice.screw_modulus", 205000.0, "MPa", "modulus of elasticity of steel screws", "from memory"),
    ("practice.screw_expansion", 11.5e-6, "1/K", "thermal expansion of steel screws", "from memory"),
    ("practice.cone_tangent", 0.5, "", "pressure cone under a head, tangent of half its angle", "from memory"),
    ("practice.embedding", 0.1, "", "part of the preload lost by embedding", CP),
    (
        "practice.scatter_torque_wrench",
        1.8,
        "",
        "tightening factor of a torque wrench (1.6..2.0)",
        "VDI 2230, from memory",
    ),
    (
        "practice.scatter_torque_wrench_calibrated",
        1.6,
        "",
        "tightening factor, calibrated wrench",
        "VDI 2230, from memory",
    ),
    ("practice.reversing_factor", 1.2, "", "safety against slip, times this where the thrust reverses", CP),
    ("practice.scatter_hand", 2.5, "", "tightening factor by hand feel", "from memory"),
    ("practice.scatter_angle", 1.2, "", "tightening factor of torque and angle", "VDI 2230, from memory"),
    ("practice.setting_tolerance", 0.2, "mm", "how closely the fitter sets the coupling along the shaft", CP),
    ("practice.dowel_pilot", 0.5, "mm", "dowel hole pilot-drilled smaller than the pin, reamed at assembly", CP),
    ("practice.dowel_depth", 2.0, "", "dowel seat length in the block over pin diameter", CP),
    ("practice.stack_proud_least", 1.0, "mm", "bearing stack longer than the screw's seat, least", CP),
    ("practice.stack_proud_most", 3.0, "mm", "bearing stack longer than the screw's seat, most", CP),
    ("practice.motor_flange_expansion", 23.0e-6, "1/K", "motor flange taken as aluminium", "from memory"),
    ("practice.bearing_housing_expansion", 11.5e-6, "1/K", "bearing housing taken as steel", "from memory"),
    ("practice.axial_left", 0.25, "", "part of the setting tolerance left in a coupling clamped relaxed", CP),
    ("practice.texture_joined", 1.6, "um", "Ra of fitted bores, flange seats and base", CP),
    ("practice.texture_other", 3.2, "um", "Ra of all other faces", CP),
    ("practice.edge_outer", -0.3, "mm", "outer edges broken by this at most where nothing is said", CP),
    ("practice.edge_inner", 0.2, "mm", "inner edges keep this at most where nothing is said", CP),
    ("practice.body_clearance", 1.0, "mm", "room between motor body and base face", CP),
    ("practice.fatigue_share", 0.3, "", "stress that may alternate for ever over the tensile strength, any metal", CP),
    ("practice.fatigue_safety", 2.0, "", "safety against that stress in the block, away from sharp edges", CP),
    ("practice.first_slip_safety", 1.2, "", "friction over force at the screw where slip would begin", CP),
)

PRACTICE: Mapping[str, Record] = {
    key: Record(key, value, unit, "assumed", meaning, {}, source) for key, value, unit, meaning, source in _PRACTICE
}

# key, value, unit, reason, source
_PLAIN: tuple[tuple[str, Value, str, str, str], ...] = (
    ("job.revision", "A", "", "first revision", CP),
    ("job.title", "Mounting block", "", "title when none is given", CP),
    ("job.gravity", "-z", "", "horizontal axis on a level base", CP),
    ("motor.name", "motor", "", "name when none is given", CP),
    ("motor.pilot_form", "proud", "", "usual form of a motor spigot", CP),
    ("motor.pilot_length", 3.0, "mm", "usual spigot length; confirm on the data sheet", CP),
    ("motor.flange_shape", "square", "", "usual shape of a servo flange", CP),
    ("motor.bolt_count", 4, "", "usual count", CP),
    ("motor.bolt_angle", 45.0, "deg", "holes on the diagonals", CP),
    ("motor.fastening", "clearance", "", "holes in the motor flange, block tapped", CP),
    ("motor.shaft_end", "plain", "", "plain shaft for a clamping hub", CP),
    ("motor.shaft_fit", "h6", "", "usual class of a plain servo shaft", CP),
    ("bearing.name", "bearing unit", "", "name when none is given", CP),
    ("bearing.pilot_form", "proud", "", "housing spigot", CP),
    ("bearing.pilot_direction", "into_wall", "", "housing spigot sits in the wall", CP),
    ("bearing.flange_shape", "square", "", "usual shape of a flanged unit", CP),
    ("bearing.bolt_count", 4, "", "usual count", CP),
    ("bearing.bolt_angle", 45.0, "deg", "holes on the diagonals", CP),
    ("screw.thrust_direction", "both", "", "unfavourable direction is taken", CP),
    ("coupling.name", "coupling", "", "name when none is given", CP),
    ("coupling.clearance", 2.0, "mm", "clearance to hardware and around the swing", CP),
    ("coupling.gap_min", 1.0, "mm", "shaft ends must not touch", CP),
    ("coupling.clamp_access_radius", 5.0, "mm", "half the width that a key needs", CP),
    ("base.material", "S235JR", "", "usual machine base", CP),
    ("base.thickness", 25.0, "mm", "usual base plate", CP),
    ("base.screw_count", 4, "", "usual count", CP),
    ("base.screw_from", "above", "", "screws driven from above", CP),
    ("base.property_class", "8.8", "", "usual class", CP),
    ("base.friction", 0.12, "", "friction of the base joint, machined and wiped clean", "from memory"),
    ("base.tightening", "torque_wrench", "", "usual tool", CP),
    ("base.dowels", False, "", "friction joint without dowels", CP),
    ("block.material", "EN AW-6082-T6", "", "usual block material", CP),
    ("block.finish", "none", "", "bare metal", CP),
    ("block.coating_thickness", 0.0, "mm", "no coating", CP),
    ("block.bore_fit", "H7", "", "usual class of pilot bores", CP),
    ("block.coaxiality", 0.02, "mm", "both bores in one setup: diam 0.01..0.02", CP),
    ("block.seat_perpendicularity", 0.02, "mm", "seats square to the bore axis, over the seat: 0.01..0.02 per 100", CP),
    ("block.base_flatness", 0.02, "mm", "base scraped or skimmed: 0.01..0.02", CP),
    ("block.height_tolerance", 0.02, "mm", "shaft height +-0.02", CP),
    ("block.length_tolerance", 0.1, "mm", "distance of the seats +-0.1", CP),
    ("block.window_axis", "z", "", "window cut from above", CP),
    ("block.window_floor", 0.0, "mm", "window right through", CP),
    ("block.outer_fillet", 0.0, "mm", "plain milled outside", CP),
    ("block.edge_chamfer", 0.5, "mm", "edges broken 0.3..0.5", CP),
    ("block.hole_chamfer", 0.5, "mm", "hole mouths broken", CP),
    ("block.relief", 0.0, "mm", "base face without relief", CP),
    ("limits.probability", 0.95, "", "misalignment is judged at P95", CP),
    ("limits.coupling_use", 0.8, "", "statistical use of the coupling (1 at worst)", CP),
    ("plate.plate_thickness", 20.0, "mm", "separate arrangement: motor plate and length of its foot", CP),
    ("plate.plate_height_tolerance", 0.02, "mm", "separate arrangement: axis height of the plate, either way", CP),
    ("plate.unit_height_tolerance", 0.02, "mm", "separate arrangement: axis height of the unit, either way", CP),
    ("plate.dowel_fit", "H7/m6", "", "separate arrangement: pin in its hole", CP),
    ("plate.slot_fit", "H7/m6", "", "separate arrangement: pin in its slot", CP),
    ("plate.plate_perpendicularity", 0.02, "mm", "separate arrangement: plate's face to its foot", CP),
    ("plate.foot_flatness", 0.01, "mm", "separate arrangement: flatness of each foot", CP),
    ("plate.dowel_diameter", 8.0, "mm", "separate arrangement: pins", CP),
    ("plate.dowel_position", 0.02, "mm", "separate arrangement: pin holes across the axis, either way", CP),
    ("plate.dowel_spacing", 100.0, "mm", "separate arrangement: distance of the pins across the axis", CP),
    ("plate.unit_foot_length", 60.0, "mm", "separate arrangement: foot of the unit along the shaft", CP),
    ("limits.slip_safety", 1.5, "", "safety against slip of the base joint", CP),
    ("limits.separation_safety", 1.2, "", "preload over the one at which a joint begins to gape", CP),
    ("limits.strip_safety", 1.25, "", "safety against stripping at full preload", CP),
    ("limits.block_stiffness_ratio", 9.0, "", "block over screw and bearing in series: 9 costs a tenth of it", CP),
    ("drawing.projection", "first", "", "ISO first-angle projection", CP),
    ("drawing.language", "en", "", "language of the sheets", CP),
    ("drawing.number_format", "point", "", "decimal point, as usual in English", CP),
    ("drawing.general_tolerance", "ISO 2768-mK", "", "usual general tolerance", CP),
)

PLAIN: Mapping[str, Record] = {
    key: Record(key, value, unit, "assumed", reason, {}, source) for key, value, unit, reason, source in _PLAIN
}

# Mating geometry: while one of these is assumed, every output is preliminary.
MATING = frozenset(
    {
        "motor.pilot_length",
        "motor.pilot_form",
        "motor.pilot_fit",
        "motor.bolt_hole",
        "motor.bolt_thread",
        "bearing.pilot_length",
        "bearing.pilot_fit",
        "bearing.bolt_hole",
        "bearing.nut_reach",
        "coupling.journal_grip_min",
        "coupling.motor_grip_min",
        "coupling.grip_max",
    }
)


def mates(key: str) -> bool:
    """Tell whether a key is geometry that mates, of whichever motor of a family."""
    return (f"motor.{key.rpartition('.')[2]}" if key.startswith("family.") else key) in MATING


def assume(ledger: Ledger, key: str, value: Value, unit: str, rule: str, *using: str, source: str = CP) -> None:
    """Enter a derived default unless the key is known already."""
    if not ledger.known(key):
        ledger.decide(key, value, unit, rule, using, source, origin="assumed")


def _plain_defaults(ledger: Ledger) -> None:
    for key, record in PLAIN.items():
        if key not in ledger:
            ledger.enter(record)


def _motor_defaults(ledger: Ledger) -> None:
    if not ledger.known("motor.pilot_upper"):
        assume(ledger, "motor.pilot_fit", "h7", "", "usual class of a servo spigot")
    length = ledger.number("motor.shaft_length")
    assume(
        ledger, "motor.shaft_smooth_length", length, "mm", "the whole shaft is taken as smooth", "motor.shaft_length"
    )
    assume(ledger, "base.motor_shaft_height", ledger.number("base.shaft_height"), "mm", "equals", "base.shaft_height")


def _bearing_defaults(ledger: Ledger) -> None:
    if not ledger.known("bearing.pilot_upper"):
        assume(ledger, "bearing.pilot_fit", "h6", "", "usual class of a bearing housing spigot")
    pilot = ledger.number("bearing.pilot_diameter")
    rule = "0.25 x bearing.pilot_diameter; to the nearest 1, at most 15"
    assume(ledger, "bearing.pilot_length", min(round(0.25 * pilot), 15), "mm", rule, "bearing.pilot_diameter")
    if not ledger.known("screw.journal_reach"):
        reach = ledger.number("screw.shoulder_to_end") - ledger.number_or("bearing.shoulder_offset", 0.0)
        rule = "shoulder_to_end - shoulder_offset"
        using = ("screw.shoulder_to_end", "bearing.shoulder_offset")
        ledger.decide("screw.journal_reach", reach, "mm", rule, using, "contract of the spec", origin="sized")
    into = ledger.number("bearing.pilot_length") if ledger.text("bearing.pilot_direction") == "into_wall" else 0.0
    reach = into + round(0.6 * ledger.number("screw.journal_diameter"))
    rule = "bearing.pilot_length + 0.6 x screw.journal_diameter; wall, lock nut and seal, to the nearest 1"
    using = ("bearing.pilot_length", "screw.journal_diameter")
    assume(ledger, "bearing.nut_reach", reach, "mm", rule, *using)


def _coupling_defaults(ledger: Ledger) -> None:
    length, gap = ledger.number("coupling.length"), ledger.number("coupling.gap_min")
    swing = ledger.number("coupling.outer_diameter")
    assume(ledger, "coupling.swing_diameter", swing, "mm", "equals the outer diameter", "coupling.outer_diameter")
    if ledger.known("coupling.hub_length"):
        most, rule = ledger.number("coupling.hub_length"), "the hub length"
    else:
        rigid = ledger.text("coupling.kind") == "rigid"
        most, rule = (length - gap) / 2, "(coupling.length - coupling.gap_min) / 2; rigid"
        if not rigid:
            most, rule = 0.4 * length, "0.4 x coupling.length; the rest is the flexing part"
    using = ("coupling.hub_length", "coupling.length", "coupling.gap_min")
    assume(ledger, "coupling.grip_max", most, "mm", rule, *using)
    assume(ledger, "coupling.hub_length", ledger.number("coupling.grip_max"), "mm", "equals", "coupling.grip_max")
    half = ledger.number("coupling.hub_length") / 2
    assume(
        ledger,
        "coupling.clamp_position",
        half,
        "mm",
        "coupling.hub_length / 2; clamp screw at mid hub",
        "coupling.hub_length",
    )
    _grip_least(ledger, "journal", "screw.journal_diameter")
    _grip_least(ledger, "motor", "motor.shaft_diameter")


def _grip_least(ledger: Ledger, end: str, shaft: str) -> None:
    key = f"coupling.{end}_grip_min"
    if ledger.known("coupling.grip_min"):
        value = ledger.number("coupling.grip_min")
        origin = ledger["coupling.grip_min"].origin
        ledger.decide(
            key, value, "mm", "the maker's value", ("coupling.grip_min",), ledger["coupling.grip_min"].source,
            origin=origin,
        )  # fmt: skip
        return
    value = min(ledger.number(shaft), 0.9 * ledger.number("coupling.grip_max"))
    assume(ledger, key, value, "mm", "min(diameter, 0.9 x grip_max)", shaft, "coupling.grip_max")


def _thrust_defaults(ledger: Ledger) -> None:
    """A thrust that is said to act one way does not reverse unless the spec says so."""
    both = ledger.text("screw.thrust_direction") == "both"
    rule = "a feed axis reverses" if both else "the thrust is said to act one way only"
    assume(ledger, "screw.reversing", both, "", rule, "screw.thrust_direction")


def _journal_smooth(ledger: Ledger) -> None:
    value = ledger.number("screw.journal_reach") - ledger.number("bearing.nut_reach")
    rule = "screw.journal_reach - bearing.nut_reach; smooth from the lock nut to the end"
    assume(ledger, "screw.journal_smooth_length", value, "mm", rule, "screw.journal_reach", "bearing.nut_reach")


def complete(records: Mapping[str, Record]) -> Ledger:
    """Return a ledger with the spec's records and every default.

    Args:
        records: Given and preset records by key.

    Returns:
        Ledger in which each key that sizing needs is known, with its origin.
    """
    ledger = Ledger([*PRACTICE.values(), *(r for r in records.values() if r.value is not None)])
    _plain_defaults(ledger)
    _motor_defaults(ledger)
    _bearing_defaults(ledger)
    _coupling_defaults(ledger)
    _journal_smooth(ledger)
    _thrust_defaults(ledger)
    return ledger
