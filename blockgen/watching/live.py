"""Puts what a watch tells on the board."""

from __future__ import annotations

from blockgen.watching.board import Board
from blockgen.watching.events import Built, Event, Unfinished, Wrong
from blockgen.watching.live_page import html_of

_OLD = "; the page below still shows the build before"


def put_up(board: Board, event: Event, words: str) -> None:
    """Put an event on the board.

    Args:
        board: What is shown.
        event: What has happened.
        words: The same in words; they stand above the page.
    """
    if isinstance(event, Built):
        head, _, others = words.partition("\n")
        if "report" in event.later and board.shown.page:
            board.say(f"{head}{_OLD}\n{others}")
        else:
            before = "" if event.follows is None else "\n\n" + board.shown.words.replace(_OLD, "", 1)
            board.turn(html_of(event.made), event.made.folder, words + before)
    elif isinstance(event, (Wrong, Unfinished)):
        board.say(words, wrong=True)
