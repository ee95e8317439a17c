"""Lengths of dashes, gaps and dots against teaching notes.

"LV3 Wiederholung Liniendarstellung", de.scribd.com/document/726858533, last section (after EN ISO 128-21). Reached as
an excerpt of a stored copy. The notes draw hidden edges 0.35 mm wide, as an older standard did; the rule in widths is
theirs, the width of 0.25 mm is that of test_line_uses. Dots of all lines and the dashes of the cutting plane were put
right after them.
"""

import pytest

from blockgen.outputs.drawing.strokes import DASHES, PEN_WIDTH


def test_hidden_edges_have_dashes_of_12_widths_and_gaps_of_3():
    width = PEN_WIDTH["hidden"]
    assert DASHES["hidden"] == pytest.approx((12 * width, 3 * width))


def test_centre_lines_in_mm():
    """Item a: dash 6 mm, dot 0.125 mm, gap 0.75 mm."""
    assert DASHES["centre"] == (6.0, 0.75, 0.125, 0.75)


def test_wide_lines_with_dots():
    """Item c: dash 12 mm, dot 0.5 d; gap by the rule of item a."""
    width = PEN_WIDTH["cutting"]
    assert DASHES["cutting"] == (12.0, 3 * width, 0.5 * width, 3 * width)
