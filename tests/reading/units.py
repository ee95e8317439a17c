"""STEP files in any unit of length, by the kernel's own writer."""

from OCP.Interface import Interface_Static
from OCP.STEPControl import STEPControl_AsIs, STEPControl_Writer


def write_in(unit, shape, file):
    """Write a shape in a unit (MM, INCH, M, CM, FT) and return the file."""
    writer = STEPControl_Writer()
    Interface_Static.SetCVal_s("write.step.unit", unit)
    try:
        writer.Transfer(shape, STEPControl_AsIs)
        writer.Write(str(file))
    finally:
        Interface_Static.SetCVal_s("write.step.unit", "MM")
    return file
