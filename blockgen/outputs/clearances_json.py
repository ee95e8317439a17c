"""What the solids showed as plain data for ``summary.json``: mm, mm3, deg."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from blockgen.evidence.clearance_limits import LIMITS
from blockgen.evidence.clearances import Access, Clearances, Pair
from blockgen.outputs.tidy import tidy

METHOD = (
    "solids of block and stand-ins or makers' models: common volumes of pairs that touch, least distances of the "
    "others; planned contacts come from the plan, tools are swept as solids"
)


def clearances_document(clearances: Clearances) -> dict[str, Any]:
    """Return clearances as plain data."""
    document: dict[str, Any] = tidy(
        {
            "method": METHOD,
            "limits": {key: {"value": r.value, "unit": r.unit, "rule": r.rule} for key, r in LIMITS.items()},
            "pairs": [_pair(pair) for pair in clearances.pairs],
            "pairs_apart": clearances.apart,
            "clashes": [_pair(pair) for pair in clearances.clashes],
            "not_made": list(clearances.not_made),
            "named": [asdict(one) for one in clearances.named],
            "access": [_access(access) for access in clearances.access],
        }
    )
    return document


def with_clearances(document: dict[str, Any], clearances: Clearances | None) -> dict[str, Any]:
    """Return a summary with the clearances under ``clearances``; unchanged where nothing was measured."""
    return document if clearances is None else {**document, "clearances": clearances_document(clearances)}


def _pair(pair: Pair) -> dict[str, Any]:
    return {**asdict(pair), "beyond": pair.beyond}


def _access(access: Access) -> dict[str, Any]:
    return {**asdict(access), "directions": [list(span) for span in access.directions]}
