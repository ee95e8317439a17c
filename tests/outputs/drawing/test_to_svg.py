"""The SVG file: true size, one group an item, letters as outlines that are there once."""

from __future__ import annotations

import re
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.drawing.lettering import glyph_path, runs, text_width
from blockgen.outputs.drawing.strokes import DASHES, PEN_WIDTH, Arc, Item, Sheet, Text
from blockgen.outputs.drawing.to_svg import svg_text, write_svg
from tests.outputs.drawing.same_bytes import fingerprint
from tests.outputs.drawing.sample_sheets import HOSTILE, view_sheet

SVG = "{http://www.w3.org/2000/svg}"
LINK = "{http://www.w3.org/1999/xlink}href"


@pytest.fixture(scope="module")
def root():
    return ElementTree.fromstring(svg_text(view_sheet()))


def sheet_of(*strokes, key="k"):
    return Sheet("drawing", "t", "A4", 210.0, 297.0, 1.0, (Item(key, "note", strokes),))


def groups(root):
    return [g for g in root.iter(f"{SVG}g") if "data-id" in g.attrib]


def numbers(text):
    return [float(n) for n in re.findall(r"-?\d+\.?\d*", text)]


def test_size_and_title(root):
    assert (root.get("width"), root.get("height"), root.get("viewBox")) == ("420mm", "297mm", "0 0 420 297")
    assert root.find(f"{SVG}title").text == "GL-040-11 & <block>"


def test_one_group_an_item_in_order_with_id_and_role(root):
    assert [(g.get("data-id"), g.get("class")) for g in groups(root)] == [(i.id, i.role) for i in view_sheet().items]


def test_one_path_a_pen_with_its_width_and_dashes(root):
    for item, group in zip(view_sheet().items, groups(root), strict=True):
        pens = list(dict.fromkeys(s.pen for s in item.strokes if hasattr(s, "pen")))
        hatched = item.id == "section.A"
        found = [p for p in group.findall(f"{SVG}path") if p.get("stroke-width")]
        assert len(found) == len(pens) + (hatched and "thin" not in pens)
        if not hatched:
            assert [float(p.get("stroke-width")) for p in found] == [PEN_WIDTH[pen] for pen in pens]
            assert [tuple(numbers(p.get("stroke-dasharray", ""))) for p in found] == [DASHES.get(p, ()) for p in pens]


def test_every_glyph_is_there_once_and_is_used(root):
    wanted = {(r.font, c) for i in view_sheet().items for s in i.strokes if isinstance(s, Text)
              for r in runs(s.words) for c in r.shown if c != " "}  # fmt: skip
    defined = [path.get("id") for path in root.find(f"{SVG}defs")]
    assert len(defined) == len(set(defined)) == len(wanted)
    assert {use.get(LINK)[1:] for use in root.iter(f"{SVG}use")} == set(defined)


def test_no_letters_need_a_font(root):
    assert not list(root.iter(f"{SVG}text"))
    assert "font-family" not in svg_text(view_sheet())


def test_words_stand_at_the_outlines_and_what_xml_cannot_hold_is_replaced(root):
    labels = [g.get("aria-label") for g in root.iter(f"{SVG}g") if g.get("aria-label")]
    shown = "".join("\ufffd" if c in "\n\x1b\ud800" else c for c in HOSTILE)
    assert shown in labels
    assert "\u230060 H7" in labels


def test_letters_stand_where_the_widths_say():
    root = ElementTree.fromstring(svg_text(sheet_of(Text("ab\u2225c", (10.0, 20.0), 7.0))))
    (group,) = (g for g in root.iter(f"{SVG}g") if g.get("aria-label"))
    assert group.get("transform") == "translate(10 20)"
    last = group.findall(f"{SVG}g")[-1]
    assert numbers(last.get("transform"))[0] == pytest.approx(text_width("ab\u2225", 7.0), abs=1e-3)


def test_a_whole_circle_is_two_halves_and_arcs_run_the_short_way_round():
    circle, arc = Arc((50.0, 50.0), 10.0), Arc((50.0, 50.0), 10.0, 350.0, 10.0)
    root = ElementTree.fromstring(svg_text(sheet_of(circle, arc)))
    (path,) = groups(root)[0].findall(f"{SVG}path")
    first, second = path.get("d")[1:].split("M")
    assert first.count("A") == second.count("A") == 2
    assert "60 50" in second  # the middle of the arc
    assert "40 50" in first


@given(st.text(max_size=25), st.text(max_size=10))
def test_no_words_break_the_file(words, key):
    root = ElementTree.fromstring(svg_text(sheet_of(Text(words, (10.0, 10.0), 3.5), key=key)))
    drawn = sum(1 for run in runs(words) for c in run.shown if glyph_path(run.font, c))
    assert len(list(root.iter(f"{SVG}use"))) == drawn


def test_the_file_holds_the_text_with_plain_line_ends(tmp_path):
    write_svg(view_sheet(), tmp_path / "a.svg")
    assert (tmp_path / "a.svg").read_bytes().decode("utf-8") == svg_text(view_sheet())


@pytest.mark.slow
def test_bytes_are_the_same_in_any_process():
    assert len({fingerprint("svg_text(view_sheet()).encode()", seed) for seed in (0, 7)}) == 1
