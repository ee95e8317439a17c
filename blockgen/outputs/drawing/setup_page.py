"""The setup sheet: stock, setups, tools, time and masses as the shop reads them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from math import fsum

from blockgen.making.setup_sheet import SetupSheet, SheetTable
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.lettering import text_width
from blockgen.outputs.drawing.pages import FINE, Part, width
from blockgen.outputs.drawing.tables import Column

_DIGITS = re.compile(r"(?<=\d)\.(?=\d)")


def setup_parts(sheet: SetupSheet, figures: Figures) -> list[Part]:
    """Return the tables of the setup sheet."""
    parts = []
    for table in sheet.tables:
        rows = tuple(tuple(written(cell, figures) for cell in row) for row in table.rows)
        parts.append(Part(table.title, _columns(table, rows), rows))
        if table.note:
            parts.append(Part(f"{table.title}: remark", (), ((written(table.note, figures),),)))
    return [*parts, Part("Notes", (), tuple((written(note, figures),) for note in sheet.notes))]


def written(words: str, figures: Figures) -> str:
    """Return plain words as a sheet writes them: the sign for a diameter, times, degrees, the decimal sign."""
    signs = re.sub(r"\bdiam (?=\d)", "⌀", words).replace(" deg", "°")
    signs = re.sub(r"(?<=\d) x (?=[\d⌀M])", " × ", signs)
    return _DIGITS.sub("," if figures.comma else ".", signs)


def _columns(table: SheetTable, rows: Sequence[Sequence[str]]) -> tuple[Column, ...]:
    """Return columns that share the page by what stands in them, none narrower than its heading."""
    wanted = [
        max((text_width(cell, FINE) for cell in (title, *(row[number] for row in rows))), default=0.0) + 3.0
        for number, title in enumerate(table.columns)
    ]
    room = width()
    share = min(1.0, room / fsum(wanted))
    columns = [max(want * share, min(want, 24.0)) for want in wanted]
    columns[-1] += room - fsum(columns)
    return tuple(Column(title, wide) for title, wide in zip(table.columns, columns, strict=True))
