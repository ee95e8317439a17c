"""Holes of the old block that stay in the new one: what is left of them, and the walls that they leave."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from blockgen.change.rework.data import Leftover
from blockgen.mechanics.distance import Piece, distance
from blockgen.mechanics.ligaments import FACES, LigamentRule, face_walls, measured, pieces, required_wall
from blockgen.plan import Feature, Plan, Segment

_HAIR = 1e-6
_RULES = ("practice.cavity_factor", "practice.cavity_floor", "practice.rim")


@dataclass(frozen=True, slots=True)
class Wall:
    """A wall beside a hole: what stands there, its thickness and the least one asked for, mm."""

    beside: str
    wall: float
    required: float

    @property
    def margin(self) -> float:
        """Wall less required, mm."""
        return self.wall - self.required


def rule_of(plan: Plan) -> LigamentRule:
    """Return the least walls that sizing asked for."""
    return LigamentRule(*(plan.number(key) for key in _RULES))


def cut_back(feature: Feature, by: float) -> Feature | None:
    """Return a turned cavity whose face is cut back by so many mm; None where nothing of it is left."""
    if by <= 0:
        return feature
    profile = tuple(_cut_segment(s, by) for s in feature.profile if s.end > by + _HAIR)
    if not profile:
        return None
    position = tuple(p + by * a for p, a in zip(feature.position, feature.axis, strict=True))
    thread = None if feature.thread_depth is None else max(feature.thread_depth - by, 0.0)
    return replace(
        feature, position=(position[0], position[1], position[2]), profile=profile, depth=max(feature.depth - by, 0.0),
        thread_depth=thread,
    )  # fmt: skip


def _cut_segment(segment: Segment, by: float) -> Segment:
    start, radius = segment.start - by, segment.start_radius
    if start < 0:
        share = -start / (segment.end - segment.start)
        start, radius = 0.0, radius + share * (segment.end_radius - radius)
    return Segment(segment.part, start, radius, segment.end - by, segment.end_radius)


def _cut_off_end(feature: Feature, at: float) -> Feature | None:
    """Return a turned cavity that ends at a depth in mm."""
    profile = []
    for s in feature.profile:
        if s.end <= at + _HAIR:
            profile.append(s)
        elif s.start < at - _HAIR:
            share = (at - s.start) / (s.end - s.start)
            profile.append(replace(s, end=at, end_radius=s.start_radius + share * (s.end_radius - s.start_radius)))
    return replace(feature, profile=tuple(profile), depth=min(feature.depth, at)) if profile else None


def radius_at(feature: Feature, depth: float) -> float:
    """Return the greatest radius of a turned cavity at a depth from its mouth, mm; 0 outside it."""
    found = 0.0
    for s in feature.profile:
        if s.start - _HAIR <= depth <= s.end + _HAIR:
            share = (depth - s.start) / (s.end - s.start) if s.end > s.start else 1.0
            found = max(found, s.start_radius + min(max(share, 0.0), 1.0) * (s.end_radius - s.start_radius))
    return found


def concentric(first: Feature, second: Feature, within: float = 0.02) -> bool:
    """Tell whether two turned cavities share face, direction and axis, mm."""
    if first.face != second.face or first.axis != second.axis or first.pocket or second.pocket:
        return False
    return math.dist(_across(first), _across(second)) <= within


def _across(feature: Feature) -> tuple[float, ...]:
    along = axis_index(feature)
    return tuple(value for i, value in enumerate(feature.position) if i != along)


def axis_index(feature: Feature) -> int:
    """Return 0, 1 or 2 for a cavity along x, y or z."""
    return max(range(3), key=lambda i: abs(feature.axis[i]))


def widest(feature: Feature) -> float:
    """Return the greatest radius of a turned cavity, mm."""
    return max(max(s.start_radius, s.end_radius) for s in feature.profile)


def rest_of(hole: Feature, others: Sequence[Feature]) -> tuple[Feature | None, frozenset[Piece]]:
    """Return what is left of a hole once the new cavities are cut, and the pieces that swallowed the rest.

    Only what is swallowed over its whole section from the mouth or from the end counts as gone.
    """
    swallowing: set[Piece] = set()
    left: Feature | None = hole
    for piece in (p for other in others for p in pieces(other)):
        if left is None:
            break
        shorter = _shortened(left, piece)
        if shorter is not left:
            swallowing.add(piece)
            left = shorter
    return left, frozenset(swallowing)


def _shortened(hole: Feature, piece: Piece) -> Feature | None:
    """Return a hole without the part that one new piece swallows; the hole itself where it swallows none."""
    along = axis_index(hole)
    if not _covers_section(hole, piece, along):
        return hole
    sense = hole.axis[along]
    ends = [(end[along] - hole.position[along]) * sense for end in (piece.low, piece.high)]
    if piece.axis != along:
        reach = _reach(hole, piece, along)
        ends = [ends[0] - sense * reach, ends[1] + sense * reach]
    near, far = min(ends), max(ends)
    last = hole.profile[-1].end
    if near <= _HAIR < far:
        return cut_back(hole, far)
    if near < last - _HAIR and far >= last - _HAIR:
        return _cut_off_end(hole, max(near, 0.0))
    return hole


def _reach(hole: Feature, piece: Piece, along: int) -> float:
    """Return how far in mm a round or rounded piece across a hole reaches past its own axes, over the whole hole."""
    radius = widest(hole)
    beside = next(i for i in range(3) if i not in (along, piece.axis))
    out = max(piece.low[beside] - hole.position[beside], hole.position[beside] - piece.high[beside]) + radius
    return math.sqrt(max(piece.radius**2 - max(out, 0.0) ** 2, 0.0))


def _covers_section(hole: Feature, piece: Piece, along: int) -> bool:
    """Tell whether a piece is wider than a hole all around, where both run past one another."""
    radius = widest(hole)
    if piece.axis == along:
        centre = [(piece.low[i], piece.high[i], hole.position[i]) for i in range(3) if i != along]
        gaps = [max(low - value, value - high, 0.0) for low, high, value in centre]
        inside = [min(value - low, high - value) for low, high, value in centre]
        if all(i >= 0 for i in inside) and max(i for i in inside) > 0:
            return all(i + piece.radius >= radius - _HAIR for i in inside)
        return math.hypot(*gaps) + radius <= min(piece.low_radius, piece.high_radius) + _HAIR
    return all(
        piece.low[i] - (0.0 if i == piece.axis else piece.radius) <= hole.position[i] - radius + _HAIR
        and hole.position[i] + radius <= piece.high[i] + (0.0 if i == piece.axis else piece.radius) + _HAIR
        for i in range(3)
        if i != along
    )


def walls_of(hole: Feature, others: Sequence[Feature], target: Plan, swallowing: frozenset[Piece]) -> Iterator[Wall]:
    """Yield the walls between a leftover hole and the cavities and faces of the new block."""
    rule, cavity = rule_of(target), measured(hole)
    for other in others:
        if other.id in hole.opens_into or hole.id in other.opens_into:
            continue
        parts = [piece for piece in pieces(other) if piece not in swallowing]
        near = [distance(mine, theirs) for mine, _, _ in cavity.parts for theirs in parts]
        if near:
            yield Wall(other.id, min(near), required_wall(hole, other, rule))
    for face, wall in zip(FACES, face_walls(cavity.box, target.body), strict=True):
        if face != hole.face and face not in hole.opens_into:
            yield Wall(face, wall, rule.rim)


def ring_wall(hole: Feature, target: Plan) -> Wall | None:
    """Return the room between a hole's mouth in a seat and the bore there, against the least contact ring, mm.

    A hole that breaks into the ring leaves the flange no closed face to sit on.
    """
    end = hole.face.removesuffix("_seat")
    if not hole.face.endswith("_seat"):
        return None
    radial = math.hypot(hole.position[1], hole.position[2] - target.number("shaft_height"))
    mouth = radius_at(hole, 0.0)
    inner = target.number(f"{end}_bore") / 2 + target.number("practice.lead_in")
    return Wall(f"contact ring of the {end} seat", radial - mouth - inner, target.number("practice.contact_ring"))


def leftover(hole: Feature, target: Plan) -> Leftover | None:
    """Return a hole of the old block as it stays in the new one; None where nothing is left of it.

    Args:
        hole: The old hole in the new block's coordinates, its face cut back already.
        target: Plan of the new block.
    """
    left, swallowing = rest_of(hole, target.features)
    if left is None:
        return None
    walls = list(walls_of(left, target.features, target, swallowing))
    at_mouth = abs(left.position[axis_index(left)] - hole.position[axis_index(hole)]) <= _HAIR
    ring = ring_wall(left, target) if at_mouth else None
    worst = min([*walls, *([ring] if ring else [])], key=lambda wall: (round(wall.margin, 6), wall.beside))
    note = "" if at_mouth else "its mouth is bored away; what is left opens into the shoulder"
    return Leftover(
        hole.id, hole.kind, hole.face, left.position, hole.call_out, round(worst.wall, 4), worst.required,
        worst.beside, worst.margin >= -_HAIR, note,
    )  # fmt: skip
