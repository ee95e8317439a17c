"""Compares two designs: what differs, what stays, and what became obsolete."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from blockgen.change.compare.checks import (
    alignment_entries,
    characteristic_entries,
    check_entries,
    fastener_entries,
    mass_entries,
)
from blockgen.change.compare.data import Comparison, Entry, Side
from blockgen.change.compare.documents import documents
from blockgen.change.compare.features import feature_entries
from blockgen.change.compare.sides import read_side
from blockgen.change.compare.sizes import asked_entries, dimension_entries
from blockgen.plan import Plan

if TYPE_CHECKING:
    from blockgen.change.compare.volumes import Overlay

#: What only a set that was built with it can judge, by key of the summary.
_MORE_EVIDENCE = {"clearances": "the solids of the assembly", "stiffness": "finite elements"}


def compare_paths(old: str | Path, new: str | Path) -> Comparison:
    """Compare two specs or built folders; no solid is made.

    Args:
        old: Spec file, or folder of a set that was built.
        new: The same of the other design.

    Raises:
        InputError: one of them is wrong.
        InfeasibleError: no block can exist for one of them.
    """
    return compare(read_side(old), read_side(new))


def compare(old: Side, new: Side) -> Comparison:
    """Compare two designs as plain data."""
    before, after = old.document, new.document
    asked = asked_entries(old.asked, new.asked)
    checks = check_entries(before["checks"], after["checks"])
    judged, open_checks = _comparable(old, new, checks)
    found = Comparison(
        old, new, asked,
        dimension_entries(before, after, asked),
        feature_entries(before["features"], after["features"]),
        feature_entries(before["base_features"], after["base_features"]),
        characteristic_entries(before["characteristics"], after["characteristics"]),
        fastener_entries(before["fasteners"], after["fasteners"]),
        judged,
        alignment_entries(before, after),
        mass_entries(before, after),
        (),
        open_checks,
    )  # fmt: skip
    return replace(found, documents=documents(found))


def with_rework(found: Comparison, *, prove: bool) -> Comparison:
    """Return the comparison with what becomes of the block that exists.

    Args:
        found: A comparison of two designs that exist.
        prove: Prove it by solids, which loads the CAD kernel.

    Raises:
        KernelError: a solid cannot be built or compared.
    """
    from blockgen.change.rework.rework import rework_and_adapter

    return replace(found, rework=rework_and_adapter(_plan(found.old), _plan(found.new), prove=prove))


def with_volumes(found: Comparison) -> tuple[Comparison, Overlay]:
    """Return the comparison with added and removed volume, and the solids that show them.

    Raises:
        KernelError: a block cannot be built or cut.
    """
    from blockgen.change.compare.volumes import overlay

    over = overlay(_plan(found.old), _plan(found.new))
    return replace(found, volumes=over.volumes), over


def _plan(side: Side) -> Plan:
    if side.design is None:
        raise ValueError(f"{side.path} was read as data only")
    return side.design.plan


def _comparable(old: Side, new: Side, checks: tuple[Entry, ...]) -> tuple[tuple[Entry, ...], tuple[str, ...]]:
    """Set aside the checks that only one side has since only there solids or finite elements were made."""
    before, after = ({what for key, what in _MORE_EVIDENCE.items() if side.document.get(key)} for side in (old, new))
    if before == after:
        return checks, ()
    alone = tuple(entry for entry in checks if entry.state in {"added", "removed"})
    missing = " and ".join(sorted(before ^ after))
    words = tuple(
        f"{entry.title} ({entry.id}): {_verdict(entry)} in the {'new' if entry.state == 'added' else 'old'} design; "
        f"the other one was not judged by {missing}"
        for entry in alone
    )
    return tuple(entry for entry in checks if entry not in alone), words


def _verdict(entry: Entry) -> str:
    found = next(change for change in entry.changes if change.name == "verdict")
    return str(found.new or found.old).replace("_", " ")
