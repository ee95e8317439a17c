"""Files that are no spec: each gives a clear error."""

import pytest

from blockgen.errors import InputError
from blockgen.spec.load import load_spec, parse_spec


def refused(tmp_path, content, match):
    file = tmp_path / "bad.toml"
    file.write_bytes(content)
    with pytest.raises(InputError, match=match) as caught:
        load_spec(file)
    assert caught.value.exit_code == 2
    return caught.value.problems


def test_no_file_and_a_folder(tmp_path):
    with pytest.raises(InputError, match="no such file"):
        load_spec(tmp_path / "none.toml")
    with pytest.raises(InputError, match="a folder"):
        load_spec(tmp_path)
    with pytest.raises(InputError, match=r"no such file|cannot be read"):
        load_spec("a\0b")
    with pytest.raises(InputError, match=r"no such file|cannot be read"):
        load_spec("x" * 5000)


def test_bytes_that_are_not_utf_8(tmp_path):
    (problem,) = refused(tmp_path, b"[job]\nnumber = '\xff'\n", "bytes that are not UTF-8")
    assert problem.line == 2


def test_a_byte_order_mark_is_no_harm(tmp_path, text_with):
    file = tmp_path / "bom.toml"
    file.write_bytes(b"\xef\xbb\xbf" + text_with().encode())
    assert load_spec(file).records["job.number"].value == "T-1"


def test_a_file_that_is_far_too_large(tmp_path):
    file = tmp_path / "big.toml"
    with file.open("wb") as stream:
        stream.truncate(50_000_000)
    with pytest.raises(InputError, match="at most 1000000 bytes"):
        load_spec(file)


@pytest.mark.parametrize(
    "content",
    [
        b"a = " + b"[" * 900 + b"]" * 900,
        b"a = " + b"[\n" * 5000 + b"]\n" * 5000,
        b"a = " + b"{ a = " * 900 + b"1" + b"}" * 900,
        b".".join([b"a"] * 200_000) + b" = 1",
        b"[" + b".".join([b"a"] * 5000) + b"]",
        b"a = [" + b"{}, " * 200_000 + b"]",
        b"a = [" + b"{},\n" * 200_000 + b"]",
        b"".join(b"a%d = 1\n" % i for i in range(80_000)),
        b"".join(b"a%d" % i + b".b" * 390 + b" = 1\n" for i in range(1200)),
    ],
)
def test_depth_and_breadth_have_an_end(tmp_path, content):
    refused(tmp_path, content, r"nested too deeply|a line that is too long|more than 3000")


@pytest.mark.parametrize(
    ("content", "line", "match"),
    [
        (b"[job]\nnumber = 1\nnumber = 2\n", 3, "given before"),
        (b"[job]\n[job]\n", 2, "given before"),
        (b"[job]\nnumber = GL-1\n", 2, "text and quantities stand in quotes"),
        (b"[job]\nnumber = '", 2, "expected: TOML"),
        (b"[job]\nnumber = 4 mm\n", 2, "expected: TOML"),
    ],
)
def test_what_is_not_toml_names_the_line(tmp_path, content, line, match):
    (problem,) = refused(tmp_path, content, match)
    assert problem.line == line


def test_a_number_of_five_thousand_digits(tmp_path):
    refused(tmp_path, b"[job]\nnumber = " + b"9" * 5000, "expected")


@pytest.mark.parametrize("number", ["nan", "inf", "-inf", "1e308", '"1e308 mm"', '"nan mm"', "1" + "0" * 400])
def test_numbers_that_are_no_lengths(text_with, number):
    text = text_with().replace('shaft_height = "65 mm"', f"shaft_height = {number}")
    with pytest.raises(InputError, match=r"base\.shaft_height") as caught:
        parse_spec(text)
    assert "a length" in caught.value.problems[0].expected


NAMES = ["../../x", "a/b", "a\\b", "..", ".", ".hidden", "end.", "CON", "nul.txt", "a\nb", "a\0b", "", " ", "x" * 65]


@pytest.mark.parametrize("name", [*NAMES, "a:b", "a*b", "é\u202eb", "-x", "a..b", "COM1", "a\u2028b"])
def test_a_path_is_no_job_number(problems_with, name):
    (problem,) = problems_with(job={"number": name})
    assert problem.key == "job.number"
    assert "a job number of 1 to 64 letters" in problem.expected


@pytest.mark.parametrize("name", NAMES)
def test_a_path_is_no_preset(problems_with, name):
    assert "motor.preset" in {p.key for p in problems_with(motor={"preset": name})}


def test_messages_show_no_control_characters(problems_with):
    (problem,) = problems_with(job={"title": "\x1b[31mred\x07"})
    assert "\x1b" not in str(problem)
