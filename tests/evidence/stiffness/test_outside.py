"""The outside of a mesh: closed, turned outwards, its edges between two triangles each."""

from __future__ import annotations

import numpy as np
import pytest

from blockgen.evidence.stiffness.outside import Outside, edges_of, sharp_edges
from blockgen.evidence.stiffness.stress import singular_points

CORNERS = np.array([[x, y, z] for x in (0.0, 1.0) for y in (0.0, 1.0) for z in (0.0, 1.0)])
TRIANGLES = np.array(
    [[0, 1, 3], [0, 3, 2], [4, 6, 7], [4, 7, 5], [0, 4, 5], [0, 5, 1],
     [2, 3, 7], [2, 7, 6], [0, 2, 6], [0, 6, 4], [1, 5, 7], [1, 7, 3]]
)  # fmt: skip
NAMES = ("left", "right", "front", "back", "base", "top")


def cube():
    return Outside(CORNERS, TRIANGLES, np.repeat(np.arange(6), 2), NAMES)


def test_edges_of_a_cube():
    edges = edges_of(cube())
    assert len(edges.ends) == 18
    assert len(sharp_edges(cube())) == 12
    for ends, sides, tips in zip(edges.ends, edges.sides, edges.tips, strict=True):
        for side, tip in zip(sides, tips, strict=True):
            assert set(TRIANGLES[side]) == {*ends, tip}


def test_normals_point_outwards():
    centres = CORNERS[TRIANGLES].mean(axis=1) - 0.5
    assert (np.einsum("ij,ij->i", centres, cube().normals()) > 0).all()


class Block:
    faces = ("base",)


def test_stress_is_singular_at_the_border_of_the_held_base_only():
    points = singular_points(Block(), cube())
    assert len(points)
    assert (points[:, 2] == 0.0).all()


def test_re_entrant_edge_counts_and_an_outer_one_does_not():
    """The cube turned inside out: each of its edges is an inside corner."""
    hollow = Outside(CORNERS, TRIANGLES[:, ::-1], np.repeat(np.arange(6), 2), tuple("abcdef"))
    plain = Outside(CORNERS, TRIANGLES, np.repeat(np.arange(6), 2), tuple("abcdef"))
    assert len(singular_points(Block(), plain)) == 0
    assert len(singular_points(Block(), hollow)) >= 24


@pytest.mark.slow
def test_outside_of_a_mesh_holds_its_volume():
    pytest.importorskip("ngsolve")
    from netgen.occ import Box, Pnt

    from blockgen.evidence.stiffness.outside import outside_of
    from tests.outside.solids import meshed

    found = outside_of(meshed(Box(Pnt(0, 0, 0), Pnt(3, 4, 5)), 2.0))
    a, b, c = (found.corners[found.triangles[:, i]] for i in range(3))
    assert np.einsum("ij,ij->", np.cross(a, b), c) / 6 == pytest.approx(60.0)
