"""Unified threads, computed from remembered formulas of ASME B1.1, against published tables of their results.

[A] Cap screws and bolts, external thread dimensions, class 2A, ASME B1.1: scribd.com/document/403615854.
[B] Internal thread dimensions for unified UNC screw threads, class 2B: scribd.com/document/395466526. The standard
    rounds minor limits to three decimals. A misprint is put right: 1/2-13 minor 0.4700 (0.417).
[C] Tensile stress, thread root and stripping areas: scribd.com/document/219093147; for 1/2-20:
    boltport.com/threads/unf.
"""

from math import pi, sqrt

import pytest

from blockgen.standards.threads import thread

INCH = 25.4

# designation: least major diameter, least pitch diameter, inches [A]
EXTERNAL_2A = {
    "4-40 UNC": (0.1061, 0.0925),
    "6-32 UNC": (0.1312, 0.1141),
    "8-32 UNC": (0.1571, 0.1399),
    "10-24 UNC": (0.1818, 0.1586),
    "10-32 UNF": (0.1831, 0.1658),
    "1/4-20 UNC": (0.2408, 0.2127),
    "1/4-28 UNF": (0.2425, 0.2225),
}

# designation: greatest and least pitch diameter, greatest and least minor diameter, inches [B]
INTERNAL_2B = {
    "4-40 UNC": (0.0991, 0.0958, 0.0939, 0.0849),
    "6-32 UNC": (0.1214, 0.1177, 0.1140, 0.1040),
    "8-32 UNC": (0.1475, 0.1437, 0.1390, 0.1300),
    "10-24 UNC": (0.1672, 0.1629, 0.1560, 0.1450),
    "1/4-20 UNC": (0.2224, 0.2175, 0.2070, 0.1960),
    "5/16-18 UNC": (0.2817, 0.2764, 0.2650, 0.2520),
    "3/8-16 UNC": (0.3401, 0.3344, 0.3210, 0.3070),
    "1/2-13 UNC": (0.4565, 0.4500, 0.4340, 0.4170),
    "5/8-11 UNC": (0.5732, 0.5660, 0.5460, 0.5270),
}

# designation: tensile stress area, sq in; stripping area of the internal thread, sq in for an inch of engagement [C]
AREAS = {
    "10-24 UNC": (0.0175, 0.401),
    "10-32 UNF": (0.0200, 0.389),
    "1/4-20 UNC": (0.0318, 0.539),
    "1/4-28 UNF": (0.0364, 0.521),
    "5/16-18 UNC": (0.0524, 0.682),
    "5/16-24 UNF": (0.0581, 0.663),
    "3/8-16 UNC": (0.0775, 0.828),
    "3/8-24 UNF": (0.0878, 0.800),
    "1/2-13 UNC": (0.1419, 1.12),
    "1/2-20 UNF": (0.1599, 1.08),
    "5/8-11 UNC": (0.226, 1.42),
}


@pytest.mark.parametrize("name", EXTERNAL_2A)
def test_external_limits(name):
    t = thread(name)
    assert (t.external_major_min / INCH, t.external_pitch_min / INCH) == pytest.approx(EXTERNAL_2A[name], abs=1.1e-4)


@pytest.mark.parametrize("name", INTERNAL_2B)
def test_internal_limits(name):
    t = thread(name)
    pitch_max, pitch_min, minor_max, minor_min = INTERNAL_2B[name]
    assert (t.internal_pitch_max / INCH, t.pitch_diameter / INCH) == pytest.approx((pitch_max, pitch_min), abs=1.1e-4)
    assert (t.internal_minor_max / INCH, t.minor_diameter / INCH) == pytest.approx((minor_max, minor_min), abs=6e-4)


@pytest.mark.parametrize("name", AREAS)
def test_stress_and_stripping_areas(name):
    t = thread(name)
    major, pitch = t.external_major_min / INCH, t.pitch / INCH
    nut = pi * major / pitch * (pitch / 2 + (major - t.internal_pitch_max / INCH) / sqrt(3))
    stress, stripping = AREAS[name]
    assert t.stress_area / INCH**2 == pytest.approx(stress, abs=6e-5 if stress < 0.2 else 6e-4)
    assert nut == pytest.approx(stripping, rel=6e-3)  # 0.0001 in of a rounded limit is worth 0.3 %
