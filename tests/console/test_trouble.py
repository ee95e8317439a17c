import json

from blockgen.console.trouble import as_document, as_text, unforeseen, usage
from blockgen.errors import Conflict, Cure, InfeasibleError, InputError, MachineError, Problem

TITLE = "the shaft does not reach the coupling: 1.53 mm missing"
LONGER = "longer motor shaft: from 22 to 23.6 mm"
THINNER = "thinner wall: from 15 to 13 mm"
INFEASIBLE = InfeasibleError(
    [Conflict(TITLE, 1.53, ("shaft 22 mm", "grip 14 mm"), ("motor.shaft_length",))],
    [
        Cure("motor.shaft_length", "longer motor shaft", 22.0, 23.6, "mm", LONGER, 4, verified=True),
        Cure("block.motor_wall", "thinner wall", 15.0, 13.0, "mm", THINNER, 1, verified=False),
    ],
)
WRONG = InputError([Problem("a.toml", 3, "motor.x", "\x1b[2J40 N", "a length", "write 40 mm")])


def test_a_conflict_is_told_with_cures_the_least_trouble_first():
    assert as_text(INFEASIBLE).splitlines() == [
        "No block can exist for these facts; nothing was written.",
        "",
        "the shaft does not reach the coupling: 1.53 mm missing",
        "- shaft 22 mm",
        "- grip 14 mm",
        "",
        "What would cure it, the least trouble first:",
        "1. thinner wall: from 15 to 13 mm (not enough by itself)",
        "2. longer motor shaft: from 22 to 23.6 mm (sized again: a block exists)",
    ]


def test_long_texts_wrap_under_their_beginning():
    error = InputError([Problem("a.toml", None, "motor.x", "a word " * 12, "a length")])
    assert as_text(error, 40).splitlines()[1:4] == [
        "a.toml: motor.x",
        "  found:    a word a word a word a word",
        "            a word a word a word a word",
    ]


def test_a_conflict_is_a_document():
    document = json.loads(json.dumps(as_document(INFEASIBLE)))
    assert (document["schema"], document["status"]) == (1, "infeasible")
    assert document["conflicts"][0]["keys"] == ["motor.shaft_length"]
    assert document["cures"][0]["after"] == 23.6


def test_wrong_input_is_told_without_its_control_sequences():
    assert as_text(WRONG).splitlines() == [
        "The input is wrong:",
        "a.toml:3: motor.x",
        "  found:    40 N",
        "  expected: a length",
        "  to do:    write 40 mm",
    ]


def test_wrong_input_is_a_document():
    document = as_document(WRONG)
    assert document["status"] == "wrong_input"
    assert set(document["problems"][0]) == {"file", "line", "key", "found", "expected", "remedy"}


def test_other_errors():
    assert as_text(MachineError("out: no room")) == "blockgen could not finish: out: no room"
    assert as_document(MachineError("out: no room")) == {"schema": 1, "status": "failed", "message": "out: no room"}
    assert "blockgen check --help" in as_text(usage("Missing argument", "blockgen check"))


def test_the_unforeseen_is_one_line_to_report():
    try:
        _ = 1 / 0
    except ZeroDivisionError as error:
        text = as_text(unforeseen(error))
    assert "ZeroDivisionError: division by zero at test_trouble.py:" in text
    assert "Please report it" in text
    assert "\n" not in text
