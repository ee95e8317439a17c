"""Can the block that exists be re-machined into the new one: screen, verdict, operations, proof by boolean."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from blockgen.change.adapter.adapter import adapters
from blockgen.change.adapter.data import Adapter
from blockgen.change.rework.attempts import Tried, best_of, try_all
from blockgen.change.rework.data import Attempt, Operation, Piece, Proof, Reason, Rework
from blockgen.change.rework.departures import departures
from blockgen.change.rework.operations import operations
from blockgen.change.rework.setup import is_cut, setup
from blockgen.errors import KernelError
from blockgen.mechanics.volume import feature_volume
from blockgen.outputs.names import stem
from blockgen.plan import Plan

_PART = 1e-3
"""Part of the smallest cavity up to which added volume is taken for rounding of the kernel."""

_SHOWN = 8


@dataclass(frozen=True, slots=True)
class Change:
    """What becomes of the block that exists.

    Args:
        rework: Whether it can be re-machined.
        adapters: What would join old block and new motor, the least pain first; empty where it can be re-machined.
        refused: Why other adapters do not do.
    """

    rework: Rework
    adapters: tuple[Adapter, ...] = ()
    refused: tuple[str, ...] = ()


def rework_and_adapter(old: Plan, new: Plan, *, prove: bool = True) -> Change:
    """Return whether the old block can be re-machined, and which adapters would do where it cannot.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that is wanted.
        prove: Prove it by a boolean of both solids; it loads the CAD kernel.

    Raises:
        KernelError: a solid cannot be built or compared.
    """
    found = rework(old, new, prove=prove)
    return Change(found) if found.feasible else Change(found, *adapters(old, new))


def rework(old: Plan, new: Plan, *, prove: bool = True) -> Rework:
    """Return whether the old block can be re-machined into the new one.

    The new plan is tried as it is, then its spec sized on to what the old block has, with less length, cut off either
    end, and with the motor turned. Only what nothing stands against is proved by a boolean; where nothing works, the
    boolean tells of the nearest one what would have to be added.

    Args:
        old: Plan of the block that exists.
        new: Plan of the block that is wanted.
        prove: Prove it by a boolean of both solids; it loads the CAD kernel.

    Raises:
        KernelError: a solid cannot be built or compared.
    """
    tried = try_all(old, new)
    best = best_of(tried)
    proof = _proof(old, best) if prove else None
    reasons = (*best.reasons, *_not_proved(proof, best), *_no_layout(tried, best))
    feasible = best.feasible and not reasons
    made = best.found.made if best.found else ()
    todo = operations(old, best.target, made, best.attempt.shift) if feasible and best.target else ()
    left = best.found.leftovers if best.found else ()
    attempt = best.attempt if todo or not feasible else Attempt("nothing", 0.0, 0.0, old.body.length)
    return Rework(
        feasible=feasible,
        attempt=attempt,
        target=best.target,
        reasons=reasons,
        as_drawn=tried[0].reasons,
        operations=todo,
        leftovers=left,
        setup=tuple(setup(old, todo, best.attempt.shift)),
        obsolete=tuple(_obsolete(old, best.target, todo, left=bool(left))) if feasible and best.target else (),
        departures=tuple(departures(old, new, best.target, best.attempt)) if best.target is not None else (),
        proof=proof,
        tried=len(tried),
    )


def tolerance_of(target: Plan) -> float:
    """Return the volume in mm3 up to which nothing counts as added: a thousandth of the smallest cavity."""
    return min(feature_volume(feature, target.body) for feature in target.features) * _PART


def _proof(old: Plan, best: Tried) -> Proof | None:
    """Return what the boolean of the two solids shows; None where no solid stands for what is refused anyway."""
    from blockgen.geometry.difference import added_and_removed, volume_in

    if best.target is None:
        return None
    staying = best.found.staying if best.found else ()
    try:
        added, removed = added_and_removed(old, best.target, best.attempt.shift, staying)
    except KernelError:
        if best.feasible:
            raise
        return None
    pieces = tuple(Piece(round(lump.volume, 3), _tidy(lump.box)) for lump in added[:_SHOWN])
    total, gone = round(volume_in(added), 3), round(volume_in(removed), 3)
    return Proof(total, gone, round(tolerance_of(best.target), 4), pieces)


def _tidy(box: Sequence[float]) -> tuple[float, float, float, float, float, float]:
    a, b, c, d, e, f = (round(value, 3) + 0.0 for value in box)
    return a, b, c, d, e, f


def _not_proved(proof: Proof | None, best: Tried) -> Iterator[Reason]:
    """Yield that volume would have to be added where the screen saw nothing."""
    if proof is not None and best.feasible and proof.added > proof.tolerance:
        low, high = proof.pieces[0].box[:3], proof.pieces[0].box[3:]
        text = f"{proof.added:g} mm3 would have to be added, most of it between {low} and {high}"
        yield Reason("volume", text, proof.added, "mm3", "block")


def _no_layout(tried: Sequence[Tried], best: Tried) -> Iterator[Reason]:
    """Yield why nothing could be sized on to the old block, where the new plan as it is had to be judged."""
    if best.feasible or best.attempt.how != "as_drawn":
        return
    told = [each.reasons[0] for each in tried if each.target is None and each.reasons]
    if told:
        nearest = min(told, key=lambda reason: reason.amount or 0.0)
        yield replace(nearest, text=f"fitted to what stands there, no length does: {nearest.text}")


def _obsolete(old: Plan, target: Plan, todo: Sequence[Operation], *, left: bool) -> Iterator[str]:
    """Yield what must not be used any longer."""
    if not is_cut(todo):
        return
    name = stem(old)
    yield f"{name}: drawing, inspection sheet, models and report show the block before it is cut"
    if left:
        yield "the next drawing must show what is left over too; the new plan does not know it"
    after = {(f.where, f.size, f.length, f.count) for f in target.fasteners}
    for screw in old.fasteners:
        if (screw.where, screw.size, screw.length, screw.count) not in after:
            length = "" if screw.length is None else f" x {screw.length:g}"
            yield f"{screw.count} x {screw.size}{length} ({screw.where.replace('_', ' ')})"
