"""The sheets of a block: drawing, inspection sheet, setup sheet, hole pattern of the base plate."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from blockgen.evidence.characteristics import inspection_rows
from blockgen.making.setup_sheet import setup_sheet
from blockgen.outputs.drawing.base_holes import base_holes_sheet
from blockgen.outputs.drawing.drawing import Pictures, drawing
from blockgen.outputs.drawing.inspection_page import inspection_parts
from blockgen.outputs.drawing.pages import Page, paginated, sheet
from blockgen.outputs.drawing.setup_page import setup_parts
from blockgen.outputs.drawing.strokes import Sheet
from blockgen.outputs.drawing.words import Words, words_of
from blockgen.plan import Plan
from blockgen.spec.fingerprint import build_date

if TYPE_CHECKING:
    from blockgen.geometry.block import BlockSolid


@dataclass(frozen=True, slots=True)
class DrawingSet:
    """The sheets of one block.

    Args:
        words: Words of the drawing, with title block and number format.
        drawing: The drawing.
        inspection: Pages of the inspection sheet.
        setup: Pages of the setup sheet.
    """

    words: Words
    drawing: Sheet
    inspection: tuple[Sheet, ...]
    setup: tuple[Sheet, ...]

    @property
    def sheets(self) -> tuple[Sheet, ...]:
        """All sheets in the order of the PDF."""
        return self.drawing, *self.inspection, *self.setup


def pictures(block: BlockSolid) -> Pictures:
    """Return the views and the section of a block.

    Raises:
        KernelError: the solid has a surface that cannot be drawn.
    """
    from blockgen.geometry.projection import project
    from blockgen.geometry.section import section

    return Pictures(
        {name: project(block, name) for name in ("front", "top", "motor_end", "bearing_end")}, section(block)
    )


def drawing_set(plan: Plan, shown: Pictures, status: str) -> DrawingSet:
    """Return the sheets of a plan.

    Args:
        plan: What was decided.
        shown: Views and section of its solid.
        status: Status of the design.

    Raises:
        MachineError: the drawing finds no room on the sheet asked for.
    """
    words = words_of(plan, status, build_date(plan.records) or "", 1)
    inspection = paginated(inspection_parts(inspection_rows(plan), words.figures))
    setup = paginated(setup_parts(setup_sheet(plan), words.figures))
    count = 1 + len(inspection) + len(setup)
    words = replace(words, titles=replace(words.titles, sheets=count))
    return DrawingSet(
        words,
        drawing(plan, shown, words),
        _pages(words, inspection, "inspection", "Inspection sheet", 2),
        _pages(words, setup, "setup", "Setup sheet", 2 + len(inspection)),
    )


def _pages(words: Words, pages: Sequence[Page], name: str, kind: str, first: int) -> tuple[Sheet, ...]:
    made = []
    for number, page in enumerate(pages):
        titles = replace(words.titles, kind=kind, sheet=first + number, size="A4", scale="", projection="")
        made.append(sheet(page, f"{name}_{number + 1}", titles))
    return tuple(made)


def write_drawing(made: DrawingSet, pdf: Path, dxf: Path, svg: Path, status: str) -> None:
    """Write the drawing: PDF with all sheets, DXF and SVG of the drawing itself.

    Raises:
        OSError: a file could not be written.
    """
    from blockgen.outputs.drawing.to_dxf import write_dxf
    from blockgen.outputs.drawing.to_pdf import write_pdf
    from blockgen.outputs.drawing.to_svg import write_svg

    titles = made.words.titles
    write_pdf(made.sheets, pdf, f"{titles.number} {titles.title}", titles.creator, status)
    write_dxf(made.drawing, dxf, status, "," if made.words.figures.comma else ".")
    write_svg(made.drawing, svg)


def write_base_holes(plan: Plan, status: str, path: Path) -> None:
    """Write the hole pattern of the base plate, true size.

    Raises:
        MachineError: it does not fit the largest sheet.
        OSError: the file could not be written.
    """
    from blockgen.outputs.drawing.to_dxf import write_dxf

    words = words_of(plan, status, build_date(plan.records) or "", 1)
    titles = replace(words.titles, kind="Hole pattern of the base", mass="", material=plan.text("base.material"))
    write_dxf(base_holes_sheet(plan, titles, words.figures), path, status, "," if words.figures.comma else ".")
