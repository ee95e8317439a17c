"""A watch in a thread, and what it tells; conditions are waited for, never times."""

import queue
import threading
from contextlib import contextmanager

from blockgen.watching.ending import Ending
from blockgen.watching.events import Ended
from blockgen.watching.watch import Asked, watch

PATIENCE = 120
"""Seconds after which a test gives up; a machine that is busy may take many."""


class Told:
    """The events of a watch in their order."""

    def __init__(self):
        self.events = queue.Queue()
        self.ending = Ending()

    def next(self, kind):
        """Return the next event, which must be of this kind."""
        event = self.events.get(timeout=PATIENCE)
        assert isinstance(event, kind), event
        return event

    def nothing_but_the_end(self, *, at_once=False):
        """End the watch, insist that nothing else is told, and return how it ended."""
        if at_once:
            self.ending.waiting.set()
        self.ending.watching.set()
        return self.next(Ended)


@contextmanager
def watched(spec, out, only=(), shown=False):
    """Yield what a watch of a spec tells."""
    told = Told()
    asked = Asked(spec, out, only, shown)
    thread = threading.Thread(target=watch, args=(asked, told.events.put, told.ending), daemon=True)
    thread.start()
    try:
        yield told
    finally:
        told.ending.watching.set()
        told.ending.waiting.set()
        thread.join(PATIENCE)
        assert not thread.is_alive()
