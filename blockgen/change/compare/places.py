"""Where cavities went, a row for alike ones that went the same way."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Any

from blockgen.change.compare.data import Comparison, Entry
from blockgen.change.compare.words import joined, rows_of
from blockgen.outputs.show import number

Row = tuple[str, ...]
Point = Sequence[float]
_HAIR = 1e-5
_MOST_PLACES = 4


def feature_rows(found: Comparison, entries: Sequence[Entry]) -> list[Row]:
    """Return the cavities that differ: which, what became of them, what they are, where they went.

    Args:
        found: The comparison.
        entries: Cavities of the block, or holes of the base plate.
    """
    groups: dict[tuple[str, ...], list[Entry]] = {}
    for entry in rows_of(entries):
        groups.setdefault((entry.group, entry.state, entry.title), []).append(entry)
    shafts = tuple(_shaft(side.document) for side in (found.old, found.new))
    return [(_names(group), group[0].state, group[0].title, _where(group, shafts)) for group in groups.values()]


def _shaft(document: Mapping[str, Any]) -> float:
    height = document["dimensions"].get("shaft_height", {}).get("value")
    return float(height) if isinstance(height, (int, float)) else math.nan


def _names(entries: Sequence[Entry]) -> str:
    """Return ``motor_thread_1 to 4``, or the ids with commas."""
    ids = [entry.id for entry in entries]
    starts = {name.rpartition("_")[0] for name in ids}
    ends = [name.rpartition("_")[2] for name in ids]
    if len(ids) < 3 or len(starts) != 1 or not all(end.isdigit() for end in ends):
        return joined(ids)
    numbers = [int(end) for end in ends]
    row = numbers == list(range(numbers[0], numbers[0] + len(numbers)))
    return f"{ids[0]} to {ends[-1]}" if row else f"{starts.pop()}_" + ", ".join(ends)


def _where(entries: Sequence[Entry], shafts: tuple[float, ...]) -> str:
    pairs = [(c.old, c.new) for e in entries for c in e.changes if c.name == "position"]
    if not pairs:
        return "stays"
    if any(old is None or new is None for old, new in pairs):
        return _places([old or new for old, new in pairs])
    if len(pairs) < len(entries):
        return _moves(pairs)
    circle = _circle(pairs, shafts)
    steps = [[b - a for a, b in zip(old, new, strict=True)] for old, new in pairs]
    along = joined(_step(axis, [step[i] for step in steps]) for i, axis in enumerate("xyz"))
    same_way = all(math.dist(step, steps[0]) < _HAIR for step in steps)
    if same_way:
        return along
    return joined([circle, _step("x", [step[0] for step in steps])]) if circle else _moves(pairs)


def _step(axis: str, steps: Sequence[float]) -> str:
    """Return ``x +3`` where all go by the same step along an axis; empty without a common one or without any."""
    if abs(steps[0]) < _HAIR or any(abs(step - steps[0]) > _HAIR for step in steps):
        return ""
    return f"{axis} {'+' if steps[0] > 0 else '-'}{number(abs(steps[0]), 3)} mm"


def _circle(pairs: Sequence[tuple[Point, Point]], shafts: tuple[float, ...]) -> str:
    """Return the circle about the shaft on which all stood and stand; empty where there is none."""
    old_places, new_places = zip(*pairs, strict=True)
    if len(pairs) < 3 or any(abs(p[0] - side[0][0]) > _HAIR for side in (old_places, new_places) for p in side):
        return ""
    circles = [_diameters(side, shaft) for side, shaft in zip((old_places, new_places), shafts, strict=True)]
    if any(max(circle) - min(circle) > 1e-3 for circle in circles):
        return ""
    old, new = (number(circle[0], 3) for circle in circles)
    return f"turned on circle {new} mm" if old == new else f"circle {old} to {new} mm"


def _diameters(places: Sequence[Point], shaft: float) -> list[float]:
    return [2 * math.hypot(place[1], place[2] - shaft) for place in places]


def _places(points: Sequence[Point]) -> str:
    more = f" and {len(points) - _MOST_PLACES} more" if len(points) > _MOST_PLACES else ""
    return "at " + " ".join(_point(point) for point in points[:_MOST_PLACES]) + more


def _moves(pairs: Sequence[tuple[Point, Point]]) -> str:
    more = f", and {len(pairs) - _MOST_PLACES} more" if len(pairs) > _MOST_PLACES else ""
    return ", ".join(f"{_point(old)} to {_point(new)}" for old, new in pairs[:_MOST_PLACES]) + more


def _point(point: Point) -> str:
    return "(" + ", ".join(number(value, 2) for value in point) + ")"
