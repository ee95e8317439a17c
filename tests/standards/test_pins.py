import pytest

from blockgen.standards.pins import dowel_pin, pin_diameters, pin_length


def test_8_mm():
    pin = dowel_pin(8)
    assert (pin.tolerance_class, pin.lengths[0], pin.lengths[-1]) == ("m6", 18, 80)
    assert pin.status == "memory"


@pytest.mark.parametrize("standard", ["ISO 8734", "ISO 2338"])
def test_every_diameter_has_rising_lengths_from_its_range(standard):
    for diameter in pin_diameters(standard):
        lengths = dowel_pin(diameter, standard).lengths
        assert len(lengths) >= 4
        assert list(lengths) == sorted(set(lengths))
        assert lengths[0] >= 1.5 * diameter


@pytest.mark.parametrize(
    ("at_least", "at_most", "length"), [(41, 60, 45), (81, 200, None), (40, 40, 40), (41, 44, None)]
)
def test_pin_length(at_least, at_most, length):
    assert pin_length(8, at_least, at_most) == length


def test_unknown():
    with pytest.raises(ValueError, match=r'dowel pin diameter "7": the table holds 1, 1.5'):
        dowel_pin(7)
    with pytest.raises(ValueError, match='dowel pin standard "ISO 1"'):
        pin_diameters("ISO 1")
