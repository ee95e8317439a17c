"""Shear areas of engaged threads against a published table.

Source, read as a stored web page: "Metric Thread Stress and Shear Areas Table", which names "Introduction
to the Design and Behavior of Bolted Joints", 4th edition, as its reference:
https://www.engineersedge.com/hardware/metric_thread_stress_and_shear_areas_table_15797.htm

Its columns hold for an engagement of one diameter and 6H/6g threads. The limits of the threads are not printed there;
those below follow the formulas of ISO 965-1 from memory. M5 to M24, coarse.
"""

import math

import pytest

from blockgen.mechanics.bolts import stress_area
from blockgen.mechanics.stripping import ThreadLimits, external_shear_area, internal_shear_area

# diameter: pitch, d min, d2 min, D2 max, D1 max in mm; then tensile, bolt strip and nut strip area in mm2 as printed
TABLE = {
    5: (0.8, 4.826, 4.361, 4.605, 4.334, "14.183", "35.366", "49.994"),
    6: (1.0, 5.794, 5.212, 5.500, 5.153, "20.123", "51.875", "73.145"),
    8: (1.25, 7.760, 7.042, 7.348, 6.912, "36.609", "97.290", "134.63"),
    10: (1.5, 9.732, 8.862, 9.206, 8.676, "57.990", "155.80", "214.77"),
    12: (1.75, 11.701, 10.679, 11.063, 10.441, "84.267", "227.72", "313.41"),
    14: (2.0, 13.682, 12.503, 12.913, 12.210, "115.44", "313.94", "434.47"),
    16: (2.0, 15.682, 14.503, 14.913, 14.210, "156.67", "417.55", "569.12"),
    20: (2.5, 19.623, 18.164, 18.600, 17.744, "244.79", "665.58", "907.76"),
    24: (3.0, 23.577, 21.803, 22.316, 21.252, "352.50", "971.10", "1320.2"),
}


def digit(printed):
    """One unit of the last digit of a printed number."""
    return 10.0 ** -len(printed.partition(".")[2])


def areas(diameter):
    pitch, major, pitch_diameter, internal_pitch, internal_minor, *printed = TABLE[diameter]
    return ThreadLimits(pitch, major, pitch_diameter, internal_pitch, internal_minor), printed


@pytest.mark.parametrize("diameter", TABLE)
def test_bolt_thread_strip_area(diameter):
    limits, (_, printed, _) = areas(diameter)
    assert external_shear_area(limits, diameter) == pytest.approx(float(printed), abs=digit(printed))


@pytest.mark.parametrize("diameter", TABLE)
def test_nut_thread_strip_area(diameter):
    limits, (_, _, printed) = areas(diameter)
    assert internal_shear_area(limits, diameter) == pytest.approx(float(printed), abs=digit(printed))


@pytest.mark.parametrize("diameter", TABLE)
def test_tensile_stress_area(diameter):
    limits, (printed, *_) = areas(diameter)
    height = math.sqrt(3) / 2 * limits.pitch
    area = stress_area(diameter - 3 / 4 * height, diameter - 17 / 12 * height)
    assert area == pytest.approx(float(printed), rel=2e-4)  # M10 is printed as 57.990, seven digits give 57.9896
