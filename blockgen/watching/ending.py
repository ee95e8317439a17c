"""The end of a watch: the interrupt key, or a request to end."""

from __future__ import annotations

import signal
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Ending:
    """What the user has had enough of.

    Args:
        watching: Set once the watch shall end; a set that is being written stops at its next step.
        waiting: Set once it shall end at once, without the rest of the set.
    """

    watching: threading.Event = field(default_factory=threading.Event)
    waiting: threading.Event = field(default_factory=threading.Event)


@contextmanager
def ended_by_key() -> Iterator[Ending]:
    """Yield the ending that the interrupt key brings; pressed again it ends at once, as a request to end does.

    The kernel turns an interrupt inside it into errors of its own, so the key only leaves a note, which is read
    between two steps. Pressed a third time it interrupts as ever.
    """
    ending = Ending()
    before = {number: signal.getsignal(number) for number in (signal.SIGINT, signal.SIGTERM)}

    def note(number: int, _: object) -> None:
        if ending.watching.is_set() or number == signal.SIGTERM:
            ending.waiting.set()
            signal.signal(signal.SIGINT, signal.default_int_handler)
        ending.watching.set()

    try:
        for number in before:
            signal.signal(number, note)
        yield ending
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)
