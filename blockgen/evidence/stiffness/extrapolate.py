"""What two meshes tell about the answer of an endless fine one, and how sure that is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

ORDER_LEAST = 1.5
"""Least order of convergence that is reckoned with. Second-order elements reach 4 on smooth solids; sharp edges of held
faces pull it to 1 unless the mesh is finer there. On the graded meshes used here 1.7 to 2.7 was measured."""

SCATTER = 0.01
"""Least half width of a band over its value: meshes that are not nested scatter by about so much, and two of them may
agree by chance."""

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


def between(coarse: Array, fine: Array, unknowns: tuple[int, int]) -> tuple[Array, Array]:
    """Return the middle of the band and half its width, for values (...) of two meshes.

    The band runs from the fine mesh's value to what its change against the coarse one foretells for an endless fine
    mesh at the least order: v + (v - v_coarse) / (r^p - 1), with r the ratio of the elements' sizes, taken as the cube
    root of the ratio of the unknowns.

    Raises:
        ValueError: the second mesh is not the finer one.

    No band is narrower than the scatter of meshes.

    Source: Richardson's extrapolation; that the order is bounded from below, and that the fine value stays in the band,
    are choices of this tool.
    """
    import numpy as np

    if unknowns[1] <= unknowns[0]:
        raise ValueError(f"meshes of {unknowns[0]} and {unknowns[1]} unknowns: the second must be the finer one")
    ratio = (unknowns[1] / unknowns[0]) ** (1 / 3)
    change = (fine - coarse) / (ratio**ORDER_LEAST - 1)
    middle = fine + change / 2
    return middle, np.maximum(abs(change) / 2, SCATTER * abs(middle))


def estimate(coarse: float, fine: float, unknowns: tuple[int, int]) -> Estimate:
    """Return the estimate of one value from two meshes; see ``between``."""
    import numpy as np

    middle, half = between(np.asarray(coarse), np.asarray(fine), unknowns)
    return Estimate(rounded(float(middle)), rounded(float(half)))


def rounded(value: float) -> float:
    """Return a value to five significant digits, which all runs and machines share."""
    return float(f"{value:.{_DIGITS - 1}e}")
