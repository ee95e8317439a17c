"""Without the library: one sentence with the command, exit code 3, and nothing modelled before."""

from __future__ import annotations

import sys

import pytest

from blockgen.cli import run
from blockgen.errors import MachineError
from blockgen.evidence.stiffness.library import library
from tests.examples import STEPPER


@pytest.fixture
def without(monkeypatch):
    monkeypatch.setitem(sys.modules, "ngsolve", None)


@pytest.mark.usefixtures("without")
def test_names_the_command():
    with pytest.raises(MachineError, match=r'pip install "\.\[fea\]"'):
        library()


@pytest.mark.usefixtures("without")
@pytest.mark.parametrize("option", ["--stiffness", "--advise"])
def test_command_ends_with_3(option, capsys):
    assert run(["check", str(STEPPER), option]) == 3
    told = capsys.readouterr()
    assert "netgen-mesher" in told.err
    assert "Traceback" not in told.err
    assert not told.out
