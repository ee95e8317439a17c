"""Reads a report as a browser would: once strictly as HTML, once as XML."""

from __future__ import annotations

from html.parser import HTMLParser
from xml.etree import ElementTree as ET

HTML = "{http://www.w3.org/1999/xhtml}"
SVG = "{http://www.w3.org/2000/svg}"
VOID = {"br", "col", "hr", "img", "input", "link", "meta"}


class Strict(HTMLParser):
    """Fails where an element is not closed in its turn."""

    def __init__(self, text):
        super().__init__(convert_charrefs=True)
        self.open, self.tags = [], []
        self.feed(text)
        self.close()
        assert not self.open, f"not closed: {self.open}"

    def handle_starttag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))
        assert len(dict(attrs)) == len(attrs), f"{tag}: an attribute twice"
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))

    def handle_endtag(self, tag):
        assert self.open, f"</{tag}> without a start"
        assert self.open.pop() == tag, f"</{tag}> closes another element"


class Page:
    """A page as a tree."""

    def __init__(self, text):
        self.text = text
        self.root = ET.fromstring(text)
        self.parents = {child: parent for parent in self.root.iter() for child in parent}
        self.by_id = {of.get("id"): of for of in self.root.iter() if of.get("id")}

    def all(self, tag):
        return [of for of in self.root.iter() if local(of) == tag]

    def words(self, of):
        return " ".join("".join(of.itertext()).split())

    def figures(self, of):
        """Return the exact numbers that stand below an element, in order, as (number, text)."""
        return [(float(one.get("value")), self.words(one)) for one in of.iter(f"{HTML}data")]

    def rows(self, caption):
        """Return the body rows of the table with a caption."""
        (table,) = [t for t in self.all("table") if self.words(t.find(f"{HTML}caption")) == caption]
        return list(table.find(f"{HTML}tbody"))


def local(element):
    return element.tag.rpartition("}")[2]
