"""Holes square to a flange, and the pattern that they make about the axis."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Literal

from OCP.TopoDS import TopoDS_Face

from blockgen.reading.along import Along, AxisLine, Band
from blockgen.reading.faces import boundary
from blockgen.reading.vectors import Vector, dot, length, minus, square_to

LEAST_SWEEP = 175.0
"""A hole may be open to the edge of the flange like a slot, but no wider than this covers, deg."""
SAME_SIZE = 0.02
"""Difference below which holes have one diameter and one distance from the axis, mm."""

_TOUCH = 0.05
_STRAY = 0.1  # holes of a pattern lie this near to their true places, mm
_GRILLE = 16  # groups of holes in one face above which it is a grille, where evenness is chance
_MOST = 10  # holes among which an even part is looked for
_WIDEST = 60.0  # wider openings are no screw holes, mm

Form = Literal["circle", "rectangle", "free"]


@dataclass(frozen=True, slots=True)
class Bore:
    """A round hole along the direction, with its chamfers and counterbores.

    Args:
        foot: A point of its axis, mm.
        low: Height of its far end, mm.
        high: Height of its mouth, mm.
        diameter: Of its narrowest cylinder, mm.
        narrow_low: Height at which that cylinder begins, mm.
        narrow_high: Height at which it ends, mm.
        low_radius: Radius at the far end, mm.
        high_radius: Radius at the mouth, mm.
        blind: True where its far end is closed.
        head: True where its mouth takes a screw head: a counterbore or a wide countersink.
        sweep: Angle that its narrowest cylinder covers, deg.
        faces: Number of its cylinder faces.
    """

    foot: Vector
    low: float
    high: float
    diameter: float
    narrow_low: float
    narrow_high: float
    low_radius: float
    high_radius: float
    blind: bool
    head: bool
    sweep: float
    faces: int


@dataclass(frozen=True, slots=True)
class HolePattern:
    """Holes of one size about an axis.

    Args:
        bores: The holes.
        form: circle (evenly spaced), rectangle, or free.
        circle: Diameter of the circle on which they lie, mm; of a free one the mean.
        diameter: Hole diameter, mm.
        residual: Greatest distance of a hole from its true place, mm.
    """

    bores: tuple[Bore, ...]
    form: Form
    circle: float
    diameter: float
    residual: float

    @property
    def blind(self) -> bool:
        """True where most of the holes are closed at their end."""
        return 2 * sum(b.blind for b in self.bores) > len(self.bores)


def bores_of(view: Along) -> tuple[Bore, ...]:
    """Return all round holes along the direction."""
    return tuple(bore for line in view.lines for bore in _bores(view, line))


def _bores(view: Along, line: AxisLine) -> Iterator[Bore]:
    for chain in chains([b for b in line.bands if b.hollow]):
        bore = _bore(view, line.foot, chain)
        if bore is not None:
            yield bore


def chains(bands: Sequence[Band]) -> Iterator[list[Band]]:
    """Yield bands that follow one another without a gap, each from below."""
    chain: list[Band] = []
    for band in sorted(bands, key=lambda b: (b.low, b.high)):
        if chain and band.low > max(b.high for b in chain) + _TOUCH:
            yield chain
            chain = []
        chain.append(band)
    if chain:
        yield chain


def _bore(view: Along, foot: Vector, chain: Sequence[Band]) -> Bore | None:
    sides = [b for b in chain if b.kind == "cylinder" and b.height > _TOUCH and b.radius * 2 <= _WIDEST]
    least = min((b.radius for b in sides), default=0.0)
    narrow = [b for b in sides if b.radius - least < SAME_SIZE / 2]
    sweep = min(math.fsum(b.sweep for b in narrow), 360.0)
    if not narrow or sweep < LEAST_SWEEP:
        return None
    first, last = chain[0], max(chain, key=lambda b: b.high)
    return Bore(
        foot, first.low, last.high, 2 * least, min(b.low for b in narrow), max(b.high for b in narrow),
        first.low_radius, last.high_radius, _is_closed(view, foot, first),
        _takes_head(chain, least), sweep, sum(len(b.faces) for b in narrow),
    )  # fmt: skip


def _takes_head(chain: Sequence[Band], narrow: float) -> bool:
    top = max(b.high for b in chain)
    near = [b for b in chain if b.high > top - 1.0 and b.height > 0.3]
    bored = any(b.kind == "cylinder" and b.radius > 1.25 * narrow for b in near)
    return bored or any(b.kind == "cone" and b.high_radius > 1.8 * narrow for b in near)


def _is_closed(view: Along, foot: Vector, last: Band) -> bool:
    """Tell whether a hole ends in a tip or on a floor."""
    if last.kind == "cone" and last.low_radius < 0.3 * last.high_radius:
        return True
    floors = (face for level in view.levels_at(last.low) if level.up for face in level.faces)
    return any(_lies_within(view, face.face, foot, last.low_radius) for face in floors)


def _lies_within(view: Along, face: TopoDS_Face, foot: Vector, radius: float) -> bool:
    points = boundary([face], 2)
    return all(length(minus(square_to(p, view.direction), foot)) < radius + _TOUCH for p in points)


def patterns_at(bores: Iterable[Bore], foot: Vector, height: float) -> list[HolePattern]:
    """Return the patterns of holes that open at a height, about an axis.

    Args:
        bores: All holes along the direction.
        foot: A point of the axis, mm.
        height: Height of the mouths, mm.
    """
    groups: list[list[Bore]] = []
    for bore in sorted(bores, key=lambda b: (b.diameter, _off(b, foot))):
        if abs(bore.high - height) > _TOUCH or _off(bore, foot) < bore.diameter / 2:
            continue
        if not groups or not _alike(groups[-1][0], bore, foot):
            groups.append([])
        groups[-1].append(bore)
    all_groups = [*groups, *_rings(groups)]
    found = [_pattern(group, foot) for group in all_groups if len(group) >= 2]
    if len(found) > _GRILLE:
        return found
    return [part for pattern in found for part in (pattern, *_even_part(pattern, foot))]


def _even_part(pattern: HolePattern, foot: Vector) -> Iterator[HolePattern]:
    """Yield the most holes of a free pattern that lie evenly on a circle: one more, for a pin, spoils it."""
    bores = pattern.bores
    if pattern.form != "free" or len(bores) > _MOST:
        return
    for count in (8, 6, 4, 3):
        parts = combinations(bores, count) if count < len(bores) else ()
        best = min(
            (_pattern(part, foot) for part in parts), key=lambda p: (p.form != "circle", p.residual), default=None
        )
        if best is not None and best.form == "circle":
            yield best
            return


def _rings(groups: Sequence[Sequence[Bore]]) -> list[list[Bore]]:
    """Return holes of one size on several circles as one group: free places."""
    sizes: dict[int, list[list[Bore]]] = defaultdict(list)
    for group in groups:
        sizes[round(group[0].diameter / SAME_SIZE)].append(list(group))
    return [[b for group in of for b in group] for of in sizes.values() if len(of) > 1 and all(len(g) < 3 for g in of)]


def _alike(first: Bore, second: Bore, foot: Vector) -> bool:
    size, place = second.diameter - first.diameter, _off(second, foot) - _off(first, foot)
    return abs(size) < SAME_SIZE and abs(place) < _STRAY


def _off(bore: Bore, foot: Vector) -> float:
    return length(minus(bore.foot, foot))


def _pattern(bores: Sequence[Bore], foot: Vector) -> HolePattern:
    radius = math.fsum(_off(b, foot) for b in bores) / len(bores)
    strays = {"circle": _stray_on_circle(bores, foot, radius), "rectangle": _stray_of_rectangle(bores, foot)}
    form: Form = next((f for f in ("circle", "rectangle") if strays[f] < _STRAY), "free")
    residual = strays.get(form, max(abs(_off(b, foot) - radius) for b in bores))
    return HolePattern(tuple(bores), form, 2 * radius, bores[0].diameter, residual)


def _stray_on_circle(bores: Sequence[Bore], foot: Vector, radius: float) -> float:
    """Return how far evenly spaced holes lie from their true places, mm."""
    angles = _angles(bores, foot)
    step = 2 * math.pi / len(bores)
    off = [a - i * step for i, a in enumerate(angles)]
    middle = math.fsum(off) / len(off)
    strays = [abs(o - middle) * radius for o in off]
    return max(*strays, *(abs(_off(b, foot) - radius) for b in bores))


def _angles(bores: Sequence[Bore], foot: Vector) -> list[float]:
    """Return the angles of holes about the axis from the first one, in order, rad."""
    arms = [minus(b.foot, foot) for b in bores]
    first = arms[0]
    turned = _quarter_turn(arms)
    return sorted(math.atan2(dot(a, turned), dot(a, first) / length(first)) % (2 * math.pi) for a in arms)


def _quarter_turn(arms: Sequence[Vector]) -> Vector:
    """Return a unit vector in the plane of the arms, square to the first one."""
    first = arms[0]
    base = tuple(c / length(first) for c in first)
    most = max((square_to(a, base) for a in arms[1:]), key=length)  # type: ignore[arg-type]
    size = length(most)
    return (most[0] / size, most[1] / size, most[2] / size) if size > 1e-6 else (0.0, 0.0, 0.0)


def _stray_of_rectangle(bores: Sequence[Bore], foot: Vector) -> float:
    """Return how far four holes lie from the corners of a rectangle about the axis, mm."""
    if len(bores) != 4:
        return math.inf
    arms = [minus(b.foot, foot) for b in bores]
    across = [min(length(tuple(x + y for x, y in zip(a, b, strict=True))) for b in arms) for a in arms]  # type: ignore[arg-type]
    return max(across)
