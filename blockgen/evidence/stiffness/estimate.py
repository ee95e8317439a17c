"""What one mesh or several tell about the answer of an endless fine one, and how sure that is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

ALONE = 1.0
"""Half a band over what a mesh lacks by its own estimate, where the quantity was found on one mesh only."""

REFINED = 0.55
"""The same on a finer mesh, where the estimate is nearer. On blocks of three sizes up to 0.54 was needed, for the
stiffness under the heads, since the stress at their rims has no limit."""

SCATTER = 0.01
"""Least half width of a band over its value."""

_DIGITS = 5


@dataclass(frozen=True, slots=True)
class Estimate:
    """A value and half the width of its error band, in the unit of the value."""

    value: float
    half: float

    @property
    def low(self) -> float:
        """Lower end of the band."""
        return self.value - self.half

    @property
    def high(self) -> float:
        """Upper end of the band."""
        return self.value + self.half

    @property
    def share(self) -> float:
        """Half the band over the value."""
        return self.half / abs(self.value) if self.value else 0.0


def banded(plain: Array, mended: Array, before: Array | None = None) -> tuple[Array, Array]:
    """Return the middle of the band and half its width.

    The middle is the value of the finest mesh with what that mesh lacks put right by its own estimate. The band holds a
    share of what was put right, and half of what the last two meshes differ by after they were put right.

    Args:
        plain: Values (...) of the finest mesh.
        mended: The same with what the mesh lacks.
        before: The same of the mesh before; None where there was none.

    Source: the shares are choices of this tool, held against fine meshes of several blocks.
    """
    import numpy as np

    lacking, least = abs(mended - plain), SCATTER * abs(mended)
    if before is None:
        return mended, np.maximum(ALONE * lacking, least)
    return mended, np.maximum(np.maximum(REFINED * lacking, abs(mended - before) / 2), least)


def estimate(plain: float, mended: float, before: float | None = None) -> Estimate:
    """Return the estimate of one value; see ``banded``."""
    import numpy as np

    middle, half = banded(np.asarray(plain), np.asarray(mended), None if before is None else np.asarray(before))
    return Estimate(rounded(float(middle)), rounded(float(half)))


def rounded(value: float) -> float:
    """Return a value to five significant digits, which all runs and machines share."""
    return float(f"{value:.{_DIGITS - 1}e}")
