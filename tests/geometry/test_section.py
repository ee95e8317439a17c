"""The section: areas against the kernel's and against sums by hand, loops that close, what is seen behind."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from OCP.BRepAlgoAPI import BRepAlgoAPI_Section
from OCP.BRepGProp import BRepGProp
from OCP.gp import gp_Dir, gp_Pln, gp_Pnt
from OCP.GProp import GProp_GProps

from blockgen.errors import KernelError
from blockgen.geometry.block import build_block
from blockgen.geometry.curves import ArcCurve, Chain, Segment
from blockgen.geometry.kernel import edges_of
from blockgen.geometry.loops import ends_of, loop_area, passed_in_turn
from blockgen.geometry.section import section
from blockgen.mechanics.volume import run_out
from blockgen.pipeline import design
from tests.geometry import sample_plans as samples
from tests.geometry.plane import farthest
from tests.geometry.test_projection import EXAMPLES, MORE, ROOT
from tests.sizing.strategies import sized

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module", params=[*EXAMPLES, *MORE, *(f"sample {name}" for name in samples.SAMPLES)])
def cut(request):
    """Each block with its section in the middle."""
    name = request.param
    if name in EXAMPLES:
        plan = design(ROOT / f"presets/examples/spray_carriage_{name}.toml").plan
    else:
        plan = sized(**MORE[name]) if name in MORE else samples.SAMPLES[name.removeprefix("sample ")]()
    block = build_block(plan)
    return plan, block, section(block)


def area_of(cut_areas):
    return sum(loop_area(outer) - sum(abs(loop_area(hole)) for hole in holes) for outer, *holes in cut_areas)


def test_loops_run_on_and_close(cut):
    for area in cut[2].cut_areas:
        for loop in area:
            passed = passed_in_turn(loop)
            for one, other in zip(passed, [*passed[1:], passed[0]], strict=True):
                assert math.dist(ends_of(one)[1], ends_of(other)[0]) < 2e-6


def test_senses(cut):
    for outer, *holes in cut[2].cut_areas:
        assert loop_area(outer) > 0
        assert all(loop_area(hole) < 0 for hole in holes if len(hole) > 1)


def test_the_edges_of_areas_are_seen(cut):
    seen = cut[2].projection.visible
    for area in cut[2].cut_areas:
        ends = [end for loop in area for passed in passed_in_turn(loop) for end in ends_of(passed)]
        assert farthest(ends, seen) < 1e-5


def test_the_lines_in_the_plane_are_those_of_the_kernels_plane_section(cut):
    """The kernel cuts the whole block with an endless plane: another operation than taking the half."""
    _, block, made = cut
    cutter = BRepAlgoAPI_Section(block.shape, gp_Pln(gp_Pnt(0, 0, 0), gp_Dir(0, -1, 0)))
    theirs = 0.0
    for edge in edges_of(cutter.Shape()):
        properties = GProp_GProps()
        BRepGProp.LinearProperties_s(edge, properties)
        theirs += properties.Mass()
    ours = sum(length(piece) for area in made.cut_areas for loop in area for piece in loop)
    assert ours == pytest.approx(theirs, abs=1e-3)


def length(piece):
    if isinstance(piece, Segment):
        return math.dist(piece.start, piece.end)
    return piece.radius * math.radians(piece.end_deg - piece.start_deg)


def test_the_area_follows_from_the_plan(cut):
    """Strips of the middle plane, from the plan alone: the body less window, bores, reliefs and holes in the plane."""
    plan, _, made = cut
    assert area_of(made.cut_areas) == pytest.approx(paper_area(plan), abs=0.02)


def paper_area(plan, step=0.005):
    """Count by columns: at each x the heights that are solid at y = 0, as the plan states its cavities."""
    count = round(plan.body.length / step)
    columns = [(i + 0.5) * plan.body.length / count for i in range(count)]
    middle = [run_out_added(f, plan) for f in plan.features if touches_plane(f)]
    return math.fsum(solid_height(plan, middle, x) for x in columns) * plan.body.length / count


def run_out_added(feature, plan):
    """Return a through cavity with its last piece as long as the tool goes on into the window's corners."""
    if not feature.profile:
        return feature
    *pieces, last = feature.profile
    return replace(feature, profile=(*pieces, replace(last, end=last.end + run_out(feature, plan))))


def touches_plane(feature):
    if feature.pocket is not None:
        return feature.pocket.low[1] < 0 < feature.pocket.high[1]
    return abs(feature.position[1]) < max(s.start_radius for s in feature.profile)


def solid_height(plan, features, x):
    edge = max(0.0, plan.body.edge_chamfer - min(x, plan.body.length - x))
    pieces = [(edge, plan.body.height - edge)]
    for feature in features:
        for low, high in taken(feature, x):
            pieces = [p for a, b in pieces for p in ((a, min(b, low)), (max(a, high), b)) if p[1] > p[0]]
    return sum(b - a for a, b in pieces)


def taken(feature, x):
    """Return the heights that a cavity takes away at an x of the middle plane."""
    if feature.pocket is not None:
        (x0, _, z0), (x1, _, z1) = feature.pocket.low, feature.pocket.high
        if not x0 < x < x1:
            return []
        inset = 0.0
        if feature.pocket.axis == "y":  # the corners lie in the plane
            r = feature.pocket.corner_radius
            short = max(0.0, r - min(x - x0, x1 - x))
            inset = r - math.sqrt(max(0.0, r * r - short * short))
        return [(z0 + inset, z1 - inset)]
    px, py, pz = feature.position
    if abs(feature.axis[0]) > 0.5:
        along = (x - px) * feature.axis[0]
        return [(pz - half, pz + half) for s in feature.profile if s.start <= along < s.end
                for half in [half_chord(radius_at(s, along), py)] if half > 0]  # fmt: skip
    aside = math.hypot(x - px, py)
    depths = [d for s in feature.profile for d in depths_at(s, aside)]
    sense = feature.axis[2]
    return [tuple(sorted((pz - sense, pz + sense * max(depths))))] if depths else []


def radius_at(piece, along):
    share = (along - piece.start) / (piece.end - piece.start)
    return piece.start_radius + share * (piece.end_radius - piece.start_radius)


def half_chord(radius, aside):
    return math.sqrt(max(0.0, radius * radius - aside * aside))


def depths_at(piece, aside):
    """Return the depth down to which a turned piece reaches at a distance from its axis."""
    if aside < min(piece.start_radius, piece.end_radius):
        return [piece.end]
    if aside >= piece.start_radius or piece.start == piece.end:
        return []
    share = (piece.start_radius - aside) / (piece.start_radius - piece.end_radius)
    return [piece.start + share * (piece.end - piece.start)]


def test_a_plain_box_is_one_rectangle():
    plan = samples.plain()
    made = section(build_block(plan))
    ((loop,),) = made.cut_areas
    assert [piece.start for piece in loop] == [
        (0.0, 0.0), (plan.body.length, 0.0), (plan.body.length, plan.body.height), (0.0, plan.body.height)
    ]  # fmt: skip
    assert len(made.projection.visible) == 4


def test_a_bored_box_by_hand():
    plan = samples.plan_of([samples.bearing_bore()], fillet=0.0, chamfer=0.0)
    made = section(build_block(plan))
    taken_away = 50.0 * (samples.BEARING_WALL - 0.5) + 0.5 * (50.0 + 51.0) / 2
    expected = plan.body.length * plan.body.height - taken_away
    assert area_of(made.cut_areas) == pytest.approx(expected, abs=1e-6)


def test_a_window_across_alone_is_a_hole_with_four_arcs():
    plan = samples.plan_of([samples.window("y", floor=27.0)], fillet=0.0, chamfer=0.0)
    ((outer, hole),) = section(build_block(plan)).cut_areas
    assert len(outer) == 4
    assert [piece.radius for piece in hole if isinstance(piece, ArcCurve)] == [8.0] * 4
    opening = (samples.LENGTH - samples.BEARING_WALL - samples.MOTOR_WALL) * samples.WINDOW_WIDTH
    assert loop_area(hole) == pytest.approx(-(opening - (4 - math.pi) * 64.0), abs=1e-5)


def test_another_plane_shows_other_holes():
    """At y = 47 the plane runs through the base screws' axes: each takes its hole's and counterbore's width."""
    plan = samples.plan_of(samples.base_screws(), fillet=0.0, chamfer=0.0)
    made = section(build_block(plan), 47.0)
    each = 18.0 * 12.0 + 11.0 * (samples.HEIGHT - 12.0)
    assert area_of(made.cut_areas) == pytest.approx(plan.body.length * plan.body.height - 3 * each, abs=1e-6)
    assert len(made.cut_areas) == 4


def test_a_plane_beside_the_block():
    with pytest.raises(KernelError, match="a section at y = 60 mm misses the block, which lies from -60 to 60 mm"):
        section(build_block(samples.plain()), 60.0)


def test_in_the_examples_only_the_corner_curves_are_chains():
    for name in EXAMPLES:
        block = build_block(design(ROOT / f"presets/examples/spray_carriage_{name}.toml").plan)
        made = section(block)
        chains = [c for c in made.projection.visible if isinstance(c, Chain)]
        assert len(chains) == {"servo": 2, "large": 0, "stepper": 2}[name]
