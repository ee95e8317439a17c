import io
from dataclasses import replace

import pytest

from blockgen.change.compare.compare import compare
from blockgen.change.compare.picture import ADDED, REMOVED, meshes_of, view_pixels, write_picture
from blockgen.errors import KernelError
from tests.change.sides import SERVO_TEXT, WIDER, laid, side

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def bored():
    return compare(side(), side(WIDER)), laid(SERVO_TEXT, WIDER)


def tinted(pixels, colour):
    """Return how many pixels are nearer to a colour's direction than to grey: both sides of its red and blue."""
    red, blue = pixels[:, :, 0], pixels[:, :, 2]
    return int(((red - blue) > 0.2).sum() if colour[0] > colour[2] else ((blue - red) > 0.2).sum())


def test_a_ring_that_is_bored_out_shows_from_the_motor_side_in_one_tint(bored):
    meshes = meshes_of(bored[1])
    pixels = view_pixels(meshes, (0.72, 0.52, 0.46))
    assert tinted(pixels, REMOVED) > 300
    assert tinted(pixels, ADDED) == 0
    assert pixels.min() >= 0
    assert pixels.max() <= 1


def test_the_other_way_round_it_shows_in_the_other_tint(bored):
    there = bored[1]
    over = replace(there, old=there.new, new=there.old, added=there.removed, removed=there.added)
    pixels = view_pixels(meshes_of(over), (0.72, 0.52, 0.46))
    assert tinted(pixels, ADDED) > 300
    assert tinted(pixels, REMOVED) == 0


def test_the_file_says_nothing_of_the_time_or_the_tool(bored, tmp_path):
    from PIL import Image

    write_picture(*bored, tmp_path / "a.png")
    with Image.open(io.BytesIO((tmp_path / "a.png").read_bytes())) as picture:
        assert set(picture.info) <= {"dpi"}
        assert picture.size == (1352, 1352)


def test_a_piece_that_the_kernel_cannot_mesh_is_meshed_otherwise_or_counted(bored, monkeypatch):
    from blockgen.geometry import facets as module

    lump, whole = bored[1].removed[0], module.facets

    def balks(shape, deflection=0.15, angle=0.3):
        if shape is lump.solid and deflection > least:
            raise KernelError("no mesh")
        return whole(shape, deflection, angle)

    monkeypatch.setattr(module, "facets", balks)
    least = 0.1
    found = meshes_of(bored[1])
    assert (len(found.removed), found.missing) == (1, 0)
    least = 0.0
    found = meshes_of(bored[1])
    assert (len(found.removed), found.missing) == (0, 1)
