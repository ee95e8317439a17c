"""Tests of the triangles by face."""

from __future__ import annotations

from pathlib import Path

import pytest

from blockgen.errors import KernelError, MachineError
from blockgen.geometry import mesh
from blockgen.geometry.block import build_block
from blockgen.geometry.mesh import face_meshes, is_closed, mesh_solid, without_needles, write_solid_stl
from tests.geometry import sample_plans as samples

pytestmark = pytest.mark.slow


def _signed_volume(vertices, triangles):
    """Volume between the triangles and the origin."""
    total = 0.0
    for a, b, c in triangles:
        (ax, ay, az), (bx, by, bz), (cx, cy, cz) = vertices[a], vertices[b], vertices[c]
        total += ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx)
    return total / 6


def test_face_meshes_close_the_block_and_face_outwards():
    block = build_block(samples.usual())
    meshes = face_meshes(block)
    assert list(meshes) == list(block.faces)
    assert sum(_signed_volume(*one) for one in meshes.values()) == pytest.approx(block.volume, rel=5e-4)


def test_face_meshes_lie_on_their_faces():
    meshes = face_meshes(build_block(samples.usual()))
    assert {round(x, 9) for x, _, _ in meshes["motor_seat"][0]} == {140.0}
    for _, y, z in meshes["bearing_bore.bore"][0]:
        assert (y**2 + (z - samples.SHAFT_HEIGHT) ** 2) ** 0.5 == pytest.approx(25.0, abs=1e-6)


def test_meshing_twice_gives_the_same():
    block = build_block(samples.with_pocket())
    assert face_meshes(block) == face_meshes(block)


def test_needles_are_taken_out():
    corner, other, third = bytes(12), b"\1" * 12, b"\2" * 12
    whole, needle = bytes(12) + corner + other + third + bytes(2), bytes(12) + corner + other + other + bytes(2)
    stl = bytes(80) + (2).to_bytes(4, "little") + whole + needle
    assert without_needles(stl) == bytes(80) + (1).to_bytes(4, "little") + whole


def test_a_folder_that_does_not_exist(tmp_path):
    block = build_block(samples.plain())
    with pytest.raises(MachineError, match=r"cannot write .*missing"):
        write_solid_stl(block.shape, tmp_path / "missing" / "block.stl", bytes(80))


def test_a_missing_triangle_is_noticed(tmp_path):
    path = tmp_path / "block.stl"
    write_solid_stl(build_block(samples.plain()).shape, path, bytes(80))
    assert is_closed(path.read_bytes())
    assert not is_closed(path.read_bytes()[:-50])


def _doubted(shape):
    mesh_solid(shape)
    return False


def test_a_doubtful_mesh_is_looked_at(tmp_path, monkeypatch):
    shape, path = build_block(samples.usual()).shape, tmp_path / "block.stl"
    monkeypatch.setattr(mesh, "mesh_solid", _doubted)
    write_solid_stl(shape, path, bytes(80))
    assert is_closed(path.read_bytes())
    monkeypatch.setattr(mesh, "without_needles", lambda stl: stl[:-50])
    with pytest.raises(KernelError, match="triangles of the solid do not close"):
        write_solid_stl(shape, path, bytes(80))


def test_a_file_that_was_cut_short_is_refused(tmp_path, monkeypatch):
    class Short:
        """A writer on a full disk."""

        ASCIIMode = True

        def Write(self, shape, path):
            Path(path).write_bytes(bytes(80) + (9).to_bytes(4, "little") + bytes(100))
            return True

    monkeypatch.setattr(mesh, "StlAPI_Writer", Short)
    with pytest.raises(MachineError, match="cut short while it was written"):
        write_solid_stl(build_block(samples.plain()).shape, tmp_path / "block.stl", bytes(80))
