import pytest

from blockgen.standards.iso898 import property_class


def test_8_8_changes_above_16_mm():
    assert property_class("8.8", 16).yield_strength == 640
    assert property_class("8.8", 16.001).yield_strength == 660


@pytest.mark.parametrize("name", ["4.6", "5.6", "8.8", "10.9", "12.9", "A2-70", "A4-80"])
def test_proof_below_yield_below_tensile(name):
    found = property_class(name, 10)
    assert (found.proof or 0) < found.yield_strength < found.tensile


@pytest.mark.parametrize("name", ["4.6", "5.6", "8.8", "10.9", "12.9"])
def test_the_name_gives_the_nominal_strengths(name):
    first, second = (int(part) for part in name.split("."))
    found = property_class(name, 10)
    assert 100 * first <= found.tensile <= 1.04 * 100 * first
    assert 10 * first * second <= found.yield_strength <= 1.05 * 10 * first * second


def test_stainless_has_no_proof_stress_and_is_remembered():
    found = property_class("A2-70", 10)
    assert (found.proof, found.source) == (None, "ISO 3506-1 [memory]")


def test_unknown_class_and_diameter():
    with pytest.raises(ValueError, match=r'property class "8.9".*nearest: 8.8'):
        property_class("8.9", 10)
    with pytest.raises(ValueError, match="diameter for class A2-70 30 mm: the table runs from above 0 to 24 mm"):
        property_class("A2-70", 30)
