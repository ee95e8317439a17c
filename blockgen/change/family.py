"""When one block cannot take all motors of a family: the least set of blocks that does, and why they are split."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import replace
from itertools import combinations
from pathlib import Path

from blockgen.errors import FamilyError, InfeasibleError, MotorGroup, Split
from blockgen.record import Record
from blockgen.sizing.family import FIRST, alone, entries, renamed, require_one_pilot, title_of
from blockgen.sizing.family_members import family_start
from blockgen.sizing.family_pattern import clocked
from blockgen.sizing.rounds import decide_sizes
from blockgen.spec.load import Spec, load_spec

Records = Mapping[str, Record]
Found = MotorGroup | InfeasibleError
#: Most motors for which the sets are tried one by one.
MOST = 10
_DIGITS = 6
_Score = tuple[int, int, float]


@contextmanager
def told_of_family(spec: Spec | str | Path) -> Iterator[None]:
    """Turn the conflict of a family inside the block into the least set of blocks.

    Raises:
        FamilyError: one block cannot take all motors of the spec.
    """
    try:
        yield
    except InfeasibleError as error:
        records = (spec if isinstance(spec, Spec) else load_spec(spec)).records
        if len(entries(records)) == 1:
            raise
        raise split_family(records, error) from error


def split_family(records: Records, cause: InfeasibleError) -> FamilyError:
    """Return the least set of blocks for a family that one block cannot take.

    Args:
        records: Given and preset records.
        cause: Why one block cannot.
    """
    trials = Trials(records)
    return FamilyError(cause, trials.least_set(), trials.splits())


class Trials:
    """Which motors of a family go together; each set is sized once.

    A set with an impossible one in it is taken as impossible without sizing it: a further motor only adds bounds.
    """

    def __init__(self, records: Records) -> None:
        """Keep the records; nothing is sized yet."""
        self.records = dict(records)
        self.motors = entries(records)
        self._known: dict[frozenset[str], Found] = {}

    def together(self, motors: Sequence[str]) -> Found:
        """Return the block of some motors, or why there is none."""
        key = frozenset(motors)
        if key not in self._known:
            within = next((f for s, f in self._known.items() if s < key and isinstance(f, InfeasibleError)), None)
            self._known[key] = within or one_block(self.records, self._in_order(key))
        return self._known[key]

    def _in_order(self, motors: frozenset[str]) -> tuple[str, ...]:
        return tuple(motor for motor in self.motors if motor in motors)

    def splits(self) -> tuple[Split, ...]:
        """Return every set of motors that no block takes though it would without any one of them."""
        found: list[Split] = []
        for count in range(1, min(len(self.motors), MOST) + 1):
            for motors in combinations(self.motors, count):
                if self._in_a_block(motors) or any(set(split.entries) <= set(motors) for split in found):
                    continue
                outcome = self.together(motors)
                if isinstance(outcome, InfeasibleError):
                    titles = tuple(title_of(self.records, motor) for motor in motors)
                    found.append(Split(titles, motors, outcome.conflicts))
        return tuple(found)

    def _in_a_block(self, motors: Sequence[str]) -> bool:
        """Tell whether a block is known that takes these motors and maybe more: with fewer it has fewer bounds."""
        return any(set(motors) <= known for known, found in self._known.items() if isinstance(found, MotorGroup))

    def least_set(self) -> tuple[MotorGroup, ...]:
        """Return the fewest blocks that take every motor that any block takes.

        Among equally few, the set with the most motors in one block, then with the most room for the length.
        """
        usable = tuple(m for m in self.motors if isinstance(self.together((m,)), MotorGroup))
        if len(usable) > MOST:
            return self._one_by_one(usable)
        for pair in combinations(usable, 2):
            self.together(pair)  # small conflicts first: they spare the larger sets
        best: dict[tuple[str, ...], tuple[_Score, tuple[MotorGroup, ...]]] = {(): ((0, 0, 0.0), ())}
        return self._best(usable, best)[1]

    def _best(
        self, left: tuple[str, ...], best: dict[tuple[str, ...], tuple[_Score, tuple[MotorGroup, ...]]]
    ) -> tuple[_Score, tuple[MotorGroup, ...]]:
        if left not in best:
            best[left] = min(self._choices(left, best), key=lambda choice: choice[0])
        return best[left]

    def _choices(
        self, left: tuple[str, ...], best: dict[tuple[str, ...], tuple[_Score, tuple[MotorGroup, ...]]]
    ) -> Iterator[tuple[_Score, tuple[MotorGroup, ...]]]:
        """Yield the sets of blocks for what is left, by the block of the first of them."""
        for count in range(len(left)):
            for others in combinations(left[1:], count):
                group = self.together((left[0], *others))
                if isinstance(group, MotorGroup):
                    (blocks, sizes, room), rest = self._best(tuple(m for m in left[1:] if m not in others), best)
                    score = (blocks + 1, sizes - (count + 1) ** 2, round(room - group.high + group.low, _DIGITS))
                    yield score, (group, *rest)

    def _one_by_one(self, usable: Sequence[str]) -> tuple[MotorGroup, ...]:
        """Put each motor into the first block that takes it; a good set, not surely the least one."""
        groups: list[MotorGroup] = []
        for motor in usable:
            tried = ((at, self.together((*group.entries, motor))) for at, group in enumerate(groups))
            place = next(((at, found) for at, found in tried if isinstance(found, MotorGroup)), None)
            alone = self.together((motor,))
            if place is not None:
                groups[place[0]] = place[1]
            elif isinstance(alone, MotorGroup):
                groups.append(alone)
        return tuple(groups)


def one_block(records: Records, motors: Sequence[str]) -> Found:
    """Return the feasible lengths of one block for some motors of a family, or why there is none."""
    chosen = only(records, motors)
    try:
        require_one_pilot(chosen)
        ledger, _, _ = decide_sizes(*family_start(clocked(chosen)[0]))
    except InfeasibleError as error:
        return _as_in_spec(error, motors[0], title_of(chosen, FIRST), title_of(records, motors[0]))
    titles = tuple(title_of(records, motor) for motor in motors)
    return MotorGroup(titles, tuple(motors), ledger.number("length_min"), ledger.number("length_max"))


def _as_in_spec(error: InfeasibleError, first: str, here: str, title: str) -> InfeasibleError:
    """Return a conflict with the motor that stood first in a trial under its own name and keys."""

    def told(text: str) -> str:
        return re.sub(rf"(?<!\w){re.escape(here)}(?!\w)", lambda _: title, renamed(text, first))

    conflicts = [
        replace(c, title=told(c.title), facts=tuple(map(told, c.facts)), keys=tuple(map(told, c.keys)))
        for c in error.conflicts
    ]
    return InfeasibleError(conflicts, ())


def only(records: Records, motors: Sequence[str]) -> dict[str, Record]:
    """Return the records with some motors of the family only, in the order of the spec; the first one as ``motor``."""
    further = tuple(f"{entry}." for entry in motors[1:])
    return alone(records, motors[0]) | {key: record for key, record in records.items() if key.startswith(further)}
