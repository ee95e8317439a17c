"""Tests of the solid: names, places and sizes of its faces, its volume, and what is refused."""

from __future__ import annotations

import resource
from dataclasses import replace

import pytest
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.GeomAbs import GeomAbs_Cone, GeomAbs_Cylinder, GeomAbs_Plane

from blockgen.errors import KernelError
from blockgen.geometry.block import build_block, to_cadquery
from blockgen.geometry.kernel import bounding_box, faces_of, is_valid, solids_of, volume_of
from blockgen.mechanics.volume import reference_volume
from tests.geometry import sample_plans as samples

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module", params=list(samples.SAMPLES))
def built(request):
    """Each sample plan with its solid."""
    plan = samples.SAMPLES[request.param]()
    return plan, build_block(plan)


def test_one_valid_solid_of_the_plans_size(built):
    plan, block = built
    assert len(solids_of(block.shape)) == 1
    assert is_valid(block.shape)
    body = plan.body
    expected = (0.0, -body.width / 2, 0.0, body.length, body.width / 2, body.height)
    assert bounding_box(block.shape) == pytest.approx(expected, abs=1e-6)


def test_volume_is_that_of_the_paper_sum(built):
    plan, block = built
    assert block.volume == pytest.approx(volume_of(block.shape))
    assert block.volume == pytest.approx(reference_volume(plan), abs=0.01)


def test_every_face_has_one_name(built):
    _, block = built
    named = [face for faces in block.faces.values() for face in faces]
    assert len(named) == len(faces_of(block.shape))
    for i, face in enumerate(named):
        assert not any(face.IsSame(other) for other in named[:i])


def test_turned_faces_lie_where_the_plan_says(built):
    plan, block = built
    for feature in plan.features:
        for segment in feature.profile:
            face_id = feature.face_id(segment.part)
            if face_id not in block.faces:  # every other piece is found, or build_block would have refused
                assert segment.part == "mouth_chamfer"
                assert feature.face == "base"
            for face in block.faces.get(face_id, ()):
                _assert_is_piece(BRepAdaptor_Surface(face), bounding_box(face), feature, segment)


def _assert_is_piece(surface, box, feature, segment):
    index = max(range(3), key=lambda i: abs(feature.axis[i]))
    ends = sorted(feature.position[index] + feature.axis[index] * along for along in (segment.start, segment.end))
    if segment.start == segment.end:
        assert surface.GetType() == GeomAbs_Plane
        assert (box[index], box[index + 3]) == pytest.approx(ends, abs=1e-6)
        return
    if segment.start_radius == segment.end_radius:
        assert surface.GetType() == GeomAbs_Cylinder
        assert surface.Cylinder().Radius() == pytest.approx(segment.end_radius)
        axis = surface.Cylinder().Axis()
    else:
        assert surface.GetType() == GeomAbs_Cone
        axis = surface.Cone().Axis()
    place, direction = axis.Location(), axis.Direction()
    assert abs((direction.X(), direction.Y(), direction.Z())[index]) == pytest.approx(1.0)
    for i, value in enumerate((place.X(), place.Y(), place.Z())):
        assert i == index or value == pytest.approx(feature.position[i])
    assert box[index] >= ends[0] - 15.0
    assert box[index + 3] <= ends[1] + 15.0


@pytest.mark.parametrize(
    ("sample", "face_id", "index", "place"),
    [
        ("usual", "bearing_seat", 0, 0.0),
        ("usual", "motor_seat", 0, 140.0),
        ("usual", "base", 2, 0.0),
        ("usual", "top", 2, 110.0),
        ("usual", "side_plus_y", 1, 60.0),
        ("usual", "side_minus_y", 1, -60.0),
        ("usual", "window.bearing_wall", 0, 25.0),
        ("usual", "window.motor_wall", 0, 116.0),
        ("usual", "window.side_plus_y", 1, 30.0),
        ("usual", "window.side_minus_y", 1, -30.0),
        ("with_pocket", "window.floor", 2, 20.0),
        ("across", "window.floor", 2, 27.0),
        ("across", "window.roof", 2, 87.0),
        ("with_relief", "relief.roof", 2, 2.0),
        ("with_relief", "relief.bearing_wall", 0, 65.0),
        ("with_closed_relief", "relief.side_plus_y", 1, 40.0),
    ],
)
def test_flat_faces_lie_where_the_plan_says(sample, face_id, index, place):
    for face in build_block(samples.SAMPLES[sample]()).faces[face_id]:
        box = bounding_box(face)
        assert (box[index], box[index + 3]) == pytest.approx((place, place), abs=1e-6)


def test_names_of_pockets_and_edges():
    faces = build_block(samples.usual()).faces
    assert {f"window.corner_{i}" for i in range(1, 5)} <= set(faces)
    assert {f"corner.{i}" for i in range(1, 5)} <= set(faces)
    assert {f"edge_break.{i}" for i in range(1, 17)} <= set(faces)
    assert "window.floor" not in faces
    assert "window.roof" not in faces


def test_sharp_edged_block_has_three_cornered_tips():
    faces = build_block(samples.plan_of([], fillet=0.0, chamfer=1.0)).faces
    assert sum(name.startswith("corner.") for name in faces) == 4
    assert sum(name.startswith("edge_break.") for name in faces) == 16


@pytest.mark.parametrize("radius", [21.99999, 22.0, 29.99, 29.99999, 30.00001, 30.01, 31.0])
@pytest.mark.parametrize("corner", [6.0, 8.0, 12.0])
def test_bores_that_graze_the_window(radius, corner):
    plan = samples.plan_of([samples.bearing_bore(radius), samples.window(corner=corner)])
    assert build_block(plan).volume == pytest.approx(reference_volume(plan), abs=0.02)


def test_corner_radius_that_does_not_fit():
    with pytest.raises(KernelError, match="window: corner radius 31 mm does not fit"):
        build_block(samples.plan_of([samples.window(corner=31.0)]))


@pytest.mark.parametrize("place", [20.0, 27.0, 31.0, 45.0])
def test_holes_that_meet_the_window_in_part_or_not_at_all(place):
    hole = replace(samples.bearing_bore(4.0), id="bearing_hole_1", position=(0.0, place, samples.SHAFT_HEIGHT))
    plan = samples.plan_of([hole, samples.window()])
    assert build_block(plan).volume == pytest.approx(reference_volume(plan), abs=0.01)


def test_order_of_features_changes_nothing():
    plan = samples.usual()
    turned_round = build_block(replace(plan, features=plan.features[::-1]))
    straight = build_block(plan)
    assert set(turned_round.faces) == set(straight.faces)
    assert turned_round.volume == pytest.approx(straight.volume, abs=1e-3)


def test_a_cut_in_two_names_the_feature():
    with pytest.raises(KernelError, match="window cuts the block into 2 pieces"):
        build_block(samples.split())


def test_nothing_left_is_said():
    window = samples.window()
    everything = replace(window.pocket, low=(0.0, -60.0, 0.0), high=(140.0, 60.0, 110.0), corner_radius=0.0)
    with pytest.raises(KernelError, match="window leaves nothing of the block"):
        build_block(samples.plan_of([replace(window, pocket=everything)]))


def test_a_swallowed_cavity_is_named():
    thread = samples.lifting_thread()
    inside = replace(thread, id="lost_thread", position=(70.0, 0.0, 110.0))
    with pytest.raises(KernelError, match=r"lost_thread\.thread"):
        build_block(samples.plan_of([samples.window(), inside]))


def test_cavities_that_meet_unplanned_are_found_by_volume():
    dowel = samples.dowels()[0]
    beside = replace(dowel, id="dowel_9", position=(dowel.position[0] + 5.0, dowel.position[1], 0.0))
    with pytest.raises(KernelError, match=r"volume of the solid is .* dowel_1 and dowel_9 share \d+"):
        build_block(samples.plan_of([dowel, beside]))


def test_a_hole_that_breaks_out_is_named():
    thread = samples.lifting_thread()
    aside = replace(thread, position=(8.0, 0.0, 110.0), axis=(0.0, 0.0, -1.0), id="lifting_thread_2")
    deep = replace(aside, position=(2.0, 0.0, 110.0))
    assert build_block(samples.plan_of([aside])).faces["lifting_thread_2.thread"]
    with pytest.raises(KernelError, match=r"lifting_thread_2 takes [\d.]+ mm3 out of the block, planned [\d.]+ mm3"):
        build_block(samples.plan_of([deep]))


@pytest.mark.parametrize(
    ("fillet", "chamfer", "what"), [(70.0, 0.5, "outer_fillet 70"), (0.5, 0.5, "edge_chamfer 0.5")]
)
def test_edges_that_do_not_fit(fillet, chamfer, what):
    with pytest.raises(KernelError, match=f"{what} mm does not fit (the block|on outer_fillet)"):
        build_block(samples.plan_of([], fillet=fillet, chamfer=chamfer))


def test_to_cadquery_gives_the_same_solid():
    block = build_block(samples.plan_of([samples.lifting_thread()]))
    solid = to_cadquery(block)
    assert type(solid).__name__ == "Solid"
    assert solid.Volume() == pytest.approx(block.volume, abs=0.1)


def test_memory_stays_flat():
    plan = samples.with_pocket()
    for _ in range(10):
        build_block(plan)
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    for _ in range(25):
        build_block(plan)
    grown = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before
    assert grown < 8 * 1024  # kB


def test_walls_of_two_cavities_in_one_plane_keep_one_name():
    from tests.random_specs.generate import specs
    from tests.random_specs.verify import planned

    plan, _ = planned(list(specs(1, 191))[190])  # its relief ends in the plane of the window's motor wall
    block = build_block(plan)
    assert sum(len(faces) for faces in block.faces.values()) == len(faces_of(block.shape))
    assert {"relief.motor_wall", "window.motor_wall"} <= set(block.faces)
