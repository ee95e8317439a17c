"""Rework and adapters in rows of words, for the terminal and for Markdown."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Sequence

from blockgen.change.adapter.data import Adapter
from blockgen.change.rework.data import Leftover, Reason, Rework
from blockgen.change.rework.rework import Change
from blockgen.change.rework.setup import is_cut
from blockgen.outputs import show

LEFTOVER_COLUMNS = ("Stays", "What", "Least wall", "Asked for", "Beside", "May stay")
ADAPTER_COLUMNS = (
    "Adapter",
    "Effort",
    "Length",
    "Feasible",
    "P95 alone",
    "P95 with it",
    "Worst alone",
    "Worst with it",
)
SIZE_COLUMNS = ("Size", "Value", "Limits", "Rule")
MARK_COLUMNS = ("No.", "Characteristic", "Value", "Limits", "Datums", "Reason")
_NUMBER = re.compile(r"(?<=[a-z])_\d+\b")


def verdict(found: Rework) -> str:
    """Return the verdict in one line."""
    if not found.feasible:
        return "The block that exists cannot be re-machined into the new one."
    if found.attempt.how == "nothing":
        already = "will do as it is" if found.departures else "is the new one already"
        return f"The block that exists {already}: nothing has to be done."
    if not is_cut(found.operations):
        return "The block that exists will do without being cut; what is to be done stands below."
    how = "as it is drawn" if found.attempt.how == "as_drawn" else "fitted to what stands there"
    turn = f", the motor turned by {found.attempt.turn:g} deg" if found.attempt.turn else ""
    return f"The block that exists can be re-machined: the new design {how}{turn}."


def proof(found: Rework) -> str:
    """Return what the boolean shows, in words."""
    shown = found.proof
    if shown is None:
        return "Judged by the two plans; not proved on the solids."
    added = (
        f"{show.significant(shown.added)} mm3 would have to be added"
        if shown.added > shown.tolerance
        else "nothing is added"
    )
    limit = f"up to {show.significant(shown.tolerance, 2)} mm3, a thousandth of the smallest cavity, counts as nothing"
    cut = f"{show.significant(shown.removed)} mm3 are cut away"
    return f"Boolean of the two solids, what may stay open left out: {added} ({limit}), {cut}."


def grouped(reasons: Sequence[Reason]) -> Iterator[str]:
    """Yield the reasons in words, alike ones of several holes once with their number."""
    found: dict[str, int] = {}
    for reason in reasons:
        text = _NUMBER.sub("", reason.text)
        found[text] = found.get(text, 0) + 1
    once = {_NUMBER.sub("", reason.text): reason.text for reason in reasons}
    for text, count in found.items():
        yield once[text] if count == 1 else f"{text} ({count} times)"


def leftover_rows(leftovers: Sequence[Leftover]) -> Iterator[tuple[str, ...]]:
    """Yield what stays, alike holes in one row with the least of their walls."""
    groups: dict[tuple[str, str, bool, str], list[Leftover]] = {}
    for each in leftovers:
        groups.setdefault((_NUMBER.sub("", each.id), each.what, each.sound, each.note), []).append(each)
    for (name, what, sound, note), members in groups.items():
        least = min(members, key=lambda each: each.wall - each.required)
        count = f"{len(members)} x " if len(members) > 1 else ""
        told = ("yes" if sound else "no") + (f"; {note}" if note else "")
        walls = (f"{least.wall:.4g} mm", f"{least.required:g} mm", show.plain_id(least.beside))
        yield (f"{count}{show.plain_id(name)}", what, *walls, told)


def adapter_rows(adapters: Sequence[Adapter]) -> Iterator[tuple[str, ...]]:
    """Yield the adapters side by side, the least pain first."""
    for each in adapters:
        chain, (low, high) = each.chain, each.length_interval
        offsets = (chain.p95_before, chain.p95_after, chain.worst_before, chain.worst_after)
        figures = (f"{each.length:g}", f"{low:.5g}..{high:.5g}", *(f"{offset:.4f}" for offset in offsets))
        yield (each.title, each.why_pain, *figures)


def size_rows(adapter: Adapter) -> Iterator[tuple[str, ...]]:
    """Yield the sizes of an adapter that were decided; what is usual stands in the JSON."""
    for key, record in adapter.records.items():
        if record.origin != "assumed" and record.value is not None:
            name = key.removeprefix("adapter.").replace("_", " ")
            yield (name, show.amount(record), show.limits(record), record.rule)


def mark_rows(adapter: Adapter) -> Iterator[tuple[str, ...]]:
    """Yield the characteristics for the drawing of an adapter."""
    for mark in adapter.annotations:
        number = "" if mark.number is None else str(mark.number)
        value = "" if mark.value is None else f"{'diam ' if mark.diametral else ''}{show.number(mark.value)}"
        limits = show.deviations(mark.fit, mark.upper, mark.lower) or ("general" if mark.general else "")
        name = f"{show.plain_id(mark.feature)}, {mark.kind}" + (
            f": {mark.text}" if mark.text and mark.kind != "datum" else ""
        )
        yield (number, name, value, limits, " ".join(mark.datums), mark.reason)


def chain_words(adapter: Adapter) -> str:
    """Return what an adapter adds to the shafts' offset, in words."""
    chain = adapter.chain
    parts = ", ".join(f"{show.plain_id(name)} {size:.4f}" for name, size in chain.terms.items())
    text = f"It adds at most {parts} mm to the offset at the coupling"
    if chain.angle_after > chain.angle_before + 1e-9:
        before, after = (math.degrees(angle) for angle in (chain.angle_before, chain.angle_after))
        text += f"; worst angle {before:.3f} becomes {after:.3f} deg"
    if chain.limit is not None:
        over = "" if chain.worst_after <= chain.limit else ": the worst case is above it"
        text += f"; {chain.limit:g} mm are allowed{over}"
    return text + "."


def screw_words(adapter: Adapter) -> Iterator[str]:
    """Yield the screws of an adapter in words."""
    for screw in adapter.fasteners:
        length = "of a length still to be chosen" if screw.length is None else f"x {screw.length:g}"
        grip = "" if screw.engagement is None else f", {screw.engagement:g} mm in the thread"
        name = screw.where.replace("_", " ")
        yield f"{screw.count} x {screw.size} {length} {screw.standard} {screw.property_class}, {name}{grip}"


def markdown(change: Change) -> list[str]:
    """Return verdict, operations, what stays and adapters as lines of Markdown."""
    found = change.rework
    lines = ["## Rework of the block that exists", "", verdict(found), "", proof(found), ""]
    lines += _listed("What stands against it", [*grouped(found.reasons)])
    lines += _listed(
        "What stands against the new design as drawn",
        [*grouped(found.as_drawn)] if found.reasons and found.attempt.how == "fitted" else [],
    )
    lines += _listed("Operations", [op.text for op in found.operations], numbers=True)
    lines += _listed("Setting up", found.setup) + _listed("Other than in the new design", found.departures)
    lines += _table("What stays without use", LEFTOVER_COLUMNS, [*leftover_rows(found.leftovers)])
    lines += _listed("Obsolete", found.obsolete)
    if not found.feasible:
        lines += ["## Adapters", ""] + (["None fits.", ""] if not change.adapters else [])
        lines += _table("", ADAPTER_COLUMNS, [*adapter_rows(change.adapters)])
        for each in change.adapters:
            lines += _adapter(each)
        lines += _listed("Why others do not do", change.refused)
    return lines


def _adapter(adapter: Adapter) -> list[str]:
    lines = [f"### {adapter.title[0].upper()}{adapter.title[1:]}", "", chain_words(adapter), ""]
    lines += _table("", SIZE_COLUMNS, [*size_rows(adapter)]) + _table(
        "For its drawing", MARK_COLUMNS, [*mark_rows(adapter)]
    )
    lines += _listed("Screws", [*screw_words(adapter)])
    lines += _listed("On the block", [op.text for op in adapter.operations], numbers=True)
    return lines + _listed("To know", adapter.remarks)


def _listed(title: str, entries: Sequence[str], *, numbers: bool = False) -> list[str]:
    if not entries:
        return []
    marks = [f"{index}." if numbers else "-" for index in range(1, len(entries) + 1)]
    return [f"{title}:", "", *(f"{mark} {entry}" for mark, entry in zip(marks, entries, strict=True)), ""]


def _table(title: str, columns: Sequence[str], rows: Sequence[Sequence[str]]) -> list[str]:
    if not rows:
        return []
    cells = ["| " + " | ".join(cell.replace("|", "\\|") for cell in row) + " |" for row in (columns, *rows)]
    return [*([f"{title}:", ""] if title else []), cells[0], "|" + "---|" * len(columns), *cells[1:], ""]
