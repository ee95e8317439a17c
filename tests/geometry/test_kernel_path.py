"""Paths as the kernel takes them."""

import os
import sys
from pathlib import Path

import pytest

from blockgen.geometry.kernel_path import to_read, to_write

ODD = os.fsdecode(b"caf\xe9.step")  # bytes of another encoding, as older disks have them


def test_a_usual_path_is_used_as_it_is(tmp_path):
    path = tmp_path / "Träger 釉.step"
    with to_write(path) as name, to_read(path) as same:
        assert name == same == str(path)


@pytest.mark.skipif(sys.platform != "linux", reason="names that are no UTF-8 are Linux's")
def test_a_name_that_is_no_utf_8_goes_by_way_of_another(tmp_path):
    path = tmp_path / ODD
    with to_write(path) as name:
        name.encode("utf-8")
        Path(name).write_bytes(b"solid")
    assert path.read_bytes() == b"solid"
    with to_read(path) as name:
        assert Path(name).read_bytes() == b"solid"
    assert sorted(tmp_path.iterdir()) == [path]


@pytest.mark.skipif(sys.platform != "linux", reason="names that are no UTF-8 are Linux's")
def test_nothing_is_made_where_the_kernel_wrote_nothing(tmp_path):
    with to_write(tmp_path / ODD):
        pass
    assert list(tmp_path.iterdir()) == []
