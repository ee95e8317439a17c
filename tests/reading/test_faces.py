"""Faces: kind, place, reach, side of the material; the same when they are written as free-form surfaces."""

import cadquery as cq
import pytest

from blockgen.reading.faces import collect
from tests.reading.made_motors import as_free_form, posed

pytestmark = pytest.mark.slow


def turned_part():
    """A rod with a chamfer, a fillet at its foot and a blind hole with a tip."""
    profile = (
        cq.Workplane("XZ").lineTo(20, 0).lineTo(20, 5).lineTo(12, 5).threePointArc((10.585786, 5.585786), (10, 7))
        .lineTo(10, 29).lineTo(9, 30).lineTo(3, 30).lineTo(3, 20).lineTo(0, 18).close()
    )  # fmt: skip
    return profile.revolve(360, (0, 0, 0), (0, 1, 0)).val().wrapped


def summary(shape):
    return sorted(
        (f.kind, f.hollow, round(abs(f.high - f.low), 3), *sorted((round(f.low_radius, 3), round(f.high_radius, 3))))
        for f in collect(shape).turned
    )


TRUE = [
    ("cone", False, 1.0, 9.0, 10.0),
    ("cone", True, 2.0, 0.0, 3.0),
    ("cylinder", False, 5.0, 20.0, 20.0),
    ("cylinder", False, 22.0, 10.0, 10.0),
    ("cylinder", True, 10.0, 3.0, 3.0),
    ("torus", False, 2.0, 10.0, 12.0),
]


@pytest.mark.parametrize("form", [lambda s: s, as_free_form], ids=["as it is", "free form"])
@pytest.mark.parametrize("pose", [0, 1, 2])
def test_turned_faces(form, pose):
    assert summary(form(posed(turned_part(), pose))) == TRUE


@pytest.mark.parametrize("form", [lambda s: s, as_free_form], ids=["as it is", "free form"])
def test_normals_look_out_of_the_material(form):
    planes = collect(form(cq.Solid.makeBox(2, 4, 6).wrapped)).planes
    found = sorted((tuple(round(c) for c in p.normal), round(p.offset, 6)) for p in planes)
    assert found == [
        ((-1, 0, 0), 0), ((0, -1, 0), 0), ((0, 0, -1), 0), ((0, 0, 1), 6), ((0, 1, 0), 4), ((1, 0, 0), 2),
    ]  # fmt: skip


def test_mirrored_parts_keep_their_sides():
    mirrored = cq.Shape.cast(turned_part()).mirror("XY").wrapped
    assert summary(mirrored) == TRUE


def test_what_is_neither_flat_nor_turned_is_counted():
    ball = collect(cq.Solid.makeSphere(5, angleDegrees1=-90).wrapped)
    assert (ball.planes, ball.others) == ((), 1)
