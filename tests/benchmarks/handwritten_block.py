"""The same block as a skilled user writes it by hand with cadquery: the measure for ``build --only block,stl``.

Run as ``python handwritten_block.py OUT_FOLDER [summary.json]``. Without a summary it makes a block of its own.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

import cadquery as cq

DEFAULT = {
    "length": 140.0,
    "width": 120.0,
    "height": 110.0,
    "shaft_height": 55.0,
    "bearing_wall": 25.0,
    "motor_wall": 24.0,
    "window_length": 91.0,
    "window_width": 60.0,
    "bearing_bore": 50.0,
    "motor_bore": 70.0,
    "motor_bore_depth": 4.5,
    "motor_through_bore": 44.0,
}
DEFAULT_BOX = {"outer_fillet": 6.0, "edge_chamfer": 0.5, "window_corner_radius": 8.0}
DEFAULT_HOLES = [
    *[("base", (x, y, 110.0), (0, 0, -1), 11.0, 110.0, 18.0, 12.0) for x in (20.0, 70.0, 120.0) for y in (-47.0, 47.0)],
    *[("thread", (0.0, y, 55.0 + z), (1, 0, 0), 6.8, 18.0, None, None) for y in (-26.5, 26.5) for z in (-26.5, 26.5)],
    *[("thread", (140.0, y, 55.0 + z), (-1, 0, 0), 6.8, 17.0, None, None) for y in (-32, 32) for z in (-32, 32)],
    *[("dowel", (x, y, 0.0), (0, 0, 1), 7.8, 16.0, None, None) for x, y in ((45.0, -47.0), (95.0, 47.0))],
]


def read(path: Path | None) -> tuple[dict, list]:
    """Return dimensions and holes, from a summary where there is one."""
    if path is None:
        return {**DEFAULT, **DEFAULT_BOX}, DEFAULT_HOLES
    summary = json.loads(path.read_text(encoding="utf-8"))
    values = {key: entry["value"] for key, entry in summary["dimensions"].items()}
    holes = [
        (
            f["id"], f["position"], f["axis"], f["diameter"], f["depth"],
            f.get("counterbore_diameter"), f.get("counterbore_depth"),
        )
        for f in summary["features"]
        if f["kind"] not in ("bore", "window", "relief")
    ]  # fmt: skip
    return {**DEFAULT, **DEFAULT_BOX, **{k: v for k, v in values.items() if isinstance(v, (int, float))}}, holes


def hole(position, axis, diameter, depth, counterbore_diameter, counterbore_depth) -> cq.Workplane:
    """Return one hole as a tool: cylinder, counterbore or drill point."""
    plane = cq.Workplane(cq.Plane(origin=tuple(position), normal=tuple(axis)))
    tool = plane.circle(diameter / 2).extrude(depth)
    if counterbore_diameter:
        return tool.union(plane.circle(counterbore_diameter / 2).extrude(counterbore_depth))
    point = cq.Solid.makeCone(
        diameter / 2, 0.0, diameter * 0.3, pnt=plane.plane.toWorldCoords((0, 0, depth)), dir=cq.Vector(*axis)
    )
    return tool.union(cq.Workplane(point))


def block(d: dict, holes: list) -> cq.Workplane:
    """Return the block."""
    length, width, height = d["length"], d["width"], d["height"]
    body = cq.Workplane("XY").box(length, width, height, centered=(False, True, False))
    if d["outer_fillet"] > 0:
        body = body.edges("|Z").fillet(d["outer_fillet"])
    body = body.faces("<Z or >Z").edges().chamfer(d["edge_chamfer"])
    window = (
        cq.Workplane("XY")
        .box(d["window_length"], d["window_width"], height, centered=(False, True, False))
        .edges("|Z")
        .fillet(d["window_corner_radius"])
        .translate((d["bearing_wall"], 0, 0))
    )
    body = body.cut(window)
    axis = cq.Workplane("YZ").center(0, d["shaft_height"])
    body = body.cut(axis.circle(d["bearing_bore"] / 2).extrude(d["bearing_wall"] + d["window_corner_radius"] + 1))
    motor = cq.Workplane("YZ", origin=(length, 0, d["shaft_height"]))
    body = body.cut(motor.circle(d["motor_bore"] / 2).extrude(-d["motor_bore_depth"]))
    reach = d["motor_wall"] + d["window_corner_radius"] + 1
    body = body.cut(motor.circle(d["motor_through_bore"] / 2).extrude(-reach))
    for _, *sizes in holes:
        body = body.cut(hole(*sizes))
    return body


def main(folder: Path, summary: Path | None) -> None:
    """Write block.step and block.stl."""
    solid = block(*read(summary))
    cq.exporters.export(solid, str(folder / "block.step"))
    cq.exporters.export(solid, str(folder / "block.stl"), tolerance=0.05, angularTolerance=0.1)


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]) if len(sys.argv) > 2 else None)
