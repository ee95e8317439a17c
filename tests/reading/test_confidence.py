"""How sure a value is follows from rules."""

import pytest

from blockgen.reading.confidence import RULES, at_most, judged


@pytest.mark.parametrize(
    ("residual", "more", "told"),
    [
        (0.0, {}, "high"),
        (0.01, {}, "high"),
        (0.011, {}, "fair"),
        (0.1, {}, "fair"),
        (0.11, {}, "low"),
        (0.0, {"broken": True}, "fair"),
        (0.0, {"rivals": 1}, "fair"),
        (0.0, {"by_rule": True}, "fair"),
        (0.2, {"rivals": 1}, "low"),
    ],
)
def test_judged(residual, more, told):
    assert judged(residual, **more) == told
    assert RULES[told]


def test_the_lesser_counts():
    assert at_most("high", "fair") == at_most("fair", "high") == "fair"
    assert at_most("low", "high") == "low"
