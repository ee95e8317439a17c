"""From spec to plan."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from math import fsum

from blockgen.errors import InfeasibleError, InputError, Problem
from blockgen.mechanics.ligaments import map_of
from blockgen.mechanics.volume import body_volume, feature_volume
from blockgen.plan import Body, Feature, Plan
from blockgen.record import Ledger, Record
from blockgen.sizing.annotations import annotate
from blockgen.sizing.base_plate import base_plate_features
from blockgen.sizing.contributors import contributors
from blockgen.sizing.dowels import dowel_features, lifting_features
from blockgen.sizing.family import entries, require_one_pilot, swapped, under_own_keys
from blockgen.sizing.family_fault import at_fault
from blockgen.sizing.family_members import family_start
from blockgen.sizing.family_pattern import clocked
from blockgen.sizing.family_plan import further_holes, united
from blockgen.sizing.features import block_features
from blockgen.sizing.frames import frames
from blockgen.sizing.free_places import Surroundings, rule_of, surroundings
from blockgen.sizing.hold_down import decide_held
from blockgen.sizing.proving import proved
from blockgen.sizing.rounds import Parts
from blockgen.sizing.screw_list import fasteners
from blockgen.sizing.summary_keys import DIMENSIONS
from blockgen.spec.load import Spec
from blockgen.standards.tables import TableError


def size(spec: Spec, *, brief: bool = False) -> Plan:
    """Size one block.

    Args:
        spec: A loaded spec.
        brief: Leave out what only sheets and messages need: characteristics and the proof of cures.

    Returns:
        The plan: every dimension with its reason, features, annotations, fasteners, frames.

    Raises:
        InfeasibleError: no layout along the axis exists.
        InputError: a material or thread is not known, or a size is beyond a published table.
    """
    try:
        return plan_from(spec.records, brief=brief)
    except InputError as error:
        raise InputError([_placed(problem, spec) for problem in error.problems]) from error
    except TableError as error:
        raise InputError([_placed(_beyond(error, spec), spec)]) from error


def _beyond(error: TableError, spec: Spec) -> Problem:
    """Return what a published table does not reach; the greatest length of the spec is the likely cause."""
    lengths = {k: r.value for k, r in spec.records.items() if r.unit == "mm" and isinstance(r.value, (int, float))}
    key = max(lengths, key=lambda name: (abs(lengths[name]), name), default="")
    found = (
        f"{lengths[key]:g} mm, which leads to {error.field} {error.value}" if key else f"{error.field} {error.value}"
    )
    return Problem("", None, key, found, error.limit, error.remedy)


def _placed(problem: Problem, spec: Spec) -> Problem:
    """Return a problem with the spec's file and the line of its key: the rules know keys only."""
    given = spec.records.get(problem.key)
    return problem if problem.file else replace(problem, file=spec.path, line=given.line if given else None)


def plan_from(records: Mapping[str, Record], *, brief: bool = False) -> Plan:
    """Size one block from given and preset records; see ``size``."""
    try:
        require_one_pilot(records)
        mounted, turns = clocked(records)
        plan = _with_first_motor(mounted, brief=brief)
        others = [_with_further_motor(mounted, entry, brief=brief) for entry in entries(mounted)[1:]]
    except InfeasibleError as error:
        raise (error if brief else proved(at_fault(records, error), records)) from error
    return united(plan, others, turns) if others else plan


def _with_further_motor(records: Mapping[str, Record], entry: str, *, brief: bool) -> Plan:
    """Plan the block of all motors with a further one mounted."""
    with under_own_keys(entry):
        return _with_first_motor(swapped(records, entry), brief=brief)


def _with_first_motor(records: Mapping[str, Record], *, brief: bool) -> Plan:
    """Size the block of all motors and plan it with the first one mounted."""
    ledger, parts, positions = decide_held(*family_start(records))
    seats = (parts.bearing_seat, parts.motor_seat)
    features = block_features(ledger, (parts.bearing, parts.motor), seats, parts.screw, positions)
    features = (*features, *further_holes(ledger, parts))
    body = _body(ledger)
    around = surroundings(features)
    dowels = dowel_features(ledger, parts.screw, positions, around, body)
    around = (*around, *surroundings(dowels))
    volume = body_volume(body) - fsum(feature_volume(feature, body) for feature in (*features, *dowels))
    mass = volume * 1e-9 * parts.block.density
    around = (*around, *surroundings(lifting_features(ledger, mass, positions, around, body)))
    plate = base_plate_features(ledger, parts.screw, positions, dowels)
    return _plan(ledger, parts, body, around, plate, brief=brief)


def _body(ledger: Ledger) -> Body:
    """Return the outside of the block.

    Raises:
        InputError: a fillet is not larger than the chamfer that runs around it.
    """
    fillet, chamfer = ledger.number("block.outer_fillet"), ledger.number("block.edge_chamfer")
    if 0 < fillet <= chamfer:
        remedy = "give a larger fillet, a smaller edge_chamfer, or 0 for chamfered upright edges"
        raise InputError(
            [Problem("", None, "block.outer_fillet", f"{fillet:g} mm", f"0 or above {chamfer:g} mm", remedy)]
        )
    return Body(
        ledger.number("length"),
        ledger.number("width"),
        ledger.number("height"),
        ledger.number("block.outer_fillet"),
        ledger.number("block.edge_chamfer"),
    )


def _plan(
    ledger: Ledger, parts: Parts, body: Body, cavities: Surroundings, plate: tuple[Feature, ...], *, brief: bool
) -> Plan:
    features = tuple(cavity.feature for cavity in cavities)
    causes = contributors(ledger)
    characteristics = () if brief else annotate(ledger, features)
    screws = fasteners(ledger, (parts.bearing, parts.motor), parts.screw, features)
    return Plan(
        records=ledger.frozen(),
        dimensions=tuple(key for key in DIMENSIONS if key in ledger),
        body=body,
        features=features,
        base_features=plate,
        annotations=characteristics,
        contributors=causes,
        fasteners=screws,
        frames=frames(ledger),
        ligaments=map_of(cavities, body, rule_of(ledger)),
        notes=ledger.remarks,
        material_density=parts.block.density,
    )
