"""The section of the drawing: its sheet as a picture that fits the width, or larger."""

from __future__ import annotations

from collections.abc import Mapping
from urllib.parse import quote

from blockgen.outputs.report.markup import Markup, element, joined
from blockgen.outputs.report.tables import content, scrolling
from blockgen.outputs.report.values import Document

_LEAD = "The sheet of the drawing; the sheets for inspection and setup are in the .pdf file of the drawing."
_ALONE = "The sheet of the drawing; its files were not asked for in this build."


def drawing(document: Document, svg: str, files: Mapping[str, str]) -> Markup:
    """Return the section.

    Args:
        document: The summary.
        svg: The sheet as our own writer made it.
        files: Role by name of the files in the set.
    """
    larger = element("a", "Larger", href="#drawing-sheet", class_="larger")
    fitting = element("a", "Fit the width", href="#drawing", class_="fitting")
    own = [element("a", name, href=quote(name)) for name, role in files.items() if role == "drawing"]
    links = element("p", joined((larger, fitting, *own), " \u00b7 "), class_="links")
    sheet = scrolling("Sheet of the drawing", _labelled(svg, document))
    figure = element("figure", sheet, element("figcaption", _LEAD if own else _ALONE), links, id="drawing-sheet")
    return content(figure)


def _labelled(svg: str, document: Document) -> Markup:
    """Return the drawing as one picture with a name."""
    name = element("svg", role="img", aria_label=f"Drawing of block {document['job']['number']}")
    start = str(name).removesuffix("></svg>")
    return Markup(svg.replace("<svg", start, 1).rstrip("\n"))
