"""Common volumes of crossing cylinders against published closed forms.

E. W. Weisstein, "Steinmetz Solid", MathWorld (mathworld.wolfram.com/SteinmetzSolid.html), equations 8 and 12, read as a
stored copy of the page: two cylinders of radius r have 16/3 r^3 in common, of radii a > b
8/3 a [(a^2 + b^2) E(k) - (a^2 - b^2) K(k)] with k = b/a. Three of radius r: (16 - 8 sqrt 2) r^3, as printed at
mathsbyagirl.wordpress.com/tag/steinmetz. The complete elliptic integrals are worked out here by the
arithmetic-geometric mean (Abramowitz and Stegun 17.6, from memory).
"""

import math

import pytest

pytestmark = pytest.mark.slow


def rod(direction, radius, half=250.0):
    from blockgen.geometry.solid_part import solid_part
    from blockgen.geometry.stand_ins.shapes import rod as cylinder

    start = tuple(-half * d for d in direction)
    return solid_part(str(direction), cylinder(start, direction, radius, 2 * half))


def elliptic(k):
    """Return K and E of the modulus k."""
    a, b, c, total, power = 1.0, math.sqrt(1 - k * k), k, k * k / 2, 0.5
    while abs(c) > 1e-15:
        a, b, c = (a + b) / 2, math.sqrt(a * b), (a - b) / 2
        power *= 2
        total += power * c * c
    first = math.pi / (2 * a)
    return first, first * (1 - total)


@pytest.mark.parametrize("radius", [1.0, 7.5, 40.0])
def test_equation_8_two_equal_cylinders(radius):
    from blockgen.geometry.meeting import common_volume

    found = common_volume(rod((1.0, 0.0, 0.0), radius), rod((0.0, 0.0, 1.0), radius))
    assert found == pytest.approx(16 / 3 * radius**3, rel=1e-3)


@pytest.mark.parametrize(("a", "b"), [(10.0, 9.0), (10.0, 5.0), (22.5, 3.0)])
def test_equation_12_two_unequal_cylinders(a, b):
    from blockgen.geometry.meeting import common_volume

    first, second = elliptic(b / a)
    published = 8 / 3 * a * ((a * a + b * b) * second - (a * a - b * b) * first)
    assert common_volume(rod((1.0, 0.0, 0.0), a), rod((0.0, 0.0, 1.0), b)) == pytest.approx(published, rel=1e-3)


def test_three_equal_cylinders():
    from blockgen.geometry.meeting import common_solids, common_volume
    from blockgen.geometry.solid_part import solid_part

    radius = 10.0
    two = common_solids(rod((1.0, 0.0, 0.0), radius), rod((0.0, 1.0, 0.0), radius))
    found = common_volume(solid_part("two", two[0]), rod((0.0, 0.0, 1.0), radius))
    assert found == pytest.approx((16 - 8 * math.sqrt(2)) * radius**3, rel=1e-3)
