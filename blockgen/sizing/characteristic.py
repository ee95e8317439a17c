"""One characteristic from a size of the block, with its own deviations or those of the general tolerance."""

from __future__ import annotations

import re
from dataclasses import replace

from blockgen.plan import Annotation
from blockgen.record import Band, Ledger
from blockgen.standards.iso2768 import edge_tolerance, general_tolerance
from blockgen.standards.tables import TableError

_BROKEN_EDGE = {"chamfer", "radius"}


def general_class(ledger: Ledger) -> str:
    """Return the letter of the general tolerance for linear sizes: f, m, c or v."""
    found = re.search(r"(?:^|-)([fmcv])", ledger.text("drawing.general_tolerance"))
    return found[1] if found else "m"


def general_band(ledger: Ledger, kind: str, value: float) -> Band:
    """Return the deviations that the general tolerance gives a size, mm; none where the standard's table ends.

    Args:
        ledger: Ledger with ``drawing.general_tolerance``.
        kind: Kind of the characteristic: chamfers and radii have a table of their own.
        value: Nominal size, mm.
    """
    table = edge_tolerance if kind in _BROKEN_EDGE else general_tolerance
    try:
        room = table(value, general_class(ledger))
    except TableError:
        return Band()
    return Band(room, -room)


def with_limits(ledger: Ledger, note: Annotation, band: Band | None = None) -> Annotation:
    """Return a size with its deviations; ``ref`` is dropped where there is no such record.

    Args:
        ledger: Ledger of a sized block.
        note: The characteristic with its nominal value.
        band: Its own deviations; None for those of the record behind ``ref``, else of the general tolerance.
    """
    known = note.ref if note.ref in ledger else None
    own = band or (_band(ledger, known) if known else Band())
    general = own.upper is None or own.lower is None
    value = round(note.value or 0.0, 6)
    used = general_band(ledger, note.kind, value) if general else own
    return replace(
        note, value=value, upper=used.upper, lower=used.lower, fit=used.fit, general=general, ref=known,
        text=note.text or "{}",
    )  # fmt: skip


def _band(ledger: Ledger, key: str) -> Band:
    record = ledger[key]
    return Band(record.upper, record.lower, record.fit)
