"""Exact law of the length of a sum of isotropic vectors, by Fourier-Bessel series.

The characteristic functions multiply, a known vector enters as J0(k v), and the density, which ends at the worst
case R, is a series of J0(j_n r/R) over the zeros j_n of J0. Its integral over a disc is known in closed form:
P(r <= x) = sum 2 phi(j_n/R) x J1(j_n x/R) / (R j_n J1(j_n)^2). Some twenty terms are enough for ten contributors.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import exp, fsum, hypot, log, pi, prod, sqrt

from blockgen.alignment.bessel import bessel_j0_j1, bessel_j1, zero_of_j0
from blockgen.alignment.scatter import (
    ISOTROPIC,
    Scatter,
    greatest,
    known_sum,
    root_mean_square,
    worst_case,
)
from blockgen.alignment.two_discs import within_two_discs
from blockgen.alignment.waves import clearance_share, envelope, transform

PRECISION = 1e-9  # transforms below this are left out
MOST_WAVES = 1500
_TAIL = 6.5  # standard deviations after which a Gaussian is cut: exp(-6.5^2/2) is below PRECISION


@dataclass(frozen=True, slots=True)
class WaveTable:
    """The transforms of several scatters at the waves of one series, one column a scatter.

    Args:
        scatters: Random scatters, and the sum of the known vectors as the last one where it is not 0.
        reach: Radius R beyond which there is nothing.
        waves: Wave numbers j_n/R.
        norms: 2 / (R j_n J1(j_n)^2).
        columns: Transform of each scatter at each wave.
    """

    scatters: tuple[Scatter, ...]
    reach: float
    waves: tuple[float, ...]
    norms: tuple[float, ...]
    columns: tuple[tuple[float, ...], ...]


@dataclass(frozen=True, slots=True)
class RadialLaw:
    """Distribution of the length of a sum.

    Args:
        worst: Greatest length; Gaussians count three standard deviations.
        rms: Root of the mean square.
        reach: Radius within which the series holds.
        waves: Wave numbers of the series.
        weights: Weight of each wave.
        single: The one random scatter where there is no other one and no known vector: its law is in closed form.
        pair: The radii of two discs where there is nothing else: their law is one integral.
    """

    worst: float
    rms: float
    reach: float
    waves: tuple[float, ...] = ()
    weights: tuple[float, ...] = ()
    single: Scatter | None = None
    pair: tuple[float, float] | None = None


def radial_law(scatters: Sequence[Scatter]) -> RadialLaw:
    """Return the law of the length of the sum of isotropic scatters and known vectors.

    Raises:
        ValueError: a scatter stands along one axis; the planar law is made for those.
    """
    active = merged(scatters)
    if len(active) <= 1:
        single = active[0] if active else None
        return RadialLaw(worst_case(active), root_mean_square(active), worst_case(active), single=single)
    if [s.law for s in active] == ["disc", "disc"]:
        pair = (active[0].size, active[1].size)
        return RadialLaw(worst_case(active), root_mean_square(active), worst_case(active), pair=pair)
    return law_of(wave_table(active))


def merged(scatters: Sequence[Scatter]) -> tuple[Scatter, ...]:
    """Return the scatters that are not 0, known vectors added up to one and Gaussians to one.

    Raises:
        ValueError: a scatter stands along one axis.
    """
    odd = [s.law for s in scatters if s.law not in ISOTROPIC and s.law != "known"]
    if odd:
        raise ValueError(f"a radial law knows no {odd[0]}: take the planar law for what stands along one axis")
    found = [s for s in scatters if s.law in ("disc", "clearance") and greatest(s) > 0]
    sigma = sqrt(fsum(s.size**2 for s in scatters if s.law == "gaussian"))
    if sigma > 0:
        found.append(Scatter("gaussian", sigma))
    vector = known_sum(scatters)
    if hypot(*vector) > 0:
        found.append(Scatter("known", vector=vector))
    return tuple(found)


def reach_of(scatters: Sequence[Scatter]) -> float:
    """Return the radius beyond which the sum has no density that counts."""
    return fsum(_TAIL * s.size if s.law == "gaussian" else greatest(s) for s in scatters)


def wave_table(scatters: Sequence[Scatter], first: int | None = None) -> WaveTable:
    """Return the transforms of merged scatters at the waves that their sum needs, or the sum of the first ones."""
    reach = reach_of(scatters)
    zeros = [zero_of_j0(n) for n in range(1, waves_needed(scatters[:first], reach) + 1)]
    waves = tuple(zero / reach for zero, _ in zeros)
    norms = tuple(2 / (reach * zero * slope * slope) for zero, slope in zeros)
    return WaveTable(tuple(scatters), reach, waves, norms, tuple(column(s, waves) for s in scatters))


def column(scatter: Scatter, waves: Sequence[float]) -> tuple[float, ...]:
    """Return the transform of a scatter at each wave."""
    return tuple([transform(scatter, wave) for wave in waves])


def waves_needed(scatters: Sequence[Scatter], reach: float) -> int:
    """Return the number of waves after which the product of the transforms is below the precision."""
    few, many = 3, MOST_WAVES
    while few < many:
        middle = (few + many) // 2
        wave = middle * pi / reach
        if prod([envelope(s, wave) for s in scatters]) < PRECISION:
            many = middle
        else:
            few = middle + 1
    return many


def law_of(table: WaveTable, first: int | None = None) -> RadialLaw:
    """Return the law of the sum of all scatters of a table, or of its first ones."""
    return _law(table, table.scatters[:first], table.columns[:first])


def law_with(table: WaveTable, instead: Mapping[int, tuple[Scatter, Sequence[float]]]) -> RadialLaw:
    """Return the law after scatters of a table, by index, gave way to smaller ones with their columns."""
    scatters, columns = list(table.scatters), list(table.columns)
    for index, (scatter, transforms) in instead.items():
        scatters[index], columns[index] = scatter, tuple(transforms)
    return _law(table, scatters, columns)


def _law(table: WaveTable, scatters: Sequence[Scatter], columns: Sequence[Sequence[float]]) -> RadialLaw:
    weights = tuple([norm * prod(row) for norm, row in zip(table.norms, zip(*columns, strict=True), strict=True)])
    return RadialLaw(worst_case(tuple(scatters)), root_mean_square(tuple(scatters)), table.reach, table.waves, weights)


def within(law: RadialLaw, radius: float) -> float:
    """Return the probability that the length is not greater than a radius."""
    if radius < 0:
        return 0.0
    if law.pair is not None:
        return within_two_discs(*law.pair, radius)
    if law.single is not None or not law.waves:
        return _single_within(law.single, radius)
    if radius >= law.reach:
        return 1.0
    total = fsum([w * bessel_j1(k * radius) for k, w in zip(law.waves, law.weights, strict=True)])
    return min(max(radius * total, 0.0), 1.0)


def within_and_density(law: RadialLaw, radius: float) -> tuple[float, float]:
    """Return P(r <= R) by the series and the density there, per mm or rad."""
    total = slope = 0.0
    for wave, weight in zip(law.waves, law.weights, strict=True):
        zeroth, first = bessel_j0_j1(wave * radius)
        total += weight * first
        slope += weight * wave * zeroth
    return radius * total, radius * slope


def exceeding(law: RadialLaw, limit: float) -> float:
    """Return the probability that the length is greater than a limit; what the series cannot tell from 0 is 0."""
    over = 1 - within(law, limit)
    return over if over > 10 * PRECISION else 0.0


def percentile(law: RadialLaw, probability: float, start: float | None = None) -> float:
    """Return the length that is not exceeded with a probability.

    Args:
        law: Law of the length.
        probability: Between 0 and 1, both excluded.
        start: Where to begin the search; Rayleigh's formula with the same mean square when it is left out.

    Raises:
        ValueError: the probability is not between 0 and 1.
    """
    if not 0 < probability < 1:
        raise ValueError(f"probability {probability:g}: it must lie between 0 and 1, for instance 0.95")
    if law.pair is not None:
        return _between(law, probability)
    if law.single is not None or not law.waves:
        return _single_percentile(law.single, probability)
    guess = law.rms * sqrt(-log(1 - probability)) if start is None else start
    return _solve(law, probability, guess)


def _between(law: RadialLaw, probability: float) -> float:
    """Return the root of P(r) - p by false position (Illinois), for a law without a density at hand."""
    low, high, below, above = 0.0, law.reach, -probability, 1 - probability
    x = high
    for _ in range(60):
        x, before = (low * above - high * below) / (above - below), x
        miss = within(law, x) - probability
        if miss < 0:
            low, below, above = x, miss, above / (2 if before < x else 1)
        else:
            high, above, below = x, miss, below / (2 if before > x else 1)
        if abs(x - before) < 1e-9 * law.reach:
            break
    return x


def _solve(law: RadialLaw, probability: float, guess: float) -> float:
    """Return the root of P(r) - p by Newton's rule, kept between bounds that close in."""
    low, high = 0.0, law.reach
    x = min(guess, 0.9 * high)
    for _ in range(60):
        reached, slope = within_and_density(law, x)
        miss = reached - probability
        low, high = (x, high) if miss < 0 else (low, x)
        step = x - miss / slope if slope > 0 else low
        x, before = (step if low < step < high else (low + high) / 2), x
        if abs(x - before) < 2e-6 * law.reach:  # Newton's rule squares the error: what is left is below 1e-10
            break
    return x


def _single_within(scatter: Scatter | None, radius: float) -> float:
    """Return P(r <= R) of one scatter: disc (R/a)^2, Gaussian 1 - exp(-R^2/(2 sigma^2)), clearance c <= 2 R."""
    if scatter is None:
        return 1.0
    if scatter.law == "disc":
        return min(radius / scatter.size, 1.0) ** 2
    if scatter.law == "gaussian":
        return 1 - exp(-0.5 * (radius / scatter.size) ** 2)
    if scatter.law == "clearance":
        return clearance_share(scatter, 2 * radius)
    return 1.0 if radius >= greatest(scatter) else 0.0


def _single_percentile(scatter: Scatter | None, probability: float) -> float:
    if scatter is None or scatter.law == "known":
        return 0.0 if scatter is None else greatest(scatter)
    if scatter.law == "disc":
        return scatter.size * sqrt(probability)
    if scatter.law == "gaussian":
        return scatter.size * sqrt(-2 * log(1 - probability))
    low, high = 0.0, greatest(scatter)
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if _single_within(scatter, middle) < probability else (low, middle)
    return high
