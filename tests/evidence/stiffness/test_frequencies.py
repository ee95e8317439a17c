"""Frequencies of a body on an elastic seat against closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest

from blockgen.evidence.stiffness.frequencies import body_mass, frequencies


def test_point_mass_on_a_spring():
    compliance = np.diag([1e-5, 2e-5, 3e-5, 1e-12, 1e-12, 1e-12])
    found = frequencies(compliance, body_mass(0.002, np.zeros(3), 0.0))
    expected = [1 / (2 * math.pi * math.sqrt(c * 0.002)) for c in (3e-5, 2e-5, 1e-5)]
    assert found == pytest.approx(expected)


def test_nodding_body():
    """A seat that only turns about y: k_theta = 1/C, f = sqrt(k/(m l^2 + I))/(2 pi)."""
    compliance = np.zeros((6, 6))
    compliance[4, 4] = 1e-9
    found = frequencies(compliance, body_mass(0.003, np.array([1.0, 2.0, 2.0]), 60.0))
    assert found[0] == pytest.approx(math.sqrt(1e9 / (0.003 * 60**2 + 2.0)) / (2 * math.pi))


def test_kinetic_energy_of_a_turning_body():
    """v = omega x r for a body turning about y and z through the seat."""
    mass = body_mass(0.004, np.array([1.0, 2.0, 3.0]), 50.0)
    for axis, inertia in ((4, 2.0 + 0.004 * 2500), (5, 3.0 + 0.004 * 2500)):
        assert mass[axis, axis] == pytest.approx(inertia)
    motion = np.array([0, 0.5, 0.3, 0, 0.02, 0.04])  # shift and turn
    centre = np.array([0, 0.5 + 0.04 * 50, 0.3 - 0.02 * 50])
    energy = 0.004 * centre @ centre + 2.0 * 0.02**2 + 3.0 * 0.04**2
    assert motion @ mass @ motion == pytest.approx(energy)
