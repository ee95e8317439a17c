"""Scales against the table of ISO 5455:1979, 5.1, quoted whole on a page of questions and answers.

bartleby.com question "5.1 The recommended scales for use on technical drawings are specified in the following table",
reached as an excerpt of a stored copy under questions-and-answers; two transcriptions there agree.
"""

from blockgen.outputs.drawing.scales import SCALES, scale_text

ENLARGEMENT = {"50:1", "20:1", "10:1", "5:1", "2:1"}
FULL_SIZE = {"1:1"}
REDUCTION = {"1:2", "1:5", "1:10", "1:20", "1:50", "1:100", "1:200", "1:500", "1:1000", "1:2000", "1:5000", "1:10000"}


def test_the_recommended_scales_and_no_others():
    assert {scale_text(paper / true) for paper, true in SCALES} == ENLARGEMENT | FULL_SIZE | REDUCTION
    assert len(SCALES) == 18
