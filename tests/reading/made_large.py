"""A motor with so many fins and holes that its STEP file has about five megabytes, for measuring time.

Run: python -m tests.reading.made_large FILE
"""

from __future__ import annotations

import sys
from pathlib import Path

import cadquery as cq
from OCP.STEPControl import STEPControl_AsIs, STEPControl_Writer
from OCP.TopoDS import TopoDS_Compound

from tests.reading.made_motors import Motor, made


def write_large(file: Path, rows: int = 12) -> None:
    """Write the motor with a perforated, ribbed cover about its body."""
    motor = Motor(body_length=320.0, more=frozenset({"connector", "shaft_chamfer", "rear_screws", "rear_boss"}))
    parts = [cq.Shape.cast(made(motor)), *(_plate(i, rows) for i in range(6))]
    writer = STEPControl_Writer()
    writer.Transfer(cq.Compound.makeCompound(parts).wrapped, STEPControl_AsIs)
    writer.Write(str(file))


def _plate(number: int, rows: int) -> TopoDS_Compound:
    """Return a thin plate behind the motor, full of small holes with chamfers."""
    low = -340.0 - 12.0 * number
    plate = cq.Workplane("XY", origin=(0, 0, low)).rect(6.0 * rows / 2, 6.0 * rows / 2).extrude(5)
    plate = plate.faces(">Z").workplane().rarray(2.8, 2.8, rows, rows).hole(1.6)
    return plate.val()


if __name__ == "__main__":
    write_large(Path(sys.argv[1]))
    print(f"{Path(sys.argv[1]).stat().st_size / 1e6:.2f} MB")
