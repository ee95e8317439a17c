"""The report page: everything of a set in one file that needs nothing beside it."""

from __future__ import annotations

import json
import re
from importlib.resources import files

from blockgen.outputs.report.alignment import alignment
from blockgen.outputs.report.axial import axial
from blockgen.outputs.report.beside import beside
from blockgen.outputs.report.checks import checks
from blockgen.outputs.report.clearances import clearances
from blockgen.outputs.report.contents import Contents
from blockgen.outputs.report.dimensions import dimensions
from blockgen.outputs.report.drawing import drawing
from blockgen.outputs.report.head import cautions, first_figures, head, title_of
from blockgen.outputs.report.inspection import inspection
from blockgen.outputs.report.markup import Markup, element, joined
from blockgen.outputs.report.motors import motors
from blockgen.outputs.report.open_points import assumptions, missing
from blockgen.outputs.report.screws import screws
from blockgen.outputs.report.spec import spec
from blockgen.outputs.report.stiffness import stiffness
from blockgen.outputs.report.tables import section
from blockgen.outputs.report.values import Document

_ENDING = re.compile("[<>&\\x7f-\\x9f\\u200b-\\u200f\\u2028-\\u202e\\u2066-\\u2069\\ufffe\\uffff]")


def page(contents: Contents) -> str:
    """Return the page as text, well-formed as HTML and as XML; the same contents give the same bytes."""
    document, parts = contents.document, _parts(contents)
    skip = element("a", "Skip to the content", href="#content", class_="skip")
    main = element("main", *(section(*part) for part in parts), id="content", tabindex="-1")
    up = element("a", "Top", href="#status", class_="top")
    foot = element("footer", element("p", f"{document['tool']} \u00b7 {document['status']}"), up)
    top = head(document, [(name, title) for name, title, _ in parts])
    body = element("body", skip, top, main, foot, embedded(document), *_scripts(contents))
    html = element("html", _head(contents), body, xmlns="http://www.w3.org/1999/xhtml", lang="en")
    return f"<!DOCTYPE html>\n{html}\n"


def _head(contents: Contents) -> Markup:
    document = contents.document
    styles = (_asset("style.css"), *(() if contents.view is None else (contents.view.style,)))
    return element(
        "head",
        element("meta", charset="utf-8"),
        element("meta", name="viewport", content="width=device-width, initial-scale=1"),
        element("meta", name="color-scheme", content="light dark"),
        element("title", f"{title_of(document)} - {document['status'].partition(':')[0]}"),
        *map(style, styles),
    )


def _parts(contents: Contents) -> list[tuple[str, str, Markup]]:
    """Return id, title and content of each section, in order."""
    document, view = contents.document, contents.view
    return [
        ("first", "At a glance", first_figures(document, contents.files)),
        ("cautions", "Cautions", cautions(document)),
        *([] if view is None else [("view", "Block and parts in 3D", view.markup)]),
        ("drawing", "Drawing", drawing(document, contents.drawing, contents.files)),
        ("checks", "Checks", checks(document)),
        ("dimensions", "Dimensions", dimensions(document)),
        ("axial", "Axial layout", axial(document)),
        *([("family", "Motors of the family", motors(document))] if "family" in document else []),
        ("alignment", "Alignment of the shafts", alignment(document)),
        ("screws", "Screws and pins", screws(document)),
        ("stiffness", "Stiffness", stiffness(document, contents.stiffness_picture)),
        ("clearances", "Clearances", clearances(document)),
        ("missing", "To ask for", missing(document)),
        ("assumptions", "Assumptions", assumptions(document)),
        ("inspection", "Inspection", inspection(contents.inspection, contents.files)),
        ("spec", "Spec and origins", spec(document, contents.spec)),
        ("files", "Files of this set", beside(document, contents.files)),
    ]


def _scripts(contents: Contents) -> tuple[Markup, ...]:
    own = script(_asset("folding.js"))
    return (own,) if contents.view is None else (own, script(contents.view.script))


def style(plain: str) -> Markup:
    """Return a style of our own as it stands, read alike as HTML and as XML.

    Raises:
        ValueError: it holds signs that only one of them takes as they stand.
    """
    if set(plain) & {"<", "&"}:
        raise ValueError("a style holds < or &")
    return element("style", Markup(plain))


def embedded(document: Document) -> Markup:
    """Return the summary as data for scripts; no sign in it can end the element, in HTML or in XML."""
    plain = json.dumps(document, ensure_ascii=False, allow_nan=False, separators=(",", ":"))
    safe = _ENDING.sub(lambda sign: f"\\u{ord(sign.group()):04x}", plain)
    return element("script", Markup(safe), type="application/json", id="summary-data")


def script(plain: str) -> Markup:
    """Return a script of our own as it stands, read alike as HTML and as XML.

    Raises:
        ValueError: it would end its element.
    """
    if "]]>" in plain or "</script" in plain.lower():
        raise ValueError("a script holds signs that end it")
    return element("script", joined((Markup("//<![CDATA[\n"), Markup(plain), Markup("\n//]]>"))))


def _asset(name: str) -> str:
    return files("blockgen.outputs.report").joinpath(name).read_text(encoding="utf-8")
