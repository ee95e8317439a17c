"""The errors that blockgen raises; each is a built-in error too and knows its exit code."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass


class BlockgenError(Exception):
    """Base of every error that blockgen raises on purpose."""

    exit_code = 3


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that is wrong with the input.

    Args:
        file: Path as the user gave it.
        line: Line number counted from 1; None where no line can be named.
        key: Dotted key such as ``motor.pilot_diameter``; empty for the file as a whole.
        found: What stands there.
        expected: What should stand there.
        remedy: What to do about it.
    """

    file: str
    line: int | None
    key: str
    found: str
    expected: str
    remedy: str = ""

    def __str__(self) -> str:
        place = self.file if self.line is None else f"{self.file}:{self.line}"
        parts = [": ".join(part for part in (place, self.key) if part)]
        parts.append(f"  found:    {self.found}")
        parts.append(f"  expected: {self.expected}")
        if self.remedy:
            parts.append(f"  to do:    {self.remedy}")
        return "\n".join(parts)


class InputError(BlockgenError, ValueError):
    """The input is wrong: file, key, unit or usage."""

    exit_code = 2

    def __init__(self, problems: Sequence[Problem]) -> None:
        """Keep the problems and make the message from them."""
        self.problems = tuple(problems)
        super().__init__("\n".join(str(p) for p in self.problems))


@dataclass(frozen=True, slots=True)
class Cure:
    """The smallest change of one fact that makes a layout possible.

    Args:
        key: Key of the fact to change.
        kind: Plain name of the change, for instance ``thinner wall``.
        before: Value now, in ``unit``.
        after: Value that cures it; None where the change is not a number.
        unit: Unit of both.
        text: The change in words.
        rank: Designer's pain, 1 is the least.
        verified: True when the block was sized again with it and exists.
        changes: Keys of the spec with their new values, mm; empty where it is not a change of values.
    """

    key: str
    kind: str
    before: float | None
    after: float | None
    unit: str
    text: str
    rank: int
    verified: bool
    changes: tuple[tuple[str, float], ...] = ()


@dataclass(frozen=True, slots=True)
class Conflict:
    """A set of facts that cannot hold together; without any one of them they could.

    Args:
        title: The conflict in one line.
        deficit: How much is missing, mm.
        facts: Each fact in words with its numbers.
        keys: Keys of the numbers in it.
    """

    title: str
    deficit: float
    facts: tuple[str, ...]
    keys: tuple[str, ...]


class InfeasibleError(BlockgenError, ValueError):
    """No block can exist for these facts."""

    exit_code = 1

    def __init__(self, conflicts: Sequence[Conflict], cures: Sequence[Cure]) -> None:
        """Keep conflicts and cures and make the message from them."""
        self.conflicts = tuple(conflicts)
        self.cures = tuple(cures)
        super().__init__("; ".join(c.title for c in self.conflicts))


@dataclass(frozen=True, slots=True)
class MotorGroup:
    """Motors of a family that one block takes.

    Args:
        motors: The motors in words.
        entries: Their tables in the spec.
        low: Least feasible length of their block, mm.
        high: Greatest feasible length, mm.
    """

    motors: tuple[str, ...]
    entries: tuple[str, ...]
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Split:
    """Motors that no block takes together, though it would without any one of them, and the facts to blame.

    Args:
        motors: The motors in words; a single one fits no block at all.
        entries: Their tables in the spec.
        conflicts: The facts that cannot hold together.
    """

    motors: tuple[str, ...]
    entries: tuple[str, ...]
    conflicts: tuple[Conflict, ...]


class FamilyError(InfeasibleError):
    """One block cannot take all motors of a family; several can."""

    def __init__(self, cause: InfeasibleError, groups: Sequence[MotorGroup], splits: Sequence[Split]) -> None:
        """Keep the least set of blocks and the reasons beside conflicts and cures."""
        super().__init__(cause.conflicts, cause.cures)
        self.groups = tuple(groups)
        self.splits = tuple(splits)


class MachineError(BlockgenError, OSError):
    """Disk, memory or rights: the machine failed, not the design."""


class KernelError(BlockgenError, RuntimeError):
    """The CAD kernel gave something other than what the plan asks for."""
