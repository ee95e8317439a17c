"""Tests of the triangles that are shown: closed, outward, near the surface, with the edges that a look needs."""

from __future__ import annotations

import math

import numpy as np
import pytest

from blockgen.geometry.block import build_block
from blockgen.geometry.facets import DEFLECTION, face_ids, facets, sharp_edges
from blockgen.geometry.mesh import mesh_solid
from blockgen.geometry.stand_ins.shapes import box, rod
from tests.geometry import sample_plans as samples

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def block():
    return build_block(samples.usual())


def sides(triangles):
    return [(int(t[i]), int(t[(i + 1) % 3])) for t in triangles for i in range(3)]


def test_triangles_close_and_face_outwards(block):
    made = facets(block.shape)
    a, b, c = (made.points[made.triangles[:, i]] for i in range(3))
    volume = float((a * np.cross(b, c)).sum() / 6)
    assert volume == pytest.approx(block.volume, rel=2e-3)
    there = sides(made.triangles)
    assert len(set(there)) == len(there)
    assert {(b, a) for a, b in there} == set(there)


def test_each_face_has_the_id_of_the_plan_and_lies_on_it(block):
    made, ids = facets(block.shape), face_ids(block)
    assert set(ids) == set(block.faces)
    bore = made.points[np.unique(made.triangles[made.faces == ids.index("bearing_bore.bore")])]
    radii = np.hypot(bore[:, 1], bore[:, 2] - samples.SHAFT_HEIGHT)
    assert np.allclose(radii, 25.0, atol=1e-6)
    middles = made.points[made.triangles[made.faces == ids.index("bearing_bore.bore")]].mean(axis=1)
    assert (25.0 - np.hypot(middles[:, 1], middles[:, 2] - samples.SHAFT_HEIGHT)).max() < 2 * DEFLECTION


def test_a_finer_mesh_that_is_there_already_changes_nothing():
    first, second = (build_block(samples.usual()) for _ in range(2))
    mesh_solid(second.shape)
    one, other = facets(first.shape), facets(second.shape)
    assert (one.points == other.points).all()
    assert (one.triangles == other.triangles).all()
    assert (one.edges == other.edges).all()


def test_a_box_shows_its_twelve_edges_and_no_diagonals():
    made = facets(box((0.0, 0.0, 0.0), (10.0, 20.0, 30.0)))
    assert len(made.points) == 8
    lengths = sorted(float(np.linalg.norm(made.points[a] - made.points[b])) for a, b in made.edges)
    assert lengths == [10.0] * 4 + [20.0] * 4 + [30.0] * 4


def test_a_rod_shows_its_two_circles_and_no_seam():
    made = facets(rod((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), 5.0, 40.0))
    around = sum(float(np.linalg.norm(made.points[a] - made.points[b])) for a, b in made.edges)
    assert around == pytest.approx(2 * 2 * math.pi * 5.0, rel=0.02)


def test_an_open_border_is_an_edge_too():
    points = np.array([(0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0)])
    assert len(sharp_edges(points, np.array([(0, 1, 2)]), np.array([0]))) == 3
