"""The alignment as plain data for ``summary.json``: mm and deg."""

from __future__ import annotations

from math import degrees
from typing import Any

from blockgen.alignment.arrangements import Arrangement
from blockgen.alignment.buys import Buy, Purchase
from blockgen.alignment.chain import Alignment, Spread
from blockgen.alignment.shares import Share
from blockgen.alignment.use import Reaction
from blockgen.outputs.tidy import tidy

METHOD = (
    "vectors in the y-z plane at the coupling's centre; percentiles exact by Fourier-Bessel sums, worst case in line; "
    "run-outs uniform in a disc of half the full indicator movement, clearances with contact in a random direction"
)


def alignment_document(alignment: Alignment) -> dict[str, Any]:
    """Return the alignment of the one-piece block."""
    heat = alignment.heat
    return {
        "method": METHOD,
        "centre": alignment.centre,
        "probability": alignment.use.probability,
        "offset": _spread(alignment.offset, 1.0, "mm"),
        "offset_static": _spread(alignment.offset_static, 1.0, "mm"),
        "offset_rotating": _spread(alignment.offset_rotating, 1.0, "mm"),
        "angle": _spread(alignment.angle, degrees(1.0), "deg"),
        "angle_static": _spread(alignment.angle_static, degrees(1.0), "deg"),
        "angle_rotating": _spread(alignment.angle_rotating, degrees(1.0), "deg"),
        "axial": {"worst": alignment.axial_worst, "judged": alignment.axial_judged, "unit": "mm"},
        "shares": [_share(share, 1.0) for share in alignment.shares_offset],
        "shares_angle": [_share(share, degrees(1.0)) for share in alignment.shares_angle],
        "tightening": [_buy(buy) for buy in alignment.buys],
        "decisions": [_purchase(purchase) for purchase in alignment.purchases],
        "coupling_use": {
            "worst": alignment.use.worst,
            "likely": alignment.use.likely,
            "fractions": dict(alignment.use.fractions),
            "note": alignment.use.label,
        },
        "reaction": _reaction(alignment.reaction),
        "reaction_worst": _reaction(alignment.reaction_worst),
        "ball_life_ratio": alignment.life_ratio,
        "heat": None if heat is None else {
            "height_error": heat.height_error, "nut_distance": heat.nut_distance,
            "angle": None if heat.angle is None else degrees(heat.angle),
            "motor_clearance_growth": heat.motor_growth, "bearing_clearance_growth": heat.bearing_growth,
        },
    }  # fmt: skip


def _reaction(back: Reaction) -> dict[str, Any]:
    return {
        "force": back.force, "bending": back.bending, "axial": back.axial,
        "journal_moment": back.journal_moment, "motor_moment": back.motor_moment, "unit": "N, N*m",
    }  # fmt: skip


def _spread(spread: Spread, scale: float, unit: str) -> dict[str, Any]:
    figures = {
        "worst": spread.worst,
        "p50": spread.p50,
        "p95": spread.p95,
        "p9973": spread.p9973,
        "limit": spread.limit,
    }
    scaled = {name: None if value is None else value * scale for name, value in figures.items()}
    return {**scaled, "exceeding": spread.exceeding, "unit": unit}


def _share(share: Share, scale: float) -> dict[str, Any]:
    return {
        "id": share.id, "characteristic": share.characteristic, "rotating": share.rotating,
        "greatest": share.greatest * scale, "of_variance": share.of_variance, "of_worst": share.of_worst,
    }  # fmt: skip


def _buy(buy: Buy) -> dict[str, Any]:
    step = buy.step
    return {
        "id": step.id, "what": step.what, "key": step.key, "before": step.before, "after": step.after,
        "cost": step.cost, "reason": step.reason, "p95": buy.p95, "gain": buy.gain,
    }  # fmt: skip


def _purchase(purchase: Purchase) -> dict[str, Any]:
    return {
        "id": purchase.id, "causes": list(purchase.causes), "cost": purchase.cost, "reason": purchase.reason,
        "p95": purchase.p95, "gain": purchase.gain,
    }  # fmt: skip


def with_arrangements(document: dict[str, Any], rows: tuple[Arrangement, ...]) -> dict[str, Any]:
    """Return a summary document with the arrangements in its alignment, where there are any."""
    if not rows:
        return document
    listed = tidy([arrangement_document(row) for row in rows])
    return {**document, "alignment": {**document["alignment"], "arrangements": listed}}


def arrangement_document(row: Arrangement) -> dict[str, Any]:
    """Return one row of the table of arrangements."""
    return {
        "id": row.id, "title": row.title, "worst": row.worst, "p50": row.p50, "p95": row.p95, "p9973": row.p9973,
        "exceeding": row.exceeding, "held": [{"what": held.what, "value": held.value} for held in row.held],
        "setups": row.setups, "fitted_features": row.fitted, "remark": row.remark,
    }  # fmt: skip
