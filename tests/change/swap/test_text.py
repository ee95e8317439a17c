import tomllib

import pytest

from blockgen.change.swap.text import Edit, Lock, insist_on, with_locks, with_presets, with_revision
from blockgen.errors import InputError
from blockgen.spec.read import parse_document

LOCK = Lock("base", "screw", '"M8"', "Locked: because.")


def edit(text):
    return Edit.of(parse_document(text, "old.toml"))


def test_an_edit_that_changes_nothing_gives_the_text_back():
    text = "# head\n\n[motor] # one\na = 1\n\n\n# tail\n"
    assert edit(text).text() == text


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ('[motor]\npreset = "a"\n[base]\n', '[motor]\npreset = "n"\n# Taken out'),
        ('motor.preset = "a"\n[base]\n', '# motor.preset = "a"\n[base]\n\n[motor]\npreset = "n"\n'),
        ('motor = { preset = "a" }\n[base]\n', '# motor = { preset = "a" }\n[base]\n\n[motor]\npreset = "n"\n'),
        ("[base]\n", '[base]\n\n[motor]\npreset = "n"\n'),
    ],
)
def test_a_preset_takes_the_place_of_a_part_however_it_is_written(text, expected):
    made = edit(text)
    with_presets(made, {"motor": "n"})
    assert expected in made.text()
    assert tomllib.loads(made.text())["motor"] == {"preset": "n"}
    insist_on(made.text(), made, {"motor": "n"}, ())


def test_a_value_of_several_lines_is_taken_out_whole():
    made = edit(
        "[motor]\nbolt_positions = [\n  [1, 2], # first\n  # second\n  [3, 4],\n]\n\n# about the base\n[base]\n"
    )
    with_presets(made, {"motor": "n"})
    told = made.text().splitlines()
    assert told[3:8] == ["# bolt_positions = [", "#   [1, 2], # first", "#   # second", "#   [3, 4],", "# ]"]
    assert told[8:] == ["", "# about the base", "[base]"]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("[base]\na = 1 # x\n\n# about\n[block]\n", 'a = 1 # x\n# Locked: because.\nscrew = "M8"\n\n# about\n[block]'),
        ("[base]\n[block]\n", '[base]\n# Locked: because.\nscrew = "M8"\n[block]\n'),
        ("base.a = 1\n[block]\n", 'base.a = 1\n# Locked: because.\nbase.screw = "M8"\n[block]\n'),
        ("[block]\n", '[block]\n\n[base]\n# Locked: because.\nscrew = "M8"\n'),
    ],
)  # fmt: skip
def test_a_lock_stands_behind_the_keys_of_its_table(text, expected):
    made = edit(text)
    with_locks(made, [LOCK])
    assert expected in made.text()
    insist_on(made.text(), made, {}, [LOCK])


def test_two_locks_of_a_new_table_share_its_header():
    made = edit("a = 1\n")
    with_locks(made, [LOCK, Lock("base", "b", "2", "Why.")])
    assert tomllib.loads(made.text())["base"] == {"screw": "M8", "b": 2}


def test_a_table_in_one_line_cannot_be_added_to():
    made = edit("base = { a = 1 }\n")
    with pytest.raises(InputError, match=r"\[base\] with a line for each key"):
        with_locks(made, [LOCK])


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ('[job]\nrevision = "A"\n', 'revision = "B"  # was "A": why\n'),
        ("[job]\nrevision = 'A' # first\n", 'revision = "B"  # was "A": why; first\n'),
        ('[job]\nnumber = "1"\n', 'number = "1"\nrevision = "B"  # was "A": why\n'),
        ('job.revision = "A"\n', 'job.revision = "B"  # was "A": why\n'),
    ],
)
def test_the_revision_tells_of_the_old_one(text, expected):
    made = edit(text)
    with_revision(made, "A", "B", "why")
    assert expected in made.text()


def test_line_ends_stay_as_they_are():
    made = edit('[motor]\r\npreset = "a"\r\n')
    with_presets(made, {"motor": "n"})
    assert made.text().count("\n") == made.text().count("\r\n") == 4


def test_a_text_that_says_something_else_is_refused():
    made = edit('[motor]\npreset = "a"\n')
    with pytest.raises(InputError, match="cannot be edited line by line"):
        insist_on('[motor]\npreset = "b"\n', made, {"motor": "n"}, ())
