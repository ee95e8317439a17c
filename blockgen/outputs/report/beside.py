"""The section of the files of the set, as links, and where this page came from."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from urllib.parse import quote

from blockgen.outputs.report.markup import Child, Markup, element
from blockgen.outputs.report.tables import content, table
from blockgen.outputs.report.values import Document

_WHAT = {
    "block": "model of the block, for CAM", "stl": "mesh of the block", "assembly": "block with the parts about it",
    "drawing": "drawing, inspection sheet and setup sheet", "base_holes": "hole pattern of the base plate, true size",
    "inspection": "to fill in, for blockgen inspect", "report": "this page", "summary": "all figures",
    "spec": "the spec as resolved; building it again gives the same block",
}  # fmt: skip

_UNITS = "Units: mm, degrees, N, N\u00b7m, kg, MPa; the margin of a check is 1 - demand / capacity."


def beside(document: Document, files: Mapping[str, str]) -> Markup:
    """Return the section."""
    made = f"Made by {document['tool']} from the spec with the hash "
    origin = element("p", made, element("code", document["spec_sha256"]), "."), element("p", _UNITS)
    lead = "They stand in the same folder as this page."
    return content(element("p", lead), table("Files", ("File", "What it is"), _rows(files)), *origin)


def _rows(files: Mapping[str, str]) -> Iterator[tuple[Child, ...]]:
    for name, role in sorted(files.items()):
        alone = role == "drawing" and not name.endswith(".pdf")  # only paper has the other sheets
        yield (element("a", name, href=quote(name)), "drawing" if alone else _WHAT.get(role, role))
