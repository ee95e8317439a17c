"""Scales of a drawing. Source: ISO 5455, Table, as quoted in tests/outside/test_drawing_scales.py."""

from __future__ import annotations

SCALES: tuple[tuple[int, int], ...] = (
    (50, 1), (20, 1), (10, 1), (5, 1), (2, 1), (1, 1), (1, 2), (1, 5), (1, 10), (1, 20), (1, 50), (1, 100), (1, 200),
    (1, 500), (1, 1000), (1, 2000), (1, 5000), (1, 10000),
)  # fmt: skip
"""Size on paper to true size, largest first."""


def scale_text(scale: float) -> str:
    """Return a scale as it stands on the sheet, such as ``1:2``.

    Raises:
        ValueError: it is not one of the standard's.
    """
    for paper, true in SCALES:
        if abs(paper / true - scale) < 1e-12:
            return f"{paper}:{true}"
    raise ValueError(f"{scale:g} is not a scale of ISO 5455")
