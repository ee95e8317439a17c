"""Cures of whole specs: each is written into the text of the spec, loaded again and sized again."""

import math

import pytest

from blockgen.errors import Cure, InfeasibleError
from blockgen.sizing.proving import proved
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec, parse_spec
from tests.sizing.strategies import COMPLETE, REQUIRED, changed, toml

IMPOSSIBLE = {
    "short motor shaft": {"motor": {"shaft_length": 24}},
    "short journal": {"screw": {"journal_reach": 36}},
    "no room": {"base": {"length_available": 90}},
    "fixed length": {"block": {"length": 120}},
    "thick bearing wall": {"block": {"bearing_wall": 34}},
    "thick motor wall": {"block": {"motor_wall": 38}},
    "short window": {"block": {"window_length": 50}},
    "long nut": {"bearing": {"nut_reach": 34}},
    "tapped motor": {
        "motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped", "shaft_length": 20},
    },
    "both ends": {"motor": {"shaft_length": 22}, "screw": {"journal_reach": 34}},
    "across": {"block": {"window_axis": "y"}, "motor": {"shaft_length": 24}},
}


def conflict(tables, folder):
    """Return what sizing says of a spec file, or None where a block exists."""
    file = folder / "axis.toml"
    file.write_text("schema = 1\n" + toml(tables), encoding="utf-8")
    try:
        size(load_spec(file))
    except InfeasibleError as error:
        return error
    return None


def with_cure(tables, cure):
    """Return the tables with the changes of a cure."""
    for key, value in cure.changes:
        table, _, name = key.partition(".")
        tables = changed(tables, **{table: {name: value}})
    return tables


@pytest.mark.parametrize("name", IMPOSSIBLE)
def test_every_cure_gives_a_block_when_its_file_is_loaded_again(name, tmp_path):
    tables = changed(COMPLETE, **IMPOSSIBLE[name])
    error = conflict(tables, tmp_path)
    assert error is not None, "the spec was meant to be impossible"
    assert any(cure.changes for cure in error.cures)
    for cure in error.cures:
        assert bool(cure.changes) == cure.verified, cure.text
        if cure.changes:
            assert conflict(with_cure(tables, cure), tmp_path) is None, cure.text


def test_the_required_keys_alone_are_cured_too(tmp_path):
    tables = changed(REQUIRED, motor={"shaft_length": 18})
    error = conflict(tables, tmp_path)
    tried = [cure for cure in error.cures if cure.changes]
    assert tried
    for cure in tried:
        assert conflict(with_cure(tables, cure), tmp_path) is None, cure.text


@pytest.mark.parametrize("name", ["short motor shaft", "short journal", "thick bearing wall", "no room"])
def test_the_value_in_a_cure_s_words_is_the_value_that_it_changes_to(name, tmp_path):
    for cure in conflict(changed(COMPLETE, **IMPOSSIBLE[name]), tmp_path).cures:
        if len(cure.changes) == 1:
            assert f"-> {cure.changes[0][1]:g} mm" in cure.text
            assert cure.changes == ((cure.key, cure.after),)
            assert math.isfinite(cure.after)


def test_a_cure_that_contradicts_the_spec_is_left_out():
    spec = parse_spec(toml(changed(COMPLETE, **IMPOSSIBLE["short motor shaft"])))
    false = Cure(
        "coupling.length", "shorter coupling", 60.0, 20.0, "mm", "shorter", 4, True, (("coupling.length", 20.0),)
    )
    right = Cure("motor.shaft_length", "longer", 24.0, 40.0, "mm", "longer", 5, True, (("motor.shaft_length", 40.0),))
    left = proved(InfeasibleError((), (false, right)), spec.records)
    assert [cure.key for cure in left.cures] == ["motor.shaft_length"]


def test_a_cure_that_does_not_reach_is_walked_on_until_it_does():
    spec = parse_spec(toml(changed(COMPLETE, **IMPOSSIBLE["short motor shaft"])))
    little = Cure("motor.shaft_length", "longer", 24.0, 24.5, "mm", "longer", 5, True, (("motor.shaft_length", 24.5),))
    (walked,) = proved(InfeasibleError((), (little,)), spec.records).cures
    assert walked.after > 24.5
    text = toml(changed(COMPLETE, motor={"shaft_length": walked.after}))
    assert size(parse_spec(text)).number("length") > 0


def test_what_changes_nothing_is_passed_on_unproved():
    hole = Cure("", "radial access hole", None, None, "mm", "a hole of your own", 8, verified=False)
    assert proved(InfeasibleError((), (hole,)), {}).cures == (hole,)
