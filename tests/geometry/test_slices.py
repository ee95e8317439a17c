import numpy as np
import pytest

from blockgen.geometry.facets import Facets
from blockgen.geometry.slices import outlines

CORNERS = np.array([[x, y, z] for x in (0.0, 2.0) for y in (0.0, 3.0) for z in (0.0, 5.0)])
BOX = np.array([
    [0, 1, 3], [0, 3, 2], [4, 6, 7], [4, 7, 5], [0, 4, 5], [0, 5, 1],
    [2, 3, 7], [2, 7, 6], [0, 2, 6], [0, 6, 4], [1, 5, 7], [1, 7, 3],
])  # fmt: skip


def box(*, at=(0.0, 0.0, 0.0)):
    return Facets(CORNERS + np.array(at), BOX, np.zeros(12, dtype=int), np.zeros((0, 2), dtype=int))


def area(loop, axis):
    x, y = (np.delete(loop, axis, axis=1)[:, i] for i in (0, 1))
    return 0.5 * abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1)))


@pytest.mark.parametrize(("axis", "at", "expected"), [(0, 1.0, 15.0), (1, 0.5, 10.0), (2, 4.9, 6.0)])
def test_a_box_is_cut_in_a_rectangle(axis, at, expected):
    loops = outlines(box(), axis, at)
    assert len(loops) == 1
    assert area(loops[0], axis) == pytest.approx(expected)
    assert loops[0][:, axis] == pytest.approx(at)


@pytest.mark.parametrize("at", [-1.0, 2.0, 7.0])
def test_a_plane_beside_the_box_or_on_its_far_face_cuts_nothing(at):
    assert outlines(box(), 0, at) == []


def test_a_plane_on_the_near_face_still_closes():
    loops = outlines(box(), 0, 0.0)
    assert [area(loop, 0) for loop in loops] == [pytest.approx(15.0)]


def test_two_bodies_give_two_outlines():
    other = box(at=(0.0, 10.0, 0.0))
    both = Facets(np.concatenate([CORNERS, other.points]), np.concatenate([BOX, BOX + 8]),
                  np.zeros(24, dtype=int), np.zeros((0, 2), dtype=int))  # fmt: skip
    assert len(outlines(both, 2, 2.5)) == 2
