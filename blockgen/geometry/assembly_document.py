"""An assembly of named, coloured parts in a tree as a STEP AP242 file, with validation properties."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from OCP.BRep import BRep_Builder
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeEdge
from OCP.BRepGProp import BRepGProp
from OCP.gp import gp_Pnt, gp_Trsf
from OCP.GProp import GProp_GProps
from OCP.IFSelect import IFSelect_RetDone
from OCP.Quantity import Quantity_Color, Quantity_TOC_sRGB
from OCP.StepBasic import StepBasic_Product
from OCP.STEPCAFControl import STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_AsIs
from OCP.StepRepr import StepRepr_NextAssemblyUsageOccurrence
from OCP.TCollection import TCollection_ExtendedString, TCollection_HAsciiString
from OCP.TDataStd import TDataStd_Name
from OCP.TDF import TDF_Label
from OCP.TDocStd import TDocStd_Document
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Compound, TopoDS_Edge, TopoDS_Shape
from OCP.XCAFDoc import (
    XCAFDoc_Area,
    XCAFDoc_Centroid,
    XCAFDoc_ColorCurv,
    XCAFDoc_ColorSurf,
    XCAFDoc_DocumentTool,
    XCAFDoc_Volume,
)

from blockgen.errors import KernelError, MachineError
from blockgen.geometry.kernel import INTEGRATION_ERROR, area_of, kernel_errors
from blockgen.geometry.kernel_path import to_write
from blockgen.geometry.step_document import Colour, kernel_settings

Edges = tuple[tuple[TopoDS_Edge, Colour], ...]

AXES: tuple[tuple[tuple[float, float, float], Colour], ...] = (
    ((30.0, 0.0, 0.0), (0.80, 0.10, 0.10)),
    ((0.0, 20.0, 0.0), (0.10, 0.60, 0.10)),
    ((0.0, 0.0, 20.0), (0.10, 0.20, 0.80)),
)
"""Ends of the three axes of a frame in its own coordinates, mm, with their colours; x is the long one."""


@dataclass(frozen=True, slots=True)
class Product:
    """One kind of part. All texts are plain ASCII; the name is different for each product.

    Args:
        shape: Its shape in its own coordinates; one object for each product.
        name: Product name and id.
        description: Product description.
        colour: Colour of its faces; None for a product without faces.
        edges: Edges with colours of their own.
    """

    shape: TopoDS_Shape
    name: str
    description: str
    colour: Colour | None
    edges: Edges = ()


@dataclass(frozen=True, slots=True)
class Occurrence:
    """A product where it stands: name and id of the occurrence, transformation into the assembly."""

    name: str
    product: Product
    location: gp_Trsf


@dataclass(frozen=True, slots=True)
class Assembly:
    """A named group of occurrences and further groups, which stand at its own origin."""

    name: str
    description: str
    members: Sequence[Occurrence | Assembly]


def frame_product(name: str, description: str) -> Product:
    """Return a frame as a product: three edges from the origin along its axes."""
    compound, builder = TopoDS_Compound(), BRep_Builder()
    builder.MakeCompound(compound)
    edges = tuple((BRepBuilderAPI_MakeEdge(gp_Pnt(0.0, 0.0, 0.0), gp_Pnt(*end)).Edge(), c) for end, c in AXES)
    for edge, _ in edges:
        builder.Add(compound, edge)
    return Product(compound, name, description, None, edges)


def write_assembly_document(root: Assembly, path: Path) -> None:
    """Write the assembly as the kernel writes it: its own header, the styles in an order that changes.

    Raises:
        KernelError: the kernel could not translate a part.
        MachineError: the file could not be written.
    """
    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    with kernel_errors("the kernel could not translate the assembly to STEP"), kernel_settings():
        _Filling(document).assembly(root)
        XCAFDoc_DocumentTool.ShapeTool_s(document.Main()).UpdateAssemblies()
        writer = STEPCAFControl_Writer()
        writer.SetNameMode(True)
        writer.SetColorMode(True)
        writer.SetPropsMode(True)
        if not writer.Transfer(document, STEPControl_AsIs):
            raise KernelError("the kernel could not translate the assembly to STEP")
        _describe(writer, dict(_descriptions(root)))
        with to_write(path) as name:
            written = writer.Write(name) == IFSelect_RetDone
        if not written:
            raise MachineError(f"cannot write {path}: is there room on the disk, and may you write there?")


class _Filling:
    """Labels of a document on their way in; each product has one."""

    def __init__(self, document: TDocStd_Document) -> None:
        self._shapes: Any = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
        self._colours: Any = XCAFDoc_DocumentTool.ColorTool_s(document.Main())
        self._products: dict[str, TDF_Label] = {}

    def assembly(self, group: Assembly) -> TDF_Label:
        label = self._shapes.NewShape()
        _name(label, group.name)
        for member in group.members:
            if isinstance(member, Assembly):
                self._place(label, self.assembly(member), member.name, gp_Trsf())
            else:
                self._place(label, self._product(member.product), member.name, member.location)
        return label

    def _place(self, into: TDF_Label, what: TDF_Label, name: str, location: gp_Trsf) -> None:
        _name(self._shapes.AddComponent(into, what, TopLoc_Location(location)), name)

    def _product(self, product: Product) -> TDF_Label:
        if product.name not in self._products:
            self._products[product.name] = self._new_product(product)
        return self._products[product.name]

    def _new_product(self, product: Product) -> TDF_Label:
        label = self._shapes.AddShape(product.shape, False)
        _name(label, product.name)
        if product.colour is not None:
            self._colours.SetColor(label, _colour(product.colour), XCAFDoc_ColorSurf)
            _add_properties(label, product.shape)
        for edge, colour in product.edges:
            self._colours.SetColor(self._shapes.AddSubShape(label, edge), _colour(colour), XCAFDoc_ColorCurv)
        return label


def _name(label: TDF_Label, text: str) -> None:
    TDataStd_Name.Set_s(label, TCollection_ExtendedString(text))


def _colour(colour: Colour) -> Quantity_Color:
    return Quantity_Color(*colour, Quantity_TOC_sRGB)


def _add_properties(label: TDF_Label, shape: TopoDS_Shape) -> None:
    """Enter volume, area and centroid, by which a reader can tell that it read the part right."""
    mass = GProp_GProps()
    BRepGProp.VolumeProperties_s(shape, mass, INTEGRATION_ERROR, False, False)
    XCAFDoc_Volume.Set_s(label, mass.Mass())
    XCAFDoc_Area.Set_s(label, area_of(shape))
    XCAFDoc_Centroid.Set_s(label, mass.CentreOfMass())


def _descriptions(group: Assembly) -> Iterator[tuple[str, str]]:
    yield group.name, group.description
    for member in group.members:
        if isinstance(member, Assembly):
            yield from _descriptions(member)
        else:
            yield member.product.name, member.product.description


def _describe(writer: STEPCAFControl_Writer, descriptions: dict[str, str]) -> None:
    """Put ids and descriptions into products and occurrences; the kernel numbers occurrences by a running counter."""
    model: Any = writer.ChangeWriter().Model()
    for number in range(1, model.NbEntities() + 1):
        entity = model.Value(number)
        if isinstance(entity, StepBasic_Product):
            name = entity.Name().ToCString()
            entity.SetDescription(TCollection_HAsciiString(descriptions[name]))
        elif isinstance(entity, StepRepr_NextAssemblyUsageOccurrence):
            entity.SetId(entity.Name())
