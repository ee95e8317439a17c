"""The dimension summary as data: ``summary.json``, schema 1."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict
from typing import Any

from blockgen import __version__
from blockgen.alignment.chain import Alignment
from blockgen.checks.finding import Finding
from blockgen.checks.formulas import formula_of
from blockgen.checks.missing import missing
from blockgen.mechanics.volume import reference_volume
from blockgen.outputs.alignment_json import alignment_document
from blockgen.outputs.assumptions import assumed
from blockgen.outputs.cautions import cautions
from blockgen.outputs.family_rows import family_document, further_fasteners
from blockgen.outputs.tidy import tidy
from blockgen.outputs.torque_card import torque_card
from blockgen.plan import Contributor, Fastener, Feature, Frame, Ligament, Plan
from blockgen.record import Input, Record
from blockgen.sizing.defaults import mates
from blockgen.spec.not_used import given_not_used

SCHEMA = 1
THINNEST = 5
_JOB_KEYS = ("number", "title", "revision", "author", "project", "gravity")
_CUBIC_MM_TO_CUBIC_M = 1e-9


def summary(
    plan: Plan, findings: Sequence[Finding], status: str, spec_sha256: str, alignment: Alignment | None = None
) -> dict[str, Any]:
    """Return the summary as plain data.

    Args:
        plan: What was decided.
        findings: What the checks found.
        status: Status line of the design.
        spec_sha256: Hash of the resolved spec.
        alignment: How far out of line the shafts will be; only its contributors are told without it.
    """
    volume = reference_volume(plan)
    document = {
        "schema": SCHEMA,
        "status": status,
        "tool": f"blockgen {__version__}",
        "spec_sha256": spec_sha256,
        "job": {key: plan.text(f"job.{key}") or None for key in _JOB_KEYS},
        "dimensions": {key: dimension_document(plan.records[key]) for key in plan.dimensions},
        "features": [feature_document(f) for f in plan.features],
        "base_features": [feature_document(f) for f in plan.base_features],
        "characteristics": [asdict(note) for note in plan.annotations],
        "fasteners": [_fastener(f) for f in (*plan.fasteners, *further_fasteners(plan))],
        "torque_card": [asdict(line) for line in torque_card(plan)],
        "checks": [finding_document(f) for f in findings],
        "missing": [asdict(row) for row in missing(plan, findings)],
        "thinnest_walls": [_ligament(wall) for wall in plan.ligaments[:THINNEST]],
        "alignment": _alignment(plan, alignment),
        "mass": _mass(plan, volume),
        "bounding_box": bounding_box(plan),
        "volume": volume,
        "frames": {name: _frame(frame) for name, frame in plan.frames.items()},
        "inputs": {key: dimension_document(plan.records[key]) for key in sorted(_other_keys(plan))},
        "assumptions": [_assumption(r) for r in assumed(plan)],
        "not_used": list(given_not_used(plan.records)),
        "notes": list(plan.notes),
        "cautions": list(cautions(plan)),
    }
    if plan.others:
        document["family"] = family_document(plan, findings)
    tidied: dict[str, Any] = tidy(document)
    return tidied


def _alignment(plan: Plan, alignment: Alignment | None) -> dict[str, Any]:
    causes = {"contributors": [_contributor(c) for c in plan.contributors]}
    return causes if alignment is None else {**causes, **alignment_document(alignment)}


def bounding_box(plan: Plan) -> list[float]:
    """Return [xmin, ymin, zmin, xmax, ymax, zmax] in mm."""
    body = plan.body
    return [0.0, -body.width / 2, 0.0, body.length, body.width / 2, body.height]


def mass_of(plan: Plan, volume: float) -> float:
    """Return the mass in kg of a volume in mm3 of the block's material."""
    return volume * _CUBIC_MM_TO_CUBIC_M * plan.material_density


def _other_keys(plan: Plan) -> set[str]:
    return set(plan.records) - set(plan.dimensions)


def _mass(plan: Plan, volume: float) -> dict[str, Any]:
    return {
        "value": mass_of(plan, volume),
        "unit": "kg",
        "material": plan.text("block.material") or None,
        "density": plan.material_density,
        "density_unit": "kg/m3",
    }


def dimension_document(record: Record) -> dict[str, Any]:
    """Return a record as the contract has it."""
    return {
        "value": record.value,
        "unit": record.unit,
        "upper": record.upper,
        "lower": record.lower,
        "fit": record.fit,
        "rule": record.rule,
        "inputs": _inputs(record.inputs),
        "source": source(record),
        "origin": record.origin,
    }


def source(record: Record) -> str:
    """Return where a value comes from; the path of the spec is left out, so that it may stand in any folder."""
    return "the spec" if record.origin == "given" else record.source


def _inputs(inputs: Mapping[str, Input]) -> dict[str, Any]:
    return {name: {"value": i.value, "unit": i.unit, "origin": i.origin, "ref": i.ref} for name, i in inputs.items()}


def feature_document(feature: Feature) -> dict[str, Any]:
    """Return a feature as plain data."""
    pocket = feature.pocket
    return {
        "id": feature.id,
        "kind": feature.kind,
        "group": feature.group,
        "face": feature.face,
        "position": feature.position,
        "axis": feature.axis,
        "diameter": feature.diameter,
        "depth": feature.depth,
        "through": feature.through,
        "opens_into": feature.opens_into,
        "thread": feature.thread,
        "thread_depth": feature.thread_depth,
        "counterbore_diameter": feature.counterbore_diameter,
        "counterbore_depth": feature.counterbore_depth,
        "fit": feature.fit,
        "upper": feature.upper,
        "lower": feature.lower,
        "call_out": feature.call_out,
        "pocket": None
        if pocket is None
        else {"cut_along": pocket.axis, "low": pocket.low, "high": pocket.high, "corner_radius": pocket.corner_radius},
        "keys": feature.keys,
    }


def _fastener(fastener: Fastener) -> dict[str, Any]:
    return {
        "where": fastener.where,
        "standard": fastener.standard,
        "size": fastener.size,
        "length": fastener.length,
        "class": fastener.property_class,
        "count": fastener.count,
        "torque": fastener.torque,
        "preload": fastener.preload,
        "engagement": fastener.engagement,
        "washer": fastener.washer,
    }


def finding_document(finding: Finding) -> dict[str, Any]:
    """Return the outcome of a check as plain data."""
    return {
        "id": finding.id,
        "title": finding.title,
        "value": finding.value,
        "limit": finding.limit,
        "unit": finding.unit,
        "margin": finding.margin,
        "verdict": finding.verdict,
        "explanation": finding.explanation,
        "formula": formula_of(finding.id),
        "inputs": _inputs(finding.inputs),
        "source": finding.source,
    }


def _contributor(contributor: Contributor) -> dict[str, Any]:
    return {
        "id": contributor.id,
        "end": contributor.end,
        "quantity": contributor.quantity,
        "law": contributor.law,
        "size": contributor.size,
        "limits": contributor.limits,
        "seat_x": contributor.seat_x,
        "rotating": contributor.rotating,
        "characteristic": contributor.characteristic,
    }


def _ligament(ligament: Ligament) -> dict[str, Any]:
    return {
        "first": ligament.first,
        "second": ligament.second,
        "wall": ligament.wall,
        "required": ligament.required,
    }


def _frame(frame: Frame) -> dict[str, Any]:
    return {"origin": frame.origin, "x": frame.x, "z": frame.z}


def _assumption(record: Record) -> dict[str, Any]:
    return {
        "key": record.key,
        "value": record.value,
        "unit": record.unit,
        "rule": record.rule,
        "source": source(record),
        "mates": mates(record.key),
    }
