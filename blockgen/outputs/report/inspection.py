"""The section of the inspection sheet: what to measure, with limits and room to write."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from urllib.parse import quote

from blockgen.evidence.characteristics import InspectionRow
from blockgen.outputs import show
from blockgen.outputs.report.markup import Child, Markup, element
from blockgen.outputs.report.tables import content, table
from blockgen.outputs.report.values import figure

_COLUMNS = ("No.", "Characteristic", "Nominal", "Least", "Greatest", "Unit", "Datums", "Instrument", "Measured")
_RIGHT = _COLUMNS[2:5]
_LEAD = (
    "Directions come from the bearing seat A, centres from the bearing bore B, levels from the base C. The numbers are "
    "those of the drawing; blockgen inspect reads the values from the inspection sheet, "
)


def inspection(rows: Sequence[InspectionRow], files: Mapping[str, str]) -> Markup:
    """Return the section.

    Args:
        rows: Rows of the inspection sheet.
        files: Role by name of the files in the set.
    """
    sheets = [element("a", name, href=quote(name)) for name, role in files.items() if role == "inspection"]
    place = sheets[0] if sheets else "which was not asked for in this build"
    own = [row for row in rows if row.needed == "block"]
    bought = [row for row in rows if row.needed == "bought"]
    return content(
        element("p", _LEAD, place, "."),
        table("To measure on the block", _COLUMNS, _rows(own), right=_RIGHT),
        table("May be measured on bought parts", _COLUMNS, _rows(bought), right=_RIGHT),
    )  # fmt: skip


def _rows(rows: Iterable[InspectionRow]) -> Iterator[tuple[Child, ...]]:
    for row in rows:
        figures = (_figure(value) for value in (row.nominal, row.lower, row.upper))
        yield (row.number or "-", row.title, *figures, row.unit, " ".join(row.datums), row.instrument, "")


def _figure(value: float | None) -> Markup:
    return element("span", "-") if value is None else figure(value, show.number(value))
