"""The DXF file, read back: true sizes, real dimensions, layers, the window of the layout, the same bytes."""

from __future__ import annotations

import io
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.outputs.drawing.lettering import runs
from blockgen.outputs.drawing.strokes import DASHES, PEN_WIDTH, Arc, Fill, Hatch, Item, Line, Sheet, Text
from blockgen.outputs.drawing.to_dxf import WINDOW, dxf_bytes, write_dxf
from tests.outputs.drawing.same_bytes import fingerprint
from tests.outputs.drawing.sample_sheets import HOSTILE, arrow, table_sheet, view_sheet

pytestmark = pytest.mark.slow  # the library takes a fifth of a second to load, and its reader more


def read(data):
    import ezdxf

    return ezdxf.read(io.StringIO(data.decode("utf-8")))


@pytest.fixture(scope="module")
def document():
    return read(dxf_bytes(view_sheet(), "PRELIMINARY", ","))


def sheet_of(*strokes, role="note", in_model=False, scale=1.0):
    return Sheet("drawing", "t", "A4", 210.0, 297.0, scale, (Item("k", role, strokes, in_model),))


def by_id(layout, key):
    return [e for e in layout if e.has_xdata("BLOCKGEN") and e.get_xdata("BLOCKGEN")[0].value == key]


@pytest.mark.parametrize("sheet", [view_sheet(), table_sheet()], ids=lambda sheet: sheet.name)
def test_nothing_to_mend(sheet):
    audit = read(dxf_bytes(sheet, "released for review")).audit()
    assert not audit.errors
    assert not audit.fixes


def test_units_and_properties(document):
    assert (document.header["$INSUNITS"], document.header["$MEASUREMENT"]) == (4, 1)
    assert document.header["$LTSCALE"] == 1.0
    properties = dict(document.header.custom_vars.properties)
    assert properties == {"title": "GL-040-11 & <block>", "status": "PRELIMINARY"}


def test_the_part_has_its_true_size_in_the_model(document):
    outline = by_id(document.modelspace(), "view.front")
    xs = [x for e in outline if e.dxftype() == "LINE" for x in (e.dxf.start.x, e.dxf.end.x)]
    ys = [y for e in outline if e.dxftype() == "LINE" for y in (e.dxf.start.y, e.dxf.end.y)]
    assert (max(xs) - min(xs), max(ys) - min(ys)) == pytest.approx((160.0, 100.0))
    (bore,) = (e for e in outline if e.dxftype() == "CIRCLE")
    assert (bore.dxf.radius, *bore.dxf.center.vec2) == pytest.approx((30.0, 200.0, 290.0))


@pytest.mark.parametrize(
    ("key", "value", "shown"),
    [("L1", 160.0, ""), ("L2", 80.0, "<> \u00b10,1"), ("H1", 100.0, ""), ("D1", 60.0, "<> H7"), ("R1", 20.0, "")],
)
def test_dimensions_measure_the_truth(document, key, value, shown):
    (dimension,) = by_id(document.modelspace(), key)
    assert dimension.dxftype() == "DIMENSION"
    assert dimension.get_measurement() == pytest.approx(value)
    assert dimension.dxf.actual_measurement == pytest.approx(value)
    assert dimension.dxf.text == shown
    assert dimension.get_dim_style().dxf.dimscale == 2.0


def test_the_picture_of_a_dimension_is_made_of_its_own_strokes(document):
    for item in view_sheet().items:
        if item.measure:
            (dimension,) = by_id(document.modelspace(), item.id)
            block = document.blocks.get(dimension.dxf.geometry)
            assert block.name.startswith("*D")
            kinds = [e.dxftype() for e in block]
            names = {Line: "LINE", Arc: "ARC", Text: "TEXT", Fill: "SOLID"}
            assert kinds == [names[type(stroke)] for stroke in item.strokes]
            (text,) = (e for e in block if e.dxftype() == "TEXT")
            (stroke,) = (s for s in item.strokes if isinstance(s, Text))
            assert text.dxf.text == stroke.words
            assert tuple(text.dxf.insert.vec2) == pytest.approx((stroke.at[0] * 2, stroke.at[1] * 2))
            assert text.dxf.height == pytest.approx(7.0)


def test_the_dimension_line_and_the_feet_are_where_they_are_drawn(document):
    (across,), (up,) = (by_id(document.modelspace(), key) for key in ("L1", "H1"))
    assert tuple(across.dxf.defpoint.vec2) == pytest.approx((280.0, 210.0))
    assert tuple(across.dxf.defpoint2.vec2) == pytest.approx((120.0, 240.0))
    assert tuple(across.dxf.defpoint3.vec2) == pytest.approx((280.0, 240.0))
    assert tuple(up.dxf.defpoint.vec2) == pytest.approx((90.0, 340.0))
    assert up.dxf.angle == 90.0


def test_every_entity_carries_the_id_of_its_item(document):
    found = {
        e.get_xdata("BLOCKGEN")[0].value
        for layout in (document.modelspace(), document.paperspace("drawing"))
        for e in layout
        if e.dxftype() != "VIEWPORT"
    }
    assert found == {item.id for item in view_sheet().items}


def test_layers_have_the_widths_and_line_types_of_their_pens(document):
    used = {e.dxf.layer for e in document.entitydb.values() if e.dxf.hasattr("layer")} - {"0", "Defpoints"}
    assert used <= {layer.dxf.name for layer in document.layers}
    for name, pen in {
        "outline": "outline", "outline_hidden": "hidden", "centre_line": "centre", "dimension": "thin",
        "section_cutting": "cutting", "section_hatching": "thin", "frame": "border", "frame_thin": "thin",
    }.items():  # fmt: skip
        layer = document.layers.get(name)
        assert layer.dxf.lineweight == PEN_WIDTH[pen] * 100
        assert layer.dxf.linetype == (pen if pen in DASHES else "Continuous")


def test_dashes_are_true_on_paper(document):
    """Pattern times the entity's factor times the scale of the window is the dash of the pen."""
    (window,) = (v for v in document.paperspace("drawing").viewports() if v.dxf.id > 1)
    zoom = window.dxf.height / window.dxf.view_height
    assert (zoom, document.header["$PSLTSCALE"]) == (0.5, 0)
    dashed = by_id(document.modelspace(), "view.front.hidden")
    assert len(dashed) == 5
    for entity in dashed:
        pattern = document.linetypes.get("hidden").simplified_line_pattern()
        assert [round(p * entity.dxf.ltscale * zoom, 9) for p in pattern] == list(DASHES["hidden"])


def test_the_window_shows_the_model_where_it_stands_on_paper(document):
    layout = document.paperspace("drawing")
    assert document.layouts.active_layout().name == "drawing"
    assert (layout.dxf.paper_width, layout.dxf.paper_height) == (420.0, 297.0)
    (window,) = (v for v in layout.viewports() if v.dxf.id > 1)
    zoom = window.dxf.height / window.dxf.view_height
    seen, middle = window.dxf.view_center_point, window.dxf.center
    corner = ((240.0 - seen.x) * zoom + middle.x, (240.0 - seen.y) * zoom + middle.y)
    assert corner == pytest.approx((120.0, 120.0))
    assert not document.layers.get(WINDOW).is_on()
    assert (window.dxf.width, window.dxf.height) == (420.0, 297.0)


def test_a_sheet_without_views_has_no_window():
    document = read(dxf_bytes(table_sheet(), "released for review"))
    assert document.layout_names() == ["Model", "inspection"]
    assert not [v for v in document.paperspace("inspection").viewports() if v.dxf.id > 1]
    assert len(document.modelspace()) == 0


def test_hatched_areas_have_exact_edges_and_a_pattern_to_true_distance(document):
    ring, cove, _ = (e for e in by_id(document.modelspace(), "section.A") if e.dxftype() == "HATCH")
    assert [path.edges[0].radius for path in ring.paths] == [60.0, 30.0]
    arcs = [edge for edge in cove.paths[0].edges if hasattr(edge, "radius")]
    assert [(tuple(arc.center), arc.radius, arc.ccw) for arc in arcs] == [((590.0, 500.0), 50.0, False)]
    (line,) = ring.pattern.lines
    assert line.angle == pytest.approx(45.0)
    assert math.hypot(*line.offset) == pytest.approx(5.0)
    assert tuple(line.base_point) == pytest.approx((0.0, 0.0))


def test_an_arrow_is_a_solid_and_any_other_fill_a_filled_area():
    square = Fill(((0.0, 0.0), (5.0, 0.0), (5.0, 5.0), (0.0, 5.0)))
    layout = read(dxf_bytes(sheet_of(arrow((10.0, 10.0), 30.0), square), "s")).paperspace("drawing")
    solid, area = (e for e in layout if e.dxftype() in {"SOLID", "HATCH"})
    assert tuple(solid.dxf.vtx0.vec2) == pytest.approx((10.0, 10.0))
    assert area.dxf.solid_fill == 1


def shown(layout):
    from ezdxf.tools.text import caret_decode

    texts = [e.dxf.text for e in sorted(layout.query("TEXT"), key=lambda e: e.dxf.insert.x)]
    assert not any("%%" in text or "\\U+" in text for text in texts)
    return "".join(map(caret_decode, texts))


def squeezed(words):
    return "".join("".join(run.shown for run in runs(words)).split())


@given(st.text(min_size=1, max_size=20) | st.text(alphabet="%^\\U+{}cdJ ", min_size=1, max_size=12))
@settings(max_examples=25, deadline=None)
def test_words_are_read_as_they_were_written(words):
    layout = read(dxf_bytes(sheet_of(Text(words, (10.0, 10.0), 3.5)), "s")).paperspace("drawing")
    assert "".join(shown(layout).split()) == squeezed(words)


def test_hostile_words_break_nothing(tmp_path):
    sheet = Sheet(
        "drawing", HOSTILE, "A4", 210.0, 297.0, 1.0, (Item(HOSTILE, "note", (Text(HOSTILE, (9.0, 9.0), 5.0),)),)
    )
    write_dxf(sheet, tmp_path / "a.dxf", HOSTILE)
    document = read((tmp_path / "a.dxf").read_bytes())
    assert not document.audit().errors
    assert len(document.paperspace("drawing").query("TEXT")) > 5


def test_the_fonts_are_the_two_of_the_package(document):
    assert {style.dxf.font for style in document.styles} >= {"osifont.ttf", "DejaVuSans.ttf"}
    styles = [(e.dxf.text, e.dxf.style) for e in by_id(document.modelspace(), "label.M1") if e.dxftype() == "TEXT"]
    assert ("\u22a5", "letters_more") in [(text.strip(), style) for text, style in styles]


def test_the_option_of_the_library_is_put_back():
    import ezdxf

    before = ezdxf.options.write_fixed_meta_data_for_testing
    dxf_bytes(table_sheet(), "s")
    assert ezdxf.options.write_fixed_meta_data_for_testing is before


def test_bytes_are_the_same_in_any_process():
    assert len({fingerprint("dxf_bytes(view_sheet(), 's')", seed) for seed in (0, 7, 3)}) == 1


def test_a_hatch_in_another_direction_runs_that_way():
    sheet = sheet_of(Hatch(((Arc((50.0, 50.0), 20.0),),), 3.0, 135.0), in_model=True, scale=2.0)
    (area,) = read(dxf_bytes(sheet, "s")).modelspace()
    (line,) = area.pattern.lines
    assert line.angle == pytest.approx(135.0)
    assert math.hypot(*line.offset) == pytest.approx(1.5)
