"""Lengths of sums of random vectors in a plane against closed forms.

Sources: E. W. Weisstein, "Disk Line Picking", MathWorld, https://mathworld.wolfram.com/DiskLinePicking.html,
equations 5, 7 and 9 to 16 (read as a stored page): distance of two random points of a disc, which is the length of
the sum of two vectors uniform in that disc, since a disc is its own mirror image. Rayleigh's quantile
sigma sqrt(-2 ln(1 - p)) as printed under "Circular error probable" in encyclopaedias (read as a stored page);
one disc: area over area. Known vector and disc: area of the lens of two circles (remembered).
"""

import math

import pytest

from blockgen.alignment.planar import planar_law, within_circle
from blockgen.alignment.radial import percentile, radial_law, within
from blockgen.alignment.scatter import clearance, disc, gaussian, known


def moment(law, worst, power, count=1500):
    """E[r^n] = int n r^(n-1) (1 - P(r)) dr by the midpoint rule."""
    step = worst / count
    places = [step * (i + 0.5) for i in range(count)]
    return sum(power * r ** (power - 1) * (1 - within(law, r)) for r in places) * step


def two_disc_density(s):
    return 4 * s / math.pi * math.acos(s / 2) - 2 * s * s / math.pi * math.sqrt(1 - s * s / 4)


@pytest.mark.parametrize(("power", "printed"), [(1, 0.905414787), (2, 1.0), (4, 5 / 3)])
def test_moments_of_two_discs(power, printed):
    assert moment(radial_law([disc(1.0), disc(1.0)]), 2.0, power) == pytest.approx(printed, abs=2e-6)


@pytest.mark.parametrize("s", [0.2, 0.5, 1.0, 1.5, 1.9])
def test_share_of_two_discs(s):
    steps = 4000
    exact = sum(two_disc_density(s * (i + 0.5) / steps) for i in range(steps)) * s / steps
    assert within(radial_law([disc(1.0), disc(1.0)]), s) == pytest.approx(exact, abs=2e-6)
    assert within_circle(planar_law([disc(1.0), disc(1.0)]), s) == pytest.approx(exact, abs=2e-4)


@pytest.mark.parametrize("radius", [0.1, 0.5, 0.9])
def test_one_disc_is_area_over_area(radius):
    assert within(radial_law([disc(1.0)]), radius) == pytest.approx(radius**2)


@pytest.mark.parametrize(("probability", "factor"), [(0.5, 1.1774), (0.95, 2.4477), (0.9973, 3.4393)])
def test_rayleigh(probability, factor):
    # three Gaussians: 1, 2 and 2 make 3; one of them alone takes the closed form
    assert percentile(radial_law([gaussian(1.0), gaussian(2.0), gaussian(2.0)]), probability) == pytest.approx(
        3 * factor, rel=5e-5
    )


@pytest.mark.parametrize("probability", [0.5, 0.95, 0.9973])
def test_the_series_gives_rayleigh_too(probability):
    # a disc of no account forces the series instead of the closed form
    law = radial_law([gaussian(1.0), disc(1e-6)])
    assert law.single is None
    assert percentile(law, probability) == pytest.approx(math.sqrt(-2 * math.log(1 - probability)), rel=1e-6)


def lens(radius, other, distance):
    if distance >= radius + other:
        return 0.0
    if distance <= abs(radius - other):
        return math.pi * min(radius, other) ** 2
    first = math.acos((distance**2 + radius**2 - other**2) / (2 * distance * radius))
    second = math.acos((distance**2 + other**2 - radius**2) / (2 * distance * other))
    kite = (-distance + radius + other) * (distance + radius - other) * (distance - radius + other)
    return radius**2 * first + other**2 * second - 0.5 * math.sqrt(kite * (distance + radius + other))


@pytest.mark.parametrize("radius", [0.3, 0.8, 1.2])
def test_a_known_vector_and_a_disc_are_a_lens(radius):
    law = radial_law([known(0.3, 0.4), disc(1.0)])
    assert within(law, radius) == pytest.approx(lens(radius, 1.0, 0.5) / math.pi, abs=2e-5)


@pytest.mark.parametrize(("sizes", "along"), [((3.0, 4.0), 0.0), ((1.0, 1.0), math.pi / 3), ((2.0, 1.0), math.pi / 2)])
def test_two_known_vectors_make_a_triangle(sizes, along):
    first, second = sizes
    third = math.sqrt(first**2 + second**2 + 2 * first * second * math.cos(along))  # law of cosines
    law = radial_law([known(first, 0.0), known(second * math.cos(along), second * math.sin(along))])
    assert percentile(law, 0.95) == pytest.approx(third)


@pytest.mark.parametrize("radius", [1.2, 2.0, 3.7, 4.9])
def test_two_rings_are_the_angle_of_a_triangle(radius):
    # lengths 3 and 2 in random directions: P(r < R) is the angle between the sides over pi
    law = radial_law([clearance(6.0, 6.0), known(2.0, 0.0), gaussian(0.01)])
    exact = 1 - math.acos((radius**2 - 13) / 12) / math.pi
    assert within(law, radius) == pytest.approx(exact, abs=2e-3)


def test_adding_radii_by_squares_is_unsafe():
    # engineering practice of one dimension: sqrt(sum a^2) as if it were a P95 or a P99.73
    for count in range(3, 9):
        law = radial_law([disc(1.0)] * count)
        by_squares = math.sqrt(count)
        assert 1.185 <= percentile(law, 0.95) / by_squares <= 1.215
        assert 1.475 <= percentile(law, 0.9973) / by_squares <= 1.655
