"""Tests of the STL file: closed and true to size as trimesh reads it."""

from __future__ import annotations

import pytest
import trimesh

from blockgen.geometry.block import build_block
from blockgen.outputs.stl import header, write_block_stl
from tests.geometry import sample_plans as samples

pytestmark = pytest.mark.slow


@pytest.mark.parametrize("name", list(samples.SAMPLES))
def test_closed_and_of_the_solids_volume(name, tmp_path):
    plan, path = samples.SAMPLES[name](), tmp_path / "block.stl"
    block = build_block(plan)
    write_block_stl(block, plan, path)
    mesh = trimesh.load(path)
    assert mesh.is_watertight
    assert mesh.is_winding_consistent
    assert mesh.volume == pytest.approx(block.volume, rel=3e-4)
    body = plan.body
    box = [[0.0, -body.width / 2, 0.0], [body.length, body.width / 2, body.height]]
    assert mesh.bounds == pytest.approx(trimesh.util.np.array(box), abs=1e-4)


def test_form_of_the_file(tmp_path):
    plan, path = samples.usual(), tmp_path / "block.stl"
    write_block_stl(build_block(plan), plan, path)
    data = path.read_bytes()
    assert data[:80].rstrip() == b"binary STL, unit mm, SC-104_A_block"
    assert len(data) == 84 + 50 * int.from_bytes(data[80:84], "little")


def test_header_of_a_long_number_in_other_letters():
    text = header(samples.plan_of([], job_number="Ж" * 90))
    assert len(text) == 80
    assert not text.startswith(b"solid")
    assert text.endswith(b"?" * 10)
