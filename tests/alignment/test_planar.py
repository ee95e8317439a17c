"""The planar law against the radial one, a million draws, and closed forms."""

import numpy as np
import pytest

from blockgen.alignment.bessel import bessel_j0, bessel_j1
from blockgen.alignment.planar import bessel, percentile_of, planar_law, within_circle
from blockgen.alignment.radial import percentile, radial_law
from blockgen.alignment.scatter import Scatter, disc, gaussian, known
from tests.alignment.draws import example, lengths, off_by

LINES = [Scatter("uniform_z", 0.02), Scatter("uniform_z", 0.02), Scatter("uniform_y", 0.03)]
SUMS = {
    "heights": [*example(), *LINES],
    "known": [*example(), *LINES, known(0.02, -0.03)],
    "gaussian lines": [*example(0.04), Scatter("gaussian_y", 0.02), Scatter("gaussian_z", 0.01)],
    "screw holes": [*example(), Scatter("uniform_y", 0.5), Scatter("uniform_y", 0.5), *LINES],
}


@pytest.mark.parametrize("name", SUMS)
def test_agrees_with_a_million_draws_within_their_error(name):
    law, drawn = planar_law(SUMS[name]), lengths(SUMS[name], 2025)
    for probability in (0.5, 0.95, 0.9973):
        assert off_by(drawn, percentile_of(law, probability), probability) < 3


def test_agrees_with_the_radial_law_where_all_directions_are_alike():
    planar, radial = planar_law(example()), radial_law(example())
    for probability in (0.05, 0.5, 0.95, 0.9973):
        assert percentile_of(planar, probability) == pytest.approx(percentile(radial, probability), rel=1e-5)


def test_y_and_z_may_be_exchanged():
    turned = [Scatter("uniform_y", s.size) if s.law.endswith("z") else Scatter("uniform_z", s.size) for s in LINES]
    there, back = planar_law([*example(), *LINES]), planar_law([*example(), *turned])
    assert percentile_of(there, 0.95) == pytest.approx(percentile_of(back, 0.95), rel=1e-9)


def test_two_alike_gaussian_lines_are_a_round_gaussian():
    lines = [gaussian(0.003), Scatter("gaussian_y", 0.004), Scatter("gaussian_z", 0.004)]
    # Rayleigh: sigma 0.005, P95 = sigma sqrt(-2 ln 0.05)
    assert percentile_of(planar_law(lines), 0.95) == pytest.approx(0.005 * 2.4477468, rel=1e-6)


def test_all_lies_within_the_reach():
    law = planar_law(SUMS["heights"])
    assert within_circle(law, law.reach) == 1.0
    assert within_circle(law, 0.999 * law.worst) == pytest.approx(1.0, abs=1e-6)
    assert within_circle(law, 0.0) == pytest.approx(0.0, abs=1e-9)


def test_arrays_of_bessel_functions_are_the_plain_ones():
    x = np.array([0.0, 0.5, 3.0, 24.9, 25.1, 400.0])
    assert bessel(0, x) == pytest.approx([bessel_j0(v) for v in x.tolist()], abs=1e-13)
    assert bessel(1, x) == pytest.approx([bessel_j1(v) for v in x.tolist()], abs=1e-13)


def test_lines_alone_are_refused():
    with pytest.raises(ValueError, match="add an isotropic contributor"):
        planar_law([Scatter("uniform_z", 0.02)])


def test_a_probability_lies_between_0_and_1():
    with pytest.raises(ValueError, match="must lie between 0 and 1"):
        percentile_of(planar_law([disc(0.1), disc(0.1), disc(0.1)]), 1.5)
