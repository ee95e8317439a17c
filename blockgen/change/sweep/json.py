"""What a sweep found, as one JSON document; every variant stands in the table."""

from __future__ import annotations

from typing import Any

from blockgen.change.sweep.sweep import Best, Swept
from blockgen.change.sweep.table import headings

SCHEMA = 1


def sweep_json(found: Swept) -> dict[str, Any]:
    """Return the document: counts, files, and the rows of the front with the headings of the table."""
    names = headings(found.axes, statistics=found.statistics)[:-1]
    return {
        "schema": SCHEMA,
        "spec": found.spec,
        "variants": found.count,
        "resumed": found.resumed,
        "statuses": dict(found.statuses),
        "obstacles": [{"what": what, "variants": count} for what, count in found.obstacles],
        "statistics": found.statistics,
        "table": str(found.table),
        "plot": None if found.plot is None else str(found.plot),
        "solids": None if found.solids is None else str(found.solids),
        "front": [dict(zip(names, _cells(best), strict=True)) for best in found.front],
    }


def _cells(best: Best) -> tuple[object, ...]:
    return (best.number, *best.point, *best.outcome)
