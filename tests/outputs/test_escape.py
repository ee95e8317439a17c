import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.escape import markdown, markdown_start, one_line, toml_key, toml_string


@given(st.text(st.characters(blacklist_categories=["Cs"])))
def test_any_text_comes_back_from_toml(text):
    assert tomllib.loads(f"a = {toml_string(text)}")["a"] == text


@given(st.text(st.characters(blacklist_categories=["Cs"]), min_size=1))
def test_any_key_comes_back_from_toml(text):
    assert tomllib.loads(f"{toml_key(text)} = 1") == {text: 1}


@given(st.text())
def test_one_line_holds_nothing_that_steers_a_terminal(text):
    assert all(c.isprintable() for c in one_line(text))


def test_whole_control_sequences_go():
    assert one_line("a\x1b[31;1mred\x1b[0m \x1b]0;title\x07b\r\nc\u202e") == "ared b c"


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("a|b", "a\\|b"),
        ("<script>&amp;", "&lt;script>\\&amp;"),
        ("`x` *y* [z](u)", "\\`x\\` \\*y\\* \\[z](u)"),
        ("_a_ motor_bore", "\\_a\\_ motor_bore"),
        ("c0 >= n + clr", "c0 >= n + clr"),
        ("a\nb\\", "a b\\\\"),
    ],
)
def test_markdown_shows_text_as_it_stands(text, expected):
    assert markdown(text) == expected


@pytest.mark.parametrize(
    ("text", "expected"), [("# head", "\\# head"), ("- item", "\\- item"), ("12. item", "12\\. item"), ("> q", "\\> q")]
)
def test_text_at_the_start_of_a_line_is_no_block(text, expected):
    assert markdown_start(text) == expected
    assert markdown(text) == text
