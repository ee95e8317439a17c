import numpy as np
import pytest

from blockgen.geometry.depth_picture import edge_pixels, seen, view_from
from blockgen.geometry.facets import Facets

SQUARE = np.array([[0.0, 0.0, 0.0], [0.0, 10.0, 0.0], [0.0, 10.0, 10.0], [0.0, 0.0, 10.0]])
BOX = np.array([[-5.0, 0.0, 0.0], [5.0, 10.0, 10.0]])


def sheet(x, *, backwards=False):
    corners = np.array([[0, 1, 2], [0, 2, 3]])
    turned = corners[:, ::-1] if backwards else corners
    return Facets(SQUARE + np.array([x, 0.0, 0.0]), turned, np.zeros(2, dtype=int), np.array([[0, 1], [1, 2]]))


def view():
    return view_from((1.0, 0.0, 0.0), BOX, 4.0, rim=2)


def test_the_view_has_room_for_the_box_and_its_rim():
    assert view().size == (44, 44)
    assert view().axes == pytest.approx(np.array([[0.0, 1.0, 0.0], [0.0, 0.0, 1.0], [1.0, 0.0, 0.0]]))


def test_a_sheet_across_the_view_shows_with_its_size_and_depth():
    picture = seen(sheet(3.0), view())
    assert np.isfinite(picture.depth).sum() == 40 * 40
    assert picture.depth[20, 20] == pytest.approx(3.0)
    assert 0.5 < picture.shade[20, 20] <= 1.0


def test_a_sheet_seen_from_behind_does_not_show():
    assert not np.isfinite(seen(sheet(3.0, backwards=True), view()).depth).any()


def test_the_nearer_of_two_sheets_shows():
    near, far = sheet(3.0), sheet(-2.0)
    both = Facets(np.concatenate([near.points, far.points]), np.concatenate([near.triangles, far.triangles + 4]),
                  np.zeros(4, dtype=int), np.zeros((0, 2), dtype=int))  # fmt: skip
    assert seen(both, view()).depth[10, 30] == pytest.approx(3.0)


def test_an_edge_is_a_row_of_pixels_at_its_depth():
    rows, columns, depth = edge_pixels(sheet(3.0), view())
    assert set(depth.tolist()) == {3.0}
    assert set(rows[columns < 40].tolist()) == {2}
    assert set(range(2, 42)) <= set(columns.tolist())


def test_a_shape_without_edges_has_none():
    bare = Facets(SQUARE, np.array([[0, 1, 2]]), np.zeros(1, dtype=int), np.zeros((0, 2), dtype=int))
    assert [len(part) for part in edge_pixels(bare, view())] == [0, 0, 0]
