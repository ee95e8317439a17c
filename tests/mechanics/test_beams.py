"""Quick stiffness of walls."""

import math

import pytest

from blockgen.mechanics.beams import (
    body_inertia,
    cantilever_stiffness,
    in_series,
    nodding_frequency,
    shear_modulus,
    spanning_stiffness,
    strip_rotation_stiffness,
    strip_torsion_stiffness,
)

E, G = 70000.0, 26316.0


@pytest.mark.parametrize(("thickness", "newton_per_micrometre"), [(15, 39), (20, 88), (25, 162), (30, 261)])
def test_a_wall_of_aluminium_90_wide_and_50_high(thickness, newton_per_micrometre):
    """Worked by hand from the same formula, E = 69 GPa and Poisson's ratio 0.33."""
    found = cantilever_stiffness(90.0, 50.0, thickness, 69000.0, shear_modulus(69000.0, 0.33)) / 1000
    assert found == pytest.approx(newton_per_micrometre, abs=0.6)


def test_slender_strips_bend_as_euler_says():
    inertia = 10 * 2**3 / 12
    assert cantilever_stiffness(10.0, 500.0, 2.0, E, G) == pytest.approx(3 * E * inertia / 500**3, rel=1e-3)
    assert spanning_stiffness(10.0, 500.0, 2.0, E, G) == pytest.approx(192 * E * inertia / 500**3, rel=1e-3)


def test_a_strip_held_at_both_ends_is_stiffer_than_two_cantilevers_of_half_the_span():
    assert spanning_stiffness(50.0, 60.0, 25.0, E, G) > 2 * cantilever_stiffness(50.0, 30.0, 25.0, E, G)


def test_series():
    assert in_series(100.0, 100.0) == pytest.approx(50.0)
    assert 1 - in_series(9.0, 1.0) == pytest.approx(0.1)


def test_shear_modulus():
    assert shear_modulus(210000.0, 0.3) == pytest.approx(80769.2, abs=0.1)


def test_rotation_and_torsion_grow_with_thickness():
    assert strip_rotation_stiffness(50.0, 60.0, 20.0, E) == pytest.approx(E * 50 * 20**3 / 12 / 60)
    thin, thick = (strip_torsion_stiffness(50.0, 60.0, t, G) for t in (10.0, 20.0))
    assert 6 < thick / thin < 8


def test_torsion_of_a_square_bar():
    """J of a square is 0.1406 a^4 (handbooks); the form in use is at its worst there."""
    found = strip_torsion_stiffness(20.0, 100.0, 20.0, G) * 100 / 4 / G
    assert found == pytest.approx(0.1406 * 20**4, rel=0.16)


def test_a_mass_on_a_spring():
    """1 kg at 100 mm on 10 000 N*m/rad: sqrt(1e4 / 0.01) / 2 pi."""
    assert nodding_frequency(1e7, 1.0, 100.0, 0.0) == pytest.approx(math.sqrt(1e6) / (2 * math.pi))
    assert nodding_frequency(1e7, 1.0, 100.0, 5000.0) < nodding_frequency(1e7, 1.0, 100.0, 0.0)


def test_inertia_of_a_bar():
    assert body_inertia(3.0, 80.0, 150.0) == pytest.approx(3 * (80**2 + 150**2) / 12)
