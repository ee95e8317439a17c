"""The picture of the stiffness: scale, what hides what, the same bytes."""

from __future__ import annotations

import io
import subprocess
import sys

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.stiffness.field import Field
from blockgen.outputs.raster import drawn, edges_seen, normals, view_from
from blockgen.outputs.stiffness_picture import magnification, stiffness_png
from tests.evidence.stiffness.test_outside import CORNERS, TRIANGLES, cube


def field(reach=1e-3, top=12.0):
    from blockgen.evidence.stiffness.outside import sharp_edges

    points = tuple(map(tuple, (100 * CORNERS).tolist()))
    return Field(
        case="thrust away", support="held under the screw heads only", flanges="free", points=points,
        triangles=tuple(map(tuple, TRIANGLES.tolist())), edges=tuple(map(tuple, sharp_edges(cube()).tolist())),
        displacement=tuple((reach * z / 100, 0.0, 0.0) for _, _, z in points),
        stress=tuple(top * z / 100 for _, _, z in points), stress_away=top,
    )  # fmt: skip


def test_magnification_worked():
    # 7 % of 100 mm over 1 um is 7000
    assert magnification(field(1e-3)) == 5000
    assert magnification(field(3e-3)) == 2000
    assert magnification(field(0.0)) == 1.0


@given(st.floats(1e-6, 1.0))
def test_what_is_shown_is_seen_and_not_grotesque(reach):
    assert 2.5 < magnification(field(reach)) * reach <= 7.0 + 1e-9


def test_the_nearer_triangle_hides_the_other():
    """Two squares one behind the other: only the value of the one nearer to the eye is seen."""
    square = np.array([[0, 0, 0], [0, 1, 0], [0, 1, 1], [0, 0, 1]], dtype=float)
    points = np.vstack((square, square + np.array([1.0, 0.0, 0.0])))
    triangles = np.array([[0, 1, 2], [0, 2, 3], [4, 5, 6], [4, 6, 7]])
    view = view_from((1.0, 0.0, 0.0), points)
    values = np.array([0.25] * 4 + [0.75] * 4)
    picture, depth = drawn(view, points, triangles, values, lambda v: np.repeat(v[..., None], 4, axis=-1))
    middle = picture[picture.shape[0] // 2, picture.shape[1] // 2]
    assert middle[3] == pytest.approx(0.75)
    assert depth.max() == pytest.approx(1.0)
    ends = np.array([[0, 1], [4, 5]])
    seen = edges_seen(view, points + np.array([0.0, 0.0, 1e-6]), ends, depth)
    assert 0 < len(seen) <= 42
    assert picture[0, 0, 3] == 0.0  # nothing there


def test_normals_of_flat_and_empty_triangles():
    points = np.array([[0, 0, 0], [1, 0, 0], [0, 1, 0]], dtype=float)
    assert normals(points, np.array([[0, 1, 2], [0, 1, 1]])).tolist() == [[0, 0, 1], [0, 0, 0]]


@pytest.mark.slow
def test_the_same_bytes_in_another_process_and_under_other_settings():
    here = stiffness_png(field())
    script = (
        "import sys, matplotlib as mpl; mpl.rcParams['axes.facecolor'] = 'red'; mpl.rcParams['font.size'] = 30\n"
        "from tests.outputs.test_stiffness_picture import field, stiffness_png\n"
        "sys.stdout.buffer.write(stiffness_png(field()))"
    )
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, check=True, timeout=120)
    assert run.stdout == here
    assert here.startswith(b"\x89PNG")
    assert b"tEXt" not in here  # no version, no date


@pytest.mark.slow
def test_colours_grow_dark_with_stress():
    """The cube's top bears the most: the picture is darker there than at its foot."""
    from PIL import Image

    made = np.asarray(Image.open(io.BytesIO(stiffness_png(field()))).convert("L"), dtype=float)
    column = made[:, made.shape[1] // 4]
    block = column[int(0.35 * len(column)) : int(0.85 * len(column))]
    assert block[: len(block) // 4].mean() < block[-len(block) // 4 :].mean() - 40
