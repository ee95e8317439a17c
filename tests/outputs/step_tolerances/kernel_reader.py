"""Tolerances of a file as the kernel's document reader finds them, for comparison with a plan."""

from __future__ import annotations

from typing import NamedTuple


class Found(NamedTuple):
    """A dimension or a geometrical tolerance.

    Args:
        kind: diameter, radius, distance, or the name of a geometrical tolerance.
        value: Nominal, or width of the zone, mm; middle of the limits where there are limits.
        limits: Least and greatest size, mm; None without own limits.
        fit: ISO 286 class.
        first: Number of faces at the first end.
        second: Number of faces at the other end.
        datums: Letters in order.
        diametral: True for a cylinder.
    """

    kind: str
    value: float
    limits: tuple[float, float] | None = None
    fit: str | None = None
    first: int = 0
    second: int = 0
    datums: tuple[str, ...] = ()
    diametral: bool = False


def open_document(path):
    """Return the kernel's document of a file."""
    from OCP.STEPCAFControl import STEPCAFControl_Reader
    from OCP.TCollection import TCollection_ExtendedString
    from OCP.TDocStd import TDocStd_Document

    document = TDocStd_Document(TCollection_ExtendedString("XmlXCAF"))
    reader = STEPCAFControl_Reader()
    reader.SetGDTMode(True)
    reader.SetMatMode(True)
    reader.SetNameMode(True)
    reader.ReadFile(str(path))
    assert reader.Transfer(document)
    return document


def labels(fill):
    """Return the labels that a function of the kernel puts into a sequence."""
    from OCP.TDF import TDF_LabelSequence

    found = TDF_LabelSequence()
    fill(found)
    return [found.Value(n) for n in range(1, found.Length() + 1)]


def attribute(label, kind):
    """Return the attribute of a kind; the kernel's own look-up gives back an empty one."""
    from OCP.TDF import TDF_AttributeIterator

    each = TDF_AttributeIterator(label)
    while each.More():
        if isinstance(each.Value(), kind):
            return each.Value()
        each.Next()
    raise AssertionError(f"no {kind.__name__}")


def materials(document):
    """Return name and density (g/cm3) of each material."""
    from OCP.XCAFDoc import XCAFDoc_DocumentTool, XCAFDoc_Material

    tool = XCAFDoc_DocumentTool.MaterialTool_s(document.Main())
    found = [attribute(label, XCAFDoc_Material) for label in labels(tool.GetMaterialLabels)]
    return [(material.GetName().ToCString(), material.GetDensity()) for material in found]


def dimensions(document):
    """Return all dimensions in the order of the file."""
    from OCP.XCAFDoc import XCAFDoc_Dimension, XCAFDoc_DocumentTool

    tool = XCAFDoc_DocumentTool.DimTolTool_s(document.Main())
    return [_dimension(label, attribute(label, XCAFDoc_Dimension)) for label in labels(tool.GetDimensionLabels)]


def zones(document):
    """Return the geometrical tolerances by name."""
    from OCP.XCAFDoc import XCAFDoc_DocumentTool, XCAFDoc_GeomTolerance

    tool = XCAFDoc_DocumentTool.DimTolTool_s(document.Main())
    return dict(_zone(label, attribute(label, XCAFDoc_GeomTolerance)) for label in labels(tool.GetGeomToleranceLabels))


def datum_letters(document):
    """Return the letters of all datums."""
    from OCP.XCAFDoc import XCAFDoc_Datum, XCAFDoc_DocumentTool

    tool = XCAFDoc_DocumentTool.DimTolTool_s(document.Main())
    found = [attribute(label, XCAFDoc_Datum) for label in labels(tool.GetDatumLabels)]
    return {datum.GetObject().GetName().ToCString() for datum in found}


def _ends(label):
    from OCP.TDF import TDF_LabelSequence
    from OCP.XCAFDoc import XCAFDoc_DimTolTool

    first, second = TDF_LabelSequence(), TDF_LabelSequence()
    XCAFDoc_DimTolTool.GetRefShapeLabel_s(label, first, second)
    return first.Length(), second.Length()


def _dimension(label, held):
    given = held.GetObject()
    kind = given.GetType().name.rpartition("_")[2].replace("LinearDistance", "distance").lower()
    value, limits, fit = given.GetValue(), None, None
    if given.IsDimWithRange():
        limits = (given.GetLowerBound(), given.GetUpperBound())
    elif given.IsDimWithPlusMinusTolerance():
        limits = (value - given.GetLowerTolValue(), value + given.GetUpperTolValue())  # it turns the lower sign round
    if given.IsDimWithClassOfTolerance():
        fit = "class"
    return Found(kind, value, limits, fit, *_ends(label))


def _zone(label, held):
    from OCP.XCAFDimTolObjects import XCAFDimTolObjects_GeomToleranceTypeValue as Form
    from OCP.XCAFDoc import XCAFDoc_Datum, XCAFDoc_DimTolTool

    given = held.GetObject()
    listed = labels(lambda found: XCAFDoc_DimTolTool.GetDatumWithObjectOfTolerLabels_s(label, found))
    datums = [attribute(datum, XCAFDoc_Datum).GetObject() for datum in listed]
    letters = tuple(d.GetName().ToCString() for d in sorted(datums, key=lambda d: d.GetPosition()))
    kind = given.GetType().name.rpartition("_")[2].lower()
    diametral = given.GetTypeOfValue() == Form.XCAFDimTolObjects_GeomToleranceTypeValue_Diameter
    name = given.GetSemanticName().ToCString()
    return name, Found(kind, given.GetValue(), first=_ends(label)[0], datums=letters, diametral=diametral)
