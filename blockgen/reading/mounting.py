"""Where a bought part is screwed on: the flat face from which a pilot stands out, with screw holes about its axis."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from OCP.TopoDS import TopoDS_Shape

from blockgen.errors import InputError, Problem
from blockgen.geometry.kernel import area_of
from blockgen.reading.along import Along, AxisLine, Band, Level, along, likely_axes
from blockgen.reading.faces import PlaneFace, Surfaces, boundary, collect, point_at
from blockgen.reading.holes import Bore, HolePattern, bores_of, patterns_at
from blockgen.reading.outline import Side, rim_of, sides_of
from blockgen.reading.pilot import Pilot, proud_pilot, recessed_pilot
from blockgen.reading.upright import up_of
from blockgen.reading.vectors import Vector, dot, length, minus, plus, square_to, times

_SHAFT_BEYOND = 3.0  # what stands further out than the pilot by this is a shaft or a nut, mm
_MOST_PATTERNS = 8  # of one face; a grille has hundreds
_SHORT = 0.35  # a pilot is seldom longer than this part of its diameter
_STOUT = 0.75  # a pilot is shorter than this part of its diameter, a shaft or a body longer
_CLEAR = 1.5  # points by which a mounting face must be ahead to leave no doubt


@dataclass(frozen=True, slots=True)
class Mounting:
    """A mounting face with its frame.

    Args:
        origin: Centre of the pilot on the mounting face, mm.
        axis: Unit vector out of the flange, towards the shaft end.
        up: Unit vector in the mounting face that the bolt pattern, the flange and what sticks out on one side give.
        face: The faces that make the mounting face.
        pilot: The pilot; None where there is none.
        holes: The screw holes.
        evidence: What speaks for this face, in words.
        others: Further hole patterns in this face.
        score: Points; the parts of it are in ``evidence``.
        runner_up: Points of the next best face, 0.0 without one.
        view: The shape along the axis.
        line: What is turned about the axis.
        sides: Straight sides of the flange.
        rim: Turned outside of the flange.
    """

    origin: Vector
    axis: Vector
    up: Vector
    face: tuple[PlaneFace, ...]
    pilot: Pilot | None
    holes: HolePattern
    evidence: tuple[str, ...]
    others: tuple[HolePattern, ...]
    score: float
    runner_up: float
    view: Along
    line: AxisLine
    sides: tuple[Side, ...]
    rim: tuple[Band, ...]

    @property
    def height(self) -> float:
        """Height of the mounting face along the axis, mm."""
        return dot(self.origin, self.axis)

    @property
    def origin_foot(self) -> Vector:
        """Where the axis meets the plane through the file's own origin, mm."""
        return square_to(self.origin, self.axis)

    @property
    def stand(self) -> float:
        """How far the pilot stands out of the mounting face, mm."""
        return self.pilot.length if self.pilot is not None and self.pilot.form == "proud" else 0.0

    @property
    def inside(self) -> float:
        """Radius inside the pilot, or inside the screws where there is none, mm."""
        within = (self.holes.circle - self.holes.diameter) / 2
        return self.pilot.diameter / 2 if self.pilot is not None else within

    @property
    def hole_centres(self) -> tuple[Vector, ...]:
        """Centres of the screw holes on the mounting face, mm."""
        return tuple(plus(square_to(b.foot, self.axis), self.axis, self.height) for b in self.holes.bores)

    @property
    def has_rival(self) -> bool:
        """Tell whether another face got nearly as many points."""
        return self.score - self.runner_up < _CLEAR


@dataclass(frozen=True, slots=True)
class _Candidate:
    view: Along
    line: AxisLine
    level: Level
    pattern: HolePattern
    pilot: Pilot | None
    beyond: float
    area: float
    heads: bool
    behind: float


def find_mounting(shape: TopoDS_Shape, name: str = "the model") -> Mounting:
    """Return the mounting face of a motor or bearing unit.

    Args:
        shape: The solids, mm.
        name: File that they come from, for messages.

    Raises:
        InputError: no flat face of it has screw holes about an axis, and a pilot or a shaft on it.
    """
    return mounting_of(collect(shape), name)


def mounting_of(surfaces: Surfaces, name: str = "the model") -> Mounting:
    """Return the mounting face from the faces of a shape.

    Raises:
        InputError: there is none.
    """
    found = list(_candidates(surfaces))
    best = ranked([c for c in found if _is_mounting(c)])
    if not best:
        raise InputError([_none_found(name, surfaces, found)])
    score, chosen = best[0]
    rivals = [points for points, other in best[1:] if not _same_face(other, chosen)]
    others = tuple(o.pattern for _, o in best[1:] if _same_face(o, chosen) and o.pattern.bores != chosen.pattern.bores)
    return _mounting(chosen, others, (score, max(rivals, default=0.0)))


def _is_mounting(c: _Candidate) -> bool:
    """Tell whether a face has what a mounting face must have: a pilot or a shaft, with holes placed about its axis."""
    if c.pattern.form == "free":
        return c.pilot is not None and c.beyond > _SHAFT_BEYOND
    return c.pilot is not None or c.beyond > _SHAFT_BEYOND


def _none_found(name: str, surfaces: Surfaces, found: Sequence[object]) -> Problem:
    seen = f"{len(surfaces.planes)} flat, {len(surfaces.turned)} turned and {surfaces.others} other faces"
    why = "none of the flat ones has a pattern of round holes" if not found else "no pilot and no shaft with the holes"
    return Problem(
        name, None, "", f"no mounting face: {seen}, and {why}",
        "a flat face with at least two screw holes evenly about an axis, and a pilot or shaft on that axis",
        "ask the maker for a model with its holes, or write the spec table by hand",
    )  # fmt: skip


def _same_face(one: _Candidate, other: _Candidate) -> bool:
    return one.line is other.line and one.level is other.level


def _candidates(surfaces: Surfaces) -> Iterator[_Candidate]:
    done: list[tuple[Vector, Along, dict[int, list[Bore]]]] = []
    for direction, point in likely_axes(surfaces):
        for way in (direction, times(direction, -1.0)):
            known = next((d for d in done if dot(d[0], way) > 1 - 1e-8), None)
            if known is None:
                view = along(surfaces, way)
                known = (way, view, _by_mouth(bores_of(view)))
                done.append(known)
            line = known[1].line_at(point)
            if line is not None:
                yield from _about(known[1], line, known[2])


def _by_mouth(bores: Iterable[Bore]) -> dict[int, list[Bore]]:
    found: dict[int, list[Bore]] = {}
    for bore in bores:
        found.setdefault(round(bore.high), []).append(bore)
    return found


def _about(view: Along, line: AxisLine, bores: dict[int, list[Bore]]) -> Iterator[_Candidate]:
    """Yield a candidate for each level and pattern about one axis."""
    for level in view.levels:
        cell = round(level.height)
        near = [b for c in (cell - 1, cell, cell + 1) for b in bores.get(c, ())] if level.up else []
        found = patterns_at(near, line.foot, level.height) if len(near) > 1 else []
        area = math.fsum(area_of(f.face) for f in level.faces) if found else 0.0
        for pattern in sorted(found, key=lambda p: -_pattern_points(p))[:_MOST_PATTERNS]:
            yield _candidate(view, line, level, pattern, area)


def _candidate(view: Along, line: AxisLine, level: Level, pattern: HolePattern, area: float) -> _Candidate:
    inside = pattern.circle / 2 - pattern.diameter / 2 + 0.01
    pilot = _pilot(view, line, level.height, inside)
    stand = pilot.length if pilot is not None and pilot.form == "proud" else 0.0
    widest = pilot.diameter / 2 if pilot is not None else inside
    slender = [b.high for b in line.bands if not b.hollow and b.radius < widest]
    beyond = max(slender, default=level.height) - level.height - stand
    heads = any(b.head for b in pattern.bores)
    return _Candidate(view, line, level, pattern, pilot, beyond, area, heads, _behind(view, level.height))


def _pilot(view: Along, line: AxisLine, height: float, inside: float) -> Pilot | None:
    """Return the pilot on a face: a spigot that is no shaft, else a bore that is not just the shaft's passage."""
    proud = proud_pilot(line, height, inside)
    if proud is not None and is_stout(proud):
        return proud
    shaft = max((b.radius for b in line.bands if not b.hollow and b.low < height < b.high - _SHAFT_BEYOND), default=0.0)
    shaft = max(shaft, proud.diameter / 2 if proud is not None else 0.0)
    sunk = recessed_pilot(line, height, max(1.25 * shaft, 2.0), inside)
    if sunk is not None and any(level.up for level in view.levels_at(height - sunk.length)):
        return sunk
    return proud if proud is not None and _has_shaft(proud, line, height) else None


def is_stout(pilot: Pilot) -> bool:
    """Tell whether a pilot is as short as pilots are; a shaft or a body is longer than wide."""
    return pilot.length <= _STOUT * pilot.diameter


def _has_shaft(pilot: Pilot, line: AxisLine, height: float) -> bool:
    """Tell whether something more slender stands on a long pilot, and nothing as wide: else it is itself the shaft."""
    top, radius = height + pilot.length, pilot.diameter / 2
    further = [b.radius for b in line.bands if not b.hollow and b.high > top + _SHAFT_BEYOND]
    return bool(further) and max(further) < radius - 0.01


def _behind(view: Along, height: float) -> float:
    """Return which part of the length lies behind a face, from 0 to 1: most of a motor does."""
    low, high = view.span
    return (height - low) / (high - low) if high > low else 0.0


def ranked(found: Sequence[_Candidate]) -> list[tuple[float, _Candidate]]:
    """Return the candidates with their points, the best first.

    Three things make a mounting face, each worth most: holes evenly about the axis, a pilot, a shaft beyond. Size
    decides between faces that have the same of these: a rear cover has smaller holes on a smaller circle.
    """
    if not found:
        return []
    most = [max(*column, 1e-9) for column in zip(*map(_sizes, found), strict=True)]
    scored = [(_points(c) + math.fsum(s / m for s, m in zip(_sizes(c), most, strict=True)), c) for c in found]
    return sorted(scored, key=lambda entry: -round(entry[0], 6))


def _sizes(c: _Candidate) -> tuple[float, ...]:
    pilot = c.pilot.diameter if c.pilot else 0.0
    return (c.pattern.diameter, c.pattern.circle, pilot, max(c.beyond, 0.0), c.area)


def _points(c: _Candidate) -> float:
    shaft = 3.0 if c.beyond > _SHAFT_BEYOND else 0.0
    return _pattern_points(c.pattern) + _pilot_points(c.pilot) + shaft + 2.5 * c.behind - (2.0 if c.heads else 0.0)


def _pattern_points(pattern: HolePattern) -> float:
    count = len(pattern.bores)
    even = {"circle": 1.0, "rectangle": 0.9, "free": 0.3}[pattern.form]
    return 4.0 * even * (1.0 if count in (3, 4, 6, 8) else 0.4 if count > 12 or count < 3 else 0.7)


def _pilot_points(pilot: Pilot | None) -> float:
    """Return what a pilot counts: a body or a shaft on a face is much longer than it is wide, a pilot never."""
    if pilot is None:
        return 0.0
    if not is_stout(pilot):
        return 0.5
    return 3.0 if pilot.form == "proud" and pilot.length < _SHORT * pilot.diameter else 2.0


def _mounting(c: _Candidate, others: tuple[HolePattern, ...], points: tuple[float, float]) -> Mounting:
    axis = c.view.direction
    foot = c.line.foot if c.pilot is None else square_to(point_at(c.pilot.faces[0], 0.0), axis)
    origin = plus(foot, axis, c.level.height)
    beyond = max((0.5 * c.pattern.circle * 0.6), c.pilot.diameter / 2 if c.pilot else 0.0)
    sides = sides_of(c.view, foot, c.level.height, beyond)
    rim = rim_of(c.line, c.level.height, beyond)
    up, told = up_of(c.view, c.line, origin, c.pattern, sides)
    return Mounting(
        origin, axis, up, c.level.faces, c.pilot, c.pattern, (*_evidence(c), told), others, *points, c.view, c.line,
        sides, rim,
    )  # fmt: skip


def _evidence(c: _Candidate) -> Iterator[str]:
    count = len(c.level.faces)
    yield f"{count} flat face{'s' if count > 1 else ''} of {c.area:.0f} mm2"
    placed = {"circle": "evenly on a circle", "rectangle": "in a rectangle", "free": "about the axis"}[c.pattern.form]
    yield f"{len(c.pattern.bores)} holes {placed} about the axis"
    if c.pilot is not None:
        yield f"pilot {'stands on' if c.pilot.form == 'proud' else 'sunk into'} it"
    if c.beyond > _SHAFT_BEYOND:
        yield f"turned part {c.beyond:.1f} mm further out on the same axis"


def reach_of(mounting: Mounting) -> float:
    """Return the distance from the axis to the furthest point of the mounting face, mm."""
    points = boundary((f.face for f in mounting.face), 4)
    return max((length(square_to(minus(p, mounting.origin), mounting.axis)) for p in points), default=math.inf)
