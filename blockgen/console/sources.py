"""Sources below a table instead of in each of its rows."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from blockgen.console.page import BLANK, Line


def numbered(sources: Sequence[str]) -> tuple[list[str], list[Line]]:
    """Return the number of each source, and the lines that tell what the numbers mean.

    Args:
        sources: One text a row of the table.
    """
    numbers = {source: str(n) for n, source in enumerate(dict.fromkeys(sources), start=1)}
    return [numbers[source] for source in sources], list(_lines(numbers.items()))


def _lines(numbers: Iterable[tuple[str, str]]) -> Iterable[Line]:
    yield BLANK
    yield Line("Sources")
    for source, number in numbers:
        yield Line(f"{number:>2}  {source}", hang=3)
