"""Centring marks against a public account of JIS Z 8311:1998, the translation of ISO 5457:1980.

A Japanese introduction to reading drawings, part 2, section on centring marks,
xn--pckhso3h8g2b3d2948ae2yh.osaka.jp/wp/2020/08/21/ (title begins "CAD初心者が図面を見る"). Reached as an excerpt of a
stored copy. The edition of 1999 was not read; it may want longer marks.
"""

import pytest

from blockgen.outputs.drawing.paper import frame, paper
from blockgen.outputs.drawing.strokes import PEN_WIDTH, Line


@pytest.mark.parametrize("size", ["A0", "A3", "A4"])
def test_a_mark_at_each_side_goes_5_mm_into_the_frame_and_is_0_5_mm_wide_at_least(size):
    sheet = paper(size)
    x, y, area = sheet.width / 2, sheet.height / 2, sheet.area
    inner = {(area.left + 5, y), (area.right - 5, y), (x, area.bottom + 5), (x, area.top - 5)}
    marks = [s for s in frame(sheet).strokes if isinstance(s, Line) and s.end in inner]
    assert {mark.end for mark in marks} == inner
    assert min(PEN_WIDTH[mark.pen] for mark in marks) >= 0.5
