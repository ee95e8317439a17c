"""Characteristic functions against draws; envelopes; integration points."""

import math

import numpy as np
import pytest

from blockgen.alignment.scatter import clearance, disc, gaussian, known
from blockgen.alignment.waves import clearance_share, envelope, legendre_points, rings_of, transform
from tests.alignment.draws import lengths

LAWS = [disc(0.04), gaussian(0.02), clearance(0.0, 0.06, 0.03), clearance(-0.02, 0.03, 0.02), clearance(0.01, 0.01)]


@pytest.mark.parametrize("scatter", LAWS, ids=lambda s: f"{s.law} {s.low:g}")
@pytest.mark.parametrize("wave", [3.0, 40.0, 150.0])
def test_transform_is_the_mean_of_j0(scatter, wave):
    # E[exp(i k.r)] = E[cos(k x)] with x one component; its length is drawn and turned here
    rng = np.random.default_rng(11)
    drawn = lengths([scatter], 3, 200_000)
    values = np.cos(wave * drawn * np.cos(2 * np.pi * rng.random(len(drawn))))
    error = float(np.std(values)) / math.sqrt(len(values))
    assert transform(scatter, wave) == pytest.approx(float(np.mean(values)), abs=3.5 * error)


def test_a_known_vector_is_j0():
    # J0(1), Abramowitz and Stegun, table 9.1, from memory
    assert transform(known(0.3, 0.4), 2.0) == pytest.approx(0.765197686557967)


@pytest.mark.parametrize("scatter", LAWS, ids=lambda s: f"{s.law} {s.low:g}")
def test_every_transform_begins_at_one(scatter):
    assert transform(scatter, 0.0) == pytest.approx(1.0, abs=1e-12)


@pytest.mark.parametrize("scatter", [disc(0.04), gaussian(0.02), clearance(0.0, 0.06, 0.03)], ids=lambda s: s.law)
def test_envelope_falls_and_lies_above(scatter):
    waves = [1.0 * 1.2**i for i in range(45)]
    outer = [envelope(scatter, w) for w in waves]
    assert outer == sorted(outer, reverse=True)
    assert all(abs(transform(scatter, w)) <= 1.05 * e for w, e in zip(waves, outer, strict=True))


@pytest.mark.parametrize("points", [4, 9, 20])
def test_integration_is_exact_for_polynomials(points):
    for power in range(2 * points):
        exact = 2 / (power + 1) if power % 2 == 0 else 0.0
        assert sum(w * x**power for x, w in legendre_points(points)) == pytest.approx(exact, abs=1e-13)


@pytest.mark.parametrize("scatter", [clearance(0.0, 0.06, 0.03), clearance(-0.02, 0.03, 0.02), clearance(0.0, 0.04, 0)])
def test_ring_weights_are_a_whole(scatter):
    assert sum(w for _, w in rings_of(scatter, 8)) == pytest.approx(1.0, abs=1e-12)


def test_a_tight_fit_is_one_ring_of_radius_0():
    assert rings_of(clearance(-0.03, -0.01), 6) == ((0.0, 1.0),)


def test_share_of_a_symmetric_clearance_is_half_at_its_middle():
    assert clearance_share(clearance(-0.02, 0.04, 0.03), 0.01) == pytest.approx(0.5)
    assert clearance_share(clearance(0.0, 0.04, 0.0), 0.01) == pytest.approx(0.25)
