"""Arrays of numbers as text for a page: little-endian, base64."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import numpy as np

    Array = np.ndarray[tuple[int, ...], np.dtype[Any]]

STEPS = 65535
"""Steps over the length of a mesh in each direction: 2 micrometres for 150 mm."""


def quantised(points: Array) -> dict[str, Any]:
    """Return points (n, 3) as 16-bit steps from a low corner.

    Returns:
        ``low`` and ``step``, three numbers each in mm, and ``data``: point = low + step * data.
    """
    import numpy as np

    low, high = points.min(axis=0), points.max(axis=0)
    step = np.maximum(high - low, 1e-6) / STEPS
    low, step = (np.array([float(f"{x:.9g}") for x in corner]) for corner in (low, step))
    data = np.clip(np.rint((points - low) / step), 0, STEPS).astype("<u2")
    return {"low": low.tolist(), "step": step.tolist(), "data": _text(data)}


def integers(numbers: Array) -> dict[str, Any]:
    """Return numbers of corners, in 16 bits where they fit, else in 32."""
    bits = 16 if not numbers.size or int(numbers.max()) < 2**16 else 32
    return {"bits": bits, "data": _text(numbers.astype(f"<u{bits // 8}"))}


def reals(numbers: Array) -> str:
    """Return numbers in 32 bits."""
    return _text(numbers.astype("<f4"))


def runs(numbers: Array) -> list[list[int]]:
    """Return [number, how many] of each stretch of equal numbers."""
    import numpy as np

    starts = np.flatnonzero(np.diff(numbers, prepend=-1))
    counts = np.diff(starts, append=len(numbers))
    return [[int(numbers[at]), int(count)] for at, count in zip(starts, counts, strict=True)]


def box_of(points: Array) -> tuple[float, ...]:
    """Return least x, y, z and greatest x, y, z."""
    return (*points.min(axis=0).tolist(), *points.max(axis=0).tolist())


def _text(numbers: Array) -> str:
    return b64encode(numbers.tobytes()).decode("ascii")


def along(vectors: Array, axis: Sequence[float]) -> Array:
    """Return the length of vectors (..., 3) along an axis.

    Component by component, since products of matrices are rounded one way on one processor and another on the next.
    """
    x, y, z = (float(part) for part in axis)
    length: Array = vectors[..., 0] * x + vectors[..., 1] * y + vectors[..., 2] * z
    return length
