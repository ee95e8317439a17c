"""ISO 286 fits against the PyPI package `pressfit` 0.1.0 (MIT), which was entered by hand from printed tables.

It knows holes H and shafts c to u in grades 5 to 11, sizes above 0 up to 500 mm: all 28,000 fits of the classes that
both know, at every whole millimetre, agree without exception.
"""

import pressfit
import pytest

from blockgen.standards import iso286

SHAFTS = [
    f"{letter}{grade}"
    for letter in pressfit.SHAFT_LETTERS
    for grade in pressfit.GRADES
    if iso286.is_class(f"{letter}{grade}")
]


def test_every_letter_that_both_know_is_compared():
    assert {name.rstrip("0123456789") for name in SHAFTS} == {"f", "g", "h", "js", "k", "m", "n", "p"}


@pytest.mark.parametrize("shaft", SHAFTS)
def test_fits_agree_from_1_to_500_mm(shaft):
    hole = f"H{shaft.lstrip('fghjskmnp')}"
    differences = []
    for size in range(1, 501):
        theirs = pressfit.fit(f"{size} {hole}/{shaft}")
        ours = iso286.fit(size, hole, shaft)
        expected = (theirs.hole_es_um, theirs.hole_ei_um, theirs.shaft_es_um, theirs.shaft_ei_um, *theirs.clearance_um)
        millimetres = (ours.hole.upper, ours.hole.lower, ours.shaft.upper, ours.shaft.lower)
        millimetres += (ours.min_clearance, ours.max_clearance)
        found = tuple(round(value * 1000, 4) for value in millimetres)
        if found != expected or ours.kind != theirs.kind:
            differences.append((size, expected, found, theirs.kind, ours.kind))
    assert differences == []
