"""Every cut of the block with its tool, and the tools to lay ready."""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.making.boring import bore_cuts
from blockgen.making.cut import Cut, groups
from blockgen.making.holes import hole_cuts
from blockgen.making.milling import milling_cuts
from blockgen.making.words import plain
from blockgen.plan import Plan


@dataclass(frozen=True, slots=True)
class Tool:
    """One tool to lay ready.

    Args:
        name: Tool with its size.
        reach: How far it stands out at least, mm; None where it does not matter.
        ratio: Greatest reach over diameter; None where it does not matter.
        used_for: Groups and faces that it cuts, in words.
    """

    name: str
    reach: float | None
    ratio: float | None
    used_for: tuple[str, ...]


def cuts(plan: Plan) -> tuple[Cut, ...]:
    """Return every cut of the block, by feature; ``setups`` puts them in order."""
    holes = [cut for group in groups(plan) for cut in hole_cuts(plan, group)]
    return (*milling_cuts(plan), *holes, *bore_cuts(plan))


def tools(made: tuple[Cut, ...]) -> tuple[Tool, ...]:
    """Return the tools of some cuts, each once with its greatest reach, in order of their names and sizes."""
    named: dict[str, list[Cut]] = {}
    for cut in made:
        if cut.tool:
            named.setdefault(cut.tool, []).append(cut)
    return tuple(_tool(name, named[name]) for name in sorted(named, key=_order))


def _order(name: str) -> tuple[str, float, str]:
    """Return the kind of tool, its diameter and its name, so that diam 9 comes before diam 13.5."""
    kind, _, size = name.partition(" diam ")
    number = size.partition(",")[0].partition(" ")[0]
    return kind, float(number) if number else 0.0, name


def _tool(name: str, made: list[Cut]) -> Tool:
    reaches = [cut.reach for cut in made if cut.reach is not None]
    ratios = [cut.ratio for cut in made if cut.ratio is not None]
    groups_cut = dict.fromkeys(plain(cut.group) for cut in made)
    return Tool(name, max(reaches, default=None), max(ratios, default=None), tuple(groups_cut))
