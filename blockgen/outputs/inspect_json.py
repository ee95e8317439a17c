"""The verdict on a measured block as plain data: mm, deg, and each row in its own unit."""

from __future__ import annotations

from math import degrees
from typing import Any

from blockgen.alignment.chain import Spread
from blockgen.evidence.as_built import AsBuilt
from blockgen.evidence.clocking import Clocking
from blockgen.evidence.conformity import Conformity
from blockgen.evidence.shim import CORRECTS, Shim, shim_words
from blockgen.evidence.verdict import Verdict, holding


def inspect_document(found: Verdict, file: str, spec_sha256: str, status: str, mounted: str = "") -> dict[str, Any]:
    """Return the document that ``blockgen inspect --json`` prints.

    Args:
        found: The verdict.
        file: Name of the measured file.
        spec_sha256: Hash of the resolved spec.
        status: Status of the design.
        mounted: The motor that the verdict is about, in words, where the block takes several.
    """
    return {
        "schema": 1,
        "verdict": found.decision,
        "status": status,
        "spec_sha256": spec_sha256,
        "file": file,
        "mounted": mounted or None,
        "reasons": list(found.reasons),
        "notes": list(found.notes),
        "alignment": _as_built(found.as_built),
        "clocking": _clocking(found.clocking),
        "shim": _shim(found.shim),
        "characteristics": [_conformity(one) for one in found.conformities],
    }


def _as_built(result: AsBuilt) -> dict[str, Any]:
    return {
        "probability": result.probability,
        "offset": _spread(result.offset, 1.0, "mm"),
        "offset_planned": _spread(result.offset_before, 1.0, "mm"),
        "offset_known": list(result.known_offset),
        "angle": _spread(result.angle, degrees(1.0), "deg"),
        "angle_planned": _spread(result.angle_before, degrees(1.0), "deg"),
        "angle_known": [degrees(part) for part in result.known_angle],
        "coupling_use": {
            "worst": result.use.worst, "likely": result.use.likely, "limit": result.use_limit,
            "missing": list(result.use.missing), "note": result.use.label,
        },
        "still_random": list(result.unknown),
    }  # fmt: skip


def _spread(spread: Spread, scale: float, unit: str) -> dict[str, Any]:
    limit = None if spread.limit is None else spread.limit * scale
    return {
        "p50": spread.p50 * scale, "p95": spread.p95 * scale, "p9973": spread.p9973 * scale,
        "worst": spread.worst * scale, "limit": limit, "holds": holding(spread), "unit": unit,
    }  # fmt: skip


def _clocking(found: Clocking) -> dict[str, Any]:
    turns = [
        {
            "degrees": turn.degrees, "offset": _spread(turn.result.offset, 1.0, "mm"),
            "angle": _spread(turn.result.angle, degrees(1.0), "deg"), "coupling_use": turn.result.use.likely,
        }
        for turn in found.turns
    ]  # fmt: skip
    return {"turns": turns, "best": None if found.best is None else found.best.degrees, "remark": found.reason}


def _shim(found: Shim | None) -> dict[str, Any] | None:
    if found is None:
        return None
    return {
        "bearing_end": found.bearing_end, "motor_end": found.motor_end,
        "uncertainty_bearing_end": found.uncertainty_bearing, "uncertainty_motor_end": found.uncertainty_motor,
        "slope_measured": found.sloping, "words": shim_words(found), "corrects": CORRECTS, "unit": "mm",
    }  # fmt: skip


def _conformity(one: Conformity) -> dict[str, Any]:
    row = one.row
    return {
        "number": row.number or None, "id": row.id, "title": row.title, "value": one.value,
        "uncertainty": one.uncertainty, "unit": row.unit, "nominal": row.nominal, "lower": row.lower,
        "upper": row.upper, "told": one.told, "side": one.side or None, "derived": one.rule or None,
    }  # fmt: skip
