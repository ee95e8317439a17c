"""The verdict on a measured block: accept, use with note, or reject, with its reasons."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import degrees
from typing import Literal

from blockgen.alignment.chain import Spread
from blockgen.alignment.heat import Expansions
from blockgen.evidence.as_built import AsBuilt, as_built
from blockgen.evidence.characteristics import ZONES
from blockgen.evidence.clocking import Clocking, clocking
from blockgen.evidence.conformity import Conformity, conformities, value_words
from blockgen.evidence.instruments import significant
from blockgen.evidence.mating import misfits
from blockgen.evidence.measurement import Measured
from blockgen.evidence.shim import Shim, shim
from blockgen.plan import Plan

_FAR, _SHARE = 10.0, 0.05  # common practice, no source

Decision = Literal["accept", "use with note", "reject"]


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a measured block is good for.

    Args:
        decision: accept, use with note or reject.
        reasons: Why it is rejected.
        notes: What to know before it is used.
        conformities: One entry for each row of the inspection sheet.
        as_built: Offset and angle that it gives.
        clocking: What turning the motor does.
        shim: Shims that bring it to height and level; None where the height is not measured.
    """

    decision: Decision
    reasons: tuple[str, ...]
    notes: tuple[str, ...]
    conformities: tuple[Conformity, ...]
    as_built: AsBuilt
    clocking: Clocking
    shim: Shim | None


def verdict(
    plan: Plan, measured: Measured, expansions: Expansions | None = None, design_faults: Sequence[str] = ()
) -> Verdict:
    """Return the verdict on a measured block.

    It is rejected where a part does not fit, or where offset, angle or use of the coupling do not hold with the
    probability asked for. It is used with a note where something is out, cannot be told or was not measured, but the
    function holds, or where the design behind it has failed checks: a good part does not mend a bad design.

    Args:
        plan: Plan of the block.
        measured: What was measured.
        expansions: Coefficients of expansion; heat is left out without them or without temperatures.
        design_faults: Titles of the checks that fail the design.
    """
    found = conformities(plan, measured)
    result = as_built(plan, measured, expansions)
    turns = clocking(plan, measured, expansions)
    reasons = (*_far_off(found), *misfits(plan, measured), *_failed(result, turns))
    faults = (f"the design itself fails: {title}" for title in design_faults)
    notes = (*faults, *_coarse(found), *_not_conforming(found), *_not_measured(found), *_not_told(result))
    decision: Decision = "reject" if reasons else "use with note" if notes else "accept"
    return Verdict(decision, reasons, notes, found, result, turns, shim(plan, measured))


def _failed(result: AsBuilt, turns: Clocking) -> Iterator[str]:
    """Yield what does not hold; where the motor can be turned so that all holds, that is said too."""
    found = [*_exceeded(result)]
    turned = turns.best
    if found and turned is not None and turned.degrees and not [*_exceeded(turned.result)]:
        found[-1] += f"; it holds with the motor turned by {turned.degrees:g} deg"
    yield from found


def _exceeded(result: AsBuilt) -> Iterator[str]:
    asked = result.probability
    for name, spread, scale, unit in (("offset", result.offset, 1.0, "mm"),
                                      ("angle", result.angle, degrees(1.0), "deg")):  # fmt: skip
        held = holding(spread)
        if held is not None and spread.limit is not None and held < asked:
            yield (
                f"the {name} at the coupling stays within {spread.limit * scale:.3g} {unit} with {percent(held)} only, "
                f"{percent(asked)} are asked for"
            )
    likely = result.use.likely
    if likely is not None and likely > result.use_limit:
        yield f"{likely:.2f} of the coupling is used at {percent(asked)}, {result.use_limit:g} may be"


def holding(spread: Spread) -> float | None:
    """Return the probability that a limit holds; None without a limit."""
    return None if spread.exceeding is None else 1 - spread.exceeding


def percent(share: float) -> str:
    """Return a probability in words; what cannot be told from certain is not called so."""
    if share < 1e-4:
        return "less than 0.01 %"
    return "more than 99.99 %" if share > 0.9999 else f"{100 * share:.4g} %"


def _far_off(found: tuple[Conformity, ...]) -> Iterator[str]:
    """Yield sizes off by ten tolerances and a twentieth of the size: a slip of the pen, or another block."""
    for one in found:
        row = one.row
        if one.value is None or row.nominal is None or row.lower is None or row.upper is None or row.kind in ZONES:
            continue
        apart = abs(one.value - row.nominal)
        if apart > max(_FAR * (row.upper - row.lower), _SHARE * abs(row.nominal)):
            yield (
                f"{name_of(one)}: {value_words(one)} {row.unit} is {apart:.3g} {row.unit} off its nominal "
                f"{row.nominal:g}: a slip in the sheet (decimal point, unit), or not this block; told from "
                f"{_FAR:g} tolerances and {100 * _SHARE:g} % of the size on"
            )


def _coarse(found: tuple[Conformity, ...]) -> Iterator[str]:
    """Yield measurements whose uncertainty is wider than the tolerance: they decide nothing and loosen the answer."""
    for one in found:
        row = one.row
        if one.uncertainty is None or row.lower is None or row.upper is None or row.upper <= row.lower:
            continue
        if one.uncertainty > row.upper - row.lower:
            yield (
                f"{name_of(one)}: uncertainty {significant(one.uncertainty):g} {row.unit} is wider than the tolerance; "
                "measure it better before this verdict is used"
            )


def _not_conforming(found: tuple[Conformity, ...]) -> Iterator[str]:
    for one in found:
        if one.told in {"out", "cannot be told"}:
            mend = "; see the shim" if one.row.id == "block.shaft_height" else ""
            yield f"{name_of(one)}: {one.told}, {distance(one)}{mend}"


def name_of(one: Conformity) -> str:
    """Return number and title of a row."""
    return f"{one.row.number} {one.row.title}".strip()


def distance(one: Conformity) -> str:
    """Return in words where a value lies at its limit."""
    limit = one.row.lower if one.side == "below" else one.row.upper
    if one.value is None or limit is None:
        return ""
    unit, doubt = one.row.unit, f"uncertainty {significant(one.uncertainty or 0.0):g} {one.row.unit}".rstrip()
    apart = one.value - limit
    beyond = apart < 0 if one.side == "below" else apart > 0
    where = f"{one.side} {limit:g}" if beyond else f"inside {limit:g}"
    return f"{value_words(one)} {unit} is {where} by {abs(apart):.3g} {unit}, {doubt}"


def _not_measured(found: tuple[Conformity, ...]) -> Iterator[str]:
    """Yield one note on what has a tolerance of its own and was not measured; texture is left to the eye."""
    open_ones = [one for one in found if one.told == "not measured" and _matters(one)]
    if open_ones:
        yield f"not measured, though it matters: {', '.join(name_of(one) for one in open_ones)}"


def _matters(one: Conformity) -> bool:
    row = one.row
    judged = row.lower is not None or row.upper is not None
    return row.needed == "block" and judged and not row.general and row.kind != "texture"


def _not_told(result: AsBuilt) -> Iterator[str]:
    if result.use.missing:
        yield f"function not judged in full: {', '.join(result.use.missing)} not given"
