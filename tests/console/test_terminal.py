import io
import re

import pytest

from blockgen.console import terminal
from blockgen.console.page import Branch, Line, Row, Table

LONG = "a long explanation of many words that goes on until it has to wrap at any usual width of a terminal window"
PAGE = (
    Line("Status: NOT FOR MANUFACTURE", "fail"),
    Table(("Verdict", "Check"), (Row(("FAIL", f"[bold]{LONG}[/bold] \x1b[2J"), "fail"), Row(("pass", "ok"), "pass"))),
    Branch("length = 140 mm", (LONG,), (Branch("leaf"),)),
)


def shown(monkeypatch, width, **environment):
    from rich.console import Console

    for name in ("NO_COLOR", "FORCE_COLOR", "COLORTERM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("TERM", "xterm-256color")
    for name, value in environment.items():
        monkeypatch.setenv(name, value)
    screen = io.StringIO()
    monkeypatch.setattr(
        "rich.console.Console",
        lambda **options: Console(file=screen, force_terminal=True, width=width, **options),
    )
    terminal.show(PAGE)
    return screen.getvalue()


def plain(text):
    return re.sub(r"\x1b\[[0-9;]*m", "", text)


@pytest.mark.parametrize("width", [80, 120])
def test_nothing_is_lost_and_nothing_is_wider(monkeypatch, width):
    text = plain(shown(monkeypatch, width))
    assert max(map(len, text.splitlines())) <= width
    words = " ".join(re.sub(r"[|`]", " ", text).split())
    assert words.count("usual width of a terminal window") == 2


def test_marks_are_coloured_and_text_is_not_markup(monkeypatch):
    text = shown(monkeypatch, 200)
    assert "\x1b[1;31mFAIL" in text
    assert "[bold]a long" in plain(text)
    assert "\x1b[2J" not in text


def test_no_color_is_honoured(monkeypatch):
    text = shown(monkeypatch, 200, NO_COLOR="1")
    assert not re.search(r"\x1b\[[0-9;]*3[0-7]", text)
