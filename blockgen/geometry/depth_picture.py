"""Triangles seen from far away: for each pixel the nearest surface and its brightness."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

import numpy as np

from blockgen.geometry.facets import Facets

Array = np.ndarray[tuple[int, ...], np.dtype[Any]]

_LIGHT = (0.35, 0.5, 0.8)
_DARKEST = 0.72
_STEP = 0.4
"""Distance of the points that make an edge, pixels."""


@dataclass(frozen=True, slots=True, eq=False)
class View:
    """A parallel view.

    Args:
        axes: Unit vectors (3, 3) to the right, upwards and towards the eye.
        origin: What lies at the lower left corner, mm to the right and upwards.
        scale: Pixels per mm.
        size: Rows and columns.
    """

    axes: Array
    origin: tuple[float, float]
    scale: float
    size: tuple[int, int]

    def placed(self, points: Array) -> Array:
        """Return points (n, 3) as columns and rows in pixels, counted from the lower left, and depth in mm."""
        turned = points @ self.axes.T
        turned[:, 0] = (turned[:, 0] - self.origin[0]) * self.scale
        turned[:, 1] = (turned[:, 1] - self.origin[1]) * self.scale
        return turned


@dataclass(frozen=True, slots=True, eq=False)
class Seen:
    """What one shape shows, lowest row first.

    Args:
        depth: Nearest surface (rows, columns), mm towards the eye; -inf where there is none.
        shade: Brightness of that surface (rows, columns), 0 to 1.
    """

    depth: Array
    shade: Array


def view_from(towards: tuple[float, float, float], box: Array, scale: float, rim: int = 8) -> View:
    """Return a view of all that lies in a box.

    Args:
        towards: Direction from the shape to the eye; z is up, so it must not be along z.
        box: Least and greatest corner (2, 3), mm.
        scale: Pixels per mm.
        rim: Free pixels around.
    """
    eye = np.array(towards) / math.hypot(*towards)
    right = np.cross((0.0, 0.0, 1.0), eye)
    right /= np.linalg.norm(right)
    axes = np.array([right, np.cross(eye, right), eye])
    corners = np.array([[box[i][0], box[j][1], box[k][2]] for i in (0, 1) for j in (0, 1) for k in (0, 1)]) @ axes.T
    low, high = corners.min(axis=0), corners.max(axis=0)
    columns, rows = (math.ceil((high[i] - low[i]) * scale) + 2 * rim for i in (0, 1))
    return View(axes, (float(low[0]) - rim / scale, float(low[1]) - rim / scale), scale, (rows, columns))


def seen(shape: Facets, view: View) -> Seen:
    """Return what a shape shows in a view."""
    picture = Seen(np.full(view.size, -np.inf), np.zeros(view.size))
    placed = view.placed(shape.points)
    corners = placed[shape.triangles]
    spread = shape.points[shape.triangles]
    across = np.cross(spread[:, 1] - spread[:, 0], spread[:, 2] - spread[:, 0])
    normals = across / np.maximum(np.linalg.norm(across, axis=1, keepdims=True), 1e-12) @ view.axes.T
    light = np.array(_LIGHT) / math.hypot(*_LIGHT)
    shades = _DARKEST + (1 - _DARKEST) * np.clip(normals @ light, 0.0, 1.0)
    for triangle in np.flatnonzero(normals[:, 2] > 1e-6):
        _paint(picture, corners[triangle], float(shades[triangle]))
    return picture


def _paint(picture: Seen, corners: Array, shade: float) -> None:
    """Enter one triangle where it is nearer than what is there."""
    rows, columns = picture.depth.shape
    low = np.maximum(np.floor(corners[:, :2].min(axis=0)).astype(int), 0)
    high = np.minimum(np.ceil(corners[:, :2].max(axis=0)).astype(int) + 1, (columns, rows))
    if (low >= high).any():
        return
    x, y = np.arange(low[0], high[0]) + 0.5, (np.arange(low[1], high[1]) + 0.5)[:, None]
    (ax, ay, az), (bx, by, bz), (cx, cy, cz) = corners
    area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay)
    if abs(area) < 1e-9:
        return
    first = ((bx - x) * (cy - y) - (cx - x) * (by - y)) / area
    second = ((cx - x) * (ay - y) - (ax - x) * (cy - y)) / area
    third = 1 - first - second
    depth = first * az + second * bz + third * cz
    there = (slice(low[1], high[1]), slice(low[0], high[0]))
    hit = (np.minimum(np.minimum(first, second), third) >= -1e-9) & (depth > picture.depth[there])
    picture.depth[there][hit] = depth[hit]
    picture.shade[there][hit] = shade


def edge_pixels(shape: Facets, view: View) -> tuple[Array, Array, Array]:
    """Return the pixels of the sharp edges: rows, columns, depth in mm."""
    ends = view.placed(shape.points)[shape.edges]
    lengths = np.linalg.norm(ends[:, 1, :2] - ends[:, 0, :2], axis=1)
    counts = np.maximum(np.ceil(lengths / _STEP).astype(int), 1) + 1
    which = np.repeat(np.arange(len(ends)), counts)
    step = np.concatenate([np.linspace(0.0, 1.0, count) for count in counts]) if len(ends) else np.zeros(0)
    points = ends[which, 0] + step[:, None] * (ends[which, 1] - ends[which, 0])
    columns, rows = np.floor(points[:, 0]).astype(int), np.floor(points[:, 1]).astype(int)
    inside = (rows >= 0) & (rows < view.size[0]) & (columns >= 0) & (columns < view.size[1])
    return rows[inside], columns[inside], points[inside, 2]
