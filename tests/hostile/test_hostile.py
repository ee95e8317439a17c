"""A seeded part of the hostile inputs; ``python -m tests.hostile.run`` tries as many as one likes."""

from pathlib import Path

import pytest

from blockgen.errors import InputError
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec
from blockgen.units import UnitProblem, quantity
from tests.hostile.mutate import sheets, specs
from tests.hostile.run import GOOD, MEASURED, STARTS, faults_of, tried


def test_the_same_seed_gives_the_same_bytes():
    assert list(specs(2, 30, STARTS)) == list(specs(2, 30, STARTS))
    assert list(sheets(2, 30, MEASURED)) != list(sheets(3, 30, MEASURED))


def test_a_fault_is_seen(tmp_path, monkeypatch):
    from tests.hostile import run

    monkeypatch.setattr(run, "command", lambda arguments: 3)
    assert faults_of(["check", "x.toml"], tmp_path / "x.toml")[1]


@pytest.mark.slow
def test_hostile_inputs_are_refused_in_words_and_nothing_is_written(tmp_path):
    codes, faults = tried(tmp_path, seed=7, count=150)
    assert faults == {}
    assert codes["spec 2"] > 100
    assert codes["sheet 2"] > 75


def test_a_unit_that_reads_as_a_number_is_no_unit():
    with pytest.raises(UnitProblem, match="nan"):
        quantity("16 nan", "mm")


def test_a_size_beyond_the_tables_is_wrong_input_with_its_key(tmp_path):
    spec = tmp_path / "long.toml"
    text = Path(GOOD).read_text(encoding="utf-8").replace('journal_reach = "46 mm"', 'journal_reach = "46000 mm"')
    spec.write_text(text, encoding="utf-8")
    with pytest.raises(InputError, match="46000 mm") as caught:
        size(load_spec(spec))
    (problem,) = caught.value.problems
    assert (problem.key, problem.line) == ("screw.journal_reach", 22)
