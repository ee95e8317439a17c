"""A reader of ISO 10303-21 text for the tests; it shares nothing with the writer.

``read(text)`` gives every entity by number: its types with their attributes. An attribute is a ``Ref``, a ``Typed``
value, a ``Sign`` for an enumeration or ``*``, a str, a float, a tuple for a list, or None for ``$``.
"""

from __future__ import annotations

import re
from typing import NamedTuple


class Ref(NamedTuple):
    number: int


class Typed(NamedTuple):
    name: str
    values: tuple


class Sign(NamedTuple):
    text: str


TOKEN = re.compile(
    r"""\s*(?:(?P<string>'(?:[^']|'')*')|(?P<ref>\#\d+)|(?P<sign>\.[A-Z0-9_]+\.)|(?P<name>[A-Z][A-Z0-9_]*)
    |(?P<number>[-+]?\d+(?:\.\d*)?(?:E[-+]?\d+)?)|(?P<mark>[(),;=$*]))""",
    re.VERBOSE,
)


class Reader:
    def __init__(self, data):
        data = data.rstrip()
        self.tokens, place = [], 0
        while place < len(data):
            match = TOKEN.match(data, place)
            assert match, f"not ISO 10303-21: {data[place : place + 60]!r}"
            self.tokens.append((match.lastgroup, match[match.lastgroup]))
            place = match.end()
        self.at = 0

    def take(self, text=None):
        kind, found = self.tokens[self.at]
        assert text is None or found == text, f"{text!r} expected, {found!r} found"
        self.at += 1
        return kind, found

    def next(self):
        return self.tokens[self.at][1]

    def entities(self):
        found = {}
        while self.at < len(self.tokens):
            kind, text = self.take()
            assert kind == "ref"
            number = int(text[1:])
            assert number not in found, f"#{number} twice"
            self.take("=")
            found[number] = self.leaves()
            self.take(";")
        return found

    def leaves(self):
        if self.next() != "(":
            name = self.take()[1]
            return {name: self.values()}
        self.take("(")
        found = {}
        while self.next() != ")":
            name = self.take()[1]
            assert name not in found
            found[name] = self.values()
        self.take(")")
        assert list(found) == sorted(found), "types of one entity stand in the order of the alphabet"
        return found

    def values(self):
        self.take("(")
        found = []
        while self.next() != ")":
            found.append(self.value())
            if self.next() != ")":
                self.take(",")
                assert self.next() != ")"
        self.take(")")
        return tuple(found)

    def value(self):
        kind, text = self.take()
        if kind == "string":
            return text[1:-1].replace("''", "'")
        if kind == "ref":
            return Ref(int(text[1:]))
        if kind == "number":
            assert "." in text or text.lstrip("+-").isdigit()
            return float(text) if "." in text else int(text)
        if kind == "name":
            return Typed(text, self.values())
        if text == "$":
            return None
        if text == "(":
            self.at -= 1
            return self.values()
        return Sign(text)


def read(text):
    """Return the entities of a file by number, with their types and attributes."""
    whole = re.fullmatch(
        r"ISO-10303-21;\s*HEADER;(.*?)ENDSEC;\s*DATA;(.*?)ENDSEC;\s*END-ISO-10303-21;\s*", text, re.DOTALL
    )
    assert whole is not None
    return Reader(whole[2]).entities()


def references(value):
    """Yield the numbers that an attribute points at."""
    if isinstance(value, Ref):
        yield value.number
    elif isinstance(value, Typed):
        yield from references(value.values)
    elif isinstance(value, tuple) and not isinstance(value, Sign):
        for item in value:
            yield from references(item)


def of_type(entities, name):
    """Return the attributes of all entities that have a type, by number."""
    return {number: leaves[name] for number, leaves in entities.items() if name in leaves}


def lists(value):
    """Yield every list in an attribute, the innermost included."""
    if isinstance(value, Typed):
        yield from lists(value.values)
    elif isinstance(value, tuple) and not isinstance(value, (Ref, Sign)):
        yield value
        for item in value:
            yield from lists(item)
