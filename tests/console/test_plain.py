import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.console.page import Branch, Line, Row, Table, bullet, title
from blockgen.console.plain import column_widths, lines

WORDS = st.lists(st.text("abcdefghij", min_size=1, max_size=30), min_size=0, max_size=12).map(" ".join)
LONG = "the quick brown fox jumps over the lazy dog and then some more of the same"


def printed(*parts, width=80):
    return list(lines(parts, width))


def test_a_table_is_aligned():
    table = Table(
        ("Key", "Value"), (Row(("length", "140 mm")), Row(("width", "9 mm"))), right=("Value",), title="Sizes"
    )
    assert printed(table) == ["", "Sizes", "Key      Value", "------  ------", "length  140 mm", "width     9 mm"]


@given(st.lists(st.tuples(WORDS, WORDS, WORDS), min_size=1, max_size=4), st.sampled_from([40, 80, 120]))
def test_a_table_fits_and_loses_nothing(rows, width):
    table = Table(("A", "B", "C"), tuple(Row(cells) for cells in rows))
    text = printed(table, width=width)
    assert max(map(len, text)) <= width
    assert sorted("".join("".join(text[2:]).split())) == sorted("".join("".join("".join(r).split()) for r in rows))


def test_the_widest_column_gives_way():
    assert column_widths([("ab", "x" * 60, "y" * 30)], 60) == [2, 27, 27]
    assert column_widths([("ab", "cd")], 60) == [2, 2]


@pytest.mark.parametrize("width", [40, 80, 120])
def test_lines_wrap_and_hang(width):
    text = printed(bullet(LONG * 3), width=width)
    assert max(map(len, text)) <= width
    assert text[0].startswith("- the quick")
    assert all(line.startswith("  ") for line in text[1:])
    assert " ".join(line.strip() for line in text) == f"- {LONG * 3}"


def test_what_a_spec_holds_cannot_steer_a_terminal():
    hostile = "a\x1b[2Jb\x07\u202e"
    parts = (Line(hostile), Table((hostile,), (Row((hostile,)),)), Branch(hostile, (hostile,)))
    assert set("".join(printed(*parts))) <= set("ab- ")


def test_a_tree_has_guides():
    tree = Branch("top", ("rule: a",), (Branch("one", ("x",), (Branch("deep"),)), Branch("two", ("y",))))
    assert printed(tree) == [
        "top",
        "|  rule: a",
        "|- one",
        "|  |  x",
        "|  `- deep",
        "`- two",
        "      y",
    ]


def test_a_title_has_a_blank_line_before_it():
    assert printed(*title("Checks")) == ["", "Checks"]
