"""Proves cures: the whole block is sized again with each change, since walls, window and layout hang together."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from blockgen.errors import Cure, InfeasibleError, InputError
from blockgen.record import Ledger, Record
from blockgen.sizing.family_members import family_start
from blockgen.sizing.family_pattern import clocked
from blockgen.sizing.rounds import decide_sizes
from blockgen.spec.nonsense import contradictions

_STEPS = 6


def proved(error: InfeasibleError, records: Mapping[str, Record]) -> InfeasibleError:
    """Return the conflict with only those cures that give a block, each as small as the whole sizing allows.

    Args:
        error: What the layout said.
        records: Given and preset records of the spec.
    """
    return InfeasibleError(error.conflicts, tuple(_proved(error.cures, records)))


def _proved(cures: tuple[Cure, ...], records: Mapping[str, Record]) -> Iterator[Cure]:
    for cure in cures:
        if not cure.changes:
            yield cure
            continue
        held = _walk(cure, records)
        if held is not None:
            yield held


def _walk(cure: Cure, records: Mapping[str, Record]) -> Cure | None:
    """Return the cure at the nearest value at which the block can be sized, or None.

    A change may move walls and window, so that a second step of the same kind is needed.
    """
    for _ in range(_STEPS):
        changed = _changed(records, cure)
        if contradictions(changed, ""):
            return None
        try:
            ledger, _, _ = decide_sizes(*family_start(clocked(changed)[0]))
        except InputError:
            return None
        except InfeasibleError as error:
            further = next((c for c in error.cures if len(cure.changes) == 1 and c.key == cure.key), None)
            if further is None or further.after is None or cure.after is None:
                return None
            cure = _moved(cure, further.after)
        else:
            return replace(cure, text=cure.text + _tightness(ledger))
    return None


def _changed(records: Mapping[str, Record], cure: Cure) -> dict[str, Record]:
    tried = {key: Record(key, value, "mm", "given", "tried as a cure") for key, value in cure.changes}
    return {**records, **tried}


def _moved(cure: Cure, after: float) -> Cure:
    before = cure.before or 0.0
    text = f"{cure.kind}: {cure.key} {before:g} mm -> {after:g} mm ({after - before:+.3g} mm)"
    return replace(cure, after=after, text=text, changes=((cure.key, after),))


def _tightness(ledger: Ledger) -> str:
    """Say where a cure holds for nominal values only."""
    return "" if ledger.known("length_low") else "; fits with nominal values, not in the worst case of the tolerances"
