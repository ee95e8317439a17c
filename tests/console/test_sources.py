from blockgen.console.plain import lines
from blockgen.console.sources import numbered


def test_a_source_is_told_once():
    numbers, notes = numbered(["ISO 273", "common practice", "ISO 273"])
    assert numbers == ["1", "2", "1"]
    assert list(lines(notes, 80)) == ["", "Sources", " 1 ISO 273", " 2 common practice"]


def test_long_sources_hang():
    _, notes = numbered(["word " * 20])
    assert all(line.startswith("   ") for line in list(lines(notes, 40))[3:])
