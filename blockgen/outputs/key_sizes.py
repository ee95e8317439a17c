"""What a designer looks at first: sizes, mass and the axial layout, in words; shared by summary and terminal."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockgen.checks.finding import Finding
from blockgen.outputs import show
from blockgen.outputs.summary_json import mass_of
from blockgen.plan import Plan
from blockgen.record import Record

_VERDICT_ORDER = {"fail": 0, "warn": 1, "not_assessed": 2, "pass": 3}


def key_sizes(plan: Plan, volume: float) -> tuple[tuple[str, str], ...]:
    """Return (name, value) of the sizes to see first.

    Args:
        plan: What was decided.
        volume: Volume of the block, mm3.
    """
    body = plan.body
    box = " x ".join(show.number(v) for v in (body.length, body.width, body.height))
    density = f"{show.plain_material(plan)}, {show.number(plan.material_density)} kg/m3"
    return (
        ("Block, length x width x height", f"{box} mm"),
        ("Mass", f"{show.significant(mass_of(plan, volume), 3)} kg ({density})"),
        ("Shaft height", _size(plan, "shaft_height")),
        ("Bearing bore / motor bore", f"{_size(plan, 'bearing_bore')} / {_size(plan, 'motor_bore')}"),
        ("Window, length x width", f"{_size(plan, 'window_length')} x {_size(plan, 'window_width')}"),
        ("Walls: bearing / motor / side", " / ".join(_size(plan, f"{w}_wall") for w in ("bearing", "motor", "side"))),
        *((f"Screws, {show.plain_id(f.where)}", show.fastener(f)) for f in plan.fasteners if f.where == "base"),
    )


def axial_line(plan: Plan) -> str:
    """Return the feasible interval of the length, and what was chosen, in one line."""
    low, high, narrow_low, narrow_high = (_limit(plan, k) for k in ("min", "max", "low", "high"))
    narrow = f"{narrow_low} to {narrow_high} mm after tolerances"
    after = plan.records.get("length_low")
    if after is not None and after.value is None:
        narrow = after.rule
    return f"Seat to seat {low} to {high} mm is possible, {narrow}; chosen {_size(plan, 'length')}."


def axial_facts(plan: Plan) -> Iterator[tuple[str, Record]]:
    """Yield the records of the axial layout with a heading for each."""
    for title, key in (
        ("Shortest, nominal", "length_min"),
        ("Longest, nominal", "length_max"),
        ("Shortest after tolerances", "length_low"),
        ("Longest after tolerances", "length_high"),
        ("Chosen length", "length"),
        ("Coupling starts at", "coupling_position"),
        ("Journal in its hub", "journal_grip"),
        ("Motor shaft in its hub", "motor_grip"),
        ("Gap between shaft ends", "shaft_gap"),
    ):
        if key in plan.records:
            yield title, plan.records[key]


def worst_first(findings: Sequence[Finding]) -> list[Finding]:
    """Return failures first, then warnings, then what was not assessed; the least margin first within each."""
    return sorted(findings, key=lambda f: (_VERDICT_ORDER[f.verdict], f.margin if f.margin is not None else 0.0))


def _size(plan: Plan, key: str) -> str:
    record = plan.records.get(key)
    if record is None:
        return "-"
    return show.joined((show.with_unit(record.value, record.unit), show.limits(record)), " ")


def _limit(plan: Plan, which: str) -> str:
    record = plan.records.get(f"length_{which}")
    return "-" if record is None else show.value(record.value)
