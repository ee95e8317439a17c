"""A file of five megabytes is read like a small one; how long it takes stands in the benchmarks."""

import pytest

from blockgen.reading.part import read_part
from tests.reading.made_large import write_large

pytestmark = pytest.mark.slow


def test_reading_a_large_file(tmp_path):
    file = tmp_path / "large.step"
    write_large(file)
    assert file.stat().st_size > 4.5e6
    reading = read_part(file, "motor")
    assert reading.value("pilot_diameter") == 70.0
    assert reading.value("bolt_circle") == 90.0
