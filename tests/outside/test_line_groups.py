"""Line widths against a school book.

"Konstruktionsgrundlagen für Metalltechnik", Westermann (Vienna), ISBN 978-3-7100-2824-3, sections 2.3 and 2.4,
printed page 28 (after ÖNORM EN ISO 128-2), blickinsbuch.westermann.de/978-3-7100-2824-3/30. Reached as an excerpt of
the publisher's open preview. The width between wide and narrow lines was taken from it; wide and narrow ones had been
remembered.
"""

import pytest

from blockgen.outputs.drawing.strokes import PEN_WIDTH

STANDARD_WIDTHS = {0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0}
"""Table 2.1."""


def test_all_widths_are_standard_ones():
    """Table 2.1."""
    assert set(PEN_WIDTH.values()) <= STANDARD_WIDTHS


@pytest.mark.parametrize(("pen", "width"), [("outline", 0.5), ("cutting", 0.5), ("thin", 0.25), ("medium", 0.35)])
def test_line_group_0_5(pen, width):
    """Table 2.2: wide 0.5, narrow 0.25, dimensions, texts and symbols 0.35; recommended for A4 to A2."""
    assert PEN_WIDTH[pen] == width


def test_wide_lines_are_twice_as_wide_as_narrow_ones():
    """Section 2.4."""
    assert PEN_WIDTH["outline"] == 2 * PEN_WIDTH["thin"]
