"""Tests of the text of ISO 10303-21: what is written is read back by the tests' own reader."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.part21 import Entities, Ref, Sign, Typed, quoted, real
from tests.outputs import part21_reader as reader


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("plain", "'plain'"),
        ("it's", "'it''s'"),
        ("a\\b", r"'a\\b'"),
        ("30 µm", r"'30 \X2\00B5\X0\m'"),
        ("\N{ROCKET}", r"'\X4\0001F680\X0\'"),
        ("a\nb", r"'a\X\0Ab'"),
        ("", "''"),
    ],
)
def test_quoted(text, expected):
    assert quoted(text) == expected


@pytest.mark.parametrize(
    ("value", "expected"),
    [(45, "45."), (0.02, "0.02"), (-0.1, "-0.1"), (-0.0, "0."), (1e-5, "1.E-05"), (70.03 + 1e-13, "70.03")],
)
def test_real(value, expected):
    assert real(value) == expected


@given(st.floats(-1e6, 1e6))
def test_a_real_keeps_its_value_and_its_point(value):
    text = real(value)
    assert "." in text
    assert float(text) == pytest.approx(value, abs=1e-9)


def entities(made):
    return reader.Reader(made.text()).entities()


def test_numbers_run_on():
    made = Entities(41)
    assert made.add("DATUM", "", None, Ref(4), False, "A") == Ref(42)
    assert made.text() == "#42 = DATUM('',$,#4,.F.,'A');\n"


def test_types_of_one_entity_stand_in_the_order_of_the_alphabet():
    made = Entities(0)
    made.add_together(SI_UNIT=(Sign(".MICRO."), Sign(".METRE.")), LENGTH_UNIT=(), NAMED_UNIT=(Sign("*"),))
    assert made.text() == "#1 = ( LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MICRO.,.METRE.) );\n"


def test_lists_and_typed_values():
    made = Entities(0)
    made.add("X", [Ref(1), (Ref(2),)], Typed("LENGTH_MEASURE", -0.5), True)
    assert made.text() == "#1 = X((#1,(#2)),LENGTH_MEASURE(-0.5),.T.);\n"


NAMES = st.from_regex(r"[A-Z][A-Z_]{0,8}", fullmatch=True)
VALUES = st.recursive(
    st.one_of(
        st.none(),
        st.text(st.characters(min_codepoint=32, max_codepoint=126, exclude_characters="\\")),
        st.integers(1, 10**6).map(Ref),
        st.integers(-(10**6), 10**6).map(lambda n: n / 1000),
        st.builds(Typed, NAMES, st.integers(0, 1000).map(float)),
    ),
    lambda inner: st.lists(inner, max_size=4).map(tuple),
    max_leaves=8,
)


def plain(value):
    if isinstance(value, Ref):
        return reader.Ref(value.number)
    if isinstance(value, Typed):
        return reader.Typed(value.name, (value.value,))
    return tuple(plain(item) for item in value) if isinstance(value, tuple) else value


@given(st.dictionaries(NAMES, st.lists(VALUES, max_size=4), min_size=2, max_size=4))
def test_what_is_written_is_read_back(leaves):
    made = Entities(7)
    made.add_together(**leaves)
    assert entities(made) == {8: {name: tuple(plain(v) for v in values) for name, values in leaves.items()}}
