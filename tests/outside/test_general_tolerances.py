"""ISO 2768-1 against a public table.

"Allgemeintoleranzen", handfest.engineer/Toleranz/Allgemeintol.html, tables of lengths, broken edges and angles after
ISO 2768-1. Reached as an excerpt of a stored copy of that page. Two other pages
(schmidbauer.net/de/toleranzen-din-iso-2768-1, scribd.com/document/ 585640440) print 0.15 and 0.2 for the coarse class
up to 3 and 6 mm; those are values of the older DIN 7168.
"""

from itertools import pairwise

import pytest

from blockgen.standards import iso2768
from blockgen.standards.tables import TableError

LENGTHS = {
    3: (0.05, 0.1, 0.2, None), 6: (0.05, 0.1, 0.3, 0.5), 30: (0.1, 0.2, 0.5, 1), 120: (0.15, 0.3, 0.8, 1.5),
    400: (0.2, 0.5, 1.2, 2.5), 1000: (0.3, 0.8, 2, 4), 2000: (0.5, 1.2, 3, 6), 4000: (None, 2, 4, 8),
}  # fmt: skip
EDGES = {3: (0.2, 0.2, 0.4, 0.4), 6: (0.5, 0.5, 1, 1), 400: (1, 1, 2, 2)}
ANGLES = {
    10: (60, 60, 90, 180),
    50: (30, 30, 60, 120),
    120: (20, 20, 30, 60),
    400: (10, 10, 15, 30),
    401: (5, 5, 10, 20),
}
"""Greatest size of each range, mm, and the values of f, m, c, v: mm, mm, minutes."""


def cells(table):
    return [(size, letter, value) for size, row in table.items() for letter, value in zip("fmcv", row, strict=True)]


@pytest.mark.parametrize(("size", "letter", "value"), cells(LENGTHS))
def test_lengths(size, letter, value):
    if value is None:
        with pytest.raises(TableError, match=f"class {letter} has none"):
            iso2768.general_tolerance(size, letter)
    else:
        assert iso2768.general_tolerance(size, letter) == value


@pytest.mark.parametrize(("below", "above"), list(pairwise(LENGTHS)))
def test_a_range_ends_with_its_greatest_size(below, above):
    assert iso2768.general_tolerance(below + 0.001) == LENGTHS[above][1]


@pytest.mark.parametrize(("size", "letter", "value"), cells(EDGES))
def test_broken_edges(size, letter, value):
    assert iso2768.edge_tolerance(size, letter) == value


@pytest.mark.parametrize(("leg", "letter", "minutes"), cells(ANGLES))
def test_angles(leg, letter, minutes):
    assert iso2768.angular_tolerance(leg, letter) * 60 == pytest.approx(minutes)
