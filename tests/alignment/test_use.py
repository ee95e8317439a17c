"""Use of the coupling, its reactions, bearing life, the sum of two uniform errors."""

import pytest

from blockgen.alignment.use import (
    Allowances,
    CouplingStiffness,
    Movement,
    ball_life_ratio,
    coupling_use,
    reaction,
)

WORST, LIKELY = Movement(0.16, 0.002, 0.3), Movement(0.08, 0.001, 0.2)


def test_use_is_the_sum_of_fractions():
    use = coupling_use(WORST, LIKELY, 0.95, Allowances(0.2, 0.02, 0.5))
    assert use.likely == pytest.approx(0.4 + 0.05 + 0.4)
    assert use.worst == pytest.approx(0.8 + 0.1 + 0.6)
    assert use.label.startswith("estimate")
    assert use.missing == ()


def test_a_missing_allowance_leaves_the_sum_open_and_is_named():
    use = coupling_use(WORST, LIKELY, 0.95, Allowances(0.2, None, None))
    assert (use.worst, use.likely) == (None, None)
    assert use.missing == ("coupling.allow_angular", "coupling.allow_axial")
    assert use.fractions == pytest.approx({"parallel": 0.4})


def test_reaction_of_a_stiff_coupling():
    back = reaction(LIKELY, CouplingStiffness(0.5, 60.0, 0.05), 50.0, 40.0)
    assert back.force == pytest.approx(40.0)  # 0.5 N/um x 80 um
    assert back.bending == pytest.approx(0.06)
    assert back.axial == pytest.approx(10.0)  # 0.05 N/um x 200 um
    assert back.journal_moment == pytest.approx(40 * 0.05 + 0.06)
    assert back.motor_moment == pytest.approx(40 * 0.04 + 0.06)


def test_without_stiffness_there_is_no_reaction():
    back = reaction(LIKELY, CouplingStiffness(0.5, None, None), 50.0, 40.0)
    assert back.force == pytest.approx(40.0)
    assert (back.bending, back.axial, back.journal_moment, back.motor_moment) == (None, None, None, None)


def test_life_falls_with_the_cube():
    assert ball_life_ratio(1000.0, 1000.0) == pytest.approx(1 / 8)
    assert ball_life_ratio(1000.0, 0.0) == 1.0


def test_life_needs_a_load():
    with pytest.raises(ValueError, match=r"give screw\.thrust"):
        ball_life_ratio(0.0, 10.0)
