"""A sheet as a DXF file (mm): views to true size in the model space, the sheet itself as a layout that looks at them.

A dimension is a real DIMENSION with its definition points, and its picture is made of the very strokes that PDF and SVG
show.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from io import StringIO
from pathlib import Path
from typing import TYPE_CHECKING

from blockgen.outputs.drawing.dxf_dimension import add_dimension
from blockgen.outputs.drawing.dxf_strokes import Place, add_strokes
from blockgen.outputs.drawing.dxf_tables import APPLICATION, DecimalSign, set_up
from blockgen.outputs.drawing.strokes import Item, Sheet

if TYPE_CHECKING:
    from ezdxf.document import Drawing
    from ezdxf.layouts.layout import Paperspace

MILLIMETRES = 4
"""Unit of the file, group code 70 of $INSUNITS."""

WINDOW = "sheet_window"
"""Layer of the window through which the sheet shows the model; it is off, so that the window's edge is not drawn."""


def write_dxf(sheet: Sheet, path: Path, status: str, decimal_sign: DecimalSign = ".") -> None:
    """Write a sheet.

    Args:
        sheet: The sheet.
        path: File to write.
        status: Status of the design, goes into the file's properties.
        decimal_sign: Sign in the numbers of the sheet, for dimensions that are worked out again by the reader.

    Raises:
        OSError: The file could not be written.
        ValueError: A hatched area is open.
    """
    path.write_bytes(dxf_bytes(sheet, status, decimal_sign))


def dxf_bytes(sheet: Sheet, status: str, decimal_sign: DecimalSign = ".") -> bytes:
    """Return the bytes of the file; see ``write_dxf``."""
    with _fixed_dates():
        stream = StringIO()
        document = dxf_document(sheet, status, decimal_sign)
        _sort_classes(document)
        document.write(stream)
        return bytes(document.encode(stream.getvalue()))


def dxf_document(sheet: Sheet, status: str, decimal_sign: DecimalSign = ".") -> Drawing:
    """Return the document; see ``write_dxf``."""
    from ezdxf.filemanagement import new

    document = new("R2010", units=MILLIMETRES)
    set_up(document, sheet, status, decimal_sign)
    layout = _layout(document, sheet)
    model = Place(document.modelspace(), 1 / sheet.scale, sheet.origin)
    for item in sheet.items:
        _add_item(document, item, model if item.in_model else Place(layout, 1.0), decimal_sign)
    return document


@contextmanager
def _fixed_dates() -> Iterator[None]:
    """Let the library write fixed dates and identifiers instead of the clock's and random ones."""
    from ezdxf._options import options

    before = options.write_fixed_meta_data_for_testing
    options.write_fixed_meta_data_for_testing = True
    try:
        yield
    finally:
        options.write_fixed_meta_data_for_testing = before


def _sort_classes(document: Drawing) -> None:
    """Put the class definitions in order: the library adds them from a set."""
    document.classes.add_required_classes(document.dxfversion)
    ordered = sorted(document.classes.classes.items())
    document.classes.classes.clear()
    document.classes.classes.update(ordered)


def _layout(document: Drawing, sheet: Sheet) -> Paperspace:
    """Return the layout of the sheet, with one window that shows the model where it stands on paper."""
    document.layouts.rename("Layout1", sheet.name)
    document.layouts.set_active_layout(sheet.name)
    layout = document.paperspace(sheet.name)
    size = (sheet.width, sheet.height)
    layout.page_setup(size=size, margins=(0, 0, 0, 0), units="mm", name=sheet.size, device="none")
    for whole_sheet in layout.viewports():
        whole_sheet.dxf.layer = "0"
    if any(item.in_model for item in sheet.items):
        document.layers.new(WINDOW, dxfattribs={"plot": 0}).off()
        middle, factor = (sheet.width / 2, sheet.height / 2), 1 / sheet.scale
        seen = ((middle[0] - sheet.origin[0]) * factor, (middle[1] - sheet.origin[1]) * factor)
        layout.add_viewport(middle, size, seen, sheet.height * factor, dxfattribs={"layer": WINDOW})
        document.set_modelspace_vport(sheet.height * factor, seen)
    return layout


def _add_item(document: Drawing, item: Item, place: Place, decimal_sign: DecimalSign) -> None:
    if item.measure is not None:
        entities = [add_dimension(document, item, item.measure, place, decimal_sign)]
    else:
        entities = add_strokes(item, place)
    for entity in entities:
        entity.set_xdata(APPLICATION, [(1000, plain(item.id))])


def plain(text: str) -> str:
    """Return a text as one line that the file can hold: what cannot be printed becomes the replacement."""
    shown = "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in text)
    return shown.encode("utf-8")[:255].decode("utf-8", "ignore")
