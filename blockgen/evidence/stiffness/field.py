"""The outside of a block as triangles, with what one load does to it: for pictures."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from blockgen.evidence.stiffness.outside import Outside, sharp_edges
from blockgen.plan import Point

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

TRIANGLES_MOST = 8000
"""A finer outside is not kept: the triangles of a coarser mesh stand in, whose corners are among those of the finer."""

Corners = tuple[int, int, int]


@dataclass(frozen=True, slots=True)
class Field:
    """What one load does to the outside of a block.

    Args:
        case: The load in words.
        support: What holds the block, in words.
        flanges: free or rigid.
        points: Corners of the triangles, mm.
        triangles: Indexes of three points each, counter-clockwise as seen from outside.
        edges: Indexes of two points each: edges at which faces of the block meet at an angle.
        displacement: Displacement at each point, mm.
        stress: Comparative stress (von Mises) at each point, averaged over the elements about it, MPa.
        stress_away: Greatest stress away from singular edges, MPa; greater ones in ``stress`` grow with the mesh.
    """

    case: str
    support: str
    flanges: str
    points: tuple[Point, ...]
    triangles: tuple[Corners, ...]
    edges: tuple[tuple[int, int], ...]
    displacement: tuple[Point, ...]
    stress: tuple[float, ...]
    stress_away: float


def field_of(words: tuple[str, str, str], corners: tuple[Array, Array, Array], outside: Outside, away: float) -> Field:
    """Return the field on an outside.

    Args:
        words: Load, support and flanges.
        corners: Places (corners, 3) in mm, displacements (corners, 3) in mm, stresses (corners,) in MPa.
        outside: Its triangles; of a mesh whose corners are among these.
        away: Greatest stress away from singular edges, MPa.
    """
    import numpy as np

    used, numbers = np.unique(outside.triangles, return_inverse=True)
    places, moved, stress = (values[used].tolist() for values in corners)
    ends = np.searchsorted(used, sharp_edges(outside)).tolist()
    return Field(
        *words,
        points=tuple(_triple(place, 3) for place in places),
        triangles=tuple((a, b, c) for a, b, c in numbers.reshape(-1, 3).tolist()),
        edges=tuple((a, b) for a, b in ends),
        displacement=tuple(_triple(move, 7) for move in moved),
        stress=tuple(float(f"{value:.3e}") for value in stress),
        stress_away=away,
    )


def _triple(row: Sequence[float], digits: int) -> Point:
    x, y, z = (round(value, digits) + 0.0 for value in row)
    return x, y, z
