"""The alignment of a plan as a whole."""

import subprocess
import sys

import pytest

from blockgen.alignment.chain import align
from blockgen.alignment.heat import Expansions
from blockgen.alignment.radial import percentile, radial_law
from blockgen.alignment.scatter import known
from blockgen.alignment.terms import offsets, shift
from tests.alignment.draws import lengths, off_by
from tests.sizing.strategies import sized

ALLOW = {"allow_parallel": 0.2, "allow_angular": "1 deg", "allow_axial": 0.5}
STIFF = {"radial_stiffness": "0.5 N/um", "angular_stiffness": 50, "axial_stiffness": "0.05 N/um"}
WARM = {"assembly_temperature": 20, "block_temperature": 50, "nut_side_temperature": 35}
PARTS = Expansions(23.4e-6, 11.5e-6, 11.5e-6, 11.5e-6)


def test_offset_is_that_of_all_terms():
    found = align(sized())
    law = radial_law(offsets(found.terms))
    assert found.offset.p95 == pytest.approx(percentile(law, 0.95), rel=1e-6)
    assert found.offset.p50 < found.offset.p95 < found.offset.p9973 < found.offset.worst


def test_offset_agrees_with_a_million_draws():
    found = align(sized())
    drawn = lengths(offsets(found.terms), 31)
    for value, probability in ((found.offset.p50, 0.5), (found.offset.p95, 0.95), (found.offset.p9973, 0.9973)):
        assert off_by(drawn, value, probability) < 3


def test_static_and_rotating_are_apart():
    found = align(sized(motor={"shaft_runout": 0.04}))
    assert found.offset_rotating.worst == pytest.approx(0.02)
    assert found.offset.worst == pytest.approx(found.offset_static.worst + 0.02)
    assert found.angle_rotating.worst == 0.0
    assert found.angle_static == found.angle


def test_without_an_allowance_no_probability_is_claimed():
    found = align(sized())
    assert (found.offset.limit, found.offset.exceeding, found.use.likely) == (None, None, None)


def test_probability_of_exceeding_the_allowance():
    found = align(sized(coupling=ALLOW | {"allow_parallel": 0.08}))
    drawn = lengths(offsets(found.terms), 32)
    assert off_by(drawn, 0.08, 1 - found.offset.exceeding) < 3


def test_a_wide_allowance_is_not_exceeded_at_all():
    assert align(sized(coupling=ALLOW)).offset.exceeding == 0.0


def test_limits_win_over_the_coupling():
    found = align(sized(coupling=ALLOW, limits={"parallel": 0.1}))
    assert found.offset.limit == 0.1


def test_the_probability_asked_for_is_used():
    found = align(sized(coupling=ALLOW, limits={"probability": 0.99}))
    assert found.offset.p95 < found.offset.judged < found.offset.p9973
    assert found.use.probability == 0.99
    assert found.use.fractions["parallel"] == pytest.approx(found.offset.judged / 0.2)


def test_angle_is_judged_in_radians():
    found = align(sized(coupling=ALLOW))
    assert found.angle.limit == pytest.approx(0.0174533, rel=1e-5)


def test_axial_movement_comes_from_the_layout():
    found = align(sized())  # length +-0.1, setting +-0.2
    assert found.axial_worst == pytest.approx(0.05)
    assert found.axial_judged == pytest.approx(0.0475)


def test_reaction_and_life_need_the_stiffness():
    assert align(sized()).life_ratio is None
    found = align(sized(coupling=ALLOW | STIFF))
    assert found.reaction.force == pytest.approx(500 * found.offset.judged)
    assert found.reaction_worst.force == pytest.approx(500 * found.offset.worst)
    assert found.life_ratio == pytest.approx((3000 / (3000 + found.reaction.force)) ** 3)


def test_heat_widens_the_offset():
    plan = sized(thermal=WARM, screw={"nut_distance_min": 200})
    cold, warm = align(plan), align(plan, PARTS)
    assert cold.heat is None
    assert warm.offset.p95 > cold.offset.p95
    assert "heat_screw_to_guide" in {t.id for t in warm.terms}


def test_elastic_terms_come_in_as_known():
    found = align(sized(), elastic=[shift("load", "motor", known(0.0, 0.05))])
    assert found.offset.p50 > align(sized()).offset.p50
    assert found.offset.worst == pytest.approx(align(sized()).offset.worst + 0.05)


def test_turning_the_spread_of_one_cause_moves_its_share():
    found = align(sized())
    assert found.shares_offset[0].id == "motor_face_runout"
    assert sum(s.of_variance for s in found.shares_angle) == pytest.approx(1.0)


def test_the_block_s_chain_loads_no_numerical_library():
    script = (
        "import sys; from tests.sizing.strategies import sized; from blockgen.alignment.chain import align;"
        "align(sized()); print(sorted({'numpy', 'scipy'} & set(sys.modules)))"
    )
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True, timeout=60)
    assert run.stdout.strip() == "[]"
