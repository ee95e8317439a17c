"""Written notes."""

from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.notes import HEIGHT, general_tolerances, lines, notes
from tests.sizing.strategies import sized


def paragraphs(comma=False, **changes):
    return notes(sized(**changes), Figures(comma=comma))


def has(found, words):
    return any(words in paragraph for paragraph in found)


def test_general_tolerances_are_named_in_full():
    assert general_tolerances(sized(drawing={"general_tolerance": "ISO 2768-fH"})) == "ISO 2768-fH"
    assert has(paragraphs(), "ISO 2768-mK")


def test_chamfers_and_the_other_textures_are_told_once():
    found = paragraphs(comma=True)
    assert sum("Outside edges 0,5 × 45°" in p for p in found) == 1
    assert sum("Ra 3,2 µm" in p for p in found) == 1


def test_a_finish_tells_what_to_mask_and_bare_metal_does_not():
    assert has(paragraphs(), "bare metal")
    coated = paragraphs(block={"finish": "anodised", "coating_thickness": 0.02})
    assert has(coated, "anodised, 0.02 mm")
    assert has(coated, "Mask both bores")


def test_dowels_and_blind_threads_have_their_notes():
    assert not has(paragraphs(), "Dowel")
    assert has(paragraphs(base={"dowels": 6}), "Dowel holes are drilled to pilot size")
    assert has(paragraphs(), "least depths of full thread")


def test_lines_are_numbered_and_no_wider_than_asked():
    found = lines(["first " * 40, "second"], 100.0)
    marks = [line.partition("\t")[0] for line in found]
    assert [mark for mark in marks if mark] == ["1", "2"]
    assert all(text_width(line.partition("\t")[2], HEIGHT) <= 93.0 for line in found)
