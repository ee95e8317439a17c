import pytest

from blockgen.standards.din974 import counterbore


def test_m10():
    found = counterbore("M10")
    assert (found.diameter, found.with_small_washer, found.with_washer) == (18, 20, 24)


def test_inch_counterbore_is_a_64th_that_clears_the_head():
    found = counterbore("1/4")
    assert found.diameter == pytest.approx(26 / 64 * 25.4)
    assert (found.with_washer, found.status) == (None, "computed")


@pytest.mark.parametrize("size", ["M1.6", "M2"])
def test_small_sizes(size):
    assert counterbore(size).diameter > 3


@pytest.mark.parametrize("size", ["M13", "9/16"])
def test_unknown_size(size):
    with pytest.raises(ValueError, match=f'size "{size}"'):
        counterbore(size)
