"""Triangles as a picture of points: parallel projection, the nearest triangle wins, colours shaded by slope."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import numpy as np

    Array = np.ndarray[Any, np.dtype[Any]]

_DARKEST = 0.78  # brightness of a surface that is seen edgewise
_ACROSS = 640  # points of the picture along its longer side
_MARGIN = 0.05
_PIECES = 40  # an edge is looked at in so many pieces


@dataclass(frozen=True, slots=True)
class View:
    """A parallel projection on to a grid of points.

    Args:
        turn: (3, 3): rows are right, up and towards the eye.
        extent: Left, right, bottom and top of the picture, mm.
        step: Distance of two points, mm.
    """

    turn: Array
    extent: tuple[float, float, float, float]
    step: float

    @property
    def shape(self) -> tuple[int, int]:
        """Rows and columns of the picture."""
        left, right, bottom, top = self.extent
        return round((top - bottom) / self.step), round((right - left) / self.step)

    def flat(self, points: Array) -> Array:
        """Return points (n, 3) as right, up and towards the eye, mm."""
        turned: Array = points @ self.turn.T
        return turned

    def grid(self, points: Array) -> Array:
        """Return points (n, 3) as column, row and depth; whole numbers are the middles of the grid's points."""
        import numpy as np

        found: Array = self.flat(points)
        found[:, :2] = (found[:, :2] - np.array([self.extent[0], self.extent[2]])) / self.step - 0.5
        return found


def view_from(towards: tuple[float, float, float], points: Array) -> View:
    """Return the view from a direction that shows all points, z upwards."""
    import numpy as np

    eye = np.array(towards) / np.linalg.norm(towards)
    right = np.cross((0.0, 0.0, 1.0), eye)
    right /= np.linalg.norm(right)
    turn = np.array([right, np.cross(eye, right), eye])
    flat = points @ turn.T
    low, high = flat[:, :2].min(axis=0), flat[:, :2].max(axis=0)
    edge = _MARGIN * (high - low).max()
    (left, bottom), (ends, top) = low - edge, high + edge
    return View(
        turn, (float(left), float(ends), float(bottom), float(top)), float(max(ends - left, top - bottom) / _ACROSS)
    )


def drawn(
    view: View, points: Array, triangles: Array, values: Array, colours: Callable[[Array], Array]
) -> tuple[Array, Array]:
    """Return the picture (rows, columns, 4) of triangles, and the depth of what is seen (rows, columns).

    Args:
        view: From where.
        points: (points, 3), mm.
        triangles: (triangles, 3), counter-clockwise as seen from outside.
        values: (points,): value that is shown as a colour, 0 to 1.
        colours: Colours (n, 4) of values.
    """
    import numpy as np

    depth, shown = np.full(view.shape, -np.inf), np.zeros(view.shape)
    bright = np.zeros(view.shape)
    flat, facing = view.grid(points), normals(points, triangles) @ view.turn[2]
    for triangle, slope in zip(triangles[facing > 0], facing[facing > 0], strict=True):
        _fill((depth, shown, bright), flat[triangle], values[triangle], _DARKEST + (1 - _DARKEST) * slope)
    picture = colours(np.clip(shown, 0.0, 1.0))
    picture[:, :, :3] *= bright[:, :, None]
    picture[~np.isfinite(depth)] = 0.0
    return picture, depth


def _fill(planes: tuple[Array, Array, Array], corners: Array, values: Array, brightness: float) -> None:
    """Enter a triangle wherever it is the nearest one."""
    import numpy as np

    depth, shown, bright = planes
    low = np.maximum(np.ceil(corners[:, :2].min(axis=0)).astype(int), 0)
    high = np.minimum(np.floor(corners[:, :2].max(axis=0)).astype(int), (depth.shape[1] - 1, depth.shape[0] - 1))
    if (high < low).any():
        return
    across, up = np.meshgrid(np.arange(low[0], high[0] + 1), np.arange(low[1], high[1] + 1))
    weights = _weights(corners, across, up)
    if weights is None:
        return
    here = np.s_[low[1] : high[1] + 1, low[0] : high[0] + 1]
    near = weights @ corners[:, 2]
    inside = (weights.min(axis=-1) >= -1e-9) & (near > depth[here])
    depth[here][inside] = near[inside]
    shown[here][inside] = (weights @ values)[inside]
    bright[here][inside] = brightness


def _weights(corners: Array, across: Array, up: Array) -> Array | None:
    """Return the share (rows, columns, 3) of each corner at the points of a grid; None for a triangle without area."""
    import numpy as np

    (ax, ay), (bx, by), (cx, cy) = corners[:, :2]
    area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay)
    if abs(area) < 1e-12:
        return None
    second = ((across - ax) * (cy - ay) - (cx - ax) * (up - ay)) / area
    third = ((bx - ax) * (up - ay) - (across - ax) * (by - ay)) / area
    return np.stack((1 - second - third, second, third), axis=-1)


def normals(points: Array, triangles: Array) -> Array:
    """Return unit normals (triangles, 3); zero for a triangle without area."""
    import numpy as np

    a, b, c = (points[triangles[:, index]] for index in range(3))
    across = np.cross(b - a, c - a)
    lengths = np.linalg.norm(across, axis=1)[:, None]
    found: Array = np.divide(across, lengths, out=np.zeros_like(across), where=lengths > 0)
    return found


def edges_seen(view: View, points: Array, edges: Array, depth: Array) -> Array:
    """Return the pieces (pieces, 2, 2) of edges in mm that nothing hides."""
    import numpy as np

    a, b = view.flat(points)[edges[:, 0]], view.flat(points)[edges[:, 1]]
    share = np.linspace(0.0, 1.0, _PIECES + 1)[None, :, None]
    along = a[:, None] + share * (b - a)[:, None]
    middles = (along[:, 1:] + along[:, :-1]) / 2
    column = np.clip(((middles[..., 0] - view.extent[0]) / view.step).astype(int), 0, depth.shape[1] - 1)
    row = np.clip(((middles[..., 1] - view.extent[2]) / view.step).astype(int), 0, depth.shape[0] - 1)
    seen = middles[..., 2] >= depth[row, column] - 8 * view.step
    found: Array = np.stack((along[:, :-1][seen], along[:, 1:][seen]), axis=1)[:, :, :2]
    return found
