import pytest

from blockgen.making.words import box, kg, mm, plain, ratio


@pytest.mark.parametrize(("value", "text"), [(21.5, "21.5"), (113.0, "113"), (33.755, "33.76"), (0.2, "0.2")])
def test_lengths(value, text):
    assert mm(value) == text


@pytest.mark.parametrize(("value", "text"), [(3.0, "3.0 D"), (3.01, "3.1 D"), (3.35, "3.4 D"), (0.3 * 10, "3.0 D")])
def test_a_ratio_over_its_limit_never_reads_as_the_limit(value, text):
    assert ratio(value) == text


def test_boxes_masses_and_ids():
    assert box((160.0, 130.5, 90)) == "160 x 130.5 x 90"
    assert (kg(1.8), kg(42.48)) == ("1.80", "42.5")
    assert plain("bearing_bore") == "bearing bore"
