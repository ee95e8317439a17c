"""Proof and ultimate loads of coarse threads against tables reprinted from ISO 898-1.

Sources, read as stored web pages:

- proof loads "according to EN ISO 898-1", M3 to M39:
  https://staging2.optimas.com/technical-resources/iso-metric-thread-proof-loads
- minimum ultimate tensile loads, Table 6 of EN ISO 898-1:
  http://usefastener.com/knowledge/404-minimum-ultimate-tensile-loads-for-metric-coarse-pitch-thread-en-iso-898-1.html

Both print three significant digits, most of them cut from the product of a rounded area and the stress: one unit of
the third digit is allowed.
"""

import math

import pytest

from blockgen.standards.iso898 import property_class
from blockgen.standards.threads import thread

# size, area in mm2, then proof loads and ultimate loads in N of 8.8, 10.9 and 12.9
PRINTED = [
    ("M4", 8.78, "5100 7290 8520", "7020 9130 10700"),
    ("M5", 14.2, "8230 11800 13800", "11350 14800 17300"),
    ("M6", 20.1, "11600 16700 19500", "16100 20900 24500"),
    ("M8", 36.6, "21200 30400 35500", "29200 38100 44600"),
    ("M10", 58.0, "33700 48100 56300", "46400 60300 70800"),
    ("M12", 84.3, "48900 70000 81800", "67400 87700 103000"),
    ("M16", 157.0, "91000 130000 152000", "125000 163000 192000"),
    ("M20", 245.0, "147000 203000 238000", "203000 255000 299000"),
    ("M24", 353.0, "212000 293000 342000", "293000 367000 431000"),
]
CLASSES = ("8.8", "10.9", "12.9")


def third_digit(value):
    return 10.0 ** (math.floor(math.log10(value)) - 2)


def stress_area(name):
    """ISO 898-1 form, from memory: pi/4 ((d2 + d3)/2)^2."""
    screw = thread(name)
    return math.pi / 4 * ((screw.pitch_diameter + screw.root_diameter) / 2) ** 2


@pytest.mark.parametrize(("name", "area"), [row[:2] for row in PRINTED])
def test_stress_areas(name, area):
    assert stress_area(name) == pytest.approx(area, abs=third_digit(area))


@pytest.mark.parametrize(("name", "area", "proof", "ultimate"), PRINTED)
def test_proof_and_ultimate_loads(name, area, proof, ultimate):
    """The ultimate load of M4 in class 10.9 is printed as 91130, a slip for 9130."""
    for grade, held, broken in zip(CLASSES, proof.split(), ultimate.split(), strict=True):
        strength = property_class(grade, thread(name).diameter)
        assert strength.proof * area == pytest.approx(float(held), abs=third_digit(float(held)))
        assert strength.tensile * area == pytest.approx(float(broken), abs=third_digit(float(broken)))
