"""The section of a family: each of its motors on the block."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.outputs import show
from blockgen.outputs.report.markup import Child, Markup, anchor, element, joined
from blockgen.outputs.report.tables import content, table
from blockgen.outputs.report.values import Document, figure, plain, words

_COLUMNS = (
    "Motor", "Length that it alone allows", "Coupling starts at", "Journal grip", "Motor grip", "Gap", "Screws",
    "Torque", "Holes", "Worst check",
)  # fmt: skip
_LEAD = (
    "One of these motors at a time is mounted; the fitter sets the coupling anew for each. The axial layout and the "
    "parts in the picture are those of the first."
)


def motors(document: Document) -> Markup:
    """Return the section."""
    found = table("Each motor on the block", _COLUMNS, _rows(document), right=_COLUMNS[2:6])
    return content(element("p", _LEAD), found)


def _rows(document: Document) -> Iterator[tuple[Child, ...]]:
    for row in document["family"]:
        sizes = (plain(row[key], "mm", 2) for key in ("coupling_position", "journal_grip", "motor_grip", "shaft_gap"))
        torque = row["torque"]
        holes = ", ".join(words(group) for group in row["holes"])
        yield (
            row["motor"],
            joined((plain(row["length_min"], "mm", 2), " to ", plain(row["length_max"], "mm", 2))),
            *sizes,
            row["screws"],
            figure(torque, "-" if torque is None else show.quantity(torque, "N*m")),
            show.joined((holes, row["turned"]), "; "),
            _worst(row["worst"], row["verdict"]),
        )


def _worst(check: str, verdict: str) -> Markup:
    link = element("a", words(check), href=f"#{anchor('check', check)}")
    return joined((link, f": {show.verdict(verdict)}"))
