"""Every practice value of making in one place, and the records that rules of making enter."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from blockgen.plan import Plan
from blockgen.record import Input, Record, Value

CP = "common practice, no source"

# key, value, unit, meaning
_VALUES: tuple[tuple[str, Value, str, str], ...] = (
    ("making.skin_steel", 3.0, "mm", "taken off a rolled face of steel: scale and decarburised skin"),
    ("making.skin_aluminium", 2.0, "mm", "taken off a rolled or extruded face of aluminium"),
    ("making.sawn_face", 3.0, "mm", "taken off a sawn or forged face"),
    ("making.sawn_step", 1.0, "mm", "step of sawn lengths"),
    ("making.block_step", 5.0, "mm", "step of the sides of a block made to order"),
    ("making.bar_over_plate", 1.15, "", "bar taken up to this volume over plate: one cut instead of four"),
    ("making.rough_left", 0.5, "mm", "left on each face and wall after roughing (0.5..1)"),
    ("making.bore_left", 0.2, "mm", "left on the diameter for the finishing cut of a bore (0.2..0.3)"),
    ("making.face_mill_wider", 1.2, "", "face mill diameter over the width that it cuts (1.2..1.5)"),
    ("making.face_mills", (40.0, 50.0, 63.0, 80.0, 100.0, 125.0), "mm", "usual face mill diameters"),
    ("making.drill_ratio", 5.0, "", "depth over diameter that a plain twist drill cuts without pecking (3..5)"),
    ("making.drill_ratio_long", 10.0, "", "depth over diameter above which a hole is drilled from its far end"),
    ("making.counterbore_ratio", 3.0, "", "depth over diameter of a counterbore, normal"),
    ("making.rate_aluminium", 40.0, "cm3/min", "metal removed in a minute of milling, mean"),
    ("making.rate_steel", 10.0, "cm3/min", "metal removed in a minute of milling, mean"),
    ("making.rate_cast_iron", 15.0, "cm3/min", "metal removed in a minute of milling, mean"),
    ("making.hole_time", 1.5, "min", "one hole with all its tools"),
    ("making.bore_time", 20.0, "min", "one fitted bore with its seat, measuring included"),
    ("making.clamping_time", 20.0, "min", "one clamping with aligning and setting of the zero"),
    ("making.deep_window_time", 30.0, "min", "more where the window is deeper than a normal cut"),
    ("making.usual_from", 120.0, "min", "class usual from here"),
    ("making.long_from", 240.0, "min", "class long from here"),
    ("making.very_long_from", 480.0, "min", "class very long from here"),
)

PRACTICE: Mapping[str, Record] = {
    key: Record(key, value, unit, "assumed", meaning, {}, CP) for key, value, unit, meaning in _VALUES
}

Fact = tuple[Value, str]
NO_FACTS: Mapping[str, Fact] = {}


def constant(key: str) -> float:
    """Return a practice value of making by the last part of its key.

    Raises:
        TypeError: the value is not a number.
    """
    value = PRACTICE[f"making.{key}"].value
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        raise TypeError(f"making.{key} is {value!r}, not a number")
    return value


def face_mills() -> tuple[float, ...]:
    """Return the usual face mill diameters in mm, the smallest first."""
    value = PRACTICE["making.face_mills"].value
    return tuple(float(d) for d in value if isinstance(d, (int, float))) if isinstance(value, tuple) else ()


def decided(
    plan: Plan,
    key: str,
    value: Value,
    unit: str,
    rule: str,
    using: Iterable[str | Record] = (),
    facts: Mapping[str, Fact] = NO_FACTS,
    source: str = CP,
) -> Record:
    """Return the record of something that is decided for making.

    Args:
        plan: What was decided about the block.
        key: Last part of the record's key.
        value: What was decided, in ``unit``.
        unit: Its unit.
        rule: Formula or decision in words.
        using: Keys of the plan or of the practice values of making, or other records of making.
        facts: Inputs that have no key: name to value and unit.
        source: Where the rule comes from.
    """
    records = [_found(plan, used) if isinstance(used, str) else used for used in using]
    inputs = {r.key: r.as_input() for r in records if r is not None}
    inputs |= {name: Input(fact, of, "sized") for name, (fact, of) in facts.items()}
    return Record(f"making.{key}", value, unit, "sized", rule, inputs, source)


def _found(plan: Plan, key: str) -> Record | None:
    return plan.records.get(key, PRACTICE.get(key))
