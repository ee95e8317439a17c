"""One part of the assembly: its shape in its own coordinates, and where it stands."""

from __future__ import annotations

from dataclasses import dataclass

from OCP.gp import gp_Trsf
from OCP.TopoDS import TopoDS_Shape

Colour = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class AssemblyPart:
    """One part where it stands in the assembly.

    Args:
        id: Plain id, the same in every build: block, motor, bearing_unit, journal, coupling, base_plate,
            base_screw_1, base_washer_1, motor_screw_1, bearing_screw_1, dowel_1, motor_centring_ring.
        name: What it is, in plain words with its designation; alike parts have the same name and the same shape.
        group: Sub-assembly to which it belongs.
        shape: Shape in its own coordinates, mm.
        location: From its own coordinates to those of the block.
        colour: Red, green, blue from 0 to 1.
        stand_in: True where the shape was built from sizes, False for the block and for makers' models.
        frame: What the origin of its own coordinates stands for.
        held_in: Ids of parts into which its thread or pin reaches: there the solids overlap, since a thread is
            modelled by its tap drill and a reamed hole by its pilot drill.
        note: What was assumed about it; empty where nothing was.
        warning: What does not agree with the spec; empty where all does.
    """

    id: str
    name: str
    group: str
    shape: TopoDS_Shape
    location: gp_Trsf
    colour: Colour
    stand_in: bool
    frame: str
    held_in: tuple[str, ...] = ()
    note: str = ""
    warning: str = ""
