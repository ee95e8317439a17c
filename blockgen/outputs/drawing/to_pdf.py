"""Sheets as the pages of a PDF file: exact size, vectors, real text in embedded fonts."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING, Any

from blockgen.outputs.drawing.hatching import on_arc
from blockgen.outputs.drawing.lettering import FontName, direction, em_size, font_bytes, runs
from blockgen.outputs.drawing.pens import by_pen, width_and_dashes
from blockgen.outputs.drawing.strokes import Arc, Fill, Item, Line, Pen, Sheet, Text

if TYPE_CHECKING:
    from reportlab.pdfgen.canvas import Canvas

POINTS = 72 / 25.4
"""PDF points a mm."""


def write_pdf(sheets: Sequence[Sheet], path: Path, title: str, author: str, subject: str) -> None:
    """Write sheets, one a page.

    Args:
        sheets: The sheets.
        path: File to write.
        title: Title for the file's properties.
        author: Author for the file's properties.
        subject: Subject for the file's properties, such as the status.

    Raises:
        OSError: The file could not be written.
        ValueError: There is no sheet, or a hatched area is open.
    """
    path.write_bytes(pdf_bytes(sheets, title, author, subject))


def pdf_bytes(sheets: Sequence[Sheet], title: str, author: str, subject: str) -> bytes:
    """Return the bytes of the file; see ``write_pdf``."""
    from reportlab.pdfgen.canvas import Canvas

    if not sheets:
        raise ValueError("a PDF file needs one sheet at least")
    target = BytesIO()
    canvas = Canvas(target, invariant=1, pageCompression=1)
    _set_properties(canvas, title, author, subject)
    for sheet in sheets:
        _draw_page(canvas, sheet)
    canvas.save()
    return target.getvalue()


def _set_properties(canvas: Canvas, title: str, author: str, subject: str) -> None:
    """Set the properties, dates left out: those of the library are either the clock's or made up."""
    from reportlab.pdfbase.pdfdoc import PDFDictionary, PDFInfo, PDFString

    texts = {"Title": title, "Author": author, "Subject": subject, "Creator": "blockgen", "Producer": "reportlab"}

    class Properties(PDFInfo):  # type: ignore[misc]  # the library has no types
        def format(self, document: Any) -> Any:
            entries = {key: PDFString(_plain(text)) for key, text in texts.items() if text}
            return PDFDictionary(entries).format(document)

    canvas._doc.info = Properties()


def _plain(text: str) -> str:
    """Return a text without lone surrogates, which no encoding can hold."""
    return text.encode("utf-8", "replace").decode("utf-8")


def _draw_page(canvas: Canvas, sheet: Sheet) -> None:
    canvas.setPageSize((sheet.width * POINTS, sheet.height * POINTS))
    canvas.scale(POINTS, POINTS)
    for item in sheet.items:
        _draw_item(canvas, item)
    canvas.showPage()


def _draw_item(canvas: Canvas, item: Item) -> None:
    for pen, pieces in by_pen(item.strokes).items():
        _draw_lines(canvas, pen, pieces)
    for stroke in item.strokes:
        if isinstance(stroke, Fill):
            _draw_fill(canvas, stroke)
        elif isinstance(stroke, Text):
            _draw_text(canvas, stroke)


def _draw_lines(canvas: Canvas, pen: Pen, pieces: Iterable[Line | Arc]) -> None:
    width, dashes = width_and_dashes(pen)
    canvas.setLineWidth(width)
    canvas.setDash(list(dashes))
    canvas.setLineCap(0 if dashes else 1)
    path = canvas.beginPath()
    for piece in pieces:
        if isinstance(piece, Line):
            path.moveTo(*piece.start)
            path.lineTo(*piece.end)
        else:
            _add_arc(path, piece)
    canvas.drawPath(path, stroke=1, fill=0)


def _add_arc(path: Any, arc: Arc) -> None:
    """Add an arc as cubic curves of 45 deg at most; they leave the circle by less than 5e-6 of its radius."""
    sweep = 360.0 if arc.end - arc.start == 360 else (arc.end - arc.start) % 360
    count = max(math.ceil(sweep / 45), 1)
    reach = 4 / 3 * math.tan(math.radians(sweep / count) / 4) * arc.radius
    path.moveTo(*on_arc(arc, arc.start))
    for step in range(count):
        first, last = (arc.start + sweep * k / count for k in (step, step + 1))
        (x, y), (u, v) = on_arc(arc, first), on_arc(arc, last)
        (c, s), (d, t) = direction(first), direction(last)
        path.curveTo(x - reach * s, y + reach * c, u + reach * t, v - reach * d, u, v)


def _draw_fill(canvas: Canvas, fill: Fill) -> None:
    path = canvas.beginPath()
    path.moveTo(*fill.outline[0])
    for point in fill.outline[1:]:
        path.lineTo(*point)
    path.close()
    canvas.drawPath(path, stroke=0, fill=1)


def _draw_text(canvas: Canvas, text: Text) -> None:
    cosine, sine = direction(text.angle)
    x, y = text.at
    for run in runs(text.words):
        across = run.start * text.height
        written = canvas.beginText()
        written.setFont(_font(run.font), em_size(run.font, text.height))
        written.setTextTransform(cosine, sine, -sine, cosine, x + across * cosine, y + across * sine)
        written.textOut(run.shown)
        canvas.drawText(written)


def _font(font: FontName) -> str:
    """Return the name under which the PDF library knows a font of ours; its list of fonts is one for all documents."""
    from reportlab.pdfbase.pdfmetrics import getRegisteredFontNames, registerFont
    from reportlab.pdfbase.ttfonts import TTFont

    name = f"blockgen {font}"
    if name not in getRegisteredFontNames():
        registerFont(TTFont(name, BytesIO(font_bytes(font)), asciiReadable=False, shapable=False))
    return name
