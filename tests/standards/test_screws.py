import pytest

from blockgen.standards.din974 import counterbore
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.screws import cap_screw, cap_screw_sizes, preferred_length
from blockgen.standards.washers import washer


def test_m10():
    screw = cap_screw("M10")
    assert (screw.head_diameter, screw.head_height, screw.key_size, screw.washer_face) == (16, 10, 8, 15.33)
    assert (screw.thread_length, screw.lengths[0], screw.lengths[-1]) == (32, 16, 100)
    assert screw.standard == "ISO 4762"


@pytest.mark.parametrize("size", cap_screw_sizes())
def test_every_screw_fits_its_hole_and_counterbore(size):
    screw = cap_screw(size)
    assert screw.head_height == pytest.approx(screw.diameter)
    assert clearance_hole(size) < screw.washer_face < screw.head_diameter < counterbore(size).diameter
    assert screw.key_size < screw.head_diameter
    assert screw.lengths == tuple(sorted(screw.lengths))


@pytest.mark.parametrize("size", [s for s in cap_screw_sizes() if s.startswith("M")])
def test_metric_thread_length_follows_the_rule_of_the_standard(size):
    expected = 2 * cap_screw(size).diameter + 12
    assert cap_screw(size).thread_length == pytest.approx(expected, abs=0.3)  # M1.6: 15.2 printed as 15


@pytest.mark.parametrize(
    ("at_least", "at_most", "length"),
    [(33, 40, 35), (35, 40, 35), (35.1, 39.9, None), (16, 16, 16), (1, 15, None), (95, 200, 100), (101, 200, None)],
)
def test_preferred_length(at_least, at_most, length):
    assert preferred_length("M10", at_least, at_most) == length


def test_preferred_inch_length_is_in_millimetres():
    assert preferred_length("1/4", 20) == 22.225


def test_unknown_size():
    with pytest.raises(ValueError, match=r'screw size "M7".*nearest'):
        cap_screw("M7")
    with pytest.raises(ValueError, match='screw size "M7"'):
        preferred_length("M7", 10)


@pytest.mark.parametrize("size", ["M3", "M4", "M5", "M6", "M8", "M10", "M12", "M16", "M20", "M24", "M30"])
def test_washers_carry_the_head_and_fit_their_counterbore(size):
    screw, bore = cap_screw(size), counterbore(size)
    small, normal = washer(size, "ISO 7092"), washer(size)
    assert screw.washer_face < small.outer < normal.outer
    assert small.outer < bore.with_small_washer < bore.with_washer
    assert normal.outer < bore.with_washer
    assert screw.diameter < normal.inner == small.inner == clearance_hole(size, "fine")
    assert small.thickness <= normal.thickness
