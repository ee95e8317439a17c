"""A picture of what is added and removed: two views through the old block, and two sections.

Removed volume has stripes, added volume has dots, so that neither needs colour to be told apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import fsum
from pathlib import Path
from typing import TYPE_CHECKING, Any

from blockgen.change.compare.data import Comparison, Volumes
from blockgen.change.compare.volumes import Overlay
from blockgen.errors import KernelError

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

    from blockgen.geometry.depth_picture import Seen
    from blockgen.geometry.difference import Lump
    from blockgen.geometry.facets import Facets

Colour = tuple[float, float, float]
REMOVED: Colour = (0.87, 0.49, 0.10)
ADDED: Colour = (0.16, 0.42, 0.68)
_STEEL = (0.60, 0.63, 0.67)
_INK = (0.13, 0.15, 0.18)
_VEIL = 0.30
"""How much the old block covers what lies in it."""

_FINE = 2
"""Pixels of the view for one of the picture, each way."""

_PIXELS = 720
_DPI = 130
_HAIR = 0.08
_FINENESS = ((0.15, 0.3), (0.05, 0.1), (0.4, 0.6), (0.02, 0.05))
"""Greatest distance in mm and greatest angle in rad between triangles and a piece, one after the other."""

_VIEWS = (("seen from the motor side", (0.72, 0.52, 0.46)), ("seen from the bearing side", (-0.72, 0.52, 0.46)))


@dataclass(frozen=True, slots=True, eq=False)
class Meshes:
    """The solids of a comparison as triangles; ``missing`` pieces could not be meshed."""

    old: Facets
    new: Facets
    added: tuple[Facets, ...]
    removed: tuple[Facets, ...]
    missing: int = 0


def write_picture(found: Comparison, over: Overlay, path: Path) -> None:
    """Write the picture as PNG; the same solids give the same bytes.

    Args:
        found: The comparison.
        over: Its solids.
        path: File to write.

    Raises:
        OSError: it cannot be written.
    """
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    meshes, height = meshes_of(over), over.shaft_height
    figure = Figure(figsize=(10.4, 10.4), dpi=_DPI, facecolor="white")
    FigureCanvasAgg(figure)
    grid = figure.add_gridspec(2, 2, left=0.06, right=0.98, top=0.93, bottom=0.14, hspace=0.12, wspace=0.14,
                               height_ratios=(1.05, 1.0))  # fmt: skip
    figure.suptitle(
        f"Change from {_text(found.old.stem)} to {_text(found.new.stem)}", x=0.06, ha="left", fontsize=13, color=_INK
    )
    for column, (title, towards) in enumerate(_VIEWS):
        _draw_view(figure.add_subplot(grid[0, column]), meshes, title, towards)
    _draw_section(figure.add_subplot(grid[1, 0]), meshes, (0, 2), 0.0, "section along the shaft, y = 0")
    _draw_section(
        figure.add_subplot(grid[1, 1]),
        meshes,
        (0, 1),
        height,
        f"section at shaft height, z = {height:g} mm",
    )
    _draw_legend(figure, over.volumes)
    if meshes.missing:
        words = f"{meshes.missing} of the pieces could not be drawn; the volumes count them"
        figure.text(0.98, 0.945, words, ha="right", fontsize=8, color=_INK)
    figure.savefig(path, format="png", dpi=_DPI, metadata={"Software": None})


def _text(words: str) -> str:
    """Return text in which nothing is taken for a formula."""
    return words.replace("$", r"\$")


def meshes_of(over: Overlay) -> Meshes:
    """Return the solids as triangles.

    Raises:
        KernelError: a block could not be meshed.
    """
    from blockgen.geometry.facets import facets

    added, removed = ([_piece(lump) for lump in lumps] for lumps in (over.added, over.removed))
    shown = [tuple(piece for piece in pieces if piece is not None) for pieces in (added, removed)]
    missing = len(added) + len(removed) - len(shown[0]) - len(shown[1])
    return Meshes(facets(over.old.shape), facets(over.new.shape), shown[0], shown[1], missing)


def _piece(lump: Lump) -> Facets | None:
    """Return a piece as triangles; None where the kernel finds none.

    A crescent between two holes that nearly touch is thinner at its horns than any triangle; another fineness helps.
    """
    from blockgen.geometry.facets import facets

    for deflection, angle in _FINENESS:
        try:
            return facets(lump.solid, deflection, angle)
        except KernelError:
            continue
    return None


def _draw_view(axes: Axes, meshes: Meshes, title: str, towards: tuple[float, float, float]) -> None:
    axes.imshow(view_pixels(meshes, towards), origin="lower", interpolation="antialiased")
    axes.set_title(title, fontsize=10, color=_INK)
    axes.set_axis_off()


def view_pixels(meshes: Meshes, towards: tuple[float, float, float]) -> Any:
    """Return a view as colours (rows, columns, 3), 0 to 1, lowest row first: pieces seen through the old block."""
    import numpy as np

    from blockgen.geometry.depth_picture import edge_pixels, seen, view_from

    points = np.concatenate([meshes.old.points, meshes.new.points])
    box = np.array([points.min(axis=0), points.max(axis=0)])
    view = view_from(towards, box, _FINE * _PIXELS / float(np.linalg.norm(box[1] - box[0])))
    colours = np.ones((*view.size, 3))
    nearest = np.full(view.size, -np.inf)
    for pieces, colour, dark in (
        (meshes.removed, REMOVED, _stripes(view.size)),
        (meshes.added, ADDED, _dots(view.size)),
    ):
        for piece in pieces:
            _lay(colours, nearest, seen(piece, view), colour, dark)
        for piece in pieces:
            rows, columns, depth = edge_pixels(piece, view)
            shown = depth > nearest[rows, columns] - _HAIR
            colours[rows[shown], columns[shown]] = np.array(colour) * 0.45
    _lay_veil(colours, nearest, seen(meshes.old, view), edge_pixels(meshes.old, view))
    return _coarser(colours)


def _lay(colours: Any, nearest: Any, piece: Seen, colour: Colour, dark: Any) -> None:
    """Lay one piece over those that lie behind it."""
    import numpy as np

    hit = piece.depth > nearest
    tint = np.array(colour) * piece.shade[hit][:, None]
    colours[hit] = np.where(dark[hit][:, None], tint * 0.55, tint)
    nearest[hit] = piece.depth[hit]


def _lay_veil(colours: Any, nearest: Any, old: Seen, edges: tuple[Any, Any, Any]) -> None:
    """Lay the old block over the pieces so that they show through it, then its edges, the hidden ones faintly."""
    import numpy as np

    veil = (old.depth > nearest + _HAIR) & np.isfinite(old.depth)
    grey = np.array(_STEEL) * 0.6 + 0.4 * old.shade[veil][:, None]
    colours[veil] = (1 - _VEIL) * colours[veil] + _VEIL * grey
    rows, columns, depth = edges
    front = depth > np.maximum(old.depth, nearest)[rows, columns] - 4 * _HAIR
    colours[rows[~front], columns[~front]] *= 0.85
    colours[rows[front], columns[front]] = _INK


def _stripes(size: tuple[int, int]) -> Any:
    import numpy as np

    rows, columns = np.indices(size)
    return (rows - columns) % (9 * _FINE) < 2 * _FINE


def _dots(size: tuple[int, int]) -> Any:
    import numpy as np

    rows, columns = np.indices(size)
    pitch = 8 * _FINE
    aside = columns + rows // pitch % 2 * pitch // 2  # every other row of dots stands between those below
    return (rows % pitch - pitch / 2) ** 2 + (aside % pitch - pitch / 2) ** 2 < (1.6 * _FINE) ** 2


def _coarser(colours: Any) -> Any:
    """Return the mean of each square of fine pixels."""
    rows, columns = (n // _FINE for n in colours.shape[:2])
    return colours[: rows * _FINE, : columns * _FINE].reshape(rows, _FINE, columns, _FINE, 3).mean(axis=(1, 3))


def _draw_section(axes: Axes, meshes: Meshes, plane: tuple[int, int], at: float, title: str) -> None:
    across = 3 - sum(plane)
    _fill(axes, [meshes.old], plane, across, at, facecolor=(*_STEEL, 0.35), edgecolor="none")
    _fill(axes, meshes.removed, plane, across, at, facecolor=(*REMOVED, 0.55), edgecolor=_dark(REMOVED), hatch="////")
    _fill(axes, meshes.added, plane, across, at, facecolor=(*ADDED, 0.45), edgecolor=_dark(ADDED), hatch="..")
    _fill(axes, [meshes.old], plane, across, at, facecolor="none", edgecolor=_INK, linewidth=1.0)
    axes.set_aspect("equal")
    axes.autoscale_view()
    axes.set_title(title, fontsize=10, color=_INK)
    axes.set_xlabel("x, mm (bearing seat at 0, motor to the right)", fontsize=8, color=_INK)
    axes.set_ylabel(f"{'xyz'[plane[1]]}, mm", fontsize=8, color=_INK)
    axes.tick_params(labelsize=8)
    axes.spines[["top", "right"]].set_visible(False)


def _dark(colour: Colour) -> Colour:
    red, green, blue = colour
    return 0.55 * red, 0.55 * green, 0.55 * blue


def _fill(axes: Axes, shapes: Sequence[Facets], plane: tuple[int, int], across: int, at: float, **style: Any) -> None:
    from matplotlib.patches import PathPatch
    from matplotlib.path import Path as Curve

    from blockgen.geometry.slices import outlines

    loops = [loop for shape in shapes for loop in outlines(shape, across, at)]
    if loops:
        curves = [Curve([*loop[:, list(plane)], loop[0, list(plane)]], closed=True) for loop in loops]
        axes.add_patch(PathPatch(Curve.make_compound_path(*curves), **{"linewidth": 0.7, **style}))


def _draw_legend(figure: Figure, volumes: Volumes) -> None:
    from matplotlib.patches import Patch

    removed, added = (fsum(lump.volume for lump in lumps) for lumps in (volumes.removed, volumes.added))
    handles = [
        Patch(facecolor=(*_STEEL, 0.35), edgecolor=_INK, label=f"old block: {_volume(volumes.old)}"),
        Patch(facecolor=(*REMOVED, 0.55), edgecolor=_dark(REMOVED), hatch="////", label=f"removed: {_volume(removed)}"),
        Patch(facecolor=(*ADDED, 0.45), edgecolor=_dark(ADDED), hatch="..", label=f"added: {_volume(added)}"),
        Patch(facecolor="none", edgecolor="none", label=f"new block: {_volume(volumes.new)}"),
    ]
    figure.legend(handles=handles, loc="lower center", ncols=2, frameon=False, fontsize=10, handlelength=3.2,
                  handleheight=1.6, bbox_to_anchor=(0.5, 0.01))  # fmt: skip


def _volume(volume: float) -> str:
    return f"{volume:.0f} mm\N{SUPERSCRIPT THREE} ({volume / 1000:.2f} cm\N{SUPERSCRIPT THREE})"
