"""The section of the spec with origins, and of the values that rules worked with."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.outputs.report.dimensions import records, values
from blockgen.outputs.report.markup import Markup, element, joined
from blockgen.outputs.report.tables import content, scrolling, unfolding
from blockgen.outputs.report.values import Document
from blockgen.record import Record

_ORIGINS = (
    "given: it stands in the spec; preset: from a preset; standard: from a table; assumed: from a rule of practice, to "
    "be checked; sized: worked out."
)
_BETWEEN, _PRACTICE, _MAKING = "worked out on the way", "practice", "making"
_TITLES = {_BETWEEN: "Worked out on the way", _PRACTICE: "Values of practice", _MAKING: "Making: stock, setups, tools"}


def spec(document: Document, resolved: str) -> Markup:
    """Return the section: values by table of the spec, each unfolding, and the resolved spec as text."""
    groups = _groups(document)
    folded = (_group(document, name, of) for name, of in groups.items())
    text = scrolling("Resolved spec", element("pre", element("code", resolved)))
    unfolded = unfolding("The resolved spec as text", text, class_="source")
    return content(element("p", _ORIGINS), *folded, unfolded)


def _groups(document: Document) -> dict[str, list[Record]]:
    """Return the values by table of the spec: tables first, then what was worked out, practice and making."""
    found: dict[str, list[Record]] = {}
    for record in _records(document):
        found.setdefault(_table(record.key), []).append(record)
    return {
        name: found[name]
        for name in sorted(
            found, key=lambda name: (name in _TITLES, list(_TITLES).index(name) if name in _TITLES else 0)
        )
    }


def _records(document: Document) -> Iterator[Record]:
    yield from records(document, "inputs")
    yield from records(document, "making")


def _table(key: str) -> str:
    first, dot, _ = key.partition(".")
    return first if dot else _BETWEEN


def _group(document: Document, name: str, of: list[Record]) -> Markup:
    title = _TITLES.get(name) or joined(("Table ", element("code", f"[{name}]")))
    heading = joined((title, f", {len(of)} {'value' if len(of) == 1 else 'values'}"))
    return unfolding(heading, values(document, of), class_="group", paper=True)
