"""The block from both ends, shaded, with edges and callouts."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

import matplotlib as mpl

mpl.use("Agg")

import matplotlib.pyplot as plt
import numpy as np
import vtk
from vtk.util.numpy_support import vtk_to_numpy

from blockgen.geometry.block import build_block
from blockgen.geometry.mesh import FaceMesh, face_meshes
from blockgen.plan import Plan

SIZE = (1150, 1000)
BLUE, ORANGE, GREEN, SAND, BODY = "#3f7fb5", "#d9822b", "#5c9a5b", "#c9b27c", "#c4cad0"
COLOURS = (
    ("bearing_bore", BLUE),
    ("motor_bore", ORANGE),
    ("window", SAND),
    ("base_screw", GREEN),
    ("dowel", "#8a6fae"),
    ("bearing_thread", "#28587f"),
    ("motor_thread", "#9c5a17"),
    ("bearing_seat", "#a9c8e2"),
    ("motor_seat", "#efc597"),
)
Point = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Callout:
    """A label, the point on the block that it means, and where the text stands, in parts of the picture."""

    text: str
    point: Point
    place: tuple[float, float]


def count(plan: Plan, group: str) -> int:
    """Return how many alike features a group has."""
    return sum(feature.group == group for feature in plan.features)


def draw_block(plan: Plan, path: Path, metadata: Mapping[str, str]) -> None:
    """Draw the block seen from the bearing end and from the motor end."""
    meshes = face_meshes(build_block(plan))
    figure, axes = plt.subplots(1, 2, figsize=(15.6, 7.2), dpi=100)
    views = (
        ("From the bearing end", (-1.0, -0.62, 0.72), _bearing_callouts(plan)),
        ("From the motor end", (1.0, -0.62, 0.72), _motor_callouts(plan)),
    )
    for axis, (title, direction, callouts) in zip(axes, views, strict=True):
        _draw_view(axis, meshes, plan, direction, callouts)
        axis.set_title(title, fontsize=15, pad=4)
    figure.subplots_adjust(left=0.005, right=0.995, top=0.94, bottom=0.005, wspace=0.01)
    figure.savefig(path, metadata=dict(metadata))
    plt.close(figure)


def _bearing_callouts(plan: Plan) -> tuple[Callout, ...]:
    body, height = plan.body, plan.number("shaft_height")
    screw, thread, dowel = (plan.feature(f"{name}_1").position for name in ("base_screw", "bearing_thread", "dowel"))
    window = plan.feature("window").pocket
    assert window is not None
    bore = plan.number("bearing_bore") / 2
    return (
        Callout("bearing seat\n(x = 0)", (0, -body.width * 0.42, height * 0.3), (0.16, 0.08)),
        Callout(
            f"bearing bore\n{plan.number('bearing_bore'):g} H7", (0, bore * 0.87, height - bore * 0.5), (0.01, 0.34)
        ),
        Callout(f"{count(plan, 'bearing_threads')} x {plan.text('bearing_thread')} tapped", thread, (0.01, 0.72)),
        Callout(
            f"base screws, {count(plan, 'base_screws')} x {plan.text('base_screw')},\nfrom above", screw, (0.02, 0.88)
        ),
        Callout("dowel hole", dowel, (0.27, 0.96)),
        Callout("window\nfor the coupling", ((window.low[0] + window.high[0]) / 2, 6, body.height), (0.74, 0.94)),
        Callout("base (z = 0)", (body.length * 0.55, -body.width / 2, 0), (0.76, 0.10)),
    )


def _motor_callouts(plan: Plan) -> tuple[Callout, ...]:
    body, height = plan.body, plan.number("shaft_height")
    screw = plan.feature("base_screw_2").position
    thread = plan.feature("motor_thread_1").position
    window = plan.feature("window").pocket
    assert window is not None
    bore, opening = plan.number("motor_bore") / 2, plan.number("motor_through_bore") / 2
    return (
        Callout("motor seat\n(x = length)", (body.length, -body.width * 0.43, height * 0.25), (0.70, 0.06)),
        Callout(
            f"motor bore\n{plan.number('motor_bore'):g} H7",
            (body.length, bore * 0.72, height - bore * 0.70),
            (0.85, 0.22),
        ),
        Callout(f"{count(plan, 'motor_threads')} x {plan.text('motor_thread')} tapped", thread, (0.80, 0.77)),
        Callout(
            f"opening {2 * opening:g}",
            (body.length - plan.number("motor_bore_depth"), opening * 0.9, height + opening * 0.45),
            (0.84, 0.55),
        ),
        Callout("base screws", screw, (0.66, 0.93)),
        Callout("window\nfor the coupling", ((window.low[0] + window.high[0]) / 2, 6, body.height), (0.20, 0.95)),
        Callout("base (z = 0)", (body.length * 0.45, -body.width / 2, 0), (0.08, 0.10)),
    )


def _draw_view(
    axis: plt.Axes,
    meshes: Mapping[str, FaceMesh],
    plan: Plan,
    direction: Point,
    callouts: tuple[Callout, ...],
) -> None:
    scene = _Scene(meshes, plan, direction)
    axis.imshow(scene.picture())
    axis.set_axis_off()
    for callout in callouts:
        x, y = scene.pixel(callout.point)
        axis.annotate(
            callout.text,
            (x, y),
            (callout.place[0] * SIZE[0], (1 - callout.place[1]) * SIZE[1]),
            fontsize=13,
            ha="left",
            va="center",
            arrowprops={"arrowstyle": "-", "color": "#222222", "lw": 1.1},
            bbox={"boxstyle": "round,pad=0.2", "fc": "white", "ec": "none", "alpha": 0.85},
        )
        axis.plot(x, y, "o", ms=5, mfc="#222222", mec="white", mew=0.8)


class _Scene:
    """One off-screen view with parallel projection."""

    def __init__(self, meshes: Mapping[str, FaceMesh], plan: Plan, direction: Point) -> None:
        self.renderer = vtk.vtkRenderer()
        self.renderer.SetBackground(1, 1, 1)
        for face_id, mesh in meshes.items():
            self.renderer.AddActor(_surface(mesh, _colour(face_id)))
        self.renderer.AddActor(_edges(meshes))
        self._lights()
        self._aim(plan, direction)
        self.window = vtk.vtkRenderWindow()
        self.window.SetOffScreenRendering(1)
        self.window.SetMultiSamples(8)
        self.window.SetSize(*SIZE)
        self.window.AddRenderer(self.renderer)
        self.window.Render()

    def _lights(self) -> None:
        self.renderer.AutomaticLightCreationOff()
        for position, strength in (((-2, 3, 6), 0.75), ((3, 2, 3), 0.35), ((0, -3, 0.6), 0.35)):
            light = vtk.vtkLight()
            light.SetLightTypeToCameraLight()
            light.SetPosition(*position)
            light.SetIntensity(strength)
            self.renderer.AddLight(light)

    def _aim(self, plan: Plan, direction: Point) -> None:
        camera = self.renderer.GetActiveCamera()
        middle = np.array((plan.body.length / 2, 0.0, plan.body.height / 2))
        camera.SetFocalPoint(*middle)
        camera.SetPosition(*(middle + 500 * np.array(direction)))
        camera.SetViewUp(0, 0, 1)
        camera.ParallelProjectionOn()
        camera.SetParallelScale(max(plan.body.length, plan.body.width, plan.body.height) * 0.86)
        self.renderer.ResetCameraClippingRange()

    def pixel(self, point: Point) -> tuple[float, float]:
        """Return where a point of the block stands in the picture, from its upper left corner."""
        self.renderer.SetWorldPoint(*point, 1.0)
        self.renderer.WorldToDisplay()
        x, y, _ = self.renderer.GetDisplayPoint()
        return x, SIZE[1] - y

    def picture(self) -> np.ndarray:
        """Return the pixels, top row first."""
        grab = vtk.vtkWindowToImageFilter()
        grab.SetInput(self.window)
        grab.ReadFrontBufferOff()
        grab.Update()
        image = grab.GetOutput()
        width, height, _ = image.GetDimensions()
        return vtk_to_numpy(image.GetPointData().GetScalars()).reshape(height, width, -1)[::-1]


def _colour(face_id: str) -> tuple[float, float, float]:
    found = next((colour for start, colour in COLOURS if face_id.startswith(start)), BODY)
    return mpl.colors.to_rgb(found)


def _polydata(mesh: FaceMesh) -> vtk.vtkPolyData:
    vertices, triangles = mesh
    points, cells = vtk.vtkPoints(), vtk.vtkCellArray()
    for vertex in vertices:
        points.InsertNextPoint(*vertex)
    for triangle in triangles:
        cells.InsertNextCell(3, triangle)
    data = vtk.vtkPolyData()
    data.SetPoints(points)
    data.SetPolys(cells)
    return data


def _surface(mesh: FaceMesh, colour: tuple[float, float, float]) -> vtk.vtkActor:
    normals = vtk.vtkPolyDataNormals()
    normals.SetInputData(_polydata(mesh))
    normals.SplittingOff()
    normals.ConsistencyOff()
    mapper = vtk.vtkPolyDataMapper()
    mapper.SetInputConnection(normals.GetOutputPort())
    actor = vtk.vtkActor()
    actor.SetMapper(mapper)
    shade = actor.GetProperty()
    shade.SetColor(*colour)
    shade.SetAmbient(0.22)
    shade.SetDiffuse(0.8)
    shade.SetSpecular(0.08)
    return actor


def _edges(meshes: Mapping[str, FaceMesh]) -> vtk.vtkActor:
    """Return the sharp edges between faces as dark lines."""
    joined = vtk.vtkAppendPolyData()
    for mesh in meshes.values():
        joined.AddInputData(_polydata(mesh))
    clean = vtk.vtkCleanPolyData()
    clean.SetInputConnection(joined.GetOutputPort())
    clean.SetTolerance(1e-7)
    sharp = vtk.vtkFeatureEdges()
    sharp.SetInputConnection(clean.GetOutputPort())
    sharp.SetFeatureAngle(25)
    sharp.ColoringOff()
    mapper = vtk.vtkPolyDataMapper()
    mapper.SetInputConnection(sharp.GetOutputPort())
    mapper.SetResolveCoincidentTopologyToPolygonOffset()
    mapper.SetRelativeCoincidentTopologyLineOffsetParameters(0, -4)
    actor = vtk.vtkActor()
    actor.SetMapper(mapper)
    actor.GetProperty().SetColor(0.12, 0.13, 0.15)
    actor.GetProperty().SetLineWidth(1.6)
    actor.GetProperty().LightingOff()
    return actor
