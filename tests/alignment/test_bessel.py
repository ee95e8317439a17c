"""Bessel functions against printed values, their zeros, and the identities that tie them together."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.alignment.bessel import bessel_j0, bessel_j0_j1, bessel_j1, zero_of_j0


# Abramowitz and Stegun, table 9.1, from memory
@pytest.mark.parametrize(
    ("x", "j0", "j1"),
    [(0.0, 1.0, 0.0), (1.0, 0.765197686557967, 0.440050585744934), (5.0, -0.177596771314338, -0.327579137591465),
     (10.0, -0.245935764451348, 0.043472746168861)],
)  # fmt: skip
def test_printed_values(x, j0, j1):
    assert bessel_j0(x) == pytest.approx(j0, abs=1e-14)
    assert bessel_j1(x) == pytest.approx(j1, abs=1e-14)


def test_first_zeros():
    # Abramowitz and Stegun, table 9.5, from memory
    assert [zero_of_j0(n)[0] for n in (1, 2, 3)] == pytest.approx(
        [2.404825557695773, 5.520078110286311, 8.653727912911]
    )


@given(st.floats(0.01, 2000.0))
def test_they_solve_bessels_equation(x):
    # (x J1)' = x J0 integrated by Simpson's rule over a short stretch
    h = 1e-3 * min(x, 1.0)
    area = h / 3 * sum(w * t * bessel_j0(t) for w, t in ((1, x - h), (4, x), (1, x + h)))
    assert (x + h) * bessel_j1(x + h) - (x - h) * bessel_j1(x - h) == pytest.approx(area, abs=1e-11 * max(x, 1))


@pytest.mark.parametrize("function", [bessel_j0, bessel_j1])
@pytest.mark.parametrize("seam", [2.5, 25.0])
def test_no_step_where_the_rule_changes(function, seam):
    before, after = function(seam - 1e-9), function(seam + 1e-9)
    assert before == pytest.approx(after, abs=2e-9)
    assert function(seam) == pytest.approx((before + after) / 2, abs=1e-14)


@pytest.mark.parametrize("number", [1, 2, 10, 100, 1000])
def test_zeros_are_zeros_in_order(number):
    zero, slope = zero_of_j0(number)
    assert abs(bessel_j0(zero)) < 1e-13
    assert (number - 0.5) * math.pi < zero < number * math.pi
    assert slope == bessel_j1(zero)


@pytest.mark.parametrize("x", [0.0, 0.3, 2.4, 2.6, 11.0, 24.9, 25.1, 300.0])
def test_both_together_are_both_alone(x):
    assert bessel_j0_j1(x) == pytest.approx((bessel_j0(x), bessel_j1(x)), abs=1e-14)
