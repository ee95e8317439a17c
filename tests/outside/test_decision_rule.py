"""In, out or cannot be told, against the guide of the accreditation bodies.

ILAC-G8:09/2019, "Guidelines on Decision Rules and Statements of Conformity", 4.2.3 "Non-binary Statement with Guard
Band" and Figure 5, which shows it for a guard band as long as the expanded uncertainty: pass below TL - w; fail above
TL + w; conditional pass and conditional fail between. Read at fliphtml5.com/szbrq/ktfm/ILAC_G8_09_2019_Quy_tac_ra_QD,
pages 8 and 10, as excerpts of stored copies. Both conditional answers are "cannot be told" here. ISO 14253-1 itself
was not read; public accounts say that its edition of 2017 takes 0.83 U where ours takes U, so that ours tells less
and never more.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.evidence.conformity import judged
from tests.evidence.samples import rows_of

TOLD = {"pass": "in", "conditional pass": "cannot be told", "conditional fail": "cannot be told", "fail": "out"}


def statement(value, limit, guard):
    """Return the statement of 4.2.3 for an upper limit."""
    if value < limit - guard:
        return "pass"
    if value <= limit:
        return "conditional pass"
    return "conditional fail" if value <= limit + guard else "fail"


def either(value, lower, upper, guard):
    """Return the worse of the statements at both limits; the lower one is the upper one of the value turned round."""
    order = list(TOLD)
    return max(statement(value, upper, guard), statement(-value, -lower, guard), key=order.index)


@given(st.integers(-60, 85), st.integers(1, 12))
def test_two_sided_limits(step, doubt):
    """Limits 45 to 45.025; half micrometres, so that no value lies on an edge between two statements."""
    value, guard = 45 + (step + 0.5) / 1000, doubt / 1000
    told, _ = judged(rows_of()["bearing_bore.diameter"], value, guard)
    assert told == TOLD[either(value, 45.0, 45.025, guard)]


@pytest.mark.parametrize(
    ("value", "told"), [(0.007, "in"), (0.019, "cannot be told"), (0.021, "cannot be told"), (0.031, "out")]
)
def test_one_sided_limit(value, told):
    """A zone of 0.02 and U = 0.01."""
    row = rows_of()["motor_bore.coaxiality"]
    assert row.upper == 0.02
    assert judged(row, value, 0.01)[0] == told == TOLD[statement(value, 0.02, 0.01)]
