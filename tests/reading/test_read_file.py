"""Files that are of no use are told apart, and nothing is printed beside the message."""

import gzip

import cadquery as cq
import pytest

from blockgen.errors import InputError
from blockgen.reading.read_file import read_step
from tests.reading.units import write_in

pytestmark = pytest.mark.slow

HEAD = b"ISO-10303-21;\nHEADER;\nENDSEC;\nDATA;\n"


@pytest.mark.parametrize(
    ("content", "found"),
    [
        (None, "no such file"),
        (b"", "an empty file"),
        (b" \n\n", "an empty file"),
        (b"solid ascii\nfacet normal", "does not start with ISO-10303-21; it starts with 'solid ascii'"),
        (b"\x00\x01\x02" * 20, "it is binary"),
        (b"PK\x03\x04rest", "a zip archive"),
        (gzip.compress(HEAD, mtime=0), "a gzip archive"),
        (HEAD + b"#1=CARTESIAN_POINT('',(0.,0.", "cut off"),
        (b"ISO-10303-21;\nHEADER;garbage\nENDSEC;\nDATA;\n#1=FOO(;\nENDSEC;\nEND-ISO-10303-21;\n", "cannot be read"),
        (HEAD + b"ENDSEC;\nEND-ISO-10303-21;\n", "no unit of length"),
    ],
)
def test_what_is_wrong_is_told(content, found, tmp_path, capfd):
    file = tmp_path / "motor.step"
    if content is not None:
        file.write_bytes(content)
    with pytest.raises(InputError, match=r"motor\.step") as caught:
        read_step(file)
    assert found in str(caught.value)
    assert caught.value.problems[0].remedy
    assert capfd.readouterr().out == ""


def test_a_folder_is_no_file(tmp_path):
    with pytest.raises(InputError, match="a folder"):
        read_step(tmp_path)


def test_surfaces_without_a_solid(tmp_path):
    file = write_in("MM", cq.Face.makePlane(10, 10).wrapped, tmp_path / "surface.step")
    with pytest.raises(InputError, match="1 surfaces, but no solid"):
        read_step(file)


def test_a_solid_comes_in_mm(tmp_path):
    file = write_in("INCH", cq.Solid.makeBox(25.4, 10, 5).wrapped, tmp_path / "box.step")
    model = read_step(file)
    assert (model.unit, model.solids) == ("in", 1)
    assert cq.Shape.cast(model.shape).BoundingBox().xlen == pytest.approx(25.4)
