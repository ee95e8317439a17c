from itertools import pairwise

from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.outputs.report.spans import Span, in_rows

spans = st.lists(
    st.builds(
        lambda low, width, label: Span(low, low + width, label),
        st.floats(0, 800), st.floats(0, 300), st.text("abc 123", min_size=1, max_size=20),
    ),
    max_size=12,
)  # fmt: skip


@settings(deadline=None)
@given(spans)
def test_no_two_of_a_row_touch_and_none_is_lost(given_spans):
    rows = in_rows(given_spans)
    assert sorted(map(repr, given_spans)) == sorted(repr(s) for row in rows for s in row)
    for row in rows:
        reaches = sorted(span.reach for span in row)
        assert all(before[1] < after[0] for before, after in pairwise(reaches))


def test_a_label_stands_in_its_span_where_it_fits_and_else_behind_it():
    assert Span(0, 200, "wall 24.5").middle == 100
    narrow = Span(0, 20, "wall 24.5")
    assert narrow.middle - narrow.width / 2 > narrow.high
