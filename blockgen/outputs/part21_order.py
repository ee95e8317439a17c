"""A fixed order for the entities of a STEP file (ISO 10303-21) whose writer orders its colours by chance.

Everything that carries geometry, structure and names keeps its order. What belongs to presentation alone is sorted by
its text, told once where it is the same, and put behind; then all entities are numbered anew.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

STYLES = "MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION"
"""Entity that gathers the styles of one part; its items are a set, whose order says nothing."""

_INSTANCE = re.compile(r"#(\d+)\s*=\s*((?:'(?:[^']|'')*'|[^';])*);", re.DOTALL)
_REFERENCE = re.compile(r"'(?:[^']|'')*'|#(\d+)", re.DOTALL)
_BREAK = re.compile(r"'(?:[^']|'')*'|\s*\n\s*", re.DOTALL)
_SET = re.compile(r"\((#\d+(?:,#\d+)*)\)")


def in_fixed_order(data: str) -> str:
    """Return the data section with its entities in a fixed order, one on a line.

    Args:
        data: Text from ``DATA;`` to the end of the file.

    Returns:
        The same entities under new numbers.
    """
    start, end = data.index("DATA;") + len("DATA;"), data.rindex("ENDSEC;")
    bodies = {int(number): _one_line(body) for number, body in _INSTANCE.findall(data[start:end])}
    lines = (f"#{number} = {body};" for number, body in _numbered(bodies))
    return "\n".join(("DATA;", *lines, data[end:]))


def references(body: str) -> list[int]:
    """Return the numbers to which an entity refers, in order; what stands in texts does not count."""
    return [int(number) for number in _REFERENCE.findall(body) if number]


def _one_line(body: str) -> str:
    """Return an entity without the line breaks that its writer put between its words."""
    if "\n" not in body:
        return body.strip()
    return _BREAK.sub(lambda match: match[0] if match[0].startswith("'") else "", body).strip()


def _numbered(bodies: Mapping[int, str]) -> Iterator[tuple[int, str]]:
    """Yield the entities in their fixed order with new numbers."""
    roots = [number for number, body in bodies.items() if body.startswith(STYLES)]
    kept = _reached({number: references(body) for number, body in bodies.items()}, set(roots))
    new = {old: number for number, old in enumerate((n for n in bodies if n in kept), 1)}
    for old, number in new.items():
        yield number, _with(bodies[old], new)
    styles = _Styles(bodies, new)
    for root in sorted(roots, key=styles.text):
        yield from styles.told(root)


def _reached(refers: Mapping[int, list[int]], roots: set[int]) -> set[int]:
    """Return the entities that do not belong to the roots alone."""
    referred = {number for one in refers.values() for number in one}
    waiting = [number for number in refers if number not in referred and number not in roots]
    found: set[int] = set()
    while waiting:
        number = waiting.pop()
        if number not in found:
            found.add(number)
            waiting += refers[number]
    return found


def _with(body: str, new: Mapping[int, int]) -> str:
    """Return an entity with its references under their new numbers."""
    return _REFERENCE.sub(lambda match: f"#{new[int(match[1])]}" if match[1] else match[0], body)


class _Styles:
    """Entities of the presentation: their texts, and their numbers behind all others."""

    def __init__(self, bodies: Mapping[int, str], new: dict[int, int]) -> None:
        self._bodies, self._new = bodies, dict(new)
        self._texts: dict[int, str] = {old: f"#{number}" for old, number in new.items()}
        self._numbers: dict[str, int] = {}
        self._next = len(new) + 1

    def text(self, old: int) -> str:
        """Return an entity with all that it refers to written out; what is not presentation stays a number."""
        if old not in self._texts:
            body = self._sorted(old)
            self._texts[old] = _REFERENCE.sub(lambda m: f"{{{self.text(int(m[1]))}}}" if m[1] else m[0], body)
        return self._texts[old]

    def told(self, old: int) -> Iterator[tuple[int, str]]:
        """Yield an entity behind those that it refers to; what has been told under another number is not repeated."""
        if old in self._new:
            return
        text, body = self.text(old), self._sorted(old)
        if text in self._numbers:
            self._new[old] = self._numbers[text]
            return
        for child in references(body):
            yield from self.told(child)
        self._new[old] = self._numbers[text] = self._next
        self._next += 1
        yield self._new[old], _with(body, self._new)

    def _sorted(self, old: int) -> str:
        """Return an entity with the members of its set in order of their texts; others as they are."""
        body = self._bodies[old]
        if not body.startswith(STYLES):
            return body
        return _SET.sub(lambda m: f"({','.join(sorted(m[1].split(','), key=self._member))})", body, count=1)

    def _member(self, reference: str) -> str:
        return self.text(int(reference[1:]))
