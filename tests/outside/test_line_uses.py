"""Which lines are wide and which narrow, against teaching material of a learning site.

"Linienstärke", dritter-lernort.de/unit/linienstaerke-2/?id=2322, table of line groups (after DIN EN ISO 128-20).
Reached as an excerpt of a stored copy of that page.
"""

import pytest

from blockgen.outputs.drawing.strokes import DASHES, PEN_WIDTH

GROUP_0_5 = {"outline": 0.5, "hidden": 0.25, "centre": 0.25, "thin": 0.25, "cutting": 0.5}
"""Rows a, b, d, g and f of the table, column 0.5."""


@pytest.mark.parametrize(("pen", "width"), GROUP_0_5.items())
def test_widths(pen, width):
    assert PEN_WIDTH[pen] == width


def test_kinds():
    """Rows a and g continuous, b dashed, d and f dashed with dots."""
    assert {pen: len(DASHES.get(pen, ())) for pen in GROUP_0_5} == {
        "outline": 0, "thin": 0, "hidden": 2, "centre": 4, "cutting": 4,
    }  # fmt: skip
