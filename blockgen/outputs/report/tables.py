"""Tables, sections and lists as all parts of the page use them."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockgen.outputs.report.markup import NOTHING, Child, Markup, element, joined

_FEW = 3
"""Columns that a telephone shows without squeezing them."""


def section(name: str, title: str, *children: Child) -> Markup:
    """Return a section of the page with its heading; the heading names it."""
    heading = element("h2", title, id=f"{name}-title")
    return element("section", heading, *children, id=name, aria_labelledby=f"{name}-title")


def content(*children: Child) -> Markup:
    """Return what a section holds."""
    return joined(children)


def table(caption: str, columns: Sequence[str], rows: Iterable[Sequence[Child]], right: Sequence[str] = ()) -> Markup:
    """Return a table that scrolls in its own box where it is wide; the first cell of each row heads it."""
    classes = ["right" if name in right else None for name in columns]
    head = joined(element("th", name, scope="col", class_=c) for name, c in zip(columns, classes, strict=True))
    body = joined(_row(row, classes) for row in rows)
    if not body:
        return element("p", f"{caption}: none.", class_="none")
    parts = element("caption", caption), element("thead", element("tr", head)), element("tbody", body)
    many = {"class_": "many", "style": f"--columns: {len(columns)}"} if len(columns) > _FEW else {}
    return scrolling(caption, element("table", *parts, **many))


def _row(cells: Sequence[Child], classes: Sequence[str | None]) -> Markup:
    first, *rest = cells
    head = element("th", first, scope="row", class_=classes[0])
    return element("tr", head, *(element("td", c, class_=k) for c, k in zip(rest, classes[1:], strict=True)))


def scrolling(name: str, inside: Markup) -> Markup:
    """Return something wide in a box of its own that scrolls; the box takes the focus, so that keys scroll it."""
    return element("div", inside, class_="scroll", role="region", aria_label=name, tabindex="0")


def bullets(items: Iterable[Child], class_: str | None = None) -> Markup:
    """Return a list; nothing without items."""
    inside = joined(element("li", item) for item in items)
    return element("ul", inside, class_=class_) if inside else NOTHING


def unfolding(title: Child, *children: Child, class_: str | None = None, paper: bool = False) -> Markup:
    """Return something that unfolds.

    Args:
        title: What is seen while it is folded.
        children: What unfolds.
        class_: Its class.
        paper: True where it is printed unfolded; the others are printed as the reader has left them.
    """
    classes = " ".join(name for name in (class_, "paper" if paper else None) if name)
    return element("details", element("summary", title), *children, class_=classes or None)


def facts(pairs: Iterable[tuple[str, Child]]) -> Markup:
    """Return names with what belongs to them."""
    return element("dl", joined(element("div", element("dt", n), element("dd", c)) for n, c in pairs), class_="facts")
