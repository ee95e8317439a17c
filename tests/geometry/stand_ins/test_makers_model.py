"""Placing of models with a mounting that is known, so that only the placing is tested."""

import math

import pytest

from tests.geometry.stand_ins.sums import box_of
from tests.sizing.strategies import sized

pytestmark = pytest.mark.slow


def stand_in(plan, end):
    from blockgen.geometry.stand_ins.bearing_unit import bearing_unit
    from blockgen.geometry.stand_ins.motor import motor
    from blockgen.geometry.stand_ins.sizes import stand_in_sizes

    return {"motor": motor, "bearing": bearing_unit}[end](plan, stand_in_sizes(plan))


def pose(turn, shift):
    from OCP.gp import gp_Ax1, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec

    spun, moved = gp_Trsf(), gp_Trsf()
    spun.SetRotation(gp_Ax1(gp_Pnt(3, 4, 5), gp_Dir(1, 2, -3)), turn)
    moved.SetTranslation(gp_Vec(*shift))
    return moved.Multiplied(spun)


def model_of(plan, end, placed, pilot=None, up=(0.0, 0.0, 1.0), holes=True):
    """Return the stand-in as a maker's model in another pose."""
    from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
    from OCP.gp import gp_Dir, gp_Pnt

    from blockgen.geometry.stand_ins.flange import hole_places
    from blockgen.geometry.stand_ins.makers_model import MakersModel

    def point(x, y, z):
        p = gp_Pnt(x, y, z).Transformed(placed)
        return (p.X(), p.Y(), p.Z())

    def direction(x, y, z):
        d = gp_Dir(x, y, z).Transformed(placed)
        return (d.X(), d.Y(), d.Z())

    shape = BRepBuilderAPI_Transform(stand_in(plan, end).shape, placed, True).Shape()
    places = tuple(point(0.0, y, z) for y, z in hole_places(plan, end)) if holes else ()
    pilot = plan.number(f"{end}.pilot_diameter") if pilot is None else pilot
    axis = direction(-1.0 if end == "motor" else 1.0, 0.0, 0.0)
    return MakersModel("m.step", shape, point(0.0, 0.0, 0.0), axis, direction(*up), pilot, places)


def put(plan, end, model):
    from blockgen.geometry.stand_ins.makers_model import with_model

    return with_model(stand_in(plan, end), model, plan, end)


@pytest.mark.parametrize("end", ["motor", "bearing"])
@pytest.mark.parametrize("turn", [0.0, 0.7, 2.5])
def test_a_model_in_any_pose_stands_where_its_stand_in_stands(end, turn):
    plan = sized()
    part = put(plan, end, model_of(plan, end, pose(turn, (100, -40, 7))))
    assert box_of(part) == pytest.approx(box_of(stand_in(plan, end)), abs=1e-6)
    assert part.warning == ""
    assert not part.stand_in
    assert part.note == "maker's model m.step"


@pytest.mark.parametrize("degrees", [10, 45, -30, 80])
def test_holes_decide_how_it_is_turned_where_up_is_not_that_of_the_spec(degrees):
    plan = sized(motor={"flange_size": None, "flange_shape": "rectangle", "flange_width": 84, "flange_height": 100})
    a = math.radians(degrees)
    part = put(plan, "motor", model_of(plan, "motor", pose(0.3, (1, 2, 3)), up=(0.0, math.sin(a), math.cos(a))))
    box = box_of(part)
    sides = sorted((box[4] - box[1], box[5] - box[2]))
    assert sides == pytest.approx([84, 100], abs=1e-6)
    assert part.warning == ""


def test_another_pilot_is_told():
    plan = sized()
    assert put(plan, "motor", model_of(plan, "motor", pose(0, (0, 0, 0)), pilot=70.04)).warning == ""
    part = put(plan, "motor", model_of(plan, "motor", pose(0, (0, 0, 0)), pilot=70.06))
    assert part.warning == "m.step: its pilot is 70.060 mm, motor.pilot_diameter is 70 mm"


def test_no_pilot_is_told():
    from dataclasses import replace

    plan = sized()
    model = replace(model_of(plan, "bearing", pose(0, (0, 0, 0))), pilot_diameter=None)
    assert put(plan, "bearing", model).warning == "m.step: no pilot was found; bearing.pilot_diameter is 50 mm"


def test_another_bolt_circle_is_told():
    plan, other = sized(), sized(motor={"bolt_circle": 92})
    warning = put(plan, "motor", model_of(other, "motor", pose(0, (0, 0, 0)))).warning
    assert warning == "m.step: a bolt hole of the spec lies 1.00 mm from the nearest one of the model"


def test_a_pilot_that_points_away_is_told():
    plan = sized(bearing={"pilot_direction": "away"})
    assert "points away" in put(plan, "bearing", model_of(plan, "bearing", pose(0, (0, 0, 0)))).warning


def test_models_stand_among_the_parts():
    from blockgen.geometry.block import build_block
    from blockgen.geometry.stand_ins.parts import parts

    plan = sized()
    model = model_of(plan, "motor", pose(1.0, (5, 6, 7)))
    found = {part.id: part for part in parts(plan, build_block(plan), {"motor": model})}
    assert found["motor"].shape is model.shape
    assert found["bearing_unit"].stand_in
