"""Scales as they are written."""

import pytest

from blockgen.outputs.drawing.scales import SCALES, scale_text


def test_scales_are_written_as_paper_to_true_size():
    assert [scale_text(s) for s in (2.0, 1.0, 0.5, 0.1)] == ["2:1", "1:1", "1:2", "1:10"]
    assert [paper / true for paper, true in SCALES] == sorted((p / t for p, t in SCALES), reverse=True)


def test_a_scale_that_is_not_in_the_list_is_refused():
    with pytest.raises(ValueError, match="ISO 5455"):
        scale_text(0.4)
