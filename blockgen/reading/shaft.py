"""The shaft end of a motor: diameter, length, smooth part, keyway or flat."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from blockgen.reading.along import Along, AxisLine, Band
from blockgen.reading.faces import PlaneFace, boundary
from blockgen.reading.vectors import Vector, cross, dot, minus, plus, unit

_BEYOND = 2.0  # a shaft stands further out than the pilot by this at least, mm
_SLACK = 0.6
_SAME = 0.01
_TOUCH = 0.05


@dataclass(frozen=True, slots=True)
class Shaft:
    """A shaft end; lengths in mm, from the mounting face.

    Args:
        diameter: Of its longest cylinder.
        length: To its end.
        smooth: Length of that cylinder from the shaft's end, its end chamfer included; None where a thinner part
            stands in front of it.
        steps: Diameters of its other cylinders.
        faces: Number of cylinder faces.
        spread: Greatest difference of their radii.
        grooves: Number of gaps in the cylinder, for rings.
    """

    diameter: float
    length: float
    smooth: float | None
    steps: tuple[float, ...]
    faces: int
    spread: float
    grooves: int


@dataclass(frozen=True, slots=True)
class ShaftCut:
    """A keyway, a key or a flat.

    Args:
        form: keyed or flat.
        what: keyway, key or flat.
        length: Along the shaft, mm.
        width: Across, mm.
        faces: Number of faces.
        count: How many there are.
    """

    form: Literal["keyed", "flat"]
    what: str
    length: float
    width: float
    faces: int
    count: int


def shaft_of(line: AxisLine, height: float, stand: float, widest: float) -> Shaft | None:
    """Return the shaft end.

    Args:
        line: What is turned about the axis.
        height: Height of the mounting face, mm.
        stand: How far the pilot stands out, mm.
        widest: Greatest radius, mm: less than the pilot's, or inside the screws.
    """
    solid = [b for b in line.bands if not b.hollow]
    out = [
        b for b in solid if b.kind == "cylinder" and b.high > height + stand + _BEYOND and b.radius < widest - _TOUCH
    ]
    runs = _runs(out, height + stand)
    if not runs:
        return None
    radius = max(runs, key=lambda r: (round(_exposed(runs[r], height + stand), 3), r))
    end = max(b.high for b in solid if b.radius < widest and b.high > height + stand)
    own = runs[radius]
    front = max(b.high for b in own)
    shoulder = max((b.high for b in solid if radius + _TOUCH < b.radius < math.inf), default=height)
    start = max(min(b.low for b in own), min(shoulder, front))
    thinner = any(r < radius - _SAME and max(b.high for b in of) > front + 1.0 for r, of in runs.items())
    spread = max(b.radius for b in own) - min(b.radius for b in own)
    faces = sum(len(b.faces) for b in own)
    smooth = None if thinner else end - start
    return Shaft(2 * radius, end - height, smooth, _others(runs, radius), faces, spread, _gaps(own))


def _runs(bands: Sequence[Band], from_height: float) -> dict[float, list[Band]]:
    """Return the cylinders by radius."""
    runs: dict[float, list[Band]] = defaultdict(list)
    for band in sorted(bands, key=lambda b: -b.radius):
        if _exposed([band], from_height) > _TOUCH:
            same = next((r for r in runs if abs(r - band.radius) < _SAME), band.radius)
            runs[same].append(band)
    return {r: of for r, of in runs.items() if math.fsum(b.sweep for b in of) > 90.0}


def _exposed(bands: Sequence[Band], from_height: float) -> float:
    return math.fsum(max(b.high - max(b.low, from_height), 0.0) * min(b.sweep / 360.0, 1.0) for b in bands)


def _others(runs: dict[float, list[Band]], radius: float) -> tuple[float, ...]:
    return tuple(sorted((2 * r for r in runs if abs(r - radius) > _SAME), reverse=True))


def _gaps(bands: Sequence[Band]) -> int:
    tops, count = bands[0].high, 0
    for band in sorted(bands, key=lambda b: b.low)[1:]:
        count += band.low > min(b.high for b in bands) + _TOUCH and band.low > tops + _TOUCH
        tops = max(tops, band.high)
    return int(count)


def cut_of(view: Along, foot: Vector, shaft: Shaft, height: float, stand: float) -> ShaftCut | None:
    """Return keyway, key or flat of a shaft; None where there is none.

    Args:
        view: The shape along the axis.
        foot: A point of the axis, mm.
        shaft: The shaft.
        height: Height of the mounting face, mm.
        stand: How far the pilot stands out, mm.
    """
    low, high = height + stand - _SLACK, height + shaft.length + _SLACK
    near = [p for p in view.sides if p.offset - dot(p.normal, foot) < shaft.diameter]
    planes = [_Strip.of(p, view.direction, foot) for p in near]
    within = [s for s in planes if low <= s.low and s.high <= high and s.reach < 1.5 * shaft.diameter]
    found = [cut for strip in within for cut in _cut(strip, within, shaft)]
    if not found:
        return None
    best = max(found, key=lambda c: (c.form == "keyed", round(c.length, 3), round(c.width, 3)))
    return ShaftCut(best.form, best.what, best.length, best.width, best.faces, sum(c.what == best.what for c in found))


@dataclass(frozen=True, slots=True)
class _Strip:
    """A flat face along the shaft: outward normal, distance from the axis, reach along and across."""

    normal: Vector
    distance: float
    low: float
    high: float
    left: float
    right: float

    @property
    def reach(self) -> float:
        return max(abs(self.left), abs(self.right), abs(self.distance))

    @staticmethod
    def of(plane: PlaneFace, axis: Vector, foot: Vector) -> _Strip:
        """Return the face as the shaft sees it."""
        points = list(boundary([plane.face], 8))
        along = [dot(p, axis) for p in points]
        sideways = unit(cross(axis, plane.normal))
        across = [dot(minus(p, foot), sideways) for p in points]
        distance = plane.offset - dot(plane.normal, foot)
        return _Strip(plane.normal, distance, min(along), max(along), min(across), max(across))


def _cut(strip: _Strip, others: Sequence[_Strip], shaft: Shaft) -> Iterator[ShaftCut]:
    """Yield what a face that looks outwards is the floor or the top of."""
    radius, width = shaft.diameter / 2, strip.right - strip.left
    if strip.distance < 0.4 * radius or abs(strip.left + strip.right) > 0.1 or strip.high - strip.low < 1.0:
        return
    if strip.distance > radius + _TOUCH:
        if _walls(strip, others, outwards=True) == 2 and width < radius * 1.2:
            yield ShaftCut("keyed", "key", strip.high - strip.low, width, 3, 1)
        return
    chord = 2 * math.sqrt(max(radius * radius - strip.distance**2, 0.0))
    if _walls(strip, others, outwards=False) == 2:
        yield ShaftCut("keyed", "keyway", strip.high - strip.low, width, 3, 1)
    elif abs(chord - width) < 0.1 and radius - strip.distance > 0.05:
        yield ShaftCut("flat", "flat", strip.high - strip.low, width, 1, 1)


def _walls(strip: _Strip, others: Sequence[_Strip], *, outwards: bool) -> int:
    """Count the walls of a keyway, which look at one another, or of a key, which look outwards."""
    half = (strip.right - strip.left) / 2
    place = half if outwards else -half
    facing = [o for o in others if abs(dot(o.normal, strip.normal)) < 1e-3 and abs(o.distance - place) < _TOUCH]
    meeting = [o for o in facing if o.low < strip.high and o.high > strip.low]
    return len({dot(o.normal, _sideways(strip, o)) > 0 for o in meeting})


def _sideways(strip: _Strip, other: _Strip) -> Vector:
    """Return one and the same sideways direction for all walls of a strip."""
    axis = unit(cross(strip.normal, other.normal))
    fixed = max(range(3), key=lambda i: abs(axis[i]))
    return cross(plus((0.0, 0.0, 0.0), axis, math.copysign(1.0, axis[fixed])), strip.normal)
