"""The watch: looks at the files, builds what comes first, lets the rest follow, and tells each step.

On a save the old set is replaced by one with the quick roles only, since a drawing of the old block must not stand
beside the new block. The set with all its roles follows from a second process once the spec has been left alone for
a moment. Each of them is written whole or not at all, so the folder is never of two states.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from blockgen.errors import InfeasibleError, InputError
from blockgen.outputs import names
from blockgen.pipeline import BuildResult, build
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec
from blockgen.watching.ending import Ending
from blockgen.watching.events import Built, Ended, Event, Finishing, Unfinished, Wrong
from blockgen.watching.files import Look
from blockgen.watching.rest import Rest, Task
from blockgen.watching.roles import at_once, has_stiffness, roles_of, wanted

EVERY = 0.05
"""Seconds between two looks at the files."""

SETTLED = 0.3
"""Seconds for which a wrong spec must stand before it is told: it may be half written, or gone for a moment."""

LEFT_ALONE = 0.5
"""Seconds without a save after which the rest of the set is begun."""


@dataclass(frozen=True, slots=True)
class Asked:
    """What shall be watched.

    Args:
        spec: The spec file.
        out: Folder in which the folder of the set is made.
        only: Roles that the user named; None where nothing was named.
        shown: True where the page of the set is shown, which then is one of the roles.
    """

    spec: Path
    out: Path
    only: tuple[str, ...] | None = None
    shown: bool = False


def needs_a_spec(spec: Path) -> None:
    """Refuse a name that leads to no file: a watch waits for a wrong spec to be put right, not for a wrong name.

    Raises:
        InputError: there is no such file.
    """
    if not spec.is_file():
        load_spec(spec)


def watch(asked: Asked, tell: Callable[[Event], None], ending: Ending) -> None:
    """Build a spec again each time it is saved, until the user has had enough.

    Args:
        asked: What shall be watched.
        tell: Called with everything there is to tell.
        ending: Set by the user; the rest of a set is still made where it is owed, unless it shall end at once.
    """
    running = _Watch(asked, tell, ending, Look(asked.spec))
    try:
        while not ending.watching.is_set():
            running.look_once()
            ending.watching.wait(EVERY)
        running.finish()
    finally:
        running.rest.stop(at_its_next_step=True)
    tell(Ended(running.folder, running.owed))


class _StoppedError(Exception):
    """The user has had enough while a set is written."""


@dataclass(slots=True)
class _Watch:
    """A watch as it goes on.

    Args:
        asked: What shall be watched.
        tell: Called with everything there is to tell.
        ending: Set by the user who has had enough.
        look: The files.
        contents: What they held when they were last acted upon.
        folder: Where the last set stands.
        roles: Roles of the whole set.
        owed: Roles that it still lacks.
        due: Moment at which the rest shall be begun; None where there is none, or it has been begun.
        doubt: A wrong spec that is not told yet, and the moment at which it was found.
        first: The last build of what comes first.
        whole: The last whole set that followed; it has more checks than the first, so each is compared with its like.
    """

    asked: Asked
    tell: Callable[[Event], None]
    ending: Ending
    look: Look
    contents: Mapping[Path, str] = field(default_factory=dict)
    folder: Path | None = None
    roles: tuple[str, ...] = ()
    owed: tuple[str, ...] = ()
    due: float | None = None
    saved: float = 0.0
    doubt: tuple[Exception, float] | None = None
    first: BuildResult | None = None
    whole: BuildResult | None = None
    rest: Rest = field(default_factory=Rest)

    def look_once(self) -> None:
        """Act on what has happened since the last look."""
        now, contents = time.monotonic(), self.look.contents()
        if contents != self.contents:
            self.contents, self.saved = contents, now
            self._build()
        elif self.doubt is not None and now - self.doubt[1] >= SETTLED:
            self._tell_wrong(self.doubt[0])
        elif self.due is not None and now >= self.due:
            self._begin_the_rest()
        self._take_the_rest()

    def finish(self) -> None:
        """Wait for the rest of the set where it is owed and can be made."""
        if self.due is not None and not self.ending.waiting.is_set():
            self._begin_the_rest()
        if self.rest.busy and not self.ending.waiting.is_set():
            self.tell(Finishing(self.owed))
        while self.rest.busy and not self.ending.waiting.wait(EVERY):
            self._take_the_rest()

    def _begin_the_rest(self) -> None:
        self.due = None
        self.rest.begin(Task(str(self.asked.spec), str(self.asked.out), self.roles))

    def _build(self) -> None:
        """Write the quick roles of what stands in the files now."""
        self.due, self.doubt = None, None
        self.rest.stop()
        try:
            self._write_first()
        except (InputError, InfeasibleError) as error:
            self.doubt = (error, time.monotonic())
        except _StoppedError:
            return
        except Exception as error:  # noqa: BLE001 # the watch outlives whatever one save brings
            self._tell_wrong(error)

    def _write_first(self) -> None:
        spec = load_spec(self.asked.spec)
        folder = self.asked.out / names.stem(size(spec))
        standing = roles_of(folder)
        self.roles = wanted(self.asked.only, (*self.roles, *standing), self.asked.shown)
        first = at_once(self.roles)
        stiff = has_stiffness(folder)
        made = build(spec, self.asked.out, first, self._step)
        self.folder, self.owed = made.folder, tuple(role for role in self.roles if role not in first)
        retired = tuple(role for role in standing if role not in self.roles)
        self._tell_first(Built(made, self.first, self._since_save(), first, self.owed, retired, stiff))
        self.due = time.monotonic() + LEFT_ALONE if self.owed else None

    def _step(self, _: str) -> None:
        if self.ending.watching.is_set():
            raise _StoppedError

    def _since_save(self) -> float:
        return time.monotonic() - self.saved

    def _tell_first(self, built: Built) -> None:
        self.tell(built)
        self.first = built.made

    def _take_the_rest(self) -> None:
        answer = self.rest.answer()
        if isinstance(answer, str):
            self.tell(Unfinished(answer, self.owed))
        elif answer is not None:
            roles, self.owed = self.owed, ()
            self.tell(Built(answer, self.whole, self._since_save(), roles, follows=self.first))
            self.whole = answer

    def _tell_wrong(self, error: Exception) -> None:
        self.doubt = None
        self.tell(Wrong(error, self.folder, self.owed))
