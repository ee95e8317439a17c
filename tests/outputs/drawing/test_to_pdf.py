"""The PDF file, read by two other libraries: size, fonts, words, lines."""

from __future__ import annotations

import io
import math

import pytest

from blockgen.outputs.drawing.hatching import on_arc
from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.strokes import Arc, Item, Sheet, Text
from blockgen.outputs.drawing.to_pdf import _add_arc, pdf_bytes, write_pdf
from tests.outputs.drawing.same_bytes import fingerprint
from tests.outputs.drawing.sample_sheets import HOSTILE, table_sheet, view_sheet

MM = 72 / 25.4


@pytest.fixture(scope="module")
def data():
    return pdf_bytes([view_sheet(), table_sheet()], "GL-040-11 <&> \u4e2d", "A. Author", "released for review")


@pytest.fixture(scope="module")
def pypdf_reader(data):
    import pypdf

    return pypdf.PdfReader(io.BytesIO(data))


def sheet_of(*strokes):
    return Sheet("drawing", "t", "A4", 210.0, 297.0, 1.0, (Item("k", "note", strokes),))


def test_one_page_a_sheet_in_exact_size(pypdf_reader):
    sizes = [(float(page.mediabox.width), float(page.mediabox.height)) for page in pypdf_reader.pages]
    assert [(w / MM, h / MM) for w, h in sizes] == [
        pytest.approx((420.0, 297.0), abs=1e-3),
        pytest.approx((210.0, 297.0), abs=1e-3),
    ]


def test_properties_are_ours_and_without_dates(pypdf_reader):
    found = dict(pypdf_reader.metadata)
    assert found == {
        "/Title": "GL-040-11 <&> \u4e2d",
        "/Author": "A. Author",
        "/Subject": "released for review",
        "/Creator": "blockgen",
        "/Producer": "reportlab",
    }


def test_all_fonts_are_embedded_subsets_of_the_two(pypdf_reader):
    names = set()
    for page in pypdf_reader.pages:
        for entry in page["/Resources"]["/Font"].values():
            font = entry.get_object()
            if font["/Subtype"] == "/Type1":  # the library names its own standard font and never uses it
                continue
            assert len(font["/FontDescriptor"]["/FontFile2"].get_object().get_data()) < 60_000
            names.add(font["/BaseFont"].split("+")[1])
    assert names == {"osifont", "DejaVuSans"}


def test_the_standard_font_of_the_library_writes_nothing(pypdf_reader):
    for page in pypdf_reader.pages:
        fonts = page["/Resources"]["/Font"]
        standard = {name for name, font in fonts.items() if font.get_object()["/Subtype"] == "/Type1"}
        shown = []
        name = None
        for operands, operator in page.get_contents().operations:
            if operator == b"Tf":
                name = operands[0]
            elif operator in (b"Tj", b"TJ", b"'", b'"'):
                shown.append(name)
        assert shown
        assert not standard & set(shown)


def test_no_pictures(pypdf_reader):
    assert [len(page.images) for page in pypdf_reader.pages] == [0, 0]


def test_words_can_be_found(data):
    import pypdfium2

    document = pypdfium2.PdfDocument(data)
    page = document[0].get_textpage()
    for words in ("160", "\u230060 H7", "80 \u00b10,1", "Mounting block", "\u03b1\u03b2", "<b>"):
        assert page.search(words).get_next(), words
    assert document[1].get_textpage().search("D19").get_next()


def test_words_stand_where_the_boxes_say():
    """The ink of each text, level and upright, lies in the box that the layout reckons with."""
    import pypdfium2

    texts = (Text("Hg\u2225\u00c5 8", (50.0, 60.0), 10.0), Text("Hg\u2225\u00c5 8", (150.0, 60.0), 10.0, 90.0))
    for text in texts:
        scale = 10 / MM
        page = pypdfium2.PdfDocument(pdf_bytes([sheet_of(text)], "t", "", ""))[0]
        picture = page.render(scale=scale).to_pil().convert("L").point(lambda v: 255 if v < 128 else 0)
        left, top, right, bottom = (v / 10 for v in picture.getbbox())
        box = text_box(text)
        ink = (left, 297 - bottom, right, 297 - top)
        assert box.left - 0.2 <= ink[0] <= ink[2] <= box.right + 0.2
        assert box.bottom - 0.2 <= ink[1] <= ink[3] <= box.top + 0.2
        assert ink[2] - ink[0] > (box.right - box.left) * 0.9
        assert ink[3] - ink[1] > (box.top - box.bottom) * 0.9


@pytest.mark.parametrize(("start", "end"), [(0.0, 360.0), (20.0, 300.0), (350.0, 10.0), (90.0, 91.0)])
def test_arcs_stay_on_their_circle(start, end):
    arc, curves = Arc((50.0, 60.0), 100.0, start, end), []

    class Path:
        def moveTo(self, x, y):
            self.here = (x, y)

        def curveTo(self, *numbers):
            curves.append((self.here, numbers[:2], numbers[2:4], numbers[4:]))
            self.here = numbers[4:]

    _add_arc(Path(), arc)
    assert curves[0][0] == on_arc(arc, start)
    assert curves[-1][3] == pytest.approx(on_arc(arc, end))
    for points in curves:
        for t in (0.2, 0.5, 0.8):
            weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3)
            place = [sum(w * p[k] for w, p in zip(weights, points, strict=True)) for k in (0, 1)]
            assert math.dist(place, arc.centre) == pytest.approx(100.0, abs=5e-4)


def test_hostile_words_break_nothing(tmp_path):
    import pypdf

    write_pdf([sheet_of(Text(HOSTILE, (10.0, 10.0), 3.5))], tmp_path / "a.pdf", HOSTILE, HOSTILE, HOSTILE)
    assert pypdf.PdfReader(tmp_path / "a.pdf").metadata.title.startswith("Spray & <b>")


def test_no_sheet_is_refused():
    with pytest.raises(ValueError, match="needs one sheet at least"):
        pdf_bytes([], "t", "", "")


def test_a_second_file_in_the_same_process_has_the_same_bytes():
    first = pdf_bytes([view_sheet()], "t", "a", "s")
    pdf_bytes([table_sheet()], "t", "a", "s")
    assert pdf_bytes([view_sheet()], "t", "a", "s") == first


@pytest.mark.slow
def test_bytes_are_the_same_in_any_process():
    expression = "pdf_bytes([view_sheet(), table_sheet()], 't', 'a', 's')"
    assert len({fingerprint(expression, seed) for seed in (0, 7)}) == 1
