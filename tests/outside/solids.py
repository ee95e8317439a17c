"""Solids for the finite element checks, made and meshed apart from any block."""

from __future__ import annotations

import pytest

occ = pytest.importorskip("netgen.occ")


def meshed(shape, maxh, **more):
    """Return a second-order curved mesh of a shape whose faces and edges are named."""
    import ngsolve
    from netgen.meshing import SetMessageImportance

    ngsolve.ngsglobals.msg_level = 0
    SetMessageImportance(0)
    mesh = ngsolve.Mesh(occ.OCCGeometry(shape).GenerateMesh(maxh=maxh, parallel_meshing=False, **more))
    mesh.Curve(2)
    return mesh


def bar(length, width, height):
    """Return a bar along x with its end faces named start and end, the long ones sides."""
    shape = occ.Box((0, -width / 2, -height / 2), (length, width / 2, height / 2))
    for face in shape.faces:
        face.name = "sides"
    shape.faces.Min(occ.X).name = "start"
    shape.faces.Max(occ.X).name = "end"
    return shape
