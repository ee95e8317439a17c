import io
import sys

import pytest

from blockgen.console import printer
from blockgen.console.page import Line
from blockgen.console.progress import progress
from blockgen.errors import MachineError


class Terminal(io.StringIO):
    def isatty(self):
        return True


class Broken(io.StringIO):
    """A stream whose other end fails."""

    def __init__(self, error, descriptor):
        super().__init__()
        self.error, self.descriptor = error, descriptor

    def write(self, text):
        raise self.error

    def fileno(self):
        return self.descriptor


def test_a_terminal_gets_rich_and_a_pipe_plain_text(monkeypatch):
    texts = []
    for stream in (Terminal(), io.StringIO()):
        monkeypatch.setattr(sys, "stdout", stream)
        monkeypatch.setenv("TERM", "xterm")
        monkeypatch.setenv("FORCE_COLOR", "1")
        printer.show([Line("Status: x", "fail")])
        texts.append(stream.getvalue())
    assert texts[0].startswith("\x1b[1;31mStatus: x")
    assert texts[1] == "Status: x\n"


def test_a_dumb_terminal_gets_plain_text(monkeypatch):
    screen = Terminal()
    monkeypatch.setattr(sys, "stdout", screen)
    monkeypatch.setenv("TERM", "dumb")
    printer.show([Line("Status: x", "fail")])
    assert screen.getvalue() == "Status: x\n"


def test_a_reader_that_left_is_no_fault_and_a_full_disk_is(monkeypatch, tmp_path):
    with (tmp_path / "out").open("w") as file:
        monkeypatch.setattr(sys, "stdout", Broken(BrokenPipeError(32, "Broken pipe"), file.fileno()))
        printer.say("x")
        monkeypatch.setattr(sys, "stdout", Broken(OSError(28, "No space left on device"), file.fileno()))
        with pytest.raises(MachineError, match="standard output cannot be written: No space left on device"):
            printer.say("x")


def test_a_complaint_that_cannot_be_told_is_dropped(monkeypatch):
    broken = Broken(OSError(28, "No space left on device"), 2)
    monkeypatch.setattr(sys, "stderr", broken)
    printer.complain("x")
    assert broken.getvalue() == ""


@pytest.mark.parametrize(("stream", "quiet"), [(io.StringIO(), False), (Terminal(), True)])
def test_progress_is_silent_in_a_pipe_and_when_asked(monkeypatch, stream, quiet):
    monkeypatch.setattr(sys, "stderr", stream)
    with progress(quiet=quiet) as told:
        told("modelling")
    assert stream.getvalue() == ""


def test_progress_leaves_nothing_on_a_terminal(monkeypatch):
    screen = Terminal()
    monkeypatch.setattr(sys, "stderr", screen)
    with progress(quiet=False) as told:
        told("modelling \x1b[2J")
    assert screen.getvalue() == "\r\x1b[2Kmodelling ...\r\x1b[2K"
