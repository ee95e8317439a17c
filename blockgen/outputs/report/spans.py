"""Dimension lines and labels in rows, so that no two of a row touch."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from blockgen.outputs.report.markup import Markup, element, joined

LETTER = 6.7
"""Width that a letter of a picture is given, in units of the picture; wider than most."""

_GAP = 8.0
_HEAD = 6.0


@dataclass(frozen=True, slots=True)
class Span:
    """A distance along a picture with its label; a label alone where both ends are one place.

    Args:
        low: Left end.
        high: Right end.
        label: What stands at it.
    """

    low: float
    high: float
    label: str

    @property
    def width(self) -> float:
        """Width of the label."""
        return len(self.label) * LETTER

    @property
    def middle(self) -> float:
        """Where the middle of the label stands: between the ends where it fits, else behind the right one."""
        if self.high == self.low or self.width + 2 * _HEAD <= self.high - self.low:
            return (self.low + self.high) / 2
        return self.high + _HEAD + self.width / 2

    @property
    def reach(self) -> tuple[float, float]:
        """From where to where span and label reach."""
        half = self.width / 2
        return min(self.low, self.middle - half), max(self.high, self.middle + half)


def in_rows(spans: Iterable[Span]) -> tuple[tuple[Span, ...], ...]:
    """Return spans in rows from short to long, each in the first row in which it touches no other."""
    rows: list[list[Span]] = []
    for span in sorted(spans, key=lambda s: (s.high - s.low, s.low, s.label)):
        for row in rows:
            if all(_apart(span, other) for other in row):
                row.append(span)
                break
        else:
            rows.append([span])
    return tuple(tuple(row) for row in rows)


def _apart(one: Span, other: Span) -> bool:
    return one.reach[1] + _GAP <= other.reach[0] or other.reach[1] + _GAP <= one.reach[0]


def dimension_lines(rows: Sequence[Sequence[Span]], top: float, pitch: float, start: float) -> Markup:
    """Return dimension lines in rows below a picture.

    Args:
        rows: Spans by row.
        top: Height of the first row.
        pitch: From row to row.
        start: Where the extension lines begin.
    """
    placed = [(span, top + i * pitch) for i, row in enumerate(rows) for span in row]
    return joined((*(_line(span, at, start) for span, at in placed), *(_words(span, at - 3.0) for span, at in placed)))


def _words(span: Span, at: float) -> Markup:
    """Return a label; it comes after all lines, since its edge covers them."""
    return element("text", span.label, class_="label edged", x=span.middle, y=at, text_anchor="middle")


def _line(span: Span, at: float, start: float) -> Markup:
    ends = (
        element("line", class_="thin", x1=x, y1=start, x2=x, y2=at + 3.0) for x in (span.low, span.high)
    )  # fmt: skip
    line = element("line", class_="thin", x1=span.low, y1=at, x2=span.high, y2=at)
    heads = (_head(span.low, at, _HEAD), _head(span.high, at, -_HEAD))
    return element("g", *ends, line, *heads)


def _head(x: float, y: float, length: float) -> Markup:
    return element("path", class_="head", d=f"M{x:.2f} {y:.2f}l{length:.2f} -2v4z")


def labels(rows: Sequence[Sequence[Span]], top: float, pitch: float, ends: dict[str, float]) -> Markup:
    """Return labels in rows above a picture, each with a line down to its part.

    Args:
        rows: Labels by row, the row nearest to the picture last.
        top: Height of the first row.
        pitch: From row to row.
        ends: Height at which the line of a label ends.
    """
    placed = [(span, top + i * pitch) for i, row in enumerate(rows) for span in row]
    leaders = (_leader(span, at, ends[span.label]) for span, at in placed)
    return joined((*leaders, *(_words(span, at) for span, at in placed)))


def _leader(span: Span, at: float, end: float) -> Markup:
    return element(
        "g",
        element("line", class_="thin", x1=span.low, y1=at + 3.0, x2=span.low, y2=end),
        element("circle", class_="head", cx=span.low, cy=end, r=2.0),
    )  # fmt: skip
