"""Markup by functions: what is not ``Markup`` is escaped, so that no text of a spec becomes markup.

Every element is written closed and with quoted attributes, so that the page is well-formed as HTML and as XML.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable
from html import escape

_EMPTY = frozenset({"br", "circle", "col", "hr", "img", "input", "line", "link", "meta", "path", "rect"})
_UNSEEN = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"})
_NO_ANCHOR = re.compile(r"[^A-Za-z0-9._-]")


class Markup(str):
    """Text that is markup already."""

    __slots__ = ()


Child = str | Markup | None
Attribute = str | float | bool | None
NOTHING = Markup("")


def text(of: str) -> Markup:
    """Return a text escaped, without control and direction marks; line ends and tabs stay."""
    return Markup(escape(of if of.isprintable() else _seen(of), quote=True))


def _seen(of: str) -> str:
    return "".join(c for c in of if c in "\n\t" or unicodedata.category(c) not in _UNSEEN)


def element(tag: str, *children: Child, **attributes: Attribute) -> Markup:
    """Return an element.

    Args:
        tag: Name of the element.
        children: Markup as it stands, other texts escaped; None is left out.
        attributes: Values by name; a last ``_`` is dropped, one elsewhere becomes ``-``, so that ``class_`` and
            ``aria_label`` can be written; None and False are left out, True repeats the name, as XML wants it.
    """
    start = "".join(_attribute(name, value) for name, value in attributes.items())
    if tag in _EMPTY:
        return Markup(f"<{tag}{start}/>")
    return Markup(f"<{tag}{start}>{joined(children)}</{tag}>")


def _attribute(name: str, value: Attribute) -> str:
    if value is None or value is False:
        return ""
    plain = name.rstrip("_").replace("_", "-")
    if value is True:
        return f' {plain}="{plain}"'
    return f' {plain}="{text(value if isinstance(value, str) else coordinate(value))}"'


def coordinate(value: float) -> str:
    """Return a length in a picture with two decimals at most."""
    shown = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if shown == "-0" else shown


def joined(children: Iterable[Child], between: str = "") -> Markup:
    """Return children one after the other, what is no markup escaped."""
    parts = (child if isinstance(child, Markup) else text(child) for child in children if child is not None)
    return Markup(between.join(parts))


def anchor(kind: str, key: str) -> str:
    """Return the id of an element, for instance ``dimension-length``; signs that an id cannot hold become codes."""
    return f"{kind}-{_NO_ANCHOR.sub(lambda sign: f'-{ord(sign.group()):x}-', key)}"
