"""What holds the block: beds of springs on faces of its base, from the stated softness to as good as rigid."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from blockgen.evidence.stiffness.subject import Subject
from blockgen.plan import Plan

TIED = 1e8
"""Bed of a tied face, N/mm3: as soft as 2 um of steel; the tied rings give way 0.06 % more than with fixed nodes."""

HEADS, BONDED, BED = "heads", "bonded", "bed"


@dataclass(frozen=True, slots=True)
class Support:
    """One way in which the base holds the block.

    Args:
        id: heads, bonded or bed.
        title: In words.
        faces: Faces that are held.
        bed: Stiffness in N/mm3 in all directions; None for a total that is spread over the faces.
        total: Stiffness of all faces together, N/mm; None where the bed is given.
    """

    id: str
    title: str
    faces: tuple[str, ...]
    bed: float | None
    total: float | None = None

    def per_area(self, area: float) -> float:
        """Return the bed in N/mm3 of faces with an area in mm2."""
        return self.bed if self.bed is not None else (self.total or 0.0) / area


def supports_of(plan: Plan, subject: Subject) -> tuple[Support, ...]:
    """Return the supports of a block: under the heads, bonded, and on a bed where ``base.bed_stiffness`` is given."""
    rings = tuple(f"ring_{index}" for index in range(1, len(subject.screws) + 1))
    whole = (*rings, "base")
    found = [
        Support(HEADS, "held under the screw heads only", rings, TIED),
        Support(BONDED, "bonded to a rigid base", whole, TIED),
    ]
    record = plan.records.get("base.bed_stiffness")
    if record is not None and record.value is not None:
        bed = plan.number("base.bed_stiffness")
        found.append(Support(BED, f"on a bed of {bed:g} N/um", whole, None, 1000 * bed))
    return tuple(found)


def nearest(screws: Sequence[tuple[float, float]]) -> list[list[tuple[float, float, float]]]:
    """Return for each screw the half planes (a, b, c): a x + b y <= c that bound what lies nearest to it, mm."""
    found = []
    for own in screws:
        others = [other for other in screws if other != own]
        found.append(
            [
                (2 * (ox - own[0]), 2 * (oy - own[1]), ox**2 + oy**2 - own[0] ** 2 - own[1] ** 2)
                for ox, oy in others
            ]
        )  # fmt: skip
    return found
