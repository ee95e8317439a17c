"""The ligament map against every pair measured by itself, and against walls known by hand."""

import math
from dataclasses import replace
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.mechanics.ligaments import (
    FACES,
    ROUNDED_EDGE,
    LigamentRule,
    least_wall,
    ligament_map,
    nominal_diameter,
    pieces,
    thread_diameter,
    wall_to_face,
    worst,
)
from blockgen.plan import Body, Feature, Pocket, Segment

RULE = LigamentRule(cavity_factor=0.5, cavity_floor=3.0, rim=2.0)
BODY = Body(length=140.0, width=120.0, height=100.0, outer_fillet=0.0, edge_chamfer=0.5)
INTO = {
    "bearing_seat": (1.0, 0.0, 0.0),
    "motor_seat": (-1.0, 0.0, 0.0),
    "base": (0.0, 0.0, 1.0),
    "top": (0.0, 0.0, -1.0),
    "side_plus_y": (0.0, -1.0, 0.0),
    "side_minus_y": (0.0, 1.0, 0.0),
}


def blind(name, face, position, diameter=6.8, depth=20.0, thread="M8-6H", opens=()):
    radius = diameter / 2
    mouth = radius + 0.7
    profile = (
        Segment("mouth_chamfer", 0.0, mouth, 0.7, radius),
        Segment("thread", 0.7, radius, depth - 4, radius),
        Segment("hole", depth - 4, radius, depth, radius),
        Segment("point", depth, radius, depth + radius * math.tan(math.radians(31)), 0.0),
    )
    kind = "tapped_hole" if thread else "dowel_hole"
    return Feature(
        name, kind, name, face, position, INTO[face], diameter, depth, False, profile, opens_into=opens, thread=thread
    )


def counterbored(name, x, y):
    profile = (
        Segment("counterbore", 0.0, 9.0, 11.0, 9.0),
        Segment("shoulder", 11.0, 9.0, 11.0, 5.5),
        Segment("hole", 11.0, 5.5, 100.0, 5.5),
    )
    return Feature(
        name,
        "counterbored_hole",
        name,
        "top",
        (x, y, 100.0),
        INTO["top"],
        11.0,
        100.0,
        True,
        profile,
        opens_into=("base",),
    )


def window(low, high, corner_radius=8.0, opens=("top",)):
    pocket = Pocket("z", low, high, corner_radius, open_low=False, open_high=True)
    middle = ((low[0] + high[0]) / 2, 0.0, high[2])
    depth = high[2] - low[2]
    return Feature(
        "window", "window", "window", "top", middle, INTO["top"], high[1] - low[1], depth, False, (), pocket, opens
    )


def every_wall(features, body, rule):
    """All walls one by one, by way of the public measures alone."""
    found = []
    for a, b in combinations(features, 2):
        if b.id in a.opens_into or a.id in b.opens_into:
            continue
        threads = [nominal_diameter(each) for each in (a, b) if each.thread]
        required = max(rule.cavity_factor * min(threads), rule.cavity_floor) if threads else rule.rim
        found.append((least_wall(a, b) - required, a.id, b.id))
    for a in features:
        for face in (*FACES, ROUNDED_EDGE):
            wall = wall_to_face(a, body, face)
            if face != a.face and face not in a.opens_into and wall < math.inf:
                found.append((wall - rule.rim, a.id, face))
    return sorted(found)


on_face = st.integers(-45, 45).map(float)
depths = st.integers(8, 45).map(float)
sizes = st.sampled_from([(3.3, "M4-6H"), (6.8, "M8-6H"), (10.2, "M12-6H"), (8.0, None)])


@st.composite
def holes(draw, index):
    face = draw(st.sampled_from(sorted(INTO)))
    u, v = draw(on_face), draw(on_face) + 50.0
    positions = {
        "bearing_seat": (0.0, u, v),
        "motor_seat": (140.0, u, v),
        "base": (70.0 + u, v - 50.0, 0.0),
        "top": (70.0 + u, v - 50.0, 100.0),
        "side_plus_y": (70.0 + u, 60.0, v),
        "side_minus_y": (70.0 + u, -60.0, v),
    }
    diameter, thread = draw(sizes)
    return blind(f"hole_{index}", face, positions[face], diameter, draw(depths), thread)


@st.composite
def blocks(draw):
    features = [draw(holes(index)) for index in range(draw(st.integers(2, 7)))]
    if draw(st.booleans()):
        features.append(window((40.0, -20.0, 20.0), (100.0, 20.0, 100.0), draw(st.sampled_from([0.0, 5.0, 20.0]))))
    return features, replace(BODY, outer_fillet=draw(st.sampled_from([0.0, 6.0])))


@settings(max_examples=80, deadline=None)
@given(blocks())
def test_map_holds_every_thin_wall_and_the_worst_five(block):
    features, body = block
    expected = every_wall(features, body, RULE)
    wanted = max(5, sum(1 for margin, *_ in expected if margin < -1e-6))
    found = ligament_map(features, body, RULE)
    assert len(found) >= min(wanted, len(expected))
    for (margin, *_), entry in zip(expected, found, strict=False):
        assert entry.wall - entry.required == pytest.approx(margin, abs=2e-6)
    by_name = {frozenset(names): margin for margin, *names in expected}
    for entry in found:
        assert entry.wall - entry.required == pytest.approx(by_name[frozenset((entry.first, entry.second))], abs=2e-6)


@settings(max_examples=40, deadline=None)
@given(holes(1), holes(2))
def test_deeper_hole_never_leaves_more_wall(first, second):
    assert least_wall(first, second) == pytest.approx(least_wall(second, first), abs=1e-6)
    diameter, depth = first.diameter, first.depth
    deeper = blind("deeper", first.face, first.position, diameter, depth + 5.0, first.thread)
    assert least_wall(deeper, second) <= least_wall(first, second) + 1e-6
    for face in FACES:
        assert wall_to_face(deeper, BODY, face) <= wall_to_face(first, BODY, face)


MIRRORS = {
    0: (140.0, {"bearing_seat": "motor_seat", "motor_seat": "bearing_seat"}),
    1: (0.0, {"side_plus_y": "side_minus_y", "side_minus_y": "side_plus_y"}),
    2: (100.0, {"base": "top", "top": "base"}),
}


def mirrored(hole, direction):
    total, faces = MIRRORS[direction]
    position = list(hole.position)
    position[direction] = total - position[direction]
    face = faces.get(hole.face, hole.face)
    return replace(hole, face=face, position=tuple(position), axis=INTO[face])


@settings(max_examples=80, deadline=None)
@given(holes(1), holes(2), st.integers(0, 2))
def test_mirrored_holes_leave_the_same_wall(first, second, direction):
    wall = least_wall(mirrored(first, direction), mirrored(second, direction))
    assert wall == pytest.approx(least_wall(first, second), abs=1e-6)


@pytest.mark.parametrize(
    ("direction", "faces", "ends"),
    [
        (0, ("bearing_seat", "motor_seat"), (0.0, 140.0)),
        (1, ("side_minus_y", "side_plus_y"), (-60.0, 60.0)),
        (2, ("base", "top"), (0.0, 100.0)),
    ],
)
def test_drill_points_of_facing_holes_lie_flank_to_flank(direction, faces, ends):
    holes_ = []
    for face, end, aside in zip(faces, ends, (-3.5, 3.5), strict=True):
        position = [70.0, 0.0, 50.0]
        position[direction] = end
        position[(direction + 1) % 3] += aside
        holes_.append(blind(f"to_{face}", face, tuple(position), depth=(ends[1] - ends[0]) / 2 - 1))
    slope = math.radians(31)  # axes 7 apart, full radii of 3.4 end 2 apart, flanks are parallel
    expected = 7 * math.sin(slope) + (2 - 2 * 3.4 * math.tan(slope)) * math.cos(slope)
    assert least_wall(*holes_) == pytest.approx(expected, abs=1e-6)


def test_walls_to_faces_count_chamfer_and_drill_point():
    hole = blind("thread_1", "bearing_seat", (0.0, 30.0, 40.0))
    assert wall_to_face(hole, BODY, "side_plus_y") == pytest.approx(60 - 30 - 4.1)
    assert wall_to_face(hole, BODY, "base") == pytest.approx(40 - 4.1)
    tip = 20 + 3.4 * math.tan(math.radians(31))
    assert wall_to_face(hole, BODY, "motor_seat") == pytest.approx(140 - tip)
    assert wall_to_face(hole, BODY, "bearing_seat") == 0.0


def test_hole_that_breaks_out_sideways_has_no_wall():
    assert wall_to_face(blind("thread_1", "bearing_seat", (0.0, 58.0, 40.0)), BODY, "side_plus_y") == 0.0
    assert wall_to_face(blind("thread_1", "bearing_seat", (0.0, 30.0, 2.0)), BODY, "base") == 0.0


def test_counterbore_sets_the_wall_of_neighbouring_screws():
    assert least_wall(counterbored("a", 20.0, 40.0), counterbored("b", 50.0, 0.0)) == pytest.approx(50 - 18)


def test_hole_below_a_counterbore_is_measured_to_the_shank():
    low = blind("thread_1", "bearing_seat", (0.0, 40.0, 60.0), depth=40.0)
    assert least_wall(low, counterbored("screw", 30.0, 54.0)) == pytest.approx(14 - 3.4 - 5.5)
    high = blind("thread_2", "bearing_seat", (0.0, 40.0, 92.0), depth=40.0)
    assert least_wall(high, counterbored("screw", 30.0, 54.0)) == pytest.approx(14 - 3.4 - 9)


def test_drill_point_over_a_window_wall():
    hole = blind("motor_thread_1", "motor_seat", (140.0, 0.0, 60.0), depth=20.0)
    cut = window((40.0, -20.0, 20.0), (110.0, 20.0, 100.0))
    tip = 20 + 3.4 * math.tan(math.radians(31))
    assert least_wall(hole, cut) == pytest.approx(140 - tip - 110)


def test_pairs_that_open_into_one_another_have_no_wall():
    cut = window((40.0, -20.0, 20.0), (100.0, 20.0, 100.0), opens=("top", "bearing_thread_1"))
    hole = blind("bearing_thread_1", "bearing_seat", (0.0, 0.0, 60.0), depth=60.0)
    names = {(entry.first, entry.second) for entry in ligament_map([cut, hole], BODY, RULE, thinnest=50)}
    assert ("window", "bearing_thread_1") not in names
    assert not any(first == "window" and second == "top" for first, second in names)
    assert ("bearing_thread_1", "motor_seat") in names


def test_walls_between_cavities_without_thread_need_only_the_rim():
    features = [counterbored("a", 12.0, 48.0), counterbored("b", 36.0, 48.0)]
    entry = next(e for e in ligament_map(features, BODY, RULE, thinnest=20) if (e.first, e.second) == ("a", "b"))
    assert entry.required == RULE.rim


def test_required_wall_follows_the_smaller_thread():
    small = blind("small", "base", (30.0, 0.0, 0.0), 6.8, 20.0, "M8-6H")
    large = blind("large", "base", (45.0, 0.0, 0.0), 17.5, 20.0, "M20-6H")
    entry = next(e for e in ligament_map([small, large], BODY, RULE) if e.second == "large")
    assert entry.required == 4.0
    assert entry.wall == pytest.approx(15 - 4.1 - 9.45)


def test_rounded_edge_takes_wall_from_a_hole_near_it():
    body = replace(BODY, outer_fillet=20.0)
    screw = counterbored("screw", 14.0, 46.0)
    assert wall_to_face(screw, body, ROUNDED_EDGE) == pytest.approx(20 - math.hypot(6, 6) - 9)
    assert wall_to_face(counterbored("screw", 70.0, 48.0), body, ROUNDED_EDGE) == math.inf
    seconds = {entry.second for entry in ligament_map([screw], body, RULE, thinnest=20)}
    assert ROUNDED_EDGE in seconds


def test_mouth_in_a_rounded_edge_has_no_wall():
    body = replace(BODY, outer_fillet=20.0)
    assert wall_to_face(blind("thread_1", "bearing_seat", (0.0, 50.0, 40.0)), body, ROUNDED_EDGE) == 0.0


def test_alike_neighbouring_cylinders_become_one_piece():
    assert len(pieces(blind("thread_1", "base", (30.0, 0.0, 0.0)))) == 3
    assert len(pieces(counterbored("screw", 20.0, 40.0))) == 2


def test_worst_ranks_by_margin():
    features = [counterbored("a", 12.0, 48.0), counterbored("b", 36.0, 48.0), counterbored("c", 60.0, 48.0)]
    found = ligament_map(features, BODY, RULE, thinnest=9)
    ranked = worst(tuple(reversed(found)), 2)
    assert ranked == found[:2]
    margins = [entry.wall - entry.required for entry in found]
    assert margins == sorted(margins)


@pytest.mark.parametrize(
    ("designation", "diameter"),
    [
        ("M8-6H", 8.0),
        ("M2.5", 2.5),
        ("M8x1-6H", 8.0),
        ("1/4-20 UNC", 6.35),
        ("1 1/4-7 UNC-2B", 31.75),
        ("#10-24 UNC", 4.826),
    ],
)
def test_thread_diameter_from_its_designation(designation, diameter):
    assert thread_diameter(designation) == pytest.approx(diameter)


def test_unknown_thread_falls_back_to_the_hole():
    hole = blind("thread_1", "base", (30.0, 0.0, 0.0), 11.445, 20.0, "G 1/4 A")
    assert thread_diameter("G 1/4 A") is None
    assert nominal_diameter(hole) == 11.445


def test_oblique_axis_is_refused():
    oblique = replace(blind("thread_1", "base", (30.0, 0.0, 0.0)), axis=(0.6, 0.0, 0.8))
    with pytest.raises(ValueError, match=r"thread_1: axis \(0\.6, 0\.0, 0\.8\) is not parallel to x, y or z"):
        wall_to_face(oblique, BODY, "top")


def test_unknown_face_is_refused():
    with pytest.raises(ValueError, match=r"no outside face 'left': one of bearing_seat, motor_seat"):
        wall_to_face(counterbored("screw", 20.0, 40.0), BODY, "left")


def test_cavity_without_a_shape_is_refused():
    empty = replace(blind("thread_1", "base", (30.0, 0.0, 0.0)), profile=())
    with pytest.raises(ValueError, match="thread_1: neither profile nor pocket"):
        pieces(empty)


def test_walls_alike_by_design_are_ranked_by_name():
    screws = [
        counterbored(name, x, y) for name, x, y in (("d", 20, 40), ("b", 120, -40), ("c", 20, -40), ("a", 120, 40))
    ]
    expected = [
        (first, face) for first in "abcd" for face in ("motor_seat" if first in "ab" else "bearing_seat", "side")
    ]
    found = [(entry.first, entry.second) for entry in ligament_map(screws, BODY, RULE, thinnest=8)]
    assert [(first, second if "side" not in second else "side") for first, second in found] == expected
