"""The axial layout in closed form: how long the block may be, and where the coupling sits.

Three nodes lie on the shaft: the bearing seat (x = 0), the coupling's bearing-side end (x = c) and the motor seat
(x = L). Every fact bounds c, the distance d = L - c, or L itself from one side; the feasible lengths follow without
any search.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import fsum
from typing import Literal

Kind = Literal["c_min", "c_max", "d_min", "d_max", "l_min", "l_max"]
KINDS: tuple[Kind, ...] = ("c_min", "c_max", "d_min", "d_max", "l_min", "l_max")
LOWER = frozenset({"c_min", "d_min", "l_min"})

# Below a hundred-thousandth of a millimetre a deficit is rounding, not a conflict.
EPSILON = 1e-5


@dataclass(frozen=True, slots=True)
class Bound:
    """One fact about the layout.

    Args:
        name: Short plain name.
        kind: Which distance it bounds, and from which side.
        terms: Facts with their coefficients; the bound is their sum, mm.
        words: What it means for the parts.
        removable: True where another way of working does away with it (a radial access hole).
    """

    name: str
    kind: Kind
    terms: tuple[tuple[str, float], ...]
    words: str
    removable: bool = False

    def value(self, facts: Mapping[str, float]) -> float:
        """Return the bound in mm."""
        return fsum([factor * facts[key] for key, factor in self.terms])

    def tolerance(self, tolerances: Mapping[str, float]) -> float:
        """Return the worst-case tolerance of the bound in mm: that of its own terms and of the distance it bounds."""
        if not tolerances:
            return 0.0
        own = fsum([abs(factor) * tolerances.get(key, 0.0) for key, factor in self.terms])
        return own + tolerances.get(self.kind[0], 0.0)


@dataclass(frozen=True, slots=True)
class Layout:
    """The answer of the axial layout.

    Args:
        low: Least feasible length, mm.
        high: Greatest feasible length, mm.
        low_bounds: The bounds that make ``low``.
        high_bounds: The bounds that make ``high``.
        limits: Tightest value by kind, mm; infinite where nothing bounds it.
    """

    low: float
    high: float
    low_bounds: tuple[Bound, ...]
    high_bounds: tuple[Bound, ...]
    limits: Mapping[Kind, float]

    @property
    def feasible(self) -> bool:
        """True where some length and some coupling position satisfy every bound."""
        at = self.limits
        return (
            self.low <= self.high + EPSILON
            and at["c_min"] <= at["c_max"] + EPSILON
            and at["d_min"] <= at["d_max"] + EPSILON
        )

    def coupling_range(self, length: float) -> tuple[float, float]:
        """Return least and greatest coupling position c in mm for a block length in mm."""
        at = self.limits
        return max(at["c_min"], length - at["d_max"]), min(at["c_max"], length - at["d_min"])


@dataclass(frozen=True, slots=True)
class Cycle:
    """Bounds that cannot hold together, and by how many mm they miss."""

    bounds: tuple[Bound, ...]
    deficit: float


_OPEN: Mapping[Kind, float] = {kind: float("-inf") if kind in LOWER else float("inf") for kind in KINDS}


def tightest(
    bounds: Iterable[Bound], facts: Mapping[str, float], tolerances: Mapping[str, float]
) -> tuple[dict[Kind, float], dict[Kind, Bound]]:
    """Return the tightest value (mm) and its bound by kind; ``tolerances`` (mm by fact) tighten each bound."""
    values, owners = dict(_OPEN), {}
    for bound in bounds:
        lower = bound.kind in LOWER
        slack = bound.tolerance(tolerances)
        value = bound.value(facts) + (slack if lower else -slack)
        if (value > values[bound.kind]) if lower else (value < values[bound.kind]):
            values[bound.kind], owners[bound.kind] = value, bound
    return values, owners


def solve(bounds: Iterable[Bound], facts: Mapping[str, float], tolerances: Mapping[str, float] | None = None) -> Layout:
    """Solve the layout.

    Args:
        bounds: Facts as bounds.
        facts: Values in mm by key.
        tolerances: Worst-case tolerances in mm by key; ``c`` and ``l`` are those of the coupling's setting and of
            the block length. A bound on L from c and d together contains the setting twice, as it should.

    Returns:
        The layout; ask ``feasible`` before using it.
    """
    values, owners = tightest(bounds, facts, tolerances or {})
    low, low_kinds = _pick(values, "l_min", ("c_min", "d_min"), greatest=True)
    high, high_kinds = _pick(values, "l_max", ("c_max", "d_max"), greatest=False)
    return Layout(
        low,
        high,
        tuple(owners[k] for k in low_kinds if k in owners),
        tuple(owners[k] for k in high_kinds if k in owners),
        values,
    )


def _pick(
    values: Mapping[Kind, float], alone: Kind, pair: tuple[Kind, Kind], *, greatest: bool
) -> tuple[float, tuple[Kind, ...]]:
    together = values[pair[0]] + values[pair[1]]
    alone_wins = values[alone] >= together if greatest else values[alone] <= together
    return (values[alone], (alone,)) if alone_wins else (together, pair)


_CYCLES: tuple[tuple[Kind, ...], ...] = (
    ("c_min", "c_max"),
    ("d_min", "d_max"),
    ("l_min", "l_max"),
    ("c_min", "d_min", "l_max"),
    ("c_max", "d_max", "l_min"),
)


def conflicts(
    bounds: Iterable[Bound], facts: Mapping[str, float], tolerances: Mapping[str, float] | None = None
) -> tuple[Cycle, ...]:
    """Return every irreducible conflict, the worst first; empty where the layout is feasible."""
    values, owners = tightest(bounds, facts, tolerances or {})
    found = []
    for kinds in _CYCLES:
        deficit = fsum(values[k] if k in LOWER else -values[k] for k in kinds)
        if deficit > EPSILON:
            found.append(Cycle(tuple(owners[k] for k in kinds), deficit))
    return tuple(sorted(found, key=lambda c: (len(c.bounds), -c.deficit)))


def is_irreducible(cycle: Cycle, facts: Mapping[str, float]) -> bool:
    """Tell whether leaving out any one bound of the cycle makes the rest feasible."""
    parts = (tuple(b for b in cycle.bounds if b is not left_out) for left_out in cycle.bounds)
    return all(solve(part, facts).feasible for part in parts)


def slope(cycle: Cycle, key: str) -> float:
    """Return by how many mm the deficit grows when a fact grows by 1 mm."""
    return fsum(
        factor if bound.kind in LOWER else -factor
        for bound in cycle.bounds
        for name, factor in bound.terms
        if name == key
    )
