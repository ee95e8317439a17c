"""Upright rectangles on a sheet: what stands where, and whether two things come too near to one another."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle along the edges of the sheet, mm.

    Args:
        left: Least x.
        bottom: Least y.
        right: Greatest x.
        top: Greatest y.
    """

    left: float
    bottom: float
    right: float
    top: float

    @classmethod
    def around(cls, points: Iterable[tuple[float, float]]) -> Box:
        """Return the smallest box that holds all points; there must be one at least."""
        across, along = zip(*points, strict=True)
        return cls(min(across), min(along), max(across), max(along))

    def touches(self, other: Box, gap: float = 0.0) -> bool:
        """Return whether the boxes overlap or leave less than ``gap`` mm between them; common edges do not overlap."""
        return (
            self.left < other.right + gap
            and other.left < self.right + gap
            and self.bottom < other.top + gap
            and other.bottom < self.top + gap
        )

    def grown(self, by: float) -> Box:
        """Return the box with ``by`` mm more on each side."""
        return Box(self.left - by, self.bottom - by, self.right + by, self.top + by)
