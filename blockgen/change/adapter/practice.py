"""What is usual for adapters: each value with its meaning, entered in the ledger beside what was asked."""

from __future__ import annotations

from blockgen.plan import Plan
from blockgen.record import Ledger, Record, Value
from blockgen.sizing.sources import CP

_PRACTICE: tuple[tuple[str, Value, str, str], ...] = (
    ("adapter.ring_wall", 2.5, "mm", "least wall of a ring and of a spigot (2..3)"),
    ("adapter.ring_length", 6.0, "mm", "length of a ring in a plain bore"),
    ("adapter.ring_fit", "k6", "", "ring in a stepped bore: tapped in, held by shoulder and flange"),
    ("adapter.ring_fit_plain", "p6", "", "ring in a plain bore: pressed in, nothing else holds it"),
    ("adapter.spigot_fit", "h6", "", "spigot of a plate in the bore of the block"),
    ("adapter.spigot_length", 3.0, "mm", "usual length of a spigot"),
    ("adapter.spigot_play", 0.5, "mm", "spigot shorter than the bore is deep"),
    ("adapter.coaxiality", 0.015, "mm", "bore to outside of an adapter, turned in one clamping (0.01..0.02)"),
    ("adapter.parallelism", 0.02, "mm", "faces of a plate, ground or turned in one clamping (0.01..0.02)"),
    ("adapter.flatness", 0.01, "mm", "face of a plate towards the block"),
    ("adapter.position", 0.2, "mm", "holes in their place"),
    ("adapter.thickness_tolerance", 0.05, "mm", "thickness of a plate, either way"),
    ("adapter.clamp_least", 4.0, "mm", "material under a sunk screw head"),
    ("adapter.shoulder", 2.0, "mm", "material behind the pilot's seat"),
    ("adapter.thickness_most", 60.0, "mm", "thickest plate that is considered"),
    ("adapter.facing_most", 10.0, "mm", "most that is faced off the block for a plate"),
    ("adapter.thickness_step", 0.5, "mm", "step of thickness"),
    ("adapter.edge", 0.5, "mm", "edges broken"),
)


def ledger_of(old: Plan, new: Plan) -> Ledger:
    """Return a ledger with the new plan's records, those of the old one as ``old.<key>``, and what is usual."""
    usual = [Record(key, value, unit, "assumed", why, {}, CP) for key, value, unit, why in _PRACTICE]
    before = [
        Record(f"old.{r.key}", r.value, r.unit, r.origin, r.rule, r.inputs, r.source, r.upper, r.lower, r.fit)
        for r in old.records.values()
        if not r.key.startswith("practice.")
    ]
    return Ledger([*new.records.values(), *before, *usual])


def decided(ledger: Ledger) -> dict[str, Record]:
    """Return the records of an adapter, the usual values among them."""
    return {record.key: record for record in ledger if record.key.startswith("adapter.")}
