"""Tests of sizes and distances: typed values, signs, grades, one plus-minus tolerance for each."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.step_tolerances.records import Distance, Size
from tests.outputs.part21_reader import Ref, Typed, of_type
from tests.outputs.step_tolerances.written import BASE, BORE, HOLES, MM, SEAT, items, only, written


def deviations(entities):
    lower, upper = only(entities, "TOLERANCE_VALUE")
    found = []
    for ref in (lower, upper):
        measure, unit = entities[ref.number]["LENGTH_MEASURE_WITH_UNIT"]
        assert unit == MM
        assert measure.name == "LENGTH_MEASURE"
        found.append(measure.values[0])
    return tuple(found)


def test_a_fit_has_its_class_and_its_limits():
    entities = written(Size("bore.diameter", "diameter", BORE, 70.0, 0.03, 0.0, "H7"))
    assert only(entities, "LIMITS_AND_FITS") == ("H", "hole", "7", "")
    shown = items(entities, only(entities, "SHAPE_DIMENSION_REPRESENTATION"))
    assert shown == {
        "nominal value": Typed("POSITIVE_LENGTH_MEASURE", (70.0,)),
        "upper limit": Typed("POSITIVE_LENGTH_MEASURE", (70.03,)),
        "lower limit": Typed("POSITIVE_LENGTH_MEASURE", (70.0,)),
    }
    assert len(of_type(entities, "PLUS_MINUS_TOLERANCE")) == 1
    assert not of_type(entities, "TOLERANCE_VALUE")


@pytest.mark.parametrize(
    ("fit", "expected"), [("JS11", ("JS", "hole", "11", "")), ("g6", ("g", "shaft", "6", ""))]
)  # fmt: skip
def test_letters_and_grades(fit, expected):
    assert only(written(Size("x", "diameter", BORE, 20.0, 0.1, -0.1, fit)), "LIMITS_AND_FITS") == expected


def test_the_size_points_at_feature_and_tolerance_at_size():
    entities = written(Size("x", "diameter", HOLES, 9.0, 0.2, -0.1, None))
    ((number, (aspect, name)),) = of_type(entities, "DIMENSIONAL_SIZE").items()
    assert name == "diameter"
    assert "COMPOSITE_GROUP_SHAPE_ASPECT" in entities[aspect.number]
    assert only(entities, "PLUS_MINUS_TOLERANCE")[1] == Ref(number)
    assert only(entities, "DIMENSIONAL_CHARACTERISTIC_REPRESENTATION")[0] == Ref(number)


@given(st.integers(-500, 500), st.integers(0, 500))
def test_deviations_keep_their_signs(low, width):
    lower, upper = low / 1000, (low + width) / 1000
    entities = written(Distance("block.length", SEAT, BASE, 100.0, upper, lower))
    assert deviations(entities) == pytest.approx((lower, upper), abs=1e-9)


def test_under_the_general_tolerance_a_size_has_its_value_only():
    entities = written(Size("x", "radius", BORE, 11.0, None, None, None))
    assert not of_type(entities, "PLUS_MINUS_TOLERANCE")
    assert set(items(entities, only(entities, "SHAPE_DIMENSION_REPRESENTATION"))) == {"nominal value"}


def test_a_distance_has_two_aspects_and_the_id_of_the_characteristic():
    entities = written(Distance("block.length", SEAT, BASE, 113.0, None, None))
    name, identifier, start, end = only(entities, "DIMENSIONAL_LOCATION")
    assert (name, identifier) == ("linear distance", "block.length")
    assert entities[start.number]["SHAPE_ASPECT"][0] == "bearing_seat"
    assert entities[end.number]["SHAPE_ASPECT"][0] == "base"
