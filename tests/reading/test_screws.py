"""Clearance hole or thread: what the tables say of a diameter."""

import pytest

from blockgen.reading.screws import fastening_of


@pytest.mark.parametrize(
    ("diameter", "blind", "kind", "thread", "confidence"),
    [
        (6.6, False, "clearance", "M6", "high"),
        (9.0, False, "clearance", "M8", "high"),
        (6.8, True, "tapped", "M8", "fair"),
        (6.8, False, "tapped", "M8", "fair"),
        (6.647, True, "tapped", "M8", "fair"),
        (4.2, False, "tapped", "M5", "fair"),  # clearance hole of M3.5 too, a second choice
        (6.0, True, "tapped", "M6", "fair"),
        (6.6, True, "clearance", "M6", "low"),
        (7.7, True, "tapped", "M8", "low"),
        (55.0, True, "tapped", "", "low"),
    ],
)
def test_holes(diameter, blind, kind, thread, confidence):
    found = fastening_of(diameter, blind=blind)
    assert (found.kind, found.thread, found.confidence) == (kind, thread, confidence)
    assert found.why


def test_inch_threads_come_first_in_inch_files():
    quarter = 0.201 * 25.4
    assert fastening_of(quarter, blind=True, inch_file=True).thread == "1/4-20 UNC"
    assert fastening_of(5.0, blind=True).thread == "M6"
