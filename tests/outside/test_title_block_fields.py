"""The title block against a public account of ISO 7200:2004.

Wikipedia, "ISO 7200", de.wikipedia.org/wiki/ISO_7200, list of differences to DIN 6771-1. Reached as an excerpt of a
stored mirror.
"""

import pytest

from blockgen.outputs.drawing.strokes import Line, Text
from blockgen.outputs.drawing.title_block import Titles, title_block

MANDATORY = {
    "legal owner": ("Owner, project", "Glazing line"),
    "identification number": ("Identification number", "GL-040-11"),
    "date of issue": ("Date of issue", "2026-01-31"),
    "sheet number": ("Sheet", "2/3"),
    "title": ("Title", "Mounting block"),
    "approved by": ("Approved by", ""),
    "creator": ("Created by", "M. Weber"),
    "kind of document": ("Document type", "Manufacturing drawing"),
}
"""The eight fields that must be there, our captions for them, and what stands in the sample."""

SAMPLE = Titles(
    owner="Glazing line", number="GL-040-11", revision="A", title="Mounting block", kind="Manufacturing drawing",
    status="released for review", creator="M. Weber", date="2026-01-31", language="en", sheet=2, sheets=3, size="A2",
    scale="1:2", projection="first", tolerances="ISO 2768-m", mass="1.2 kg", material="EN AW-6082-T6",
)  # fmt: skip


def written():
    return [stroke.words for stroke in title_block((200.0, 10.0), SAMPLE)[0].strokes if isinstance(stroke, Text)]


@pytest.mark.parametrize(("caption", "value"), MANDATORY.values(), ids=MANDATORY)
def test_fields_that_must_be_there(caption, value):
    assert caption in written()
    assert not value or value in written()


def test_it_is_180_mm_wide_in_the_corner():
    item, height = title_block((200.0, 10.0), SAMPLE)
    ends = [
        end
        for line in item.strokes
        if isinstance(line, Line) and line.pen != "centre"
        for end in (line.start, line.end)
    ]
    assert (min(x for x, _ in ends), max(x for x, _ in ends)) == (20.0, 200.0)
    assert max(y for _, y in ends) == pytest.approx(10.0 + height)
