"""A STEP file that was put together by hand, without any CAD kernel."""

import math

import pytest

from blockgen.errors import InputError
from blockgen.geometry.kernel import volume_of
from blockgen.reading.part import read_part
from blockgen.reading.read_file import read_step
from tests.reading.plain_step import text_of

pytestmark = pytest.mark.slow

SIZES = {
    "size": 87.0, "thickness": 9.0, "pilot": 73.025, "pilot_length": 1.6, "spacing": 69.6, "hole": 5.5, "shaft": 14.0,
    "shaft_length": 37.0,
}  # fmt: skip
TRUE = {
    "pilot_diameter": 73.025, "pilot_form": "proud", "pilot_length": 1.6, "flange_shape": "square", "flange_size": 87.0,
    "flange_thickness": 9.0, "bolt_count": 4, "bolt_angle": 45.0, "fastening": "clearance", "bolt_hole": 5.5,
    "shaft_diameter": 14.0, "shaft_length": 37.0, "shaft_end": "plain",
}  # fmt: skip


@pytest.mark.parametrize("inch", [False, True])
def test_it_is_read(inch, tmp_path):
    file = tmp_path / "plain.step"
    file.write_text(text_of(**SIZES, inch=inch))
    volume = 87**2 * 9 + math.pi * (73.025**2 / 4 * 1.6 + 14**2 / 4 * (37 - 1.6) - 5.5**2 * 9)
    assert volume_of(read_step(file).shape) == pytest.approx(volume, rel=1e-9)
    reading = read_part(file, "motor")
    assert reading.unit == ("in" if inch else "mm")
    assert {key: reading.value(key) for key in TRUE} == TRUE
    assert reading.value("bolt_circle") == pytest.approx(69.6 * math.sqrt(2), abs=5e-4)


def test_without_a_unit_it_is_refused(tmp_path):
    file = tmp_path / "plain.step"
    file.write_text(text_of(**SIZES, unit=False))
    with pytest.raises(InputError, match="no unit of length"):
        read_part(file, "motor")
