"""How a value meets its limit: margin is 1 - use, at least 0 where it passes."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.checks.finding import Question, at_least, at_most, not_assessed, within
from tests.sizing.strategies import sized

ASK = Question("some_check", "Some check", ("length", "no.such.key"), "too little: add some")
WARN = Question("some_check", "Some check", (), "too little", otherwise="warn")
NUMBERS = st.floats(0.001, 1e4)


@pytest.fixture(name="plan", scope="module")
def plan_():
    """A plan for the inputs of findings."""
    return sized()


@pytest.mark.parametrize(
    ("value", "limit", "margin", "verdict"),
    [(20.0, 15.0, 0.25, "pass"), (15.0, 15.0, 0.0, "pass"), (10.0, 15.0, -0.5, "fail"), (-3.0, 1.0, -1.0, "fail")],
)
def test_at_least(plan, value, limit, margin, verdict):
    found = at_least(plan, ASK, value, limit)
    assert (found.value, found.limit, found.margin, found.verdict) == (value, limit, margin, verdict)


@pytest.mark.parametrize(
    ("value", "limit", "margin", "verdict"),
    [(15.0, 20.0, 0.25, "pass"), (20.0, 20.0, 0.0, "pass"), (30.0, 20.0, -0.5, "fail"), (0.0, 0.0, 0.0, "pass")],
)
def test_at_most(plan, value, limit, margin, verdict):
    found = at_most(plan, ASK, value, limit)
    assert (found.margin, found.verdict) == (margin, verdict)


@pytest.mark.parametrize(
    ("value", "margin", "verdict"),
    [(2.0, 0.3333, "pass"), (1.5, 0.3333, "pass"), (3.0, 0.0, "pass"), (3.5, -0.1667, "fail"), (0.0, -1.0, "fail")],
)
def test_within(plan, value, margin, verdict):
    found = within(plan, ASK, value, (1.0, 3.0))
    assert (found.margin, found.verdict) == (margin, verdict)


@given(NUMBERS, NUMBERS)
def test_a_margin_is_not_negative_exactly_where_it_passes(plan, value, limit):
    for found in (
        at_least(plan, ASK, value, limit),
        at_most(plan, ASK, value, limit),
        within(plan, ASK, value, (0, limit)),
    ):
        assert (found.margin >= 0) == (found.verdict == "pass")


def test_a_miss_can_be_a_warning(plan):
    assert at_least(plan, WARN, 1.0, 2.0).verdict == "warn"


def test_a_miss_says_what_to_do_and_a_pass_that_it_holds(plan):
    assert at_least(plan, ASK, 1.0, 2.0).explanation == "too little: add some"
    assert at_least(plan, ASK, 2.0, 1.0).explanation == "holds"


def test_inputs_are_the_records_that_are_known(plan):
    found = at_least(plan, ASK, 1.0, 2.0)
    assert set(found.inputs) == {"length"}
    assert found.inputs["length"].value == plan.number("length")


def test_what_is_not_assessed_has_no_value_and_names_what_is_missing(plan):
    found = not_assessed(plan, ASK, "screw.thrust")
    assert (found.value, found.limit, found.margin, found.verdict) == (None, None, None, "not_assessed")
    assert "screw.thrust" in found.explanation
