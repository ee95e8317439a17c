"""The lines of the DXF drawing against the block's own STEP file, laid flat by plain arithmetic.

Reference: ISO 10303-21 exchange file with ISO 10303-242 content, as ``write_block_step`` writes it, read with the CAD
kernel's ``STEPControl_Reader``; DXF (AutoCAD 2010 group codes) read with ezdxf. Not a published example: the
independent parts are both files, both readers, the sampling of the edges and the scalar products that lay a point into
a view.
"""

import io
from itertools import pairwise

import ezdxf
import pytest

from blockgen.geometry.block import build_block
from blockgen.outputs.drawing.crowded import LEAST_SPACE
from blockgen.outputs.drawing.to_dxf import dxf_bytes
from blockgen.outputs.drawing_set import drawing_set, pictures
from blockgen.outputs.step import write_block_step
from tests.geometry.plane import from_line
from tests.outputs.drawing.test_drawing_files import from_entity
from tests.outside.test_projection_of_step import LAID_FLAT, PLANS, edges_in, is_left_out, is_tip, points_on

pytestmark = pytest.mark.slow


def lines_of_views(sheet):
    found = {}
    for entity in ezdxf.read(io.StringIO(dxf_bytes(sheet, "x").decode())).modelspace():
        identifier = entity.get_xdata("BLOCKGEN")[0].value if entity.has_xdata("BLOCKGEN") else ""
        if identifier.startswith("view."):
            found.setdefault(identifier.removeprefix("view."), []).append(entity)
    return found


def lower_left(drawn):
    xs = [v for e in drawn if e.dxftype() == "LINE" for v in (e.dxf.start.x, e.dxf.end.x)]
    ys = [v for e in drawn if e.dxftype() == "LINE" for v in (e.dxf.start.y, e.dxf.end.y)]
    return min(xs), min(ys)


@pytest.mark.parametrize("name", PLANS)
def test_edges_of_the_file_lie_on_lines_of_the_drawing(name, tmp_path):
    """Within 0.7 mm on paper: lines nearer to one another are not drawn side by side. Most lie on a line exactly."""
    plan = PLANS[name]()
    block = build_block(plan)
    path = tmp_path / "block.step"
    write_block_step(block, plan, path, "released for review", "0")
    sheet = drawing_set(plan, pictures(block), "released for review").drawing
    space, body = LEAST_SPACE / sheet.scale, plan.body
    drawn = lines_of_views(sheet)["front"]
    left, low = lower_left(drawn)
    edges = [points for kind, points in map(points_on, edges_in(path)) if not is_tip(points)]
    exact = count = 0
    for points in edges:
        if is_left_out(plan, points):
            continue
        flat = [LAID_FLAT["front"](*point) for point in points]
        off = max(min(from_entity((u + left, v + low), entity) for entity in drawn) for u, v in flat)
        assert off < space + 1e-4, points
        exact += off < 0.005
        count += 1
    assert count > 60
    assert exact > 0.5 * count
    assert max(v for _, v in flat) <= body.height


@pytest.mark.parametrize("name", PLANS)
def test_lines_of_the_drawing_lie_on_edges_of_the_file(name, tmp_path):
    """Of each straight line of the four views both ends are ends or inner points of edges laid flat."""
    plan = PLANS[name]()
    block = build_block(plan)
    path = tmp_path / "block.step"
    write_block_step(block, plan, path, "released for review", "0")
    views = lines_of_views(drawing_set(plan, pictures(block), "released for review").drawing)
    edges = [points for _, points in (points_on(edge, 48) for edge in edges_in(path))]
    for view in ("front", "top", "motor_end", "bearing_end"):
        drawn = views[view]
        left, low = lower_left(drawn)
        flat = [[LAID_FLAT[view](*point) for point in points] for points in edges]
        least = [min(axis) for axis in zip(*(p for points in flat for p in points), strict=True)]
        shift = (least[0] - left, least[1] - low)
        count = 0
        for entity in (e for e in drawn if e.dxftype() == "CIRCLE"):
            middle, radius = entity.dxf.center, entity.dxf.radius
            place = (middle.x + shift[0], middle.y + shift[1])
            assert any(on_circle(points, place, radius) for points in flat), (view, radius)
        for entity in (e for e in drawn if e.dxftype() == "LINE" and e.dxf.layer == "outline"):
            ends = [(p.x + shift[0], p.y + shift[1]) for p in (entity.dxf.start, entity.dxf.end)]
            assert all(any(near(points, end) for points in flat) for end in ends), (view, ends)
            count += 1
        assert count >= 4


def on_circle(points, middle, radius):
    return max(abs(((x - middle[0]) ** 2 + (y - middle[1]) ** 2) ** 0.5 - radius) for x, y in points) < 1e-4


def near(points, place):
    """Tell whether a place lies within 0.05 mm of the chords through sampled points of an edge."""
    return any(from_line(a, b, place) < 0.05 for a, b in pairwise(points) if a != b)
