"""What the served page shows now, shared by the watch that writes it and the browsers that wait for news."""

from __future__ import annotations

import threading
from dataclasses import dataclass, field, replace
from pathlib import Path


@dataclass(frozen=True, slots=True)
class Shown:
    """What is shown.

    Args:
        version: Counts up with everything that is put on the board.
        page: Counts up with each new page.
        html: The page without anything of the server's.
        folder: Folder of the set; None where there is none yet.
        words: What is said above the page.
        wrong: True where the words tell of an error and the page is from the last good save.
    """

    version: int = 0
    page: int = 0
    html: str = ""
    folder: Path | None = None
    words: str = ""
    wrong: bool = False


@dataclass(slots=True)
class Board:
    """Holds what is shown, and wakes whoever waits for a change."""

    shown: Shown = field(default_factory=Shown)
    closed: bool = False
    changed: threading.Condition = field(default_factory=threading.Condition)

    def say(self, words: str, *, wrong: bool = False) -> None:
        """Change the words above the page."""
        self._put(replace(self.shown, words=words, wrong=wrong))

    def turn(self, html: str, folder: Path, words: str) -> None:
        """Put up another page."""
        self._put(replace(self.shown, page=self.shown.page + 1, html=html, folder=folder, words=words, wrong=False))

    def newer(self, version: int, timeout: float) -> Shown | None:
        """Wait for something newer than a version; None where nothing came in ``timeout`` seconds, or at the end."""
        with self.changed:
            self.changed.wait_for(lambda: self.closed or self.shown.version != version, timeout)
            return None if self.closed or self.shown.version == version else self.shown

    def close(self) -> None:
        """Wake all who wait, for the last time."""
        with self.changed:
            self.closed = True
            self.changed.notify_all()

    def _put(self, shown: Shown) -> None:
        with self.changed:
            self.shown = replace(shown, version=self.shown.version + 1)
            self.changed.notify_all()
