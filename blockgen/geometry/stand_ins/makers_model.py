"""A maker's model in place of a stand-in, placed by its own flange plane, pilot axis and bolt pattern."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from OCP.gp import gp_Ax1, gp_Ax3, gp_Dir, gp_Pnt, gp_Trsf
from OCP.TopoDS import TopoDS_Shape

from blockgen.geometry.stand_ins.flange import Places, hole_places
from blockgen.geometry.stand_ins.part import AssemblyPart
from blockgen.plan import Plan, Point

PILOT_AGREES = 0.05
"""Difference of pilot diameters between model and spec that is let pass, mm."""

HOLES_AGREE = 0.25
"""Distance of hole centres between model and spec that is let pass, mm."""


@dataclass(frozen=True, slots=True)
class MakersModel:
    """A maker's model as it was read.

    Args:
        file: Name of the file.
        shape: Its shape, mm.
        origin: Centre of the pilot on its mounting face, in its own coordinates, mm.
        axis: Unit vector out of the flange towards the shaft end.
        up: Unit vector in the mounting face that the bolt pattern gives.
        pilot_diameter: Diameter of its pilot, mm; None where none was found.
        holes: Centres of its bolt holes in its own coordinates, mm; empty where none were found.
    """

    file: str
    shape: TopoDS_Shape
    origin: Point
    axis: Point
    up: Point
    pilot_diameter: float | None
    holes: tuple[Point, ...] = ()


def with_model(part: AssemblyPart, model: MakersModel, plan: Plan, end: str) -> AssemblyPart:
    """Return a part with the maker's model in place of its stand-in.

    Args:
        part: The stand-in.
        model: Model as it was read.
        plan: Sized plan.
        end: motor or bearing.
    """
    location = standing_on_seat(model, plan, end)
    turn = 0.0
    if model.holes:
        turn = best_turn(_in_block(model.holes, location, plan, end), hole_places(plan, end))
        location = _turned(location, plan, end, turn)
    return replace(
        part, shape=model.shape, location=location, stand_in=False, note=f"maker's model {model.file}",
        frame="as the maker's file has it", warning="; ".join(_warnings(model, location, plan, end)),
    )  # fmt: skip


def standing_on_seat(model: MakersModel, plan: Plan, end: str) -> gp_Trsf:
    """Return the transformation that lays a model's mounting face on its seat with its up direction upwards."""
    own = gp_Ax3(gp_Pnt(*model.origin), gp_Dir(*model.axis), gp_Dir(*model.up))
    into = 1.0 if end == "bearing" else -1.0
    seat = gp_Ax3(gp_Pnt(*plan.frames[f"{end}_seat"].origin), gp_Dir(into, 0.0, 0.0), gp_Dir(0.0, 0.0, 1.0))
    placed = gp_Trsf()
    placed.SetDisplacement(own, seat)
    return placed


def best_turn(found: Places, wanted: Places) -> float:
    """Return the least angle about the axis, in rad from +y to +z, that brings found holes nearest to wanted ones."""
    first = math.atan2(found[0][1], found[0][0])
    turns = [math.remainder(math.atan2(z, y) - first, math.tau) for y, z in wanted]
    return min(turns, key=lambda turn: (round(_distance(found, wanted, turn), 3), round(abs(turn), 6), turn))


def _distance(found: Places, wanted: Places, turn: float) -> float:
    """Return the greatest distance in mm from a turned hole to the nearest wanted one."""
    c, s = math.cos(turn), math.sin(turn)
    turned = [(c * y - s * z, s * y + c * z) for y, z in found]
    return max(min(math.dist(one, other) for other in wanted) for one in turned)


def _in_block(points: Sequence[Point], location: gp_Trsf, plan: Plan, end: str) -> Places:
    _, y, z = plan.frames[f"{end}_seat"].origin
    moved = [gp_Pnt(*point).Transformed(location) for point in points]
    return tuple((point.Y() - y, point.Z() - z) for point in moved)


def _turned(location: gp_Trsf, plan: Plan, end: str, turn: float) -> gp_Trsf:
    spin = gp_Trsf()
    spin.SetRotation(gp_Ax1(gp_Pnt(*plan.frames[f"{end}_seat"].origin), gp_Dir(1.0, 0.0, 0.0)), turn)
    return spin.Multiplied(location)


def _warnings(model: MakersModel, location: gp_Trsf, plan: Plan, end: str) -> list[str]:
    told = []
    wanted = plan.number(f"{end}.pilot_diameter")
    if model.pilot_diameter is None:
        told.append(f"{model.file}: no pilot was found; {end}.pilot_diameter is {wanted:g} mm")
    elif abs(model.pilot_diameter - wanted) > PILOT_AGREES:
        told.append(f"{model.file}: its pilot is {model.pilot_diameter:.3f} mm, {end}.pilot_diameter is {wanted:g} mm")
    if model.holes:
        found, places = _in_block(model.holes, location, plan, end), hole_places(plan, end)
        off = _distance(places, found, 0.0)
        if off > HOLES_AGREE:
            told.append(f"{model.file}: a bolt hole of the spec lies {off:.2f} mm from the nearest one of the model")
    if end == "bearing" and plan.text("bearing.pilot_direction") == "away":
        told.append(f"{model.file}: it was placed by the face on which its pilot stands, though the pilot points away")
    return told
