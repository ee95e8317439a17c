"""The unit of a dashed line against a public excerpt of JIS B 3402, which takes it from JIS Z 8321 (ISO 128-21).

"05. 線", dwg.jisw.com/02120/05cad.html, sections on widths and on lengths of elements. Reached as an excerpt of a
stored copy; its pictures were not seen.
"""

import pytest

from blockgen.outputs.drawing.strokes import DASHES, PEN_WIDTH


def test_the_least_dashed_line_is_27_widths_long():
    """Figure 1, note 1: l2 + 3d + l2 = 12d + 3d + 12d = 27d."""
    dash, gap = DASHES["hidden"]
    assert dash + gap + dash == pytest.approx(27 * PEN_WIDTH["hidden"])


def test_narrow_and_wide_lines_are_as_1_to_2():
    assert PEN_WIDTH["outline"] / PEN_WIDTH["thin"] == 2
