"""A3 and A4 sheets against a school book.

"Technisches Zeichnen, Fachzeichnen SB 1", Westermann (Vienna), ISBN 978-3-7100-2443-6, section 1, printed page 5
(after ÖNORM EN ISO 5457), blickinsbuch.westermann.de/978-3-7100-2443-6/7. Reached as an excerpt of the publisher's
open preview.
"""

from blockgen.outputs.drawing.paper import frame, paper
from blockgen.outputs.drawing.strokes import Text
from blockgen.outputs.drawing.title_block import WIDTH


def fields(size):
    words = {stroke.words for stroke in frame(paper(size)).strokes if isinstance(stroke, Text)}
    return sorted(w for w in words if w.isalpha()), sorted(w for w in words if w.isdigit())


def test_a4_stands_upright_and_the_others_lie():
    """Picture 1.1: A4 mostly upright, the others lengthwise."""
    assert paper("A4").height > paper("A4").width
    assert all(paper(size).width > paper(size).height for size in ("A0", "A1", "A2", "A3"))


def test_drawing_space_of_a4_and_a3():
    """Pictures 1.2 and 1.4: 180 x 277 and 390 x 277."""
    small, large = paper("A4").area, paper("A3").area
    assert (small.right - small.left, small.top - small.bottom) == (180, 277)
    assert (large.right - large.left, large.top - large.bottom) == (390, 277)


def test_fields_of_a4():
    """Section 1: letters A to F upright, numerals 1 to 4 across."""
    assert fields("A4") == (list("ABCDEF"), list("1234"))


def test_the_title_block_is_as_wide_as_the_drawing_space_of_a4():
    """Picture 1.2: 180."""
    assert WIDTH == paper("A4").area.right - paper("A4").area.left == 180
