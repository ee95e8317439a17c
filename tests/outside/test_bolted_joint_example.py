"""A preloaded joint under a pull against a handbook's worked answer.

Source, read as a stored web page: solutions to chapter 8 of Budynas and Nisbett, Shigley's Mechanical Engineering
Design, page 227, the problem before 8-38: https://www.coursehero.com/file/6628926/24-ch-08-Mechanical-Design-budynas-SM-ch08/
M30 (561 mm2), proof strength 600 MPa, tightened to 252.45 kN, pull 80 kN, joint constant 0.33. The page prints the
numbers of equations (8-28) and (8-29) that are repeated here. NASA-STD-5020 margins are not among these tests: no page
that could be read prints a worked one.
"""

import pytest

from blockgen.mechanics.bolts import load_factor, load_reserve, pull_safety
from blockgen.standards.iso898 import property_class

PRELOAD, PULL, SHARE = 252450.0, 80000.0, 0.33


def test_preload_of_three_quarters_of_the_proof_load():
    """Class 8.8 above 16 mm has the 600 MPa of the example."""
    assert property_class("8.8", 30.0).proof == 600
    assert pytest.approx(PRELOAD) == 0.75 * 561 * 600


def test_load_factor():
    """Printed: 3.19."""
    assert load_reserve(PRELOAD, 600.0, 561.0, SHARE, PULL) == pytest.approx(3.19, abs=0.005)


def test_separation():
    """Printed: 4.71."""
    assert pull_safety(PRELOAD, PULL, SHARE) == pytest.approx(4.71, abs=0.005)


def test_joint_constant_from_stiffness():
    """The constant is k_b / (k_b + k_m): springs of 4 and 12 share a load as 1 to 3."""
    assert load_factor(1 / 4, 1 / 12) == pytest.approx(0.25)
