"""Deformed shape and stress of a block as a picture: two views, the shape before in outline, scale of the stress."""

from __future__ import annotations

import io
import math
from typing import Any

from blockgen.evidence.stiffness.field import Field
from blockgen.outputs.raster import View, drawn, edges_seen, view_from

_INCHES, _DOTS = (11.0, 6.0), 120
_VIEWS = (("bearing side", (-1.0, -0.75, 0.62)), ("motor side", (1.0, 0.75, 0.62)))
_LARGEST = 0.07  # greatest displacement as shown over the greatest outside dimension
_MAP = "magma_r"
_LEGEND = (
    "Thin blue: edges of the unloaded block.   Darkest: this stress or more; at held and sharp edges it grows with the "
    "mesh."
)
_INK, _BEFORE = "#202020", "#1769aa"


def stiffness_png(field: Field) -> bytes:
    """Return a picture of a field as PNG, the same bytes for the same field.

    Args:
        field: What one load does to the outside of a block.
    """
    import matplotlib as mpl
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    plain = {key: value for key, value in mpl.rcParamsDefault.items() if "backend" not in key}
    with mpl.rc_context(plain):
        figure = Figure(figsize=_INCHES, dpi=_DOTS, facecolor="white")
        canvas = FigureCanvasAgg(figure)
        _draw(figure, field)
        made = io.BytesIO()
        canvas.print_png(made, metadata={"Software": None})  # type: ignore[no-untyped-call]
    return made.getvalue()


def magnification(field: Field) -> float:
    """Return how many times the displacement is enlarged: 1, 2 or 5 times a power of ten; 1 where nothing moves."""
    furthest = max(math.hypot(*move) for move in field.displacement)
    size = max(max(axis) - min(axis) for axis in zip(*field.points, strict=True))
    if furthest == 0:
        return 1.0
    wanted = _LARGEST * size / furthest
    power = 10.0 ** math.floor(math.log10(wanted))
    return max(step * power for step in (1, 2, 5) if step * power <= wanted)


def _draw(figure: Any, field: Field) -> None:
    import numpy as np

    scale, most = magnification(field), _top(field)
    points, move = np.array(field.points), scale * np.array(field.displacement)
    for index, (name, towards) in enumerate(_VIEWS):
        axes = figure.add_axes((0.01 + 0.44 * index, 0.03, 0.44, 0.75))
        view = view_from(towards, np.vstack((points, points + move)))
        _picture(axes, view, field, scale, most)
        axes.set_title(f"seen from the {name}", fontsize=10, color=_INK)
    _scale(figure, most)
    _words(figure, field, scale)


def _picture(axes: Any, view: View, field: Field, scale: float, most: float) -> None:
    """Draw a view: stress on the deformed shape, its edges, and those of the shape before."""
    import numpy as np
    from matplotlib import colormaps
    from matplotlib.collections import LineCollection

    points, triangles, edges = (np.array(rows) for rows in (field.points, field.triangles, field.edges))
    moved, shares = points + scale * np.array(field.displacement), np.array(field.stress) / most
    for place, ink, width in ((moved, _INK, 0.9), (points, _BEFORE, 0.6)):
        colours, depth = drawn(view, place, triangles, shares, colormaps[_MAP])
        if place is moved:
            axes.imshow(colours, interpolation="antialiased", origin="lower", extent=view.extent)
        seen = edges_seen(view, place, edges, depth)
        axes.add_collection(LineCollection(list(seen), colors=ink, linewidths=width))
    _directions(axes, view)
    axes.set_axis_off()


def _directions(axes: Any, view: View) -> None:
    """Draw the axes in the lower left corner."""
    left, right, bottom, top = view.extent
    size = 0.06 * max(right - left, top - bottom)
    at = (left + 1.4 * size, bottom + 0.5 * size)
    for name, axis in zip("xyz", view.turn[:2].T, strict=True):
        tip = at[0] + size * axis[0], at[1] + size * axis[1]
        axes.annotate(
            "", tip, at, arrowprops={"arrowstyle": "-|>", "color": _INK, "lw": 0.9, "shrinkA": 0, "shrinkB": 0}
        )
        end = at[0] + 1.3 * size * axis[0], at[1] + 1.3 * size * axis[1]
        axes.text(*end, name, fontsize=9, color=_INK, ha="center", va="center")


def _top(field: Field) -> float:
    """Return the stress at the upper end of the scale: the greatest away from singular edges, rounded up, MPa."""
    value = field.stress_away or max(field.stress) or 1.0
    step = 10.0 ** math.floor(math.log10(value)) / 2
    return step * math.ceil(value / step - 1e-9)


def _scale(figure: Any, most: float) -> None:
    from matplotlib.cm import ScalarMappable
    from matplotlib.colors import Normalize

    axes = figure.add_axes((0.905, 0.1, 0.016, 0.62))
    bar = figure.colorbar(ScalarMappable(Normalize(0.0, most), _MAP), cax=axes, extend="max")
    bar.set_label("stress (von Mises) MPa", fontsize=10, color=_INK)
    bar.ax.tick_params(labelsize=9)


def _words(figure: Any, field: Field, scale: float) -> None:
    furthest = 1000 * max(math.hypot(*move) for move in field.displacement)
    lines = (
        (0.95, 13, f"Deformed shape, displacements {scale:g} times enlarged; greatest displacement {furthest:.3g} um"),
        (0.905, 10.5, f"Load: {field.case}.   Block {field.support}.   Flanges {field.flanges}."),
        (0.868, 10.5, _LEGEND),
    )  # fmt: skip
    for height, size, text in lines:
        figure.text(0.02, height, text, fontsize=size, color=_INK, va="center")
