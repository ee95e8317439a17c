"""The section of screws and pins: what to order, and the card for the assembler."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from blockgen.outputs import show
from blockgen.outputs.report.markup import Child, Markup, element
from blockgen.outputs.report.tables import content, table
from blockgen.outputs.report.values import Document, figure, plain, words

_ORDER = ("Where", "Count", "Size", "Length", "Class", "Standard", "Washer", "Torque", "Preload", "Engagement")
_CARD = (
    "Screws",
    "First round",
    "Second round",
    "Full torque",
    "Order of tightening",
    "Tool",
    "Preload, least to greatest",
)
_LEAD = (
    "For the assembler: heads and threads lightly oiled, faces wiped dry. Tighten in the order given, in three rounds "
    "to 30, 60 and 100 %."
)


def screws(document: Document) -> Markup:
    """Return the section."""
    return content(
        table("What to order", _ORDER, _orders(document), right=(_ORDER[1], *_ORDER[7:])),
        element("p", _LEAD),
        table("Torque card", _CARD, _card(document), right=_CARD[1:4]),
    )  # fmt: skip


def _orders(document: Document) -> Iterator[tuple[Child, ...]]:
    for f in document["fasteners"]:
        preload = None if f["preload"] is None else f"{show.significant(f['preload'] / 1000, 3)} kN"
        yield (
            words(f["where"]), figure(f["count"], str(f["count"])), f["size"], plain(f["length"], "mm"),
            f["class"] or "-", f["standard"], f["washer"] or "-", _torque(f["torque"]),
            figure(f["preload"], preload or "-"), plain(f["engagement"], "mm", 2),
        )  # fmt: skip


def _torque(torque: float | None) -> Markup:
    return figure(torque, "-" if torque is None else f"{show.significant(torque, 3)} {show.unit_sign('N*m')}")


def _card(document: Document) -> Iterator[tuple[Child, ...]]:
    for line in document["torque_card"]:
        tool = f"{line['tool']}, hexagon key {show.number(line['key_size'])} mm"
        order = _in_order(line["order"])
        name = f"{words(line['where'])}: {line['screws']}"
        yield (name, *(_torque(step) for step in line["steps"]), order, tool, _between(line))


def _between(line: dict[str, Any]) -> str:
    if line["preloads"] is None:
        return "-"
    return " to ".join(show.significant(force / 1000, 3) for force in line["preloads"]) + " kN"


def _in_order(holes: list[str]) -> str:
    """Return the holes in their order, for instance ``base screw 2, 5, 1``."""
    parts = [hole.rpartition("_") for hole in holes]
    if not holes or len({stem for stem, *_ in parts}) > 1:
        return ", ".join(words(hole) for hole in holes) or "-"
    return f"{words(parts[0][0])} {', '.join(number for *_, number in parts)}"
