"""Tests of the files of an adapter."""

import re

import pytest

from blockgen.change.adapter.files import adapter_file, solid_of, write_adapter, write_adapters
from blockgen.change.adapter.plate import plate
from blockgen.change.adapter.ring import ring
from blockgen.change.adapter.weight import volume_of_adapter
from tests.change import blocks

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def far():
    """A motor that needs a plate."""
    return blocks.other(shaft_length=52, bolt_circle=100, flange_size=100)


@pytest.fixture(scope="module")
def both(far):
    """A plate and a ring."""
    return plate(blocks.old(), far, 15.0), ring(blocks.old(), blocks.other(pilot_diameter=60))


def test_solids_have_the_volume_of_the_paper(both):
    for adapter in both:
        assert solid_of(adapter).volume == pytest.approx(volume_of_adapter(adapter), abs=0.01)


def test_faces_are_named_after_what_they_are(both):
    faces = solid_of(both[0]).faces
    assert {"block_face", "motor_face", "outside", "spigot_face", "bore.bore", "block_screws_1.seat"} <= set(faces)
    assert set(solid_of(both[1]).faces) >= {"block_face", "motor_face", "outside", "bore.bore"}


def test_named_faces_lie_where_they_belong(both):
    from blockgen.geometry.kernel import bounding_box

    plate_faces = solid_of(both[0]).faces
    thick, spigot = both[0].body.thickness, both[0].body.spigot_length
    for name, x in (("block_face", 0.0), ("motor_face", thick), ("spigot_face", -spigot)):
        box = bounding_box(plate_faces[name][0])
        assert (box[0], box[3]) == pytest.approx((x, x), abs=1e-6)
    box = bounding_box(plate_faces["outside"][0])
    assert box[4] - box[1] == pytest.approx(70.0, abs=1e-4)
    ring_faces = solid_of(both[1]).faces
    assert bounding_box(ring_faces["bore.bore"][0])[4] == pytest.approx(30.0, abs=1e-4)
    assert bounding_box(ring_faces["outside"][0])[4] == pytest.approx(35.0, abs=1e-4)


def test_a_file_has_the_same_bytes_twice_and_says_what_it_is(both, far, tmp_path):
    one, two = tmp_path / "one", tmp_path / "two"
    one.mkdir()
    two.mkdir()
    paths = write_adapters(both, far, one)
    assert [path.name for path in paths] == ["T-2_A_adapter.step", "T-2_A_adapter_2.step"]
    assert write_adapter(both[0], far, two).read_bytes() == paths[0].read_bytes()
    text = paths[0].read_text(encoding="ascii")
    assert "AP242" in text
    assert "plate 126 x" in text
    assert re.search(r"'motor_screws_1\.thread: M6-6H through'", text)
    assert not re.search(r"'@\d+@'", text)


def test_names_of_files(far):
    assert adapter_file(far) == "T-2_A_adapter.step"
    assert adapter_file(far, 3) == "T-2_A_adapter_3.step"
