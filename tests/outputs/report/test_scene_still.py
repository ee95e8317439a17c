"""Tests of the still picture: which triangle is seen, shading, edges, the PNG file."""

from __future__ import annotations

import io

import numpy as np
import pytest
from PIL import Image

from blockgen.outputs.report import scene_still
from blockgen.outputs.report.scene_raster import NONE, halved, png, seen
from blockgen.outputs.report.scene_still import Patch, axes, still

CUBE = np.array([(x, y, z) for x in (0.0, 1.0) for y in (0.0, 1.0) for z in (0.0, 1.0)])
SIDES = [(0, 1, 3, 2), (4, 6, 7, 5), (0, 4, 5, 1), (2, 3, 7, 6), (0, 2, 6, 4), (1, 5, 7, 3)]  # from outside


def cube(shift=(0.0, 0.0, 0.0), size=1.0, colour="#808080"):
    triangles = [t for a, b, c, d in SIDES for t in ((a, b, c), (a, c, d))]
    return Patch(CUBE * size + np.array(shift), np.array(triangles), np.repeat(np.arange(6), 2), colour)


def test_a_triangle_covers_the_pixels_whose_middles_lie_in_it():
    found, shares = seen(np.array([[(0.0, 0.0), (8.0, 0.0), (0.0, 8.0)]]), np.zeros((1, 3)), (10, 10))
    middles = [(x + 0.5, y + 0.5) for y in range(10) for x in range(10)]
    inside = np.array([x + y <= 8.0 for x, y in middles]).reshape(10, 10)
    assert ((found == 0) == inside).all()
    assert (found[~inside] == NONE).all()
    assert shares[1, 2] == pytest.approx([1 - (2.5 + 1.5) / 8, 2.5 / 8, 1.5 / 8])


def test_what_lies_in_front_is_seen_whichever_comes_first():
    near, far = [(0.0, 0.0), (9.0, 0.0), (0.0, 9.0)], [(0.0, 0.0), (9.0, 0.0), (0.0, 9.0)]
    for depths, front in (([1.0, 0.0], 0), ([0.0, 1.0], 1)):
        found, _ = seen(np.array([near, far]), np.repeat(np.array(depths)[:, None], 3, axis=1), (10, 10))
        assert found[2, 2] == front


def test_triangles_outside_the_picture_are_left_out():
    found, _ = seen(np.array([[(-9.0, -9.0), (-1.0, -9.0), (-9.0, -1.0)]]), np.zeros((1, 3)), (6, 6))
    assert (found == NONE).all()


def test_the_axes_are_square_and_look_from_above_and_the_bearing_side():
    right, up, back = (np.array(axis) for axis in axes())
    assert np.cross(right, up) == pytest.approx(back)
    assert back[0] < 0
    assert back[1] < 0
    assert back[2] > 0


def picture(text):
    from base64 import b64decode

    start = "data:image/png;base64,"
    assert text.startswith(start)
    return np.asarray(Image.open(io.BytesIO(b64decode(text[len(start) :]))))


def test_three_sides_of_a_cube_are_seen_the_top_brightest_on_no_ground():
    pixels = picture(still([cube()]))
    assert pixels.shape[0] * pixels.shape[1] == pytest.approx(scene_still.AREA, rel=0.01)
    border = np.concatenate([pixels[0], pixels[-1], pixels[:, 0], pixels[:, -1]])
    assert not border[:, 3].any()  # nothing is cut off
    shades, counts = np.unique(pixels[pixels[..., 3] == 255][:, 0], return_counts=True)
    great = sorted(shades[counts > 2000].tolist())
    assert len(great) == 3
    middle = pixels[:, pixels.shape[1] // 2, :]
    column = middle[middle[:, 3] == 255][:, 0]
    assert column[10] == great[-1]


def test_a_part_behind_another_is_hidden():
    _, _, back = axes()
    front = cube(colour="#ff0000")
    behind = cube(shift=tuple(-3.0 * v for v in back), size=0.5, colour="#00ff00")
    pixels = picture(still([front, behind]))
    assert not ((pixels[..., 1] > 150) & (pixels[..., 3] == 255)).any()


def test_halving_keeps_colours_at_the_edge_and_their_cover():
    pixels = np.zeros((2, 2, 4))
    pixels[0, 0] = (1.0, 0.5, 0.0, 1.0)
    assert halved(pixels).tolist() == [[[1.0, 0.5, 0.0, 0.25]]]


def test_the_file_is_what_was_put_in():
    rng = np.random.default_rng(3)
    pixels = np.round(rng.random((5, 7, 4)) * 255) / 255
    read = np.asarray(Image.open(io.BytesIO(png(pixels))))
    assert (read == np.rint(pixels * 255)).all()
