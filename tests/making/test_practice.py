import pytest

from blockgen.making.practice import PRACTICE, constant, decided, face_mills
from tests.sizing.strategies import sized


def test_every_value_says_what_it_means_and_where_it_is_from():
    assert all(record.rule and record.source and record.key.startswith("making.") for record in PRACTICE.values())


def test_a_list_is_no_number():
    with pytest.raises(TypeError, match="not a number"):
        constant("face_mills")


def test_face_mills_come_smallest_first():
    assert list(face_mills()) == sorted(face_mills())


def test_inputs_are_of_the_plan_of_practice_and_of_other_records():
    plan = sized()
    first = decided(plan, "one", 1.0, "mm", "rule", ("length",))
    second = decided(plan, "two", 2.0, "mm", "rule", (first, "making.sawn_face", "no.such.key"), {"fact": (3, "mm")})
    assert first.inputs["length"].value == plan.number("length")
    assert [i.ref for i in second.inputs.values()] == ["making.one", "making.sawn_face", None]
    assert (second.key, second.inputs["fact"].value) == ("making.two", 3)
