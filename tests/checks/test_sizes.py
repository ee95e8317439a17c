"""Given sizes, space and thin walls: each check can hold and each can miss."""

import pytest

from blockgen.checks.sizes import sizes
from tests.sizing.strategies import sized


def found(plan, name):
    return next(f for f in sizes(plan) if f.id == name)


@pytest.mark.parametrize(
    ("key", "small"),
    [
        ("bearing_wall", 11),
        ("motor_wall", 8),
        ("window_width", 44),
        ("window_corner_radius", 3),
        ("width", 80),
        ("height", 90),
    ],
)
def test_a_given_size_that_is_too_small_fails_and_says_for_what(key, small):
    assert found(sized(), f"{key}_size").verdict == "pass"
    finding = found(sized(block={key: small}), f"{key}_size")
    assert finding.verdict == "fail"
    assert finding.value == small
    assert finding.limit > small
    assert finding.explanation.startswith("too small for: ")


def test_a_narrow_side_wall_fails():
    assert found(sized(block={"width": 70, "window_width": 49}), "side_wall_size").verdict == "fail"


def test_a_window_across_has_no_side_wall_to_hold_screws():
    names = {f.id: f.verdict for f in sizes(sized(block={"window_axis": "y"}, base={"shaft_height": 45}))}
    assert names.get("side_wall_size") != "fail"


@pytest.mark.parametrize(
    ("limit", "name", "room", "tight"),
    [("width_available", "width_available", 150, 90), ("height_limit", "height_available", 120, 100)],
)
def test_space(limit, name, room, tight):
    assert found(sized(base={limit: room}), name).verdict == "pass"
    assert found(sized(base={limit: tight}), name).verdict == "fail"
    assert name not in {f.id for f in sizes(sized())}


def test_length_available():
    assert found(sized(base={"length_available": 110}), "length_available").verdict == "pass"


def test_the_five_thinnest_walls_are_named():
    plan = sized()
    walls = [f for f in sizes(plan) if f.id.startswith("thin_wall")]
    assert len(walls) == 5
    margins = [f.value - f.limit for f in walls]
    assert margins == pytest.approx(sorted(margins))
    names = {f.id for f in plan.features}
    assert all(any(name in f.title for name in names) for f in walls)


def test_a_thin_wall_fails():
    plan = sized(base={"hole_positions": [[9, 36], [9, -36], [90, 36], [90, -36]]})
    walls = [f for f in sizes(plan) if f.id.startswith("thin_wall")]
    assert walls[0].verdict == "fail"
    assert "base_screw" in walls[0].title
