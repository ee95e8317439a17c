"""Law of the length of a sum that is not the same in every direction, by a two-dimensional Fourier series.

Height errors stand along z, yaw and side errors along y, the rest is isotropic. The density, repeated with periods
that keep the copies clear of any circle asked for, is a Fourier series whose coefficients are the characteristic
function; a circle about the centre has the transform 2 pi r J1(k r)/k in closed form. So no grid is laid over the
plane, nothing is counted by pixels, and only the waves that still carry something are summed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil, fsum, hypot, log, pi, prod, sqrt
from typing import TYPE_CHECKING, Any

from blockgen.alignment.scatter import ISOTROPIC, Scatter, greatest, known_sum, root_mean_square, worst_case
from blockgen.alignment.waves import envelope, transform

if TYPE_CHECKING:
    from numpy.typing import NDArray

    Array = NDArray[Any]

PRECISION = 1e-7
MOST_WAVES = 200_000
_TAIL = 6.5
_FAR = 25.0


@dataclass(frozen=True, slots=True)
class PlanarLaw:
    """Distribution of the length of a sum of any scatters.

    Args:
        worst: Greatest length; Gaussians count three standard deviations.
        rms: Root of the mean square.
        reach: Radius beyond which nothing lies.
        cut: Greatest transform that was left out, about; the precision of probabilities.
        waves: Wave numbers, shape (n,).
        weights: Weight of each wave, shape (n,).
        constant: Weight of the wave of length 0.
    """

    worst: float
    rms: float
    reach: float
    cut: float
    waves: Array
    weights: Array
    constant: float


def planar_law(scatters: Sequence[Scatter]) -> PlanarLaw:
    """Return the law of the length of a sum of scatters of every kind.

    Raises:
        ValueError: nothing is isotropic, so that the law is one of lines and the series would not end.
    """
    if not _isotropic(scatters):
        raise ValueError("only lines and known vectors: add an isotropic contributor, or add the lines by hand")
    whole, half_y, half_z = _extents(scatters)
    period_y, period_z = half_y + whole, half_z + whole
    limit, cut = _limit(scatters, period_y * period_z)
    along_y, along_z, share = _lattice(period_y, period_z, limit)
    waves, values = _transforms(scatters, along_y, along_z)
    area = period_y * period_z
    rms = root_mean_square(scatters)
    worst = worst_case(scatters)
    return PlanarLaw(worst, rms, whole, cut, waves, share * values * 2 * pi / area, pi / area)


def within_circle(law: PlanarLaw, radius: float) -> float:
    """Return the probability that the length is not greater than a radius."""
    if radius >= law.reach:
        return 1.0
    ring = radius * float(law.weights @ (bessel(1, law.waves * radius) / law.waves))
    return min(max(law.constant * radius * radius + ring, 0.0), 1.0)


def exceeding_circle(law: PlanarLaw, limit: float) -> float:
    """Return the probability that the length is greater than a limit; what the series cannot tell from 0 is 0."""
    over = 1 - within_circle(law, limit)
    return over if over > 10 * law.cut else 0.0


def percentile_of(law: PlanarLaw, probability: float) -> float:
    """Return the length that is not exceeded with a probability.

    Raises:
        ValueError: the probability is not between 0 and 1.
    """
    if not 0 < probability < 1:
        raise ValueError(f"probability {probability:g}: it must lie between 0 and 1, for instance 0.95")
    low, high = 0.0, law.reach
    x = min(law.rms * sqrt(-log(1 - probability)), 0.9 * high)
    for _ in range(60):
        miss = within_circle(law, x) - probability
        low, high = (x, high) if miss < 0 else (low, x)
        slope = 2 * law.constant * x + x * float(law.weights @ bessel(0, law.waves * x))
        step = x - miss / slope if slope > 0 else low
        x, before = (step if low < step < high else (low + high) / 2), x
        if abs(x - before) < 2e-6 * law.reach:  # Newton's rule squares the error
            break
    return x


def _extents(scatters: Sequence[Scatter]) -> tuple[float, float, float]:
    """Return the reach of the sum, and its half widths along y and z; Gaussians are cut where nothing is left."""
    wide = [Scatter(s.law, _TAIL / 3 * s.size) if s.law.startswith("gaussian") else s for s in scatters]
    vector_y, vector_z = (abs(v) for v in known_sum(wide))
    round_ones = fsum(greatest(s) for s in _isotropic(wide))
    across = vector_y + fsum(greatest(s) for s in wide if s.law.endswith("_y"))
    up = vector_z + fsum(greatest(s) for s in wide if s.law.endswith("_z"))
    return round_ones + hypot(across, up), round_ones + across, round_ones + up


def _limit(scatters: Sequence[Scatter], area: float) -> tuple[float, float]:
    """Return the wave number at which the sum is cut, and about how much the transform may still be there."""
    isotropic = _isotropic(scatters)
    most = sqrt(MOST_WAVES * 16 * pi / area)
    low, high = 0.0, most
    for _ in range(30):
        middle = (low + high) / 2
        small = prod([envelope(s, middle) for s in isotropic]) < PRECISION
        low, high = (low, middle) if small else (middle, high)
    return high, max(prod([envelope(s, high) for s in isotropic]), PRECISION)


def _lattice(period_y: float, period_z: float, limit: float) -> tuple[Array, Array, Array]:
    """Return the waves of a quarter plane up to a wave number, and how many each stands for; the first one is 0."""
    import numpy as np

    y = np.arange(int(limit * period_y / (2 * pi)) + 1) * (2 * pi / period_y)
    z = np.arange(int(limit * period_z / (2 * pi)) + 1) * (2 * pi / period_z)
    along_y, along_z = (a.ravel() for a in np.meshgrid(y, z, indexing="ij"))
    keep = (along_y**2 + along_z**2 <= limit**2) & (along_y + along_z > 0)
    along_y, along_z = along_y[keep], along_z[keep]
    return along_y, along_z, np.where(along_y > 0, 2.0, 1.0) * np.where(along_z > 0, 2.0, 1.0)


def _transforms(scatters: Sequence[Scatter], along_y: Array, along_z: Array) -> tuple[Array, Array]:
    """Return the lengths of waves and the transform of the sum at them, both of shape (n,)."""
    import numpy as np

    waves = np.hypot(along_y, along_z)
    vector_y, vector_z = known_sum(scatters)
    values = np.cos(along_y * vector_y) * np.cos(along_z * vector_z)
    for scatter in scatters:
        if scatter.law.endswith(("_y", "_z")):
            values *= _line(scatter, along_y if scatter.law.endswith("_y") else along_z)
    return waves, values * _round(_isotropic(scatters), waves)


def _line(scatter: Scatter, waves: Array) -> Array:
    import numpy as np

    if scatter.law.startswith("uniform"):
        return np.asarray(np.sinc(waves * (scatter.size / pi)))
    return np.asarray(np.exp(-0.5 * (waves * scatter.size) ** 2))


def _isotropic(scatters: Sequence[Scatter]) -> list[Scatter]:
    return [s for s in scatters if s.law in ISOTROPIC and greatest(s) > 0]


def _round(scatters: Sequence[Scatter], waves: Array) -> Array:
    """Return the transform of the isotropic part, which depends on the length of the wave alone.

    It is an entire function of exponential type (the reach of that part), so that Chebyshev interpolation is exact to
    rounding a little beyond half the reach times the greatest wave.
    """
    import numpy as np
    from numpy.polynomial import chebyshev

    top = float(waves.max())
    degree = ceil(0.6 * top * fsum(greatest(s) for s in scatters)) + 30

    places = chebyshev.chebpts1(degree + 1)
    values = [prod([transform(s, 0.5 * top * (1 + x)) for s in scatters]) for x in places.tolist()]
    series = chebyshev.chebvander(places, degree).T @ np.array(values) * (2 / (degree + 1))
    series[0] /= 2
    return np.asarray(chebyshev.chebval(2 * waves / top - 1, series))


def bessel(order: int, x: Array) -> Array:
    """Return J0 or J1 of an array of arguments that are not negative, shape (n,).

    Source: as in `blockgen.alignment.bessel`: midpoint rule on Bessel's integral, far out Hankel's expansion.
    """
    import numpy as np

    out = np.empty_like(x)
    far = x > _FAR
    near = x[~far]
    sines = np.sin(pi * (np.arange(15) + 0.5) / 30)
    angles = np.outer(near, sines)
    out[~far] = (np.sin(angles) @ sines if order else np.cos(angles).sum(axis=1)) / 15
    out[far] = _hankel(order, x[far])
    return out


def _hankel(order: int, x: Array) -> Array:
    import numpy as np

    phase, term = x - (0.5 * order + 0.25) * pi, np.ones_like(x)
    even, odd = np.zeros_like(x), np.zeros_like(x)
    for k in range(13):
        if k % 2:
            odd += term * (-1) ** (k // 2)
        else:
            even += term * (-1) ** (k // 2)
        term = term * ((4 * order**2 - (2 * k + 1) ** 2) / (8 * (k + 1))) / x
    return np.asarray(np.sqrt(2 / (pi * x)) * (even * np.cos(phase) - odd * np.sin(phase)))
