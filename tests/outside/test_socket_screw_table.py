"""ISO 4762 heads against geartoolkit.com/standard/iso/iso-4762 (as reprinted there) and plain head diameters against
codecupboard.com/2019/07/capscrews.html; property classes against nfgab.se, table of EN ISO 898-1:2013; keys against
an excerpt of JIS B 4648:2008, and ASME B18.3-2012 keys against docslib.org/doc/13163929.
"""

import pytest

from blockgen.standards.iso898 import property_class
from blockgen.standards.screws import cap_screw

SIZES = ("M1.6", "M2", "M2.5", "M3", "M4", "M5", "M6", "M8", "M10", "M12", "M14", "M16", "M20", "M24", "M30", "M36")
WASHER_FACE = (2.72, 3.48, 4.18, 5.07, 6.53, 8.03, 9.38, 12.33, 15.33, 17.23, 20.17, 23.17, 28.87, 34.81, 43.61, 52.54)
THREAD_LENGTH = (15, 16, 17, 18, 20, 22, 24, 28, 32, 36, 40, 44, 52, 60, 72, 84)
PLAIN_HEAD = {"M3": 5.5, "M4": 7, "M5": 8.5, "M6": 10, "M8": 13, "M10": 16, "M12": 18, "M16": 24, "M20": 30, "M24": 36}
SHORT_ARM = {"M3": 20.5, "M4": 23, "M5": 29, "M6": 33, "M8": 38, "M10": 44, "M12": 50, "M14": 57, "M16": 70, "M20": 80}
INCH_SHORT_ARM = {"#10": 0.938, "1/4": 1.031, "5/16": 1.219, "3/8": 1.344, "1/2": 1.469, "5/8": 1.719}
# name, diameter, Rm, ReL or Rp0.2, Sp
CLASSES = [
    ("4.6", 10, 400, 240, 225),
    ("5.6", 10, 500, 300, 280),
    ("8.8", 16, 800, 640, 580),
    ("8.8", 20, 830, 660, 600),
    ("10.9", 10, 1040, 940, 830),
    ("12.9", 10, 1220, 1100, 970),
]


@pytest.mark.parametrize(("size", "face", "thread_length"), list(zip(SIZES, WASHER_FACE, THREAD_LENGTH, strict=True)))
def test_washer_face_and_thread_length(size, face, thread_length):
    assert (cap_screw(size).washer_face, cap_screw(size).thread_length) == (face, thread_length)


@pytest.mark.parametrize("size", PLAIN_HEAD)
def test_plain_heads(size):
    assert cap_screw(size).head_diameter == PLAIN_HEAD[size]


@pytest.mark.parametrize("size", SHORT_ARM)
def test_short_arms(size):
    assert cap_screw(size).key_short_arm == SHORT_ARM[size]


@pytest.mark.parametrize("size", INCH_SHORT_ARM)
def test_inch_short_arms(size):
    assert cap_screw(size).key_short_arm == pytest.approx(INCH_SHORT_ARM[size] * 25.4, abs=1e-4)


@pytest.mark.parametrize(("name", "diameter", "tensile", "strength", "proof"), CLASSES)
def test_property_classes(name, diameter, tensile, strength, proof):
    found = property_class(name, diameter)
    assert (found.tensile, found.yield_strength, found.proof) == (tensile, strength, proof)
