"""The base joint as sizing and checks see it: face under the block, loads, slip, opening, load on the screws."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from blockgen.mechanics.bolts import clamped_resilience, load_factor, screw_resilience, thermal_loss
from blockgen.mechanics.contact import Box, Face, Pull, face_of_boxes, opening_safety
from blockgen.mechanics.loads import resultant
from blockgen.mechanics.slip import pattern_centre, screw_slip_safety, shear_shares, slip_safety, tilting_loads
from blockgen.sizing.loads import Records, base_cases, known, motor_torque, number
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import thread

Positions = Sequence[tuple[float, float]]
Shares = Sequence[tuple[float, float, float]]


def base_positions(records: Records) -> tuple[tuple[float, float], ...]:
    """Return the base screws (x, y) in mm."""
    value = records["base_pattern"].value
    pairs = value if isinstance(value, tuple) else ()
    return tuple((float(pair[0]), float(pair[1])) for pair in pairs if isinstance(pair, tuple))


def base_face(records: Records, relief: tuple[float, float] | None = None) -> Face:
    """Return the face under the block: its outline less the window and a relief.

    Args:
        records: Records of a sized block.
        relief: Start and end of the relief along x, mm; None without one.
    """
    length, side = number(records, "length"), number(records, "width") / 2
    boxes = [Box((0.0, -side), (length, side))]
    through = records["block.window_axis"].value == "z" and number(records, "block.window_floor") <= 0
    start, end = number(records, "bearing_wall"), length - number(records, "motor_wall")
    half = number(records, "window_width") / 2
    if through:
        boxes.append(Box((start, -half), (end, half), -1.0))
    if relief:
        boxes.append(Box((relief[0], -side), (relief[1], side), -1.0))
        both = max(relief[0], start), min(relief[1], end)
        if through and both[0] < both[1]:
            boxes.append(Box((both[0], -half), (both[1], half)))
    return face_of_boxes(boxes)


def base_slip(records: Records, positions: Positions, sure: float) -> float:
    """Return the safety against slip: of the whole joint or of its worst screw, whichever is less.

    Args:
        records: Records with loads and friction.
        positions: Base screws (x, y), mm.
        sure: Least preload of one screw, N.
    """
    friction, count = number(records, "base.friction"), len(positions)
    centre, least = pattern_centre(positions), math.inf
    for forces in base_cases(records):
        (along, across, up), moment = resultant(forces, (*centre, 0.0))
        turn = moment[2] if count > 1 and abs(moment[2]) > 1e-9 else 0.0
        shares = shear_shares(positions, (along, across), turn)
        lift = max(up, 0.0)
        whole = slip_safety(count * sure, lift, friction, math.hypot(along, across))
        least = min(least, whole, screw_slip_safety(sure, lift / count, friction, shares))
    return least


def slip_of_shares(shares: Iterable[Shares], friction: float, sure: float) -> float:
    """Return the safety against slip of the worst screw from shares that were worked out elsewhere.

    Args:
        shares: For each load, the force (x, y, z) in N of the block on the base at each screw.
        friction: Coefficient of friction of the joint.
        sure: Least preload of one screw, N.
    """
    return min(
        (slip_safety(sure, max(z, 0.0), friction, math.hypot(x, y)) for case in shares for x, y, z in case),
        default=math.inf,
    )


def group_slip(shares: Iterable[Shares], friction: float, sure: float) -> float:
    """Return the safety against slip of all screws together: friction where each is lifted, over the whole force.

    A screw that is pressed on counts with its preload only. Arguments as for ``slip_of_shares``.
    """
    least = math.inf
    for case in shares:
        along = math.hypot(math.fsum(x for x, _, _ in case), math.fsum(y for _, y, _ in case))
        lift = math.fsum(max(z, 0.0) for _, _, z in case)
        least = min(least, slip_safety(len(case) * sure, lift, friction, along))
    return least


def opening_of_shares(shares: Iterable[Shares], sure: float) -> float:
    """Return preload over the lift at the worst screw; infinite where nothing lifts. Arguments as before."""
    lift = max((z for case in shares for _, _, z in case), default=0.0)
    return sure / lift if lift > 0 else math.inf


def base_opening(records: Records, positions: Positions, sure: float, face: Face) -> float:
    """Return the safety against a gap at any edge under the block.

    Args:
        records: Records with loads.
        positions: Base screws (x, y), mm.
        sure: Least preload of one screw, N.
        face: Face under the block.
    """
    torque, pulls = motor_torque(records), []
    for forces in base_cases(records):
        (_, _, up), (about_x, about_y, _) = resultant(forces, (*face.centre, 0.0))
        pulls += [Pull(up, -about_y, about_x + turn) for turn in (torque, -torque)]
    return opening_safety(face, pattern_centre(positions), len(positions) * sure, pulls)


def base_screw_load(records: Records, positions: Positions) -> float:
    """Return the greatest force in N that tilting and lifting put on the joint at one screw."""
    centre, torque, greatest = pattern_centre(positions), motor_torque(records), 0.0
    along = _tilting([x - centre[0] for x, _ in positions])
    across = _tilting([y - centre[1] for _, y in positions])
    for forces in base_cases(records):
        (_, _, up), (about_x, about_y, _) = resultant(forces, (*centre, 0.0))
        for turn in (about_x + torque, about_x - torque):
            worst = max(turn * b - about_y * a for a, b in zip(along, across, strict=True))
            greatest = max(greatest, worst + up / len(positions))
    return greatest


def _tilting(distances: list[float]) -> Sequence[float]:
    """Return the load in N of each screw for 1 N*m; none from one row, where only the face holds the moment."""
    if all(abs(distance) < 1e-9 for distance in distances):
        return [0.0] * len(distances)
    return tilting_loads(distances, 1.0)


def resiliences(records: Records) -> tuple[float, float]:
    """Return the resilience of a base screw and of what it clamps, mm/N; one cone that no edge cuts."""
    screw = thread(str(records["base_screw"].value))
    below = records["base.screw_from"].value == "below"
    length = number(records, "base_screw_length")
    clamped = clamped_length(records)
    shank = min(max(length - cap_screw(screw.size).thread_length, 0.0), clamped)
    stretched = screw_resilience(
        screw.diameter, screw.root_diameter, shank, clamped - shank, number(records, "practice.screw_modulus")
    )
    pressed = clamped_resilience(
        number(records, "base_bearing_diameter"), number(records, "base_screw_hole"), clamped,
        number(records, "base_youngs_modulus" if below else "block_youngs_modulus"),
        number(records, "practice.cone_tangent"),
    )  # fmt: skip
    return stretched, pressed


def clamped_length(records: Records) -> float:
    """Return what a base screw clamps in mm: block and washer, or the base plate from below."""
    if records["base.screw_from"].value == "below":
        return number(records, "base.thickness")
    return (
        number(records, "height") - number(records, "base_counterbore_depth") + number(records, "base_washer_thickness")
    )


@dataclass(frozen=True, slots=True)
class ScrewState:
    """What a base screw feels beside its tightening.

    Args:
        share: Share of a load on the closed joint that it feels.
        heat: By how much a warmer block tightens it, N; negative where it loses.
        load: Greatest load on the joint at one screw, N; 0 where no thrust is given.
        sure: Least preload, less what a colder block takes, N.
    """

    share: float
    heat: float
    load: float
    sure: float

    @property
    def felt(self) -> float:
        """What comes on top of the preload at most, N."""
        return self.share * self.load + max(self.heat, 0.0)


def screw_state(
    records: Records, positions: Positions, least: float, shares: Sequence[Shares] | None = None
) -> ScrewState:
    """Return the state of the base screws.

    Args:
        records: Records of a sized block.
        positions: Base screws (x, y), mm.
        least: Least preload of one screw after tightening and embedding, N.
        shares: Forces at the screws for each load, as ``slip_of_shares``; the block counts as rigid without them.
    """
    springs = resiliences(records)
    heat = thermal_gain(records, springs)
    load = base_screw_load(records, positions) if known(records, "slip_safety_wanted") else 0.0
    if shares is not None:
        load = max((z for case in shares for _, _, z in case), default=0.0)
    return ScrewState(load_factor(*springs), heat, load, max(0.0, least + min(heat, 0.0)))


def thermal_gain(records: Records, springs: tuple[float, float]) -> float:
    """Return by how much a base screw is tightened by a warmer block in N; negative where it loses, 0 if not given."""
    if not (known(records, "thermal.assembly_temperature") and known(records, "thermal.block_temperature")):
        return 0.0
    change = number(records, "thermal.block_temperature") - number(records, "thermal.assembly_temperature")
    part = "base" if records["base.screw_from"].value == "below" else "block"
    unlike = number(records, "practice.screw_expansion") - number(records, f"{part}_expansion")
    return -thermal_loss(unlike, clamped_length(records), change, *springs)


def sure_of(records: Records, least: float) -> float:
    """Return what is left in N of a base screw's least preload where a colder block takes some of it."""
    if not known(records, "thermal.block_temperature"):
        return least
    return max(0.0, least + min(thermal_gain(records, resiliences(records)), 0.0))
