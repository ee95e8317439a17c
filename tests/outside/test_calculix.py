"""The same mesh in another solver: CalculiX (G. Dhondt, K. Wittig; Debian package calculix-ccx).

The stepper block, held under its screw heads and on the whole base, is written as ten-node tetrahedra (C3D10, which
take the mid-side nodes where the mesh has them) with the held nodes fixed and the same nodal forces; what the bearing
seat gives way must agree. Held faces: fixed nodes there, springs of 1e8 N/mm3 here.
"""

from __future__ import annotations

import shutil
import subprocess

import numpy as np
import pytest

from tests.examples import STEPPER

ngsolve = pytest.importorskip("ngsolve")
CCX = shutil.which("ccx")
pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(CCX is None, reason="CalculiX is not installed: apt-get install calculix-ccx"),
]

# Edges of a ten-node tetrahedron as CalculiX counts its nodes 5 to 10.
EDGES = ((0, 1), (1, 2), (0, 2), (0, 3), (1, 3), (2, 3))


@pytest.fixture(scope="module")
def subject():
    from blockgen.evidence.stiffness.subject import subject_of
    from blockgen.geometry.analysis import analysis_shape
    from blockgen.pipeline import design

    plan = design(STEPPER).plan
    shape = analysis_shape(plan)
    return subject_of(plan, shape.brep, shape.faces)


@pytest.fixture(scope="module")
def straight(subject):
    """The coarsest mesh with straight edges, so that both solvers see the same solid."""
    from blockgen.evidence.stiffness.mesh import COARSE, mesh_of

    mesh = mesh_of(subject, COARSE)
    mesh.UnsetDeformation()
    mesh.Curve(1)
    return mesh


def numbered(mesh):
    """Return nodes (n, 3) and elements (m, 10): corners first, then the middles of the edges."""
    corners = [tuple(vertex.point) for vertex in mesh.vertices]
    nodes, middles, elements = list(corners), {}, []
    for element in mesh.Elements(ngsolve.VOL):
        four = [vertex.nr for vertex in element.vertices]
        a, b, c, d = (np.array(corners[n]) for n in four)
        if np.dot(np.cross(b - a, c - a), d - a) < 0:
            four[0], four[1] = four[1], four[0]
        ten = list(four)
        for one, other in EDGES:
            pair = tuple(sorted((four[one], four[other])))
            if pair not in middles:
                middles[pair] = len(nodes)
                nodes.append(tuple((np.array(corners[pair[0]]) + np.array(corners[pair[1]])) / 2))
            ten.append(middles[pair])
        elements.append(ten)
    return np.array(nodes), np.array(elements), middles


def surface(mesh, middles, faces):
    """Return the six-node triangles of some faces."""
    found = []
    for element in mesh.Elements(ngsolve.BND):
        if element.mat in faces:
            a, b, c = (vertex.nr for vertex in element.vertices)
            pairs = (tuple(sorted(pair)) for pair in ((a, b), (b, c), (c, a)))
            found.append([a, b, c, *(middles[pair] for pair in pairs)])
    return found


def pushed(nodes, triangles, total):
    """Return nodal forces of an even pressure: a third of each six-node triangle's on each of its middles."""
    areas = [np.linalg.norm(np.cross(nodes[b] - nodes[a], nodes[c] - nodes[a])) / 2 for a, b, c, *_ in triangles]
    forces = np.zeros(len(nodes))
    for (_, _, _, *middles), area in zip(triangles, areas, strict=True):
        forces[middles] += total * area / sum(areas) / 3
    return forces


def written(subject, nodes, elements, fixed, forces):
    """Return the input of CalculiX."""
    rows = ["*NODE, NSET=ALL", *(f"{i}, {x:.9e}, {y:.9e}, {z:.9e}" for i, (x, y, z) in enumerate(nodes, 1))]
    rows += ["*ELEMENT, TYPE=C3D10, ELSET=E"]
    rows += [", ".join(map(str, (i, *(n + 1 for n in ten)))) for i, ten in enumerate(elements, 1)]
    rows += [
        "*MATERIAL, NAME=M",
        "*ELASTIC",
        f"{subject.modulus}, {subject.poisson}",
        "*SOLID SECTION, ELSET=E, MATERIAL=M",
    ]
    rows += ["*BOUNDARY", *(f"{n + 1}, 1, 3" for n in sorted(fixed)), "*STEP", "*STATIC", "*CLOAD"]
    rows += [f"{n + 1}, 1, {forces[n]:.12e}" for n in np.flatnonzero(forces)]
    return "\n".join([*rows, "*NODE PRINT, NSET=ALL", "U", "*END STEP", ""])


def ran(folder, text):
    """Return the displacements (n, 3) that CalculiX finds."""
    (folder / "block.inp").write_text(text, encoding="ascii")
    subprocess.run([CCX, "block"], cwd=folder, check=True, capture_output=True, timeout=300)
    lines = (folder / "block.dat").read_text(encoding="ascii").splitlines()
    rows = [line.split() for line in lines if len(line.split()) == 4]
    return np.array([[float(v) for v in row[1:]] for row in rows])


@pytest.mark.parametrize("whole", [False, True], ids=["under the heads", "bonded"])
def test_seat_gives_way_alike(subject, straight, whole, tmp_path):
    from blockgen.evidence.stiffness.rigid import patch_of
    from blockgen.evidence.stiffness.supports import TIED
    from blockgen.evidence.stiffness.system import System

    held = {f"ring_{i}" for i in range(1, len(subject.screws) + 1)} | ({"base"} if whole else set())
    nodes, elements, middles = numbered(straight)
    seat = surface(straight, middles, {"bearing_flange"})
    forces = pushed(nodes, seat, 1000.0)
    fixed = {n for triangle in surface(straight, middles, held) for n in triangle}
    other = float(forces @ ran(tmp_path, written(subject, nodes, elements, fixed, forces))[:, 0])

    system = System(straight, subject.modulus, subject.poisson)
    system.hold([(system.area_form(tuple(sorted(held))), TIED)])
    patch = patch_of(system.space, ("bearing_flange",), subject.bearing_seat)
    ours = system.solve(patch.columns[:, :1] * 1000 / patch.area)
    assert 1000.0 * float(patch.columns[:, 0] @ ours[:, 0]) / patch.area == pytest.approx(other, rel=0.002)
