"""Triangles to pixels: which triangle is seen at each pixel, edges between them, and the picture as a PNG file."""

from __future__ import annotations

import struct
import zlib
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from blockgen.outputs.report.scene_numbers import Array

NONE = -1
"""Number at a pixel where no triangle is seen."""

_DEPTHS = 2**30


def seen(corners: Array, depth: Array, size: tuple[int, int]) -> tuple[Array, Array]:
    """Return which triangle is seen at each pixel.

    Args:
        corners: Corners in the picture (m, 3, 2): to the right and downwards, pixels.
        depth: Depth of each corner (m, 3); what is greater lies in front.
        size: Width and height, pixels.

    Returns:
        Numbers of the triangles (height, width), ``NONE`` where there is none, and shares of its corners
        (height, width, 3).
    """
    import numpy as np

    width, height = size
    best = np.full(height * width, -1, dtype=np.int64)
    numbers, x, y = _covered(corners, size)
    one, two = _shares(corners, numbers, x, y)
    low, high = float(depth.min()), float(depth.max())
    steps = (depth - low) * (_DEPTHS / max(high - low, 1e-9))
    first = steps[:, 0]
    deep = first[numbers] + one * (steps[:, 1] - first)[numbers] + two * (steps[:, 2] - first)[numbers]
    np.maximum.at(best, y * width + x, (np.maximum(deep, 0.0).astype(np.int64) << 32) | numbers)
    found = np.where(best < 0, NONE, best & 0xFFFFFFFF).reshape(height, width)
    return found, _shares_at(corners, found)


def _covered(corners: Array, size: tuple[int, int]) -> tuple[Array, Array, Array]:
    """Return number, column and row of each pixel whose middle lies in a triangle, row by row of each triangle."""
    import numpy as np

    top = np.clip(np.ceil(corners[..., 1].min(axis=1) - 0.5), 0, size[1]).astype(np.int64)
    end = np.clip(np.floor(corners[..., 1].max(axis=1) - 0.5), -1, size[1] - 1).astype(np.int64)
    numbers, rows = _spread(top, end)
    left, right = _spans(corners[numbers], rows + 0.5)
    start = np.clip(np.ceil(left - 0.5), 0, size[0]).astype(np.int64)
    stop = np.clip(np.floor(right - 0.5), -1, size[0] - 1).astype(np.int64)
    spans, columns = _spread(start, stop)
    return numbers[spans], columns, rows[spans]


def _spread(first: Array, last: Array) -> tuple[Array, Array]:
    """Return all whole numbers from each first to each last, and which pair each belongs to."""
    import numpy as np

    counts = np.maximum(last - first + 1, 0)
    which = np.repeat(np.arange(len(first)), counts)
    return which, np.arange(len(which)) - np.repeat(np.cumsum(counts) - counts - first, counts)


def _spans(triangles: Array, rows: Array) -> tuple[Array, Array]:
    """Return from where to where a row runs through a triangle; from infinity to minus infinity where it does not."""
    import numpy as np

    left, right = np.full(len(rows), np.inf), np.full(len(rows), -np.inf)
    for one, other in ((0, 1), (1, 2), (2, 0)):
        (ax, ay), (bx, by) = triangles[:, one].T, triangles[:, other].T
        crosses = (ay <= rows) != (by <= rows)
        x = ax + (rows - ay) * (bx - ax) / np.where(crosses, by - ay, 1.0)
        left, right = np.where(crosses, np.minimum(left, x), left), np.where(crosses, np.maximum(right, x), right)
    empty = left > right
    return np.where(empty, 1e9, left), np.where(empty, -1e9, right)


def _shares(corners: Array, numbers: Array, x: Array, y: Array) -> tuple[Array, Array]:
    """Return the shares of the second and the third corner at the middle of pixels."""
    import numpy as np

    (ax, ay), (bx, by), (cx, cy) = (corners[:, i].T for i in range(3))
    area = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay)
    scale = 1.0 / np.where(np.abs(area) < 1e-9, np.inf, area)
    right, down = x + 0.5 - ax[numbers], y + 0.5 - ay[numbers]
    one = right * ((cy - ay) * scale)[numbers] - down * ((cx - ax) * scale)[numbers]
    two = down * ((bx - ax) * scale)[numbers] - right * ((by - ay) * scale)[numbers]
    return one, two


def _shares_at(corners: Array, found: Array) -> Array:
    import numpy as np

    y, x = np.nonzero(found >= 0)
    one, two = _shares(corners, found[y, x], x, y)
    shares = np.zeros((*found.shape, 3))
    shares[y, x] = np.stack([1 - one - two, one, two], axis=1)
    return shares


def halved(pixels: Array) -> Array:
    """Return a picture (height, width, 4) at half its size: means of four pixels, colours weighed by their cover."""
    import numpy as np

    height, width, _ = pixels.shape
    squares = pixels.reshape(height // 2, 2, width // 2, 2, 4)
    cover = squares[..., 3].sum(axis=(1, 3))
    colour = (squares[..., :3] * squares[..., 3:]).sum(axis=(1, 3)) / np.maximum(cover, 1e-9)[..., None]
    return np.concatenate([colour, cover[..., None] / 4], axis=2)


def png(pixels: Array) -> bytes:
    """Return a picture (height, width, 4) of red, green, blue and cover from 0 to 1 as a PNG file, without a date."""
    import numpy as np

    height, width, _ = pixels.shape
    rows = np.rint(pixels * 255).astype(np.uint8).reshape(height, -1)
    above = np.diff(rows, axis=0, prepend=np.zeros_like(rows[:1]))  # filter 2: less the row above
    raw = np.concatenate([np.full((height, 1), 2, dtype=np.uint8), above], axis=1).tobytes()
    head = struct.pack(">IIBBBBB", width, height, 8, 6, 0, 0, 0)
    parts = (_chunk(b"IHDR", head), _chunk(b"IDAT", zlib.compress(raw, 9)), _chunk(b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(parts)


def _chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
