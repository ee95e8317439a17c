"""One cut: in which setup, with which tool, how far it reaches; and the groups of alike features that are cut."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from blockgen.plan import Feature, Plan
from blockgen.record import Record

SetupId = Literal[
    "saw", "rough", "relax", "base", "top", "sides", "ends", "far_end", "deburr", "coat", "inspect", "assembly"
]

# Order inside one setup: faces and window first, then holes, bores, threads, and the skim last.
FIRST, WINDOW, HOLES, SEATS, BORES, THREADS, LAST = range(7)

FACE_WORDS: Mapping[str, str] = {
    "bearing_seat": "bearing end",
    "motor_seat": "motor end",
    "base": "base",
    "top": "top",
    "side_plus_y": "side",
}


@dataclass(frozen=True, slots=True)
class Cut:
    """One cut of the setup sheet.

    Args:
        setup: Setup in which it is made.
        rank: Order inside the setup.
        group: Feature group, outside face or ``block``.
        what: What is cut, with the finished size.
        tool: Tool with its size.
        remark: What the machinist should know.
        reach: How far the tool stands out at least, mm; None where it does not matter.
        ratio: Reach over tool diameter; None where it does not matter.
        records: How reach and ratio came about.
    """

    setup: SetupId
    rank: int
    group: str
    what: str
    tool: str
    remark: str = ""
    reach: float | None = None
    ratio: float | None = None
    records: tuple[Record, ...] = ()


@dataclass(frozen=True, slots=True)
class Group:
    """Alike features: the first of them stands for all."""

    name: str
    first: Feature
    count: int

    @property
    def times(self) -> str:
        """How often, for instance ``4 x ``; empty for a single one."""
        return f"{self.count} x " if self.count > 1 else ""

    @property
    def end(self) -> SetupId:
        """Setup in which the face of its mouth is up."""
        if self.first.face in {"base", "top"}:
            return "base" if self.first.face == "base" else "top"
        return "ends"


def groups(plan: Plan) -> tuple[Group, ...]:
    """Return the groups of features of the block in the order of the plan.

    Features of one group that differ in depth (one breaks into the window, another does not) are told apart.
    """
    found: dict[tuple[object, ...], list[Feature]] = {}
    for f in plan.features:
        found.setdefault((f.group, f.depth, f.through, f.counterbore_depth), []).append(f)
    return tuple(Group(name, alike[0], len(alike)) for name, alike in _named(found))


def _named(found: Mapping[tuple[object, ...], list[Feature]]) -> list[tuple[str, list[Feature]]]:
    """Return groups with names that differ: the second kind of a group is named after its first feature."""
    seen: set[str] = set()
    named = []
    for alike in found.values():
        name = alike[0].id if alike[0].group in seen else alike[0].group
        seen.add(name)
        named.append((name, alike))
    return named
