"""Arrow heads against teaching notes.

"Dimensioning", ja.scribd.com/document/398713789, section "Arrowheads" (Indian practice, after ISO 129:1985): barbs
form an angle of 15 deg or more, the head is at least three times as long as it is wide. Reached as an excerpt of a
stored copy. The width was put right after it: the head had been 2.94 times as long as wide.
"""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.symbols import arrow


@given(st.floats(0, 360), st.floats(1, 10))
def test_angle_and_length_over_width(direction, length):
    towards = (50 * math.cos(math.radians(direction)), 50 * math.sin(math.radians(direction)))
    tip, first, second = arrow((0.0, 0.0), towards, length).outline
    width = math.dist(first, second)
    middle = ((first[0] + second[0]) / 2, (first[1] + second[1]) / 2)
    assert math.dist(tip, middle) >= 3 * width - 1e-9
    assert math.degrees(2 * math.atan2(width / 2, math.dist(tip, middle))) >= 15
    assert math.atan2(middle[1], middle[0]) == pytest.approx(math.atan2(towards[1], towards[0]), abs=1e-6)
