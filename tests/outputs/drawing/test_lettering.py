"""Sizes of letters, the font that has each, and the outlines."""

from __future__ import annotations

from dataclasses import astuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing import lettering
from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.lettering import (
    CAP_HEIGHT,
    FONTS,
    REPLACEMENT,
    direction,
    em_size,
    em_width,
    font_bytes,
    glyph_path,
    letter,
    missing,
    runs,
    text_box,
    text_width,
)
from blockgen.outputs.drawing.strokes import Text


def test_capitals_have_the_height_that_was_asked_for():
    box = text_box(Text("H", (0.0, 0.0), 3.5))
    assert (box.bottom, box.top) == pytest.approx((0.0, 3.5), abs=1e-9)


@pytest.mark.parametrize("font", FONTS)
def test_the_height_of_capitals_is_that_of_the_outlines(font):
    highest = lettering._letter(font, "H").high * CAP_HEIGHT[font] * 2048
    assert highest == pytest.approx(CAP_HEIGHT[font] * 2048, abs=1e-9)
    assert em_size(font, 3.5) * CAP_HEIGHT[font] == pytest.approx(3.5)


@pytest.mark.parametrize("font", FONTS)
def test_sizes_agree_with_what_another_part_of_the_font_library_says(font):
    """The pen follows the outline; the sizes come from its header."""
    from io import BytesIO

    from fontTools.pens.boundsPen import ControlBoundsPen
    from fontTools.ttLib import TTFont

    opened = TTFont(BytesIO(font_bytes(font)))
    glyphs, cmap = opened.getGlyphSet(), opened.getBestCmap()
    capital = CAP_HEIGHT[font] * opened["head"].unitsPerEm
    for character in "HgjQ\u2300\u00b1\u00c5" if font == "osifont" else "Hgj\u2225\u22a5\u2192":
        pen = ControlBoundsPen(glyphs)
        glyphs[cmap[ord(character)]].draw(pen)
        found = letter(character) if font == "osifont" or character not in "Hgj" else lettering._letter(font, character)
        assert found.font == font
        assert (found.low * capital, found.high * capital) == pytest.approx((pen.bounds[1], pen.bounds[3]), abs=1.0)
        assert found.advance * capital == pytest.approx(glyphs[cmap[ord(character)]].width)


def test_descenders_and_accents_make_the_box_higher():
    plain, deep, high = (text_box(Text(words, (0.0, 0.0), 7.0)) for words in ("HH", "Hg", "H\u00c5"))
    assert deep.bottom < -1.5
    assert high.top > plain.top + 1.5
    assert plain.bottom == 0.0


def test_a_text_read_from_the_right_stands_to_the_left_of_its_base_line():
    level, upright = Text("Hg", (10.0, 20.0), 7.0), Text("Hg", (10.0, 20.0), 7.0, 90.0)
    box, turned = text_box(level), text_box(upright)
    expected = (10 - (box.top - 20), 20 + (box.left - 10), 10 - (box.bottom - 20), 20 + (box.right - 10))
    assert astuple(turned) == pytest.approx(expected)


def test_an_empty_text_is_a_point():
    assert text_box(Text("", (1.0, 2.0), 3.5)) == Box(1.0, 2.0, 1.0, 2.0)


@given(st.text(max_size=30), st.text(max_size=30), st.floats(0.5, 20))
def test_widths_add_up(one, other, height):
    assert text_width(one + other, height) == pytest.approx(text_width(one, height) + text_width(other, height))


@given(st.text(max_size=40))
def test_runs_hold_every_letter_in_order_and_start_where_the_ones_before_end(words):
    pieces = runs(words)
    shown = "".join(run.shown for run in pieces)
    assert len(shown) == len(words)
    assert all(a == b or (a == REPLACEMENT and b in missing(words)) for a, b in zip(shown, words, strict=True))
    ahead = 0.0
    for run in pieces:
        assert run.start == pytest.approx(ahead)
        ahead += sum(em_width(run.font, c) / CAP_HEIGHT[run.font] for c in run.shown)
    assert ahead == pytest.approx(text_width(words, 1.0))


def test_fonts_are_taken_in_order_and_what_is_missing_is_told_once():
    assert [(run.font, run.shown) for run in runs("a\u2225\u4e2db")] == [
        ("osifont", "a"),
        ("DejaVuSans", f"\u2225{REPLACEMENT}"),
        ("osifont", "b"),
    ]
    assert missing("\u4e2da\u4e2d\n\ud800") == ("\u4e2d", "\n", "\ud800")
    assert missing("M8-6H \u2300\u00b1\u00b0\u2225\u22a5\u2212\u2192\u25b3\u00d7\u21a7") == ()


@given(st.floats(-720, 720))
def test_directions_are_unit_vectors(angle):
    cosine, sine = direction(angle)
    assert cosine**2 + sine**2 == pytest.approx(1.0)


def test_quarter_turns_are_exact():
    assert [direction(angle) for angle in (0, 90, 180, 270, 360, -90)] == [
        (1, 0), (0, 1), (-1, 0), (0, -1), (1, 0), (0, -1),
    ]  # fmt: skip


def test_an_outline_is_the_data_of_a_path_and_a_blank_has_none():
    assert glyph_path("osifont", "i").count("Z") == 2
    assert glyph_path("osifont", " ") == ""
