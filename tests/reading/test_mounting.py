"""The frame of a mounting face: where it lies, which way is out and up; and shapes that have none."""

import cadquery as cq
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec

from blockgen.errors import InputError
from blockgen.reading.mounting import find_mounting
from blockgen.reading.vectors import dot
from tests.reading.made_motors import Motor, made

pytestmark = pytest.mark.slow

WITH_BOX = Motor(more=frozenset({"connector"}))


def near(a, b):
    return all(abs(x - y) < 1e-6 for x, y in zip(a, b, strict=True))


def test_the_frame_of_a_motor():
    found = find_mounting(made(WITH_BOX))
    assert near(found.origin, (0, 0, 0))
    assert near(found.axis, (0, 0, 1))
    assert near(found.up, (0, 1, 0))  # towards the connector box
    assert (found.pilot.form, found.pilot.diameter, found.pilot.length) == ("proud", 70.0, 3.0)
    assert len(found.hole_centres) == 4
    assert all(abs(dot(c, (0, 0, 1))) < 1e-6 for c in found.hole_centres)
    assert any("pilot stands on it" in line for line in found.evidence)


@settings(max_examples=30, deadline=None)
@given(
    st.tuples(*[st.floats(-1, 1)] * 3).filter(lambda v: sum(c * c for c in v) > 0.01),
    st.floats(0, 6.28),
    st.tuples(*[st.floats(-1000, 1000)] * 3),
)
def test_the_frame_moves_with_the_motor(axis, angle, move):
    turn, shift = gp_Trsf(), gp_Trsf()
    turn.SetRotation(gp_Ax1(gp_Pnt(0, 0, 0), gp_Dir(*axis)), angle)
    shift.SetTranslation(gp_Vec(*move))
    whole = shift.Multiplied(turn)
    found = find_mounting(BRepBuilderAPI_Transform(made(WITH_BOX), whole, True).Shape())
    origin, out, up = (
        gp_Pnt(0, 0, 0).Transformed(whole),
        gp_Dir(0, 0, 1).Transformed(whole),
        gp_Dir(0, 1, 0).Transformed(whole),
    )
    for got, true in ((found.origin, origin), (found.axis, out), (found.up, up)):
        assert all(abs(g - t) < 1e-5 for g, t in zip(got, (true.X(), true.Y(), true.Z()), strict=True))


@pytest.mark.parametrize(
    "shape",
    [
        cq.Solid.makeBox(10, 20, 30),
        cq.Solid.makeCylinder(10, 50).fuse(cq.Solid.makeCylinder(5, 80)),
        cq.Solid.makeSphere(10),
        cq.Workplane()
        .box(80, 80, 8)
        .faces(">Z")
        .workplane()
        .rect(60, 60, forConstruction=True)
        .vertices()
        .hole(6)
        .val(),
    ],
    ids=["box", "stepped shaft", "ball", "plate with holes"],
)
def test_shapes_without_a_mounting_face(shape):
    with pytest.raises(InputError, match="no mounting face") as caught:
        find_mounting(shape.wrapped, "some.step")
    assert caught.value.problems[0].file == "some.step"


def test_a_rival_face_is_told():
    """Both ends alike: the same flange, pilot and shaft twice, so that nothing can be sure."""
    one = cq.Workplane().box(80, 80, 20)
    for way in (">Z", "<Z"):
        one = one.faces(way).workplane().circle(35).extrude(3).faces(way).workplane().circle(8).extrude(30)
    one = one.faces(">Z").workplane(origin=(0, 0, 0)).rect(66, 66, forConstruction=True).vertices().hole(6.6)
    assert find_mounting(one.val().wrapped).has_rival
    assert not find_mounting(made(WITH_BOX)).has_rival
