"""Heights of letters against teaching material.

"Ausführung von Schriften in technischen Zeichnungen", wiechmann-at.de/MBStudium/TechnischesZeichnen/TZSchriften.html
(after DIN EN ISO 3098-0): h = 1.8, 2.5, 3.5, 5, 7, 10, 14, 20 mm. Reached as an excerpt of a stored copy of that
page.
"""

from dataclasses import replace

import pytest

from blockgen.outputs.drawing import centre_lines, notes, symbols
from blockgen.outputs.drawing.paper import frame, paper
from blockgen.outputs.drawing.strokes import Text
from blockgen.outputs.drawing.title_block import title_block
from tests.outside.test_title_block_fields import SAMPLE

HEIGHTS = {1.8, 2.5, 3.5, 5.0, 7.0, 10.0, 14.0, 20.0}
LONG = "a title that is long, longer than the block is wide in the letters that it would have had "


def heights(item):
    return {stroke.height for stroke in item.strokes if isinstance(stroke, Text)}


def test_letters_of_labels_notes_and_sections():
    assert {symbols.LETTER, symbols.SMALL, notes.HEIGHT, centre_lines._LETTER} <= HEIGHTS


def test_letters_of_the_frame():
    assert heights(frame(paper("A2"))) <= HEIGHTS


@pytest.mark.parametrize("length", [5, 12, 20, 30, 45, 60, 90])
def test_words_in_the_title_block_are_written_smaller_in_steps_of_the_standard(length):
    words = LONG[:length]
    titles = replace(SAMPLE, title=words, number=words, owner=words, material=words, tolerances=words)
    assert heights(title_block((200.0, 10.0), titles)[0]) <= HEIGHTS
