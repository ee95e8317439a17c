"""Frequencies of a free-free beam.

Euler's beam: (beta l) = 4.730041, 7.853205; f = (beta l)^2/(2 pi l^2) sqrt(E I/(rho A)); R. D. Blevins, Formulas for
Natural Frequency and Mode Shape, table 8-1, from memory. The bar is slender, so that shear takes less than 1 % off.
"""

from __future__ import annotations

import math

import numpy as np
import pytest

pytestmark = pytest.mark.slow
pytest.importorskip("ngsolve")

MODULUS, POISSON, DENSITY = 210_000.0, 0.3, 7.85e-9  # MPa, t/mm3
LENGTH, WIDTH, HEIGHT = 300.0, 12.0, 8.0


@pytest.fixture(scope="module")
def squares():
    """Lowest eigenvalues of a free bar, the six of rigid motion first, by inverse iteration about a shift."""
    import ngsolve

    from blockgen.evidence.stiffness.system import System
    from tests.outside.modal import lowest
    from tests.outside.solids import bar, meshed

    system = System(meshed(bar(LENGTH, WIDTH, HEIGHT), 12), MODULUS, POISSON)
    return lowest(system, DENSITY, 10, shift=-((2 * math.pi * 100) ** 2)), ngsolve


def test_six_rigid_motions_then_bending(squares):
    values = squares[0]
    assert np.all(np.abs(values[:6]) < 1e-4 * values[6])
    found = np.sqrt(values[6:10]) / (2 * math.pi)
    for factor, both in ((4.730041, (0, 2)), (7.853205, (1, 3))):
        for depth, index in zip((HEIGHT, WIDTH), both, strict=True):
            root = math.sqrt(MODULUS * depth**2 / 12 / DENSITY)
            beam = factor**2 / (2 * math.pi * LENGTH**2) * root
            assert min(abs(f / beam - 1) for f in found) < 0.015, (beam, found, index)
