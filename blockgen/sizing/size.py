"""From spec to plan."""

from __future__ import annotations

from collections.abc import Mapping

from blockgen.mechanics.ligaments import ligament_map
from blockgen.mechanics.volume import body_volume, feature_volume
from blockgen.plan import Body, Feature, Plan
from blockgen.record import Ledger, Record
from blockgen.sizing.annotations import annotate
from blockgen.sizing.base_plate import base_plate_features
from blockgen.sizing.contributors import contributors
from blockgen.sizing.defaults import complete
from blockgen.sizing.dowels import dowel_features, lifting_features
from blockgen.sizing.features import block_features
from blockgen.sizing.frames import frames
from blockgen.sizing.free_places import rule_of
from blockgen.sizing.rounds import Parts, decide_sizes
from blockgen.sizing.screw_list import fasteners
from blockgen.sizing.summary_keys import DIMENSIONS
from blockgen.spec.load import Spec


def size(spec: Spec) -> Plan:
    """Size one block.

    Args:
        spec: A loaded spec.

    Returns:
        The plan: every dimension with its reason, features, annotations, fasteners, frames.

    Raises:
        InfeasibleError: no layout along the axis exists.
        InputError: a material or thread is not known.
    """
    return plan_from(spec.records)


def plan_from(records: Mapping[str, Record]) -> Plan:
    """Size one block from given and preset records; see ``size``."""
    ledger, parts, positions = decide_sizes(complete(records))
    seats = (parts.bearing_seat, parts.motor_seat)
    features = block_features(ledger, (parts.bearing, parts.motor), seats, parts.screw, positions)
    body = _body(ledger)
    dowels = dowel_features(ledger, parts.screw, positions, features, body)
    volume = body_volume(body) - sum(feature_volume(feature, body) for feature in features)
    mass = volume * 1e-9 * parts.block.density
    features = (*features, *dowels)
    features = (*features, *lifting_features(ledger, mass, positions, features, body))
    plate = base_plate_features(ledger, parts.screw, positions, dowels)
    return _plan(ledger, parts, body, features, plate)


def _body(ledger: Ledger) -> Body:
    return Body(
        ledger.number("length"),
        ledger.number("width"),
        ledger.number("height"),
        ledger.number("block.outer_fillet"),
        ledger.number("block.edge_chamfer"),
    )


def _plan(ledger: Ledger, parts: Parts, body: Body, features: tuple[Feature, ...], plate: tuple[Feature, ...]) -> Plan:
    causes = contributors(ledger)
    screws = fasteners(ledger, (parts.bearing, parts.motor), parts.screw, features)
    return Plan(
        records=ledger.frozen(),
        dimensions=tuple(key for key in DIMENSIONS if key in ledger),
        body=body,
        features=features,
        base_features=plate,
        annotations=annotate(ledger, features),
        contributors=causes,
        fasteners=screws,
        frames=frames(ledger),
        ligaments=ligament_map(features, body, rule_of(ledger)),
        notes=ledger.remarks,
        material_density=parts.block.density,
    )
