"""Rework and adapters as plain data for JSON."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from blockgen.change.adapter.data import Adapter
from blockgen.change.adapter.weight import volume_of_adapter
from blockgen.change.rework.data import Operation, Rework
from blockgen.change.rework.rework import Change
from blockgen.outputs.summary_json import dimension_document, feature_document
from blockgen.outputs.tidy import tidy

UNITS = "mm, deg, mm3, kg, N, N*m, rad where a key says angle"


def rework_document(change: Change) -> dict[str, Any]:
    """Return verdict, operations, leftovers and adapters as plain data; lengths in mm."""
    document: dict[str, Any] = tidy(
        {
            "units": UNITS,
            **_rework(change.rework),
            "adapters": [adapter_document(each) for each in change.adapters],
            "no_adapter": list(change.refused),
        }
    )
    return document


def _rework(found: Rework) -> dict[str, Any]:
    return {
        "feasible": found.feasible,
        "attempt": asdict(found.attempt),
        "reasons": [asdict(reason) for reason in found.reasons],
        "as_drawn": [asdict(reason) for reason in found.as_drawn],
        "operations": [_operation(each) for each in found.operations],
        "leftovers": [asdict(each) for each in found.leftovers],
        "setup": list(found.setup),
        "obsolete": list(found.obsolete),
        "departures": list(found.departures),
        "proof": None if found.proof is None else asdict(found.proof),
        "tried": found.tried,
    }


def _operation(of: Operation) -> dict[str, Any]:
    return {"id": of.id, "text": of.text, "values": dict(of.values), "features": list(of.features)}


def adapter_document(adapter: Adapter) -> dict[str, Any]:
    """Return one adapter as plain data: sizes with their reasons, features, drawing, screws, share in the chain."""
    volume = volume_of_adapter(adapter)
    chain = adapter.chain
    return {
        "kind": adapter.kind,
        "title": adapter.title,
        "pain": adapter.pain,
        "why_pain": adapter.why_pain,
        "material": adapter.material,
        "mass": volume * 1e-9 * adapter.density,
        "volume": volume,
        "length": adapter.length,
        "length_interval": adapter.length_interval,
        "turn": adapter.turn,
        "body": asdict(adapter.body),
        "dimensions": {key: dimension_document(record) for key, record in adapter.records.items()},
        "features": [feature_document(feature) for feature in adapter.features],
        "annotations": [asdict(mark) for mark in adapter.annotations],
        "fasteners": [{k: v for k, v in asdict(screw).items() if k != "refs"} for screw in adapter.fasteners],
        "operations": [_operation(each) for each in adapter.operations],
        "chain": {
            "offset": {
                "worst": [chain.worst_before, chain.worst_after],
                "p95": [chain.p95_before, chain.p95_after],
                "limit": chain.limit,
            },
            "angle_worst": [chain.angle_before, chain.angle_after],
            "added": dict(chain.terms),
        },
        "remarks": list(adapter.remarks),
    }
