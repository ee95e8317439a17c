"""The unfavourable end of each quantity over all supports and flanges, error band included."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass

from blockgen.evidence.stiffness.estimate import Estimate
from blockgen.evidence.stiffness.result import Across, CaseResult, Stiffness, Variant

STIFFNESS, SLOPE, FREQUENCY = "stiffness", "slope", "frequency"


@dataclass(frozen=True, slots=True)
class End:
    """The unfavourable end of a quantity.

    Args:
        value: Value at the unfavourable end of its band.
        band: Half the band over the value.
        variant: Where it occurs.
        case: Loads under which it occurs; None for what does not depend on them.
    """

    value: float
    band: float
    variant: Variant
    case: CaseResult | None = None

    @property
    def where(self) -> str:
        """The variant and the loads in words."""
        loads = "" if self.case is None else f", {self.case.title}"
        return f"{self.variant.title}, flanges {self.variant.flanges}{loads}"


def least_stiffness(found: Iterable[Variant]) -> End:
    """Return the least axial stiffness at the bearing seat, N/um."""
    ends = (End(v.axial_stiffness.low, v.axial_stiffness.share, v) for v in found)
    return min(ends, key=lambda end: end.value)


def lowest_frequency(found: Iterable[Variant]) -> End | None:
    """Return the lowest first frequency, Hz; None where the motor's mass is not given."""
    ends = [End(v.frequencies[0].low, v.frequencies[0].share, v) for v in found if v.frequencies]
    return min(ends, key=lambda end: end.value, default=None)


def greatest_slope(found: Iterable[Variant]) -> End:
    """Return the greatest slope between the bores' axes, rad."""
    return _greatest(found, lambda case: case.slope)


def greatest_offset(found: Iterable[Variant]) -> End:
    """Return the greatest offset of the bores' axes at the coupling's centre, mm."""
    return _greatest(found, lambda case: case.offset)


def greatest_stress(found: Iterable[Variant]) -> End:
    """Return the greatest comparative stress away from singular edges, MPa."""
    return _greatest(found, lambda case: case.stress)


def judged(found: Iterable[Variant]) -> dict[str, End]:
    """Return the ends for which an error band is asked: stiffness, slope and frequency; stress converges too slowly."""
    listed = tuple(found)
    slope, lowest = greatest_slope(listed), lowest_frequency(listed)
    ends = {STIFFNESS: least_stiffness(listed), SLOPE: slope if slope.value else None, FREQUENCY: lowest}
    return {name: end for name, end in ends.items() if end is not None}


def all_shares(stiffness: Stiffness) -> Iterator[tuple[Variant, CaseResult]]:
    """Yield every variant with each of its cases."""
    for variant in stiffness.variants:
        for case in variant.cases:
            yield variant, case


def _greatest(found: Iterable[Variant], quantity: Callable[[CaseResult], Across | Estimate]) -> End:
    ends = []
    for variant in found:
        for case in variant.cases:
            of = quantity(case)
            length = of.length if isinstance(of, Across) else of.value
            ends.append(End(length + of.half, of.half / length if length else 0.0, variant, case))
    return max(ends, key=lambda end: end.value)
