"""The front of a sweep as a picture: stiffness and offset over mass, the number of base screws by the mark."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import Any

from blockgen.change.sweep.pareto import Figures

_SIZE = (8.0, 7.2)  # inch
_DPI = 150
_MARKS = "osD^vP"
_QUIET, _STRONG, _EDGE = "#9a9a9a", "#1f4e5f", "#0d2a35"
_SAID = (
    "Filled: the front. No other variant that holds is as good in mass, stiffness, offset and number of screws and "
    "better in one of them.\nNumbers are those of the table."
)


def write_plot(path: Path, feasible: Mapping[int, Figures], best: Sequence[int], *, statistics: bool) -> None:
    """Draw the variants that hold, the front among them.

    Args:
        path: PNG to write.
        feasible: Mass kg, stiffness N/um with a minus, offset mm and number of base screws by number of the variant.
        best: Numbers of those on the front, counted from 0.
        statistics: True where the offset is exact.
    """
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    figure = Figure(figsize=_SIZE, dpi=_DPI, layout="constrained")
    upper, lower = figure.subplots(2, 1, sharex=True)
    offset = (
        "Offset at the coupling,\n95 % of blocks below, mm"
        if statistics
        else "Offset at the coupling, P95 estimate, mm"
    )
    panels = ((upper, 1, -1.0, "Stiffness, estimate, N/µm"), (lower, 2, 1.0, offset))
    for axes, column, sign, label in panels:
        _draw(axes, feasible, best, column, sign)
        axes.set_ylabel(label)
    lower.set_xlabel("Mass of the block, kg")
    figure.suptitle(_title(len(feasible), len(best)), x=0.02, ha="left", fontsize=12)
    _legend(upper, feasible)
    figure.supxlabel(_SAID, x=0.02, ha="left", fontsize=8)
    canvas: Any = FigureCanvasAgg(figure)
    canvas.draw()  # places of the panels on the paper are known from here on
    for axes, column, sign, _ in panels:
        _number(axes, {number: (feasible[number][0], sign * feasible[number][column]) for number in best})
    canvas.print_png(path, metadata={"Software": None})


def _title(count: int, best: int) -> str:
    if not count:
        return "No variant holds"
    return f"{count} variants hold, {best} of them on the front"


def _draw(axes: Any, feasible: Mapping[int, Figures], best: Sequence[int], column: int, sign: float) -> None:
    """Draw one figure over the mass: all that holds quietly, the front strongly and with numbers."""
    chosen = frozenset(best)
    rest = [row for number, row in feasible.items() if number not in chosen]
    for mark, rows in _by_screws(rest, feasible).items():
        axes.scatter(
            *_places(rows, column, sign), marker=mark, s=16, facecolors="none", edgecolors=_QUIET, linewidths=0.7
        )
    for mark, rows in _by_screws([feasible[number] for number in best], feasible).items():
        axes.scatter(
            *_places(rows, column, sign), marker=mark, s=42, color=_STRONG, edgecolors=_EDGE, linewidths=0.7, zorder=3
        )
    axes.grid(visible=True, color="#e4e4e4", linewidth=0.6)
    axes.set_axisbelow(True)
    axes.margins(0.08)


def _places(rows: Iterable[Figures], column: int, sign: float) -> tuple[list[float], list[float]]:
    some = list(rows)
    return [row[0] for row in some], [sign * row[column] for row in some]


def _marks(feasible: Mapping[int, Figures]) -> dict[float, str]:
    """Return a mark for each number of base screws."""
    counts = sorted({row[3] for row in feasible.values()})
    return {count: _MARKS[min(i, len(_MARKS) - 1)] for i, count in enumerate(counts)}


def _by_screws(rows: Iterable[Figures], feasible: Mapping[int, Figures]) -> dict[str, list[Figures]]:
    marks = _marks(feasible)
    found: dict[str, list[Figures]] = {mark: [] for mark in marks.values()}
    for row in rows:
        found[marks[row[3]]].append(row)
    return {mark: some for mark, some in found.items() if some}


def _number(axes: Any, places: Mapping[int, tuple[float, float]]) -> None:
    """Write numbers beside the marks of the front where there is room; the others stand in the table."""
    scale = 72 / _DPI
    at = {number: tuple(scale * float(v) for v in axes.transData.transform(place)) for number, place in places.items()}
    taken = [_around(x, y, 4.0, 4.0) for x, y in at.values()]
    for number, (x, y) in sorted(at.items(), key=lambda item: (item[1], item[0])):
        wide = 2.7 * len(str(number + 1))
        for dx, dy in ((7 + wide, 0.0), (-7 - wide, 0.0), (0.0, 10.0), (0.0, -10.0)):
            box = _around(x + dx, y + dy, wide, 4.0)
            if not any(_touch(box, other) for other in taken):
                taken.append(box)
                axes.annotate(
                    str(number + 1), places[number], (dx, dy), textcoords="offset points", fontsize=8, ha="center",
                    va="center", color=_EDGE, bbox={"facecolor": "white", "edgecolor": "none", "pad": 0.5},
                )  # fmt: skip
                break


def _around(x: float, y: float, wide: float, high: float) -> tuple[float, float, float, float]:
    return x - wide, y - high, x + wide, y + high


def _touch(one: tuple[float, float, float, float], other: tuple[float, float, float, float]) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def _legend(axes: Any, feasible: Mapping[int, Figures]) -> None:
    for count, mark in _marks(feasible).items():
        axes.scatter([], [], marker=mark, s=30, facecolors="none", edgecolors=_EDGE, label=f"{count:.0f} base screws")
    if feasible:
        axes.legend(frameon=False, fontsize=9, loc="best")
