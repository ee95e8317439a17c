"""The scene as a still picture: for paper, for a browser without 3D or scripts, and until the 3D view has started."""

from __future__ import annotations

import math
from base64 import b64encode
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import product
from typing import TYPE_CHECKING

from blockgen.outputs.report.scene_numbers import along
from blockgen.outputs.report.scene_raster import NONE, halved, png, seen
from blockgen.plan import Point

if TYPE_CHECKING:
    from blockgen.outputs.report.scene_numbers import Array

AREA = 330_000
"""Width times height, pixels; it is drawn at twice the size first."""

MARGIN = 1.08
"""Size of the picture over that of what it shows, in both directions; MARGIN in ``assets/view/camera.js``."""

TURN, TILT = -122.0, 26.0
"""Direction of the first look, degrees: START in ``assets/view/camera.js``."""

LAMPS = ((-0.4, 0.75, 0.9, 1.9), (0.8, 0.2, 0.6, 0.9))
"""Lamps of ``assets/view/viewer.js``: to the right, upwards, towards the viewer, strength."""

SKY, GROUND, OPEN = 1.0, 0.35, 1.9
"""Light from above and from below, and its strength, as in ``assets/view/viewer.js``."""

LINE = 0.13
SHARP = 0.94
_JUMP = 1.5
_STEPS = 8192


@dataclass(frozen=True, slots=True, eq=False)
class Patch:
    """One part where it stands.

    Args:
        points: Corners (n, 3), mm.
        triangles: Indices (m, 3), counter-clockwise from outside.
        faces: Number of the face of each triangle (m,).
        colour: ``#rrggbb``.
    """

    points: Array
    triangles: Array
    faces: Array
    colour: str


def still(patches: Sequence[Patch]) -> str:
    """Return the picture of the parts as a ``data:`` address of a PNG file without ground."""
    return f"data:image/png;base64,{b64encode(png(halved(_drawn(patches)))).decode('ascii')}"


def _drawn(patches: Sequence[Patch]) -> Array:
    """Return the picture at twice the size: (height, width, 4)."""
    import numpy as np

    right, up, back = axes()
    corners = np.concatenate([patch.points[patch.triangles] for patch in patches])
    towards = along(_normals(corners), back) > 0
    light = np.concatenate([_light(patch) for patch in patches])[towards]
    colours = np.concatenate([np.tile(_linear(patch.colour), (len(patch.triangles), 1)) for patch in patches])[towards]
    counts = np.cumsum([0, *(int(patch.faces.max(initial=0)) + 1 for patch in patches)])
    faces = np.concatenate([patch.faces + first for patch, first in zip(patches, counts, strict=False)])[towards]
    corners = corners[towards]
    flat = np.stack([along(corners, right), -along(corners, up)], axis=2)
    depth = along(corners, back)
    middle, size = _extent(patches)
    scale = math.sqrt(4 * AREA / float(size[0] * size[1]))
    width, height = (2 * math.ceil(scale * float(end) / 2) for end in size)
    found, shares = seen((flat - middle) * scale + (width / 2, height / 2), depth, (width, height))
    there = found != NONE
    numbers, parts = found[there], shares[there]
    pixels = np.zeros((*found.shape, 4))
    pixels[there, :3] = _shown(colours[numbers] * (light[numbers] * parts).sum(axis=1)[:, None])
    pixels[..., 3] = there
    deep = np.zeros(found.shape)
    deep[there] = (depth[numbers] * parts).sum(axis=1)
    pixels[_edges(found, faces, _normals(corners), deep)] = (LINE, LINE, LINE, 1.0)
    return pixels


def axes() -> tuple[Point, Point, Point]:
    """Return the unit vectors to the right, upwards and towards the viewer."""
    a, e = math.radians(TURN), math.radians(TILT)
    right = (-math.sin(a), math.cos(a), 0.0)
    up = (-math.sin(e) * math.cos(a), -math.sin(e) * math.sin(a), math.cos(e))
    return right, up, (math.cos(e) * math.cos(a), math.cos(e) * math.sin(a), math.sin(e))


def _extent(patches: Sequence[Patch]) -> tuple[Array, Array]:
    """Return middle and size of the picture to the right and downwards, mm, from the boxes about the parts."""
    import numpy as np

    right, up, _ = axes()
    ends = [(patch.points.min(axis=0), patch.points.max(axis=0)) for patch in patches]
    corners = np.array([[end[i][k] for k, i in enumerate(pick)] for end in ends for pick in product((0, 1), repeat=3)])
    flat = np.stack([along(corners, right), -along(corners, up)], axis=1)
    low, high = flat.min(axis=0), flat.max(axis=0)
    return (low + high) / 2, (high - low) * MARGIN


def _normals(corners: Array) -> Array:
    import numpy as np

    across = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normals: Array = across / np.maximum(np.linalg.norm(across, axis=1, keepdims=True), 1e-12)
    return normals


def _light(patch: Patch) -> Array:
    """Return how bright each corner of each triangle is (m, 3): rounds are shaded smoothly within a face."""
    import numpy as np

    corners = patch.points[patch.triangles]
    across = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    keys = patch.triangles + patch.faces[:, None] * len(patch.points)
    _, number = np.unique(keys, return_inverse=True)
    number = number.reshape(-1)
    summed = np.stack([np.bincount(number, np.repeat(across[:, i], 3)) for i in range(3)], axis=1)[number]
    normals = summed / np.maximum(np.linalg.norm(summed, axis=1, keepdims=True), 1e-12)
    total = OPEN * (GROUND + (SKY - GROUND) * (0.5 + 0.5 * normals[:, 2]))
    for *place, strength in LAMPS:
        way = [math.fsum(part * axis[i] for part, axis in zip(place, axes(), strict=True)) for i in range(3)]
        total = total + strength * np.maximum(0.0, along(normals, way) / math.hypot(*way))
    brightness: Array = (total / np.pi).reshape(-1, 3)
    return brightness


def _edges(found: Array, faces: Array, normals: Array, depth: Array) -> Array:
    """Return where lines run: at the outline, between faces at an angle, and where one face ends before another."""
    import numpy as np

    lines = np.zeros(found.size, dtype=bool)
    at = np.arange(found.size).reshape(found.shape)
    places = np.append(faces, NONE)[found]  # the number of no triangle is -1, the last
    for one, other in ((at[:, :-1], at[:, 1:]), (at[:-1], at[1:])):
        change = places.flat[one] != places.flat[other]
        here, there = one[change], other[change]
        first, second = found.flat[here], found.flat[there]
        outline = (first == NONE) | (second == NONE)
        apart = (normals[first] * normals[second]).sum(axis=1) < SHARP
        line = outline | apart | (np.abs(depth.flat[here] - depth.flat[there]) > _JUMP)
        lines[here[line]] = lines[there[line]] = True
    return lines.reshape(found.shape)


def _linear(colour: str) -> list[float]:
    """Return red, green and blue of ``#rrggbb`` as brightness (IEC 61966-2-1)."""
    shown = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    return [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in shown]


def _shown(linear: Array) -> Array:
    """Return brightness as a screen takes it (IEC 61966-2-1), from a table, since powers of millions take long."""
    import numpy as np

    steps = [step / (_STEPS - 1) for step in range(_STEPS)]
    table = np.array([12.92 * s if s <= 0.0031308 else 1.055 * s ** (1 / 2.4) - 0.055 for s in steps])
    shown: Array = table[np.clip(linear * (_STEPS - 1), 0, _STEPS - 1).astype(np.int64)]
    return shown
