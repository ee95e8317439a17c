"""The views against the block's own STEP file, read by the bare reader and laid flat by plain arithmetic.

Reference: ISO 10303-21 exchange file with ISO 10303-242 content, as ``write_block_step`` writes it; read with the CAD
kernel's ``STEPControl_Reader``, which knows nothing of our code. Not a published example: the independent parts are the
file, the reader, the sampling of its edges, and the scalar products that lay a point into a view.
"""

import math
from pathlib import Path

import pytest
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.IFSelect import IFSelect_RetDone
from OCP.STEPControl import STEPControl_Reader
from OCP.TopAbs import TopAbs_EDGE
from OCP.TopExp import TopExp
from OCP.TopoDS import TopoDS
from OCP.TopTools import TopTools_IndexedMapOfShape

from blockgen.geometry.block import build_block
from blockgen.geometry.projection import project
from blockgen.outputs.step import write_block_step
from blockgen.pipeline import design
from tests.geometry.plane import distance
from tests.sizing.strategies import sized

pytestmark = pytest.mark.slow

EXAMPLES = Path(__file__).parents[2] / "presets/examples"
LAID_FLAT = {
    "front": lambda x, y, z: (x, z),
    "motor_end": lambda x, y, z: (y, z),
    "bearing_end": lambda x, y, z: (-y, z),
    "top": lambda x, y, z: (x, y),
    "bottom": lambda x, y, z: (x, -y),
}


def edges_in(path):
    reader = STEPControl_Reader()
    assert reader.ReadFile(str(path)) == IFSelect_RetDone
    reader.TransferRoots()
    found = TopTools_IndexedMapOfShape()
    TopExp.MapShapes_s(reader.OneShape(), TopAbs_EDGE, found)
    return [TopoDS.Edge_s(found.FindKey(i)) for i in range(1, found.Extent() + 1)]


def points_on(edge, count=7):
    curve = BRepAdaptor_Curve(edge)
    first, last = curve.FirstParameter(), curve.LastParameter()
    points = [curve.Value(first + (last - first) * i / count) for i in range(count + 1)]
    return str(curve.GetType()), [(p.X(), p.Y(), p.Z()) for p in points]


PLANS = {
    **{n: lambda n=n: design(EXAMPLES / f"spray_carriage_{n}.toml").plan for n in ("servo", "large", "stepper")},
    "across": lambda: sized(block={"window_axis": "y"}),
    "relief": lambda: sized(block={"relief": 0.5}),
}


@pytest.mark.parametrize("name", PLANS)
def test_each_edge_of_the_file_lies_on_a_curve_of_each_view(name, tmp_path):
    """Seams are no edges to the eye, and smooth edges that are hidden are left out: those alone may be missing."""
    plan = PLANS[name]()
    block = build_block(plan)
    path = tmp_path / "block.step"
    write_block_step(block, plan, path, "released for review", "0")
    edges = [(kind, points) for kind, points in map(points_on, edges_in(path)) if not is_tip(points)]
    assert len(edges) > 100
    for view, flat in LAID_FLAT.items():
        made = project(block, view)
        curves = (*made.visible, *made.hidden, *made.smooth)
        for kind, points in edges:
            # a curve that is neither line nor circle is a chain of chords in the view, within 0.005 mm
            limit = 0.005 if "BSpline" in kind and view == "front" else 1e-4
            off = [p for p in points if min(distance(c, flat(*p)) for c in curves) > limit]
            assert not off or is_left_out(plan, points), (view, kind, off)


def is_tip(points):
    """Tell whether an edge is but the tip of a drill point, where the file closes the cone in one point."""
    return max(math.dist(points[0], point) for point in points) < 1e-6


def is_left_out(plan, points):
    """Tell whether an edge is a seam of a turned cavity or the tangent line of a rounded corner of the window."""
    start, end = points[0], points[-1]
    for feature in plan.features:
        if feature.pocket is not None:
            if is_tangent_line(feature.pocket, start, end):
                return True
        elif is_seam(feature, start, end):
            return True
    return False


def is_seam(feature, start, end):
    """A seam runs in a plane with the axis, at the odd angle of 37 deg from where angles are counted."""
    rays = [tuple(v - p for v, p in zip(point, feature.position, strict=True)) for point in (start, end)]
    along = [sum(v * a for v, a in zip(ray, feature.axis, strict=True)) for ray in rays]
    across = [
        [v - length * a for v, a in zip(ray, feature.axis, strict=True)]
        for ray, length in zip(rays, along, strict=True)
    ]
    radii = [sum(v * v for v in vector) ** 0.5 for vector in across]
    pieces = [(s.start_radius, s.end_radius) for s in feature.profile]
    on_piece = any(abs(max(radii) - max(pair)) < 0.6 for pair in pieces)
    parallel = max(abs(a * radii[1] - b * radii[0]) for a, b in zip(*across, strict=True)) < 1e-4 * (1 + max(radii))
    return on_piece and parallel and abs(along[0] - along[1]) > 1e-6


def is_tangent_line(pocket, start, end):
    """It runs along the cutting axis, one corner radius from a wall, on the wall beside."""
    axis = "xyz".index(pocket.axis)
    others = [i for i in range(3) if i != axis]
    if max(abs(start[i] - end[i]) for i in others) > 1e-6:
        return False
    gaps = [min(abs(start[i] - pocket.low[i]), abs(start[i] - pocket.high[i])) for i in others]
    return sorted(gaps) == pytest.approx([0.0, pocket.corner_radius], abs=1e-5)
