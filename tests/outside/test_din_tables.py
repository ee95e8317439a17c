"""ISO 273, DIN 974-1, DIN 76-1 against M. Klein, Einführung in die DIN-Normen, 14th ed., Teubner 2008.

As transcribed by J. Rheinländer in standards.py (2012, LGPL); sizes where other public tables err are here on purpose.
"""

import pytest

from blockgen.standards.din76 import drill_runout
from blockgen.standards.din974 import counterbore
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.threads import thread

CLEARANCE = {
    "M12": (13, 13.5, 14.5),
    "M14": (15, 15.5, 16.5),
    "M16": (17, 17.5, 18.5),
    "M18": (19, 20, 21),
    "M20": (21, 22, 24),
    "M8": (8.4, 9.0, 10),
}
# series 1, 4, 5
COUNTERBORES = {
    "M3": (6.5, 7, 9),
    "M4": (8, 9, 10),
    "M5": (10, 11, 13),
    "M6": (11, 13, 15),
    "M8": (15, 16, 18),
    "M10": (18, 20, 24),
    "M12": (20, 24, 26),
    "M14": (24, 26, 30),
    "M16": (26, 30, 33),
    "M20": (33, 36, 40),
    "M24": (40, 43, 48),
    "M30": (50, 54, 61),
    "M36": (58, 63, 69),
}
RUNOUTS = {
    "M3": 2.8,
    "M4": 3.8,
    "M5": 4.2,
    "M6": 5.1,
    "M8": 6.2,
    "M10": 7.3,
    "M12": 8.3,
    "M16": 9.3,
    "M20": 11.2,
    "M24": 13.1,
    "M30": 15.2,
    "M36": 16.8,
}


@pytest.mark.parametrize("size", CLEARANCE)
def test_clearance_holes(size):
    assert tuple(clearance_hole(size, series) for series in ("fine", "medium", "coarse")) == CLEARANCE[size]


@pytest.mark.parametrize("size", COUNTERBORES)
def test_counterbores(size):
    found = counterbore(size)
    assert (found.diameter, found.with_small_washer, found.with_washer) == COUNTERBORES[size]


@pytest.mark.parametrize("size", RUNOUTS)
def test_runouts(size):
    assert drill_runout(thread(size)) == RUNOUTS[size]
