"""A file of five megabytes is read in less than three times what the kernel needs by itself."""

import time

import pytest
from OCP.STEPControl import STEPControl_Reader

from blockgen.reading.part import read_part
from tests.reading.made_large import write_large

pytestmark = pytest.mark.slow


def kernel_time(file):
    start = time.perf_counter()
    reader = STEPControl_Reader()
    reader.ReadFile(str(file))
    reader.TransferRoots()
    reader.OneShape()
    return time.perf_counter() - start


def test_reading_a_large_file(tmp_path):
    file = tmp_path / "large.step"
    write_large(file)
    assert file.stat().st_size > 4.5e6
    kernel_time(file)
    own = kernel_time(file)
    start = time.perf_counter()
    reading = read_part(file, "motor")
    whole = time.perf_counter() - start
    assert reading.value("pilot_diameter") == 70.0
    assert reading.value("bolt_circle") == 90.0
    assert whole < 3 * own
