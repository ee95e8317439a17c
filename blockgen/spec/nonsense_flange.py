"""Rules about pilot, flange and bolt pattern of motors and bearing unit."""

from __future__ import annotations

import math
from collections.abc import Iterator

from blockgen.errors import Problem
from blockgen.spec.facts import Facts, Point

# Nothing is rounded in a spec, but 3.875 in and 98.43 mm are the same circle.
_SLACK = 0.01


def flange_rules(facts: Facts) -> Iterator[Problem]:
    """Yield what is wrong with the flanges of bearing unit, motor and further motors."""
    for prefix in ("bearing.", *facts.motors()):
        for rule in (_limits, _form, _fastening, _pilot_in_flange, _holes_clear_pilot, _holes_in_flange, _holes_apart):
            yield from rule(facts, prefix)


def _limits(facts: Facts, prefix: str) -> Iterator[Problem]:
    """Deviations come in pairs, the upper one on top; the bore follows the form of the pilot."""
    upper, lower, fit = (prefix + n for n in ("pilot_upper", "pilot_lower", "pilot_fit"))
    for one, other in ((upper, lower), (lower, upper)):
        if facts.has(one) and not facts.has(other):
            yield facts.problem([one], f"{other} as well: a tolerance has two ends")
    if facts.has(upper, lower) and facts.number(upper) < facts.number(lower):
        yield facts.problem([upper, lower], "an upper deviation that is not below the lower one")
    recessed = facts.text(f"{prefix}pilot_form") == "recessed"
    if facts.has(fit) and facts.text(fit)[0].isupper() != recessed:
        yield facts.problem([fit], "capitals for a recessed pilot (a hole), small letters for a proud one (a shaft)")


def _form(facts: Facts, prefix: str) -> Iterator[Problem]:
    """A rectangle has width and height, other flanges a size."""
    shape, size = f"{prefix}flange_shape", f"{prefix}flange_size"
    sides = [f"{prefix}flange_width", f"{prefix}flange_height"]
    if len([s for s in sides if facts.has(s)]) == 1:
        yield facts.problem([s for s in sides if facts.has(s)], "flange_width and flange_height together")
    if facts.text(shape) == "rectangle" and facts.has(size):
        yield facts.problem([shape, size], "flange_width and flange_height for a rectangle")
    if facts.text(shape) in {"square", "round"} and facts.has(*sides):
        yield facts.problem([shape, *sides], "flange_size for a square or round flange")
    spacing = [f"{prefix}bolt_spacing_y", f"{prefix}bolt_spacing_z"]
    if len([s for s in spacing if facts.has(s)]) == 1:
        yield facts.problem([s for s in spacing if facts.has(s)], "bolt_spacing_y and bolt_spacing_z together")


def _fastening(facts: Facts, prefix: str) -> Iterator[Problem]:
    """A tapped flange has a thread, any other has clearance holes."""
    way = f"{prefix}fastening"
    for word, wrong in (("tapped", f"{prefix}bolt_hole"), ("clearance", f"{prefix}bolt_thread")):
        if facts.text(way) == word and facts.has(wrong):
            yield facts.problem([way, wrong], "bolt_thread for a tapped flange, bolt_hole for one with clearance holes")


def _pilot_in_flange(facts: Facts, prefix: str) -> Iterator[Problem]:
    pilot = f"{prefix}pilot_diameter"
    for side in ("flange_size", "flange_width", "flange_height"):
        key = prefix + side
        if facts.has(pilot, key) and facts.number(pilot) >= facts.number(key):
            yield facts.problem([pilot, key], "a flange that is larger than its pilot")


def _hole(facts: Facts, prefix: str) -> float:
    """Return the diameter of the holes in the flange, mm; 0 where it is not given."""
    given = facts.number(f"{prefix}bolt_hole", 0.0)
    return given or facts.thread_diameter(f"{prefix}bolt_thread") or 0.0


def _hole_key(facts: Facts, prefix: str) -> list[str]:
    return [k for k in (f"{prefix}bolt_hole", f"{prefix}bolt_thread") if facts.has(k)]


def _pattern(facts: Facts, prefix: str) -> tuple[list[str], list[Point]]:
    """Return the keys of the bolt pattern and its centres (y, z) from the axis, mm."""
    circle, spots = f"{prefix}bolt_circle", f"{prefix}bolt_positions"
    spacing = [f"{prefix}bolt_spacing_y", f"{prefix}bolt_spacing_z"]
    if facts.has(spots):
        return [spots], facts.points(spots)
    if facts.has(*spacing):
        y, z = (facts.number(k) / 2 for k in spacing)
        return spacing, [(y, z), (-y, z), (-y, -z), (y, -z)]
    if facts.has(circle):
        return [circle], _on_circle(facts, prefix)
    return [], []


def _on_circle(facts: Facts, prefix: str) -> list[Point]:
    radius = facts.number(f"{prefix}bolt_circle") / 2
    count = int(facts.number(f"{prefix}bolt_count", 4.0))
    first = math.radians(facts.number(f"{prefix}bolt_angle", 45.0))
    angles = [first + 2 * math.pi * i / count for i in range(count)]
    return [(radius * math.cos(a), radius * math.sin(a)) for a in angles]


def _holes_clear_pilot(facts: Facts, prefix: str) -> Iterator[Problem]:
    pilot = f"{prefix}pilot_diameter"
    keys, points = _pattern(facts, prefix)
    if not facts.has(pilot) or not points:
        return
    inner = 2 * min(math.hypot(*p) for p in points) - _hole(facts, prefix)
    if inner <= facts.number(pilot):
        shown = [*keys, *_hole_key(facts, prefix), pilot]
        yield facts.problem(shown, f"holes outside the pilot; they reach in to diameter {inner:.4g} mm")


def _holes_in_flange(facts: Facts, prefix: str) -> Iterator[Problem]:
    """Holes stay inside the outline; a flange of unknown shape is taken for a square, which holds more."""
    keys, points = _pattern(facts, prefix)
    outline = [prefix + n for n in ("flange_size", "flange_width", "flange_height") if facts.has(prefix + n)]
    if not points or not outline:
        return
    radius = _hole(facts, prefix) / 2
    over = max(_overhang(facts, prefix, p, radius) for p in points)
    if over > _SLACK:
        shown = [*keys, *_hole_key(facts, prefix), *outline]
        yield facts.problem(shown, f"holes inside the flange; they stick out by {over:.3g} mm")


def _overhang(facts: Facts, prefix: str, point: Point, radius: float) -> float:
    size = facts.number(f"{prefix}flange_size", 0.0)
    if facts.text(f"{prefix}flange_shape") == "round":
        return math.hypot(*point) + radius - size / 2
    width = facts.number(f"{prefix}flange_width", size)
    height = facts.number(f"{prefix}flange_height", size)
    sides = [abs(c) + radius - side / 2 for c, side in zip(point, (width, height), strict=True) if side]
    return max(sides, default=0.0)


def _holes_apart(facts: Facts, prefix: str) -> Iterator[Problem]:
    keys, points = _pattern(facts, prefix)
    hole = _hole(facts, prefix)
    distance = facts.least_distance(points)
    if distance <= hole or distance < 1e-6:
        expected = f"holes that do not overlap; their centres are {distance:.4g} mm apart"
        yield facts.problem([*keys, *_hole_key(facts, prefix)], expected)
