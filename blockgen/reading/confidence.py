"""How sure a value is, in plain words, each with the rule behind it."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Literal

Confidence = Literal["high", "fair", "low"]

AGREE = 0.01
"""Faces that agree this well leave no doubt about a size, mm."""
NEAR = 0.1
"""Faces that agree no better than this leave a size open, mm."""

RULES: Mapping[Confidence, str] = MappingProxyType(
    {
        "high": f"read off faces that agree within {AGREE:g} mm, and nothing in the file rivals them",
        "fair": f"read off faces that agree within {NEAR:g} mm only, are broken up or rivalled, or by a rule of thumb",
        "low": "a guess from what is usual; the file does not say so",
    }
)

_ORDER: tuple[Confidence, ...] = ("low", "fair", "high")


def judged(residual: float, *, broken: bool = False, rivals: int = 0, by_rule: bool = False) -> Confidence:
    """Return how sure a size is.

    Args:
        residual: Greatest difference between the faces that it was read from, mm.
        broken: True where the faces cover only part of what they should.
        rivals: Number of other readings that the file allows.
        by_rule: True where a rule of thumb was needed.
    """
    if residual > NEAR:
        return "low"
    return "fair" if residual > AGREE or broken or rivals or by_rule else "high"


def at_most(confidence: Confidence, limit: Confidence) -> Confidence:
    """Return the lesser of two."""
    return min(confidence, limit, key=_ORDER.index)
