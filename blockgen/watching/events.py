"""What a watch has to tell, as plain data."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from blockgen.pipeline import BuildResult


@dataclass(frozen=True, slots=True)
class Built:
    """A set stands that fits what was saved.

    Args:
        made: What was written.
        before: What it is compared with; None at the first.
        seconds: Time from the moment at which the change was seen.
        roles: Roles that were written.
        later: Roles that follow, since they take longer.
        retired: Roles that the folder had and that were not asked for.
        unstiff: True where the set before had the stiffness by finite elements, which a watch does not find out.
        follows: The quick build of the same save that this whole set follows, which has been told already; None
            where it is the first of its save.
    """

    made: BuildResult
    before: BuildResult | None
    seconds: float
    roles: tuple[str, ...]
    later: tuple[str, ...] = ()
    retired: tuple[str, ...] = ()
    unstiff: bool = False
    follows: BuildResult | None = None


@dataclass(frozen=True, slots=True)
class Wrong:
    """Nothing was written: the spec is wrong, no block can exist, or the machine failed.

    Args:
        error: What went wrong.
        folder: Where the set of the last good save stands; None where there is none yet.
        owed: Roles that this set lacks, since the save came before they were made.
    """

    error: Exception
    folder: Path | None
    owed: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Unfinished:
    """What should have followed could not be written; the quick set stands.

    Args:
        reason: What went wrong, in words.
        roles: Roles that are not in the set.
    """

    reason: str
    roles: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Finishing:
    """The user has had enough, and the rest of the set is waited for.

    Args:
        roles: Roles that the set lacks.
    """

    roles: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Ended:
    """The watch has ended.

    Args:
        folder: Where the last set stands; None where none was written.
        owed: Roles that the set lacks, since the user would not wait, or they could not be made.
    """

    folder: Path | None
    owed: tuple[str, ...] = ()


Event = Built | Wrong | Unfinished | Finishing | Ended
