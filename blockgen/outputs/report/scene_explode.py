"""How far each part moves when the assembly is drawn apart: along the way on which it is put together."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from blockgen.outputs.report.scene_parts import kind_of
from blockgen.plan import Plan, Point

Box = Sequence[float]

GAP = 0.15
"""Gap between parts drawn apart, over the length of the block."""

ENDS = {"motor": (0, 1), "bearing": (0, -1), "base": (2, -1)}
"""Axis and sense of each side of the block from which parts are drawn."""

STACKS = (
    ("motor_centring_ring", "motor"), ("motor", "motor"),
    ("bearing_centring_ring", "bearing"), ("bearing_unit", "bearing"), ("journal", "bearing"),
    ("dowel", "base"), ("base_plate", "base"),
)  # fmt: skip
"""Kinds of part on each side, those next to the block first."""

NOWHERE: Point = (0.0, 0.0, 0.0)


def shifts(plan: Plan, boxes: Mapping[str, Box]) -> dict[str, Point]:
    """Return how far each part moves when all is drawn apart, mm.

    Motor and bearing unit leave along the shaft, the coupling through the window, plate and pins downwards, and
    screws against the way in which they are driven.

    Args:
        plan: What was decided.
        boxes: Box of each part where it stands: least x, y, z, greatest x, y, z.
    """
    gap = GAP * plan.body.length
    kinds = {
        kind_of(part): _about(box for id_, box in boxes.items() if kind_of(id_) == kind_of(part)) for part in boxes
    }
    moves = _stacked(kinds, plan.body.length, gap)
    if "coupling" in kinds:
        moves["coupling"] = _out_of_window(kinds["coupling"], plan, gap)
    moves |= {kind: _screws(kind, kinds[kind], plan, moves, gap) for kind in kinds if kind.endswith("_screw")}
    moves["base_washer"] = moves.get("base_screw", NOWHERE)
    return {part: moves.get(kind_of(part), NOWHERE) for part in boxes}


def _about(boxes: Iterable[Box]) -> Box:
    columns = list(zip(*boxes, strict=True))
    return [*map(min, columns[:3]), *map(max, columns[3:])]


def _stacked(kinds: Mapping[str, Box], length: float, gap: float) -> dict[str, Point]:
    """Return the ways of the parts that stand one behind the other."""
    ends = {"motor": length, "bearing": 0.0, "base": 0.0}
    moves: dict[str, Point] = {}
    for kind, end in STACKS:
        if kind in kinds:
            axis, sense = ENDS[end]
            near, far = kinds[kind][axis::3][::sense]
            way = sense * max(0.0, sense * (ends[end] - near) + gap)
            ends[end] = far + way
            moves[kind] = _along(axis, way)
    return moves


def _out_of_window(box: Box, plan: Plan, gap: float) -> Point:
    """Return the way from the window's mouth, against its axis."""
    window = next((f for f in plan.features if f.kind == "window"), None)
    if window is not None and abs(window.axis[1]) > 0.5:
        return _along(1, plan.body.width / 2 + gap - box[1])
    return _along(2, plan.body.height + gap - box[2])


def _screws(kind: str, box: Box, plan: Plan, moves: Mapping[str, Point], gap: float) -> Point:
    """Return the way of screws: out of what they hold, which has moved itself where they go through it."""
    end = kind.removesuffix("_screw")
    if end == "base":
        from_above = plan.text("base.screw_from") != "below"
        start = moves.get("base_plate", NOWHERE)[2] + (box[2] - box[5])
        return _along(2, plan.body.height - box[2] + gap if from_above else start - gap)
    axis, sense = ENDS[end]
    long = sense * (box[axis + 3] - box[axis] + gap)
    if plan.text(f"{end}.fastening") == "tapped":
        return _along(axis, -long)
    held = "motor" if end == "motor" else "bearing_unit"
    return _along(axis, moves.get(held, NOWHERE)[axis] + long)


def _along(axis: int, way: float) -> Point:
    x, y, z = (way if i == axis else 0.0 for i in range(3))
    return (x, y, z)
