"""The report of the demo, without the CAD kernel: the drawing is a stand-in."""

from __future__ import annotations

from pathlib import Path

import pytest

from blockgen import pipeline
from blockgen.evidence.characteristics import inspection_rows
from blockgen.outputs.names import CHOOSABLE
from blockgen.outputs.report.contents import Contents
from blockgen.outputs.report.page import page
from tests.examples import SERVO
from tests.outputs.report.reading import Page

DRAWING = '<svg xmlns="http://www.w3.org/2000/svg" width="594mm" height="420mm" viewBox="0 0 594 420">\n</svg>\n'


def contents_of(spec):
    """Return what the report of a spec is made from, without solids."""
    made = pipeline.design(spec)
    words = pipeline._words(made, None, Path("out"), CHOOSABLE)
    return Contents(words.document, DRAWING, words.spec, words.files, inspection_rows(made.plan))


@pytest.fixture(scope="session")
def contents():
    return contents_of(SERVO)


@pytest.fixture(scope="session")
def text(contents):
    return page(contents)


@pytest.fixture(scope="session")
def shown(text):
    return Page(text)
