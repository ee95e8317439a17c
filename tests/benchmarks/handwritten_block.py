"""The same block as a skilled user writes it by hand with cadquery: the measure for ``build --only block,stl``.

Run as ``python handwritten_block.py SUMMARY OUT_FOLDER``; the sizes are those of a ``summary.json``. Against the block
it lacks only the chamfers of the hole and bore mouths, the names and colours of the faces and every check.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path

import cadquery as cq


def bored(feature: dict, through: float, wall: float) -> list[cq.Solid]:
    """Return a stepped pilot bore as two cylinders."""
    place, axis = cq.Vector(*feature["position"]), cq.Vector(*feature["axis"])
    return [
        cq.Solid.makeCylinder(feature["diameter"] / 2, feature["depth"], place, axis),
        cq.Solid.makeCylinder(through / 2, wall, place, axis),
    ]


def drilled(feature: dict) -> list[cq.Solid]:
    """Return a hole as cylinder, and its counterbore or drill point."""
    place, axis = cq.Vector(*feature["position"]), cq.Vector(*feature["axis"])
    radius, depth = feature["diameter"] / 2, feature["depth"]
    tools = [cq.Solid.makeCylinder(radius, depth, place, axis)]
    if feature["counterbore_diameter"]:
        wide, sunk = feature["counterbore_diameter"] / 2, feature["counterbore_depth"]
        tools.append(cq.Solid.makeCylinder(wide, sunk, place, axis))
    if not feature["through"]:
        tools.append(cq.Solid.makeCone(radius, 0.0, radius * 0.6, place + axis * depth, axis))
    return [tools[0].fuse(*tools[1:])] if len(tools) > 1 else tools


def milled(pocket: dict) -> cq.Workplane:
    """Return a window cut along z as a box with rounded corners."""
    (x0, y0, z0), (x1, y1, z1) = pocket["low"], pocket["high"]
    box = cq.Workplane("XY").box(x1 - x0, y1 - y0, z1 - z0, centered=False).translate((x0, y0, z0))
    return box.edges("|Z").fillet(pocket["corner_radius"])


def block(summary: dict) -> cq.Workplane:
    """Return the block; all cavities go in one cut."""
    sizes = {key: entry["value"] for key, entry in (summary["dimensions"] | summary["inputs"]).items()}
    body = cq.Workplane("XY").box(sizes["length"], sizes["width"], sizes["height"], centered=(False, True, False))
    if sizes["block.outer_fillet"] > 0:
        body = body.edges("|Z").fillet(sizes["block.outer_fillet"]).faces("<Z or >Z").edges()
    else:
        body = body.edges()
    body = body.chamfer(sizes["block.edge_chamfer"])
    tools = []
    for feature in summary["features"]:
        if feature["pocket"]:
            tools.append(milled(feature["pocket"]).val())
        elif feature["kind"] == "bore":
            end = feature["id"].removesuffix("_bore")
            tools += bored(feature, sizes[f"{end}_through_bore"], sizes[f"{end}_wall"])
        else:
            tools += drilled(feature)
    return cq.Workplane(body.val().cut(*tools))


def main(summary: Path, folder: Path) -> None:
    """Write block.step and block.stl."""
    solid = block(json.loads(summary.read_text(encoding="utf-8")))
    cq.exporters.export(solid, str(folder / "block.step"))
    cq.exporters.export(solid, str(folder / "block.stl"), tolerance=0.05, angularTolerance=0.1)


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]))
