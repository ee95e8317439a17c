"""How a block that exists is set up to be cut again, and which datums are picked up."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from blockgen.change.rework.data import Operation
from blockgen.plan import Plan

NOT_CUT = frozenset({"measure", "coat"})
"""Operations that take nothing off."""


def is_cut(todo: Sequence[Operation]) -> bool:
    """Tell whether any operation takes something off."""
    return any(operation.id not in NOT_CUT for operation in todo)


def setup(old: Plan, todo: Sequence[Operation], shift: float) -> Iterator[str]:
    """Yield how it is set up.

    Args:
        old: Plan of the block that exists.
        todo: What is done to it; nothing is told where it is not cut.
        shift: What is faced off the bearing end, mm.
    """
    if not is_cut(todo):
        return
    bored = {name for operation in todo if operation.id == "bore" and "fit" in operation.values
             for name in operation.features}  # fmt: skip
    yield "Down on the base face (datum C), which is not cut; the shaft height stays."
    yield from _datums(bored, shift)
    if bored:
        zone = old.number("block.coaxiality")
        yield (
            f"The bores are no longer made in one clamping: what the sweep leaves counts in the coaxiality of "
            f"diam {zone:g}; measure it against A, B afterwards."
        )
    if any(feature.kind == "dowel_hole" for feature in old.features):
        yield "The dowel holes were reamed with their base: back on to the same base, or ream them for larger pins."
    if old.text("block.finish") not in ("", "none"):
        yield f"The finish ({old.text('block.finish')}) is cut through: strip it first and coat again."


def _datums(bored: set[str], shift: float) -> Iterator[str]:
    """Yield which seat and which bore the work is trued up to: never one that is cut."""
    swept = "bearing bore (datum B)"
    if bored >= {"bearing_bore", "motor_bore"}:
        yield "Both bores are cut: sweep the bearing bore (datum B) as it is first, and cut both without unclamping."
    elif "bearing_bore" in bored:
        swept = "motor bore"
        yield "The bearing bore (datum B) is cut anew: sweep the motor bore, which stays, and bore on its axis."
    if shift > 0:
        yield (
            f"The bearing seat (datum A) is cut anew: face it and the motor seat in one clamping, the {swept} swept "
            "first; flatness and squareness of A as on the drawing."
        )
    elif "bearing_bore" in bored:
        yield "The bearing seat (datum A) stays: true it up, then cut."
    else:
        yield "Bearing seat (datum A) and bearing bore (datum B) stay: sweep the bore, true up the seat, then cut."
