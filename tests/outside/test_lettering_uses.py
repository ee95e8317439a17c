"""Which letters are how high, against a public account of DIN 6774.

"Schrift - Technisches Zeichnen", table "Schriftgrößen nach DIN 6774", column line group 0.5,
maschinenbau-wissen.de/skript3/konstrkution-entwicklung/technisches-zeichnen/188-schrift. Reached as an excerpt of a
stored copy.
"""

from blockgen.outputs.drawing import centre_lines, symbols
from blockgen.outputs.drawing.strokes import Text
from blockgen.outputs.drawing.title_block import title_block
from tests.outside.test_title_block_fields import SAMPLE


def test_tolerances_2_5_dimensions_3_5_sections_5():
    assert (symbols.SMALL, symbols.LETTER, centre_lines._LETTER) == (2.5, 3.5, 5.0)


def test_the_number_of_the_drawing_is_written_5_high():
    found = [
        s.height
        for s in title_block((200.0, 10.0), SAMPLE)[0].strokes
        if isinstance(s, Text) and s.words == "GL-040-11"
    ]
    assert found == [5.0]
