import pytest

from blockgen.standards.iso273 import SERIES, clearance_hole
from blockgen.standards.tables import load_table
from blockgen.standards.threads import thread

SIZES = [row["size"] for name in ("iso273", "inch_clearance_holes") for row in load_table(name).rows]


@pytest.mark.parametrize(("size", "hole"), [("M12", 13.5), ("M14", 15.5), ("M16", 17.5), ("M10", 11), ("M6", 6.6)])
def test_medium(size, hole):
    assert clearance_hole(size) == hole


def test_inch_holes_are_in_millimetres():
    assert clearance_hole("1/4") == 7.1374


@pytest.mark.parametrize("size", SIZES)
def test_series_widen_and_clear_the_screw(size):
    diameter = {r["size"]: r["diameter"] for r in load_table("unified_threads").rows}
    screw = float(diameter[size]) * 25.4 if size in diameter else thread(size).diameter
    holes = [clearance_hole(size, series) for series in SERIES]
    assert screw < holes[0] < holes[1] < holes[2]


def test_unknown_size_and_series():
    with pytest.raises(ValueError, match=r'screw size "M13".*nearest: M'):
        clearance_hole("M13")
    with pytest.raises(ValueError, match='clearance hole series "tight": the table holds fine, medium, coarse'):
        clearance_hole("M10", "tight")
