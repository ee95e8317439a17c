"""What goes on the board with each event."""

from pathlib import Path

import pytest

from blockgen.pipeline import BuildResult, design
from blockgen.spec.load import load_spec
from blockgen.watching.board import Board
from blockgen.watching.events import Built, Ended, Finishing, Unfinished, Wrong
from blockgen.watching.live import put_up
from tests.examples import SERVO


@pytest.fixture
def quick():
    made = design(load_spec(SERVO))
    return BuildResult(Path("out"), {"summary.md": "summary"}, made.plan, made.findings, made.status)


@pytest.fixture
def whole(quick, tmp_path):
    (tmp_path / "r.html").write_text("<body>the report", encoding="utf-8")
    return BuildResult(tmp_path, {"r.html": "report"}, quick.plan, quick.findings, quick.status)


def test_until_the_first_report_is_there_the_plain_page_is_shown(quick, whole):
    board = Board()
    put_up(board, Built(quick, None, 0.4, ("stl",), later=("report",)), "built\nstatus")
    assert board.shown.page == 1
    assert "Key sizes" in board.shown.html
    put_up(board, Built(whole, None, 4.0, ("report",), follows=quick), "whole\nstatus")
    assert board.shown.html == "<body>the report"
    assert board.shown.folder == whole.folder
    assert board.shown.words == "whole\nstatus\n\nbuilt\nstatus"


def test_the_report_before_stays_until_the_next_is_there_and_says_so(quick, whole):
    board = Board()
    put_up(board, Built(whole, None, 4.0, ("report",)), "whole")
    put_up(board, Built(quick, None, 0.4, ("stl",), later=("report",)), "built\nstatus")
    assert (board.shown.page, board.shown.html) == (1, "<body>the report")
    assert board.shown.words == "built; the page below still shows the build before\nstatus"
    put_up(board, Built(whole, None, 4.0, ("report",), follows=quick), "whole\nstatus")
    assert board.shown.page == 2
    assert board.shown.words == "whole\nstatus\n\nbuilt\nstatus"


def test_without_a_report_each_build_is_a_page(quick):
    board = Board()
    for page in (1, 2):
        put_up(board, Built(quick, None, 0.4, ("stl",)), "built")
        assert board.shown.page == page


@pytest.mark.parametrize("event", [Wrong(ValueError(), None), Unfinished("no room", ("drawing",))])
def test_an_error_stands_above_the_last_good_page(quick, event):
    board = Board()
    put_up(board, Built(quick, None, 0.4, ("stl",)), "built")
    before = board.shown
    put_up(board, event, "wrong")
    assert (board.shown.words, board.shown.wrong) == ("wrong", True)
    assert (board.shown.page, board.shown.html) == (before.page, before.html)
    put_up(board, Built(quick, None, 0.4, ("stl",)), "built")
    assert not board.shown.wrong


def test_the_end_is_told_by_the_browser_itself(quick):
    board = Board()
    put_up(board, Built(quick, None, 0.4, ("stl",)), "built")
    for event in (Finishing(("drawing",)), Ended(Path("out"))):
        put_up(board, event, "x")
        assert board.shown.words == "built"
