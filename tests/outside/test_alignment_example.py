"""The worked example of a motor of 70 h7 and a bearing unit of 50 h6 in one block, and beside it separate parts.

A published example of such a chain is not known to us: the figures are a calculation of our own by Monte Carlo, older
than this code. Bores H7 coaxial within diam 0.02, seats 0.02/90 (motor) and 0.01/90 (bearing), unit
0.01 FIM and its face 0.01/90, motor spigot and face 0.08 FIM (normal class of IEC 60072-1, as reprinted) or 0.04
(reduced) at diam 90, arms 40 and 50 mm. Worst 0.161 and 0.123, P95 0.074 and 0.050, P99.73 0.096 and 0.068.
"""

import pytest

from blockgen.alignment.planar import percentile_of, planar_law
from blockgen.alignment.radial import percentile, radial_law
from blockgen.alignment.scatter import Scatter, mean_square, worst_case
from blockgen.standards.flanges import runout_class
from blockgen.standards.iso286 import fit
from tests.alignment.draws import example, lengths, off_by


def test_inputs_are_those_of_the_standards():
    assert fit(70, "H7", "h7").max_clearance == pytest.approx(0.060)
    assert fit(50, "H7", "h6").max_clearance == pytest.approx(0.041)
    assert (runout_class(70, "spigot", "normal"), runout_class(70, "spigot", "reduced")) == (0.08, 0.04)


@pytest.mark.parametrize(
    ("fim", "worst", "p95", "p9973"), [(0.08, 0.161, 0.074, 0.096), (0.04, 0.123, 0.050, 0.068)]
)  # fmt: skip
def test_one_block(fim, worst, p95, p9973):
    law = radial_law(example(fim))
    assert law.worst == pytest.approx(worst, abs=5e-4)
    assert percentile(law, 0.95) == pytest.approx(p95, abs=5e-4)
    assert percentile(law, 0.9973) == pytest.approx(p9973, abs=5e-4)


def test_shares():
    squares = [mean_square(s) for s in example()]
    groups = {"spigot": [7], "face": [8], "clearances": [0, 1], "coaxiality": [2]}
    of = {name: 100 * sum(squares[i] for i in places) / sum(squares) for name, places in groups.items()}
    assert of["spigot"] == pytest.approx(41, abs=0.5)
    assert of["face"] == pytest.approx(32, abs=0.5)
    assert of["clearances"] == pytest.approx(19.8, abs=0.1)  # noted as 19 when cut off
    assert of["coaxiality"] == pytest.approx(3, abs=0.5)


def test_separate_parts_with_heights_of_002():
    # the same without common boring, and both heights +-0.02: no digits are known, a million draws are the measure
    scatters = [s for i, s in enumerate(example()) if i != 2] + [Scatter("uniform_z", 0.02)] * 2
    law, drawn = planar_law(scatters), lengths(scatters, 99)
    assert worst_case(scatters) == pytest.approx(0.151 + 0.04, abs=5e-4)
    for probability in (0.5, 0.95, 0.9973):
        assert off_by(drawn, percentile_of(law, probability), probability) < 3
