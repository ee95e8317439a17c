"""One named solid as a STEP AP242 file, with face names, colours, material and validation properties."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from OCP.gp import gp_Pnt
from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Message import Message, Message_Fail
from OCP.Quantity import Quantity_Color, Quantity_TOC_sRGB
from OCP.StepBasic import StepBasic_Product
from OCP.STEPCAFControl import STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_AsIs
from OCP.TCollection import TCollection_ExtendedString, TCollection_HAsciiString
from OCP.TDataStd import TDataStd_Name
from OCP.TDF import TDF_Label
from OCP.TDocStd import TDocStd_Document
from OCP.TopoDS import TopoDS_Face, TopoDS_Shape
from OCP.XCAFDoc import (
    XCAFDoc_Area,
    XCAFDoc_Centroid,
    XCAFDoc_ColorSurf,
    XCAFDoc_ColorTool,
    XCAFDoc_DocumentTool,
    XCAFDoc_ShapeTool,
    XCAFDoc_Volume,
)

from blockgen.errors import KernelError, MachineError
from blockgen.geometry.kernel import area_of, centre_of, kernel_errors, volume_of
from blockgen.geometry.kernel_path import to_write

Colour = tuple[float, float, float]

SETTINGS: tuple[tuple[str, str | int], ...] = (
    ("write.step.schema", "AP242DIS"),
    ("write.step.unit", "MM"),
    ("write.stepcaf.subshapes.name", 1),
    ("write.surfacecurve.mode", 0),
)
"""Options of the kernel that are global to the process; set and put back in ``kernel_settings``."""


@dataclass(frozen=True, slots=True)
class NamedFace:
    """A face with the name and colour (red, green, blue from 0 to 1) that it carries in the file.

    Without a colour of its own it shows that of the part.
    """

    face: TopoDS_Face
    name: str
    colour: Colour | None


@dataclass(frozen=True, slots=True)
class StepPart:
    """What the file says about one part. All texts are plain ASCII.

    Args:
        shape: The solid.
        name: Product name and id.
        description: Product description.
        material: Name of the material; empty leaves it out.
        density: kg/m3.
        colour: Colour of faces without their own.
        faces: Faces with name and colour.
    """

    shape: TopoDS_Shape
    name: str
    description: str
    material: str
    density: float
    colour: Colour
    faces: Sequence[NamedFace]


def write_step_document(part: StepPart, path: Path) -> None:
    """Write the part as the kernel writes it: its own header, its own order, which is the same in every process.

    Raises:
        KernelError: the kernel could not translate the part.
        MachineError: the file could not be written.
    """
    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    with kernel_errors("the kernel could not translate the solid to STEP"), kernel_settings():
        _fill(document, part)
        writer = STEPCAFControl_Writer()
        writer.SetNameMode(True)
        writer.SetColorMode(True)
        writer.SetMaterialMode(True)
        writer.SetPropsMode(True)
        if not writer.Transfer(document, STEPControl_AsIs):
            raise KernelError("the kernel could not translate the solid to STEP")
        _describe(writer, part)
        with to_write(path) as name:
            written = writer.Write(name) == IFSelect_RetDone
        if not written:
            raise MachineError(f"cannot write {path}: is there room on the disk, and may you write there?")


@contextmanager
def kernel_settings() -> Iterator[None]:
    """Set the kernel's global options for writing, keep it from printing, and put all back afterwards."""
    STEPCAFControl_Writer()  # the options exist only once a writer has been made
    before = [(key, _read_setting(key, value)) for key, value in SETTINGS]
    printers = [(printer, printer.GetTraceLevel()) for printer in Message.DefaultMessenger_s().Printers()]
    try:
        for key, value in SETTINGS:
            _set(key, value)
        for printer, _ in printers:
            printer.SetTraceLevel(Message_Fail)
        yield
    finally:
        for key, value in before:
            _set(key, value)
        for printer, level in printers:
            printer.SetTraceLevel(level)


def _read_setting(key: str, like: str | int) -> str | int:
    return str(Interface_Static.CVal_s(key)) if isinstance(like, str) else int(Interface_Static.IVal_s(key))


def _set(key: str, value: str | int) -> None:
    done = Interface_Static.SetCVal_s(key, value) if isinstance(value, str) else Interface_Static.SetIVal_s(key, value)
    if not done:
        raise KernelError(f"the kernel refuses the option {key} = {value}")


def _fill(document: TDocStd_Document, part: StepPart) -> None:
    shapes = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    colours = XCAFDoc_DocumentTool.ColorTool_s(document.Main())
    label = shapes.AddShape(part.shape, False)
    _name(label, part.name)
    colours.SetColor(label, _colour(part.colour), XCAFDoc_ColorSurf)
    for face in part.faces:
        _add_face(shapes, colours, label, face)
    _add_material(document, label, part)
    _add_properties(label, part.shape)


def _add_face(shapes: XCAFDoc_ShapeTool, colours: XCAFDoc_ColorTool, label: TDF_Label, face: NamedFace) -> None:
    sub = shapes.AddSubShape(label, face.face)
    _name(sub, face.name)
    if face.colour is not None:
        colours.SetColor(sub, _colour(face.colour), XCAFDoc_ColorSurf)


def _name(label: TDF_Label, text: str) -> None:
    TDataStd_Name.Set_s(label, TCollection_ExtendedString(text))


def _colour(colour: Colour) -> Quantity_Color:
    return Quantity_Color(*colour, Quantity_TOC_sRGB)


def _add_material(document: TDocStd_Document, label: TDF_Label, part: StepPart) -> None:
    if not part.material:
        return
    materials = XCAFDoc_DocumentTool.MaterialTool_s(document.Main())
    texts = (part.material, "", "density measure", "POSITIVE_RATIO_MEASURE")
    name, description, density_name, density_type = (TCollection_HAsciiString(text) for text in texts)
    materials.SetMaterial(label, name, description, part.density / 1000, density_name, density_type)  # g/cm3


def _add_properties(label: TDF_Label, shape: TopoDS_Shape) -> None:
    XCAFDoc_Volume.Set_s(label, volume_of(shape))
    XCAFDoc_Area.Set_s(label, area_of(shape))
    XCAFDoc_Centroid.Set_s(label, gp_Pnt(*centre_of(shape)))


def _describe(writer: STEPCAFControl_Writer, part: StepPart) -> None:
    """Put id and description into the product; the document has no place for them."""
    model: Any = writer.ChangeWriter().Model()
    for number in range(1, model.NbEntities() + 1):
        entity = model.Value(number)
        if isinstance(entity, StepBasic_Product):
            entity.SetId(TCollection_HAsciiString(part.name))
            entity.SetDescription(TCollection_HAsciiString(part.description))
