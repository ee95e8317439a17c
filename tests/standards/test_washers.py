import pytest

from blockgen.standards.washers import washer, washer_sizes


def test_m10():
    normal, small = washer("M10"), washer("M10", "ISO 7092")
    assert (normal.inner, normal.outer, normal.thickness) == (10.5, 20, 2)
    assert (small.inner, small.outer, small.thickness) == (10.5, 18, 1.6)


def test_sizes():
    assert "M36" in washer_sizes("ISO 7089")
    assert "M36" not in washer_sizes("ISO 7092")


def test_unknown():
    with pytest.raises(ValueError, match='washer standard "ISO 7093": the table holds ISO 7089, ISO 7092'):
        washer("M10", "ISO 7093")
    with pytest.raises(ValueError, match='washer size "M7"'):
        washer("M7")
