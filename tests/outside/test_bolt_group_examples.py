"""Sharing of an eccentric force in its plane against published worked examples.

Sources, read as stored web pages; all use the elastic method, which is the vector sum of F/n and M r / sum r^2:

- four bolts, 100 kN at 200 mm: https://steelcalculator-dev.pages.dev/reference/eu-bolt-group-capacity/
- six bolts, sum of r^2: https://steelcalculator.app/reference/as4100-bolt-group-worked-example/ (step 1)
- eight bolts, 180 kN at 250 mm: https://steelcalculator.app/uk-bolt-group-design-example/ (step 2; the bolt that the
  example looks at is not the worst one, its components are right)
"""

import math

import pytest

from blockgen.mechanics.slip import greatest_share, moment_about_centre, screw_pattern_inertia, shear_shares


def test_four_bolts():
    positions = [(-50.0, -50.0), (50.0, -50.0), (50.0, 50.0), (-50.0, 50.0)]
    force = (0.0, -100e3)
    moment = moment_about_centre(positions, force, (200.0, 0.0))
    assert moment == pytest.approx(-20000.0)
    assert screw_pattern_inertia(positions) == 20000.0
    assert greatest_share(shear_shares(positions, force, moment)) / 1000 == pytest.approx(90.1, abs=0.05)


def test_six_bolts():
    positions = [(x, y) for x in (0.0, 80.0) for y in (0.0, 70.0, 140.0)]
    assert screw_pattern_inertia(positions) == pytest.approx(29200.0)


def test_eight_bolts():
    positions = [(x, y) for x in (-45.0, 45.0) for y in (-112.5, -37.5, 37.5, 112.5)]
    shares = shear_shares(positions, (0.0, -180e3), -45e3)
    along_x, along_y = shares[positions.index((-45.0, 112.5))]
    assert along_x / 1000 == pytest.approx(69.9, abs=0.05)
    assert along_y / 1000 == pytest.approx(5.5, abs=0.05)
    assert math.hypot(along_x, along_y) / 1000 == pytest.approx(70.1, abs=0.05)
