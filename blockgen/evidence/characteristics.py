"""The rows of the inspection sheet: what to measure on the block, and what may be measured on the bought parts.

All vectors are taken in one system: direction from the bearing seat plane A, centre from the bearing bore B, level
from the base C. x runs along the shaft from the bearing seat to the motor; seen from the motor y is to the right and
z is up. A short pilot cannot define an axis, so every direction comes from a seat plane.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from blockgen.evidence.instruments import instrument, uncertainty_wanted
from blockgen.plan import Annotation, Plan

_TIMES = " \u00d7 "  # as the call-outs write it
ZONES = frozenset({"flatness", "perpendicularity", "parallelism", "coaxiality", "position"})

_NAMES = {
    "block.axis_to_side": "block: shaft axis from the side face",
    "window.position": "window: from the bearing seat",
    "window.across": "window: wall beside it",
    "window.floor": "window: floor above the base",
    "relief.position": "relief: from the bearing seat",
}
_CONVENTIONS = {
    "flatness": "width of the zone",
    "perpendicularity": "width of the zone over the whole face",
    "parallelism": "width of the zone over the whole face",
    "coaxiality": "diameter of the zone: twice the distance of the axes",
    "position": "diameter of the zone: twice the distance from the true place; the worst hole of the group",
    "texture": "Ra, the worst of three traces",
}
_GAUGE_DEPTH = "depth to which the go gauge enters, the least of the group; 0 where the no-go gauge enters"
_GAUGE_THROUGH = "1: the go gauge passes through every hole and the no-go gauge enters none; 0: otherwise"


@dataclass(frozen=True, slots=True)
class InspectionRow:
    """One line of the inspection sheet.

    Args:
        number: Number on the drawing (``7``), of a component of it (``7.1``), or empty for a bought part.
        id: Characteristic id; that of a component or of a bought part is dotted the same way.
        title: In plain words.
        kind: Kind of the characteristic; offset, slope, runout and pilot beside those of the plan.
        nominal: Nominal value in ``unit``; None where there is none.
        lower: Least value that conforms; None where there is no such limit.
        upper: Greatest value that conforms; None where there is no such limit.
        unit: mm, um, mm/m, or empty for the answer of a gauge.
        datums: Datum letters in order.
        instrument: What to measure it with.
        uncertainty_wanted: Expanded uncertainty (k = 2) in ``unit``: a tenth of the tolerance, at most a fifth for a
            tight one; None where there is no tolerance.
        convention: Sign and meaning of the value, in words.
        needed: block for a row that every measured file has, bought for one that may be left out.
        general: True where the limits are those of the general tolerance.
    """

    number: str
    id: str
    title: str
    kind: str
    nominal: float | None
    lower: float | None
    upper: float | None
    unit: str
    datums: tuple[str, ...]
    instrument: str
    uncertainty_wanted: float | None
    convention: str
    needed: Literal["block", "bought"] = "block"
    general: bool = False


def inspection_rows(plan: Plan) -> tuple[InspectionRow, ...]:
    """Return the rows of the inspection sheet of a plan.

    Numbered characteristics come in the order of the drawing, each followed by the components of its vector; the
    bought parts come last.
    """
    from blockgen.evidence.bought import bought_rows
    from blockgen.evidence.components import components

    rows: list[InspectionRow] = []
    for note in numbered(plan):
        rows += [_row(note), *components(plan, note)]
    return (*rows, *bought_rows(plan))


def numbered(plan: Plan) -> Iterable[Annotation]:
    """Yield the characteristics that have a number on the drawing, in its order."""
    found = [(note.number, note) for note in plan.annotations if note.number is not None]
    return (note for _, note in sorted(found, key=lambda pair: pair[0]))


def is_through_thread(note: Annotation) -> bool:
    """Tell whether a characteristic is a thread right through, which a gauge answers with yes or no."""
    return note.kind == "thread" and note.text.endswith(" through")


def count_of(note: Annotation) -> int:
    """Return of how many equal features a call-out speaks."""
    start, found, _ = note.text.partition(_TIMES)
    return int(start) if found and start.isdigit() else 1


def _row(note: Annotation) -> InspectionRow:
    nominal, unit = (1.0, "") if is_through_thread(note) else (note.value, note.unit)
    return InspectionRow(
        str(note.number), note.id, _title(note), note.kind, nominal, *_limits(note), unit, note.datums,
        instrument(note), uncertainty_wanted(_width(note)), _convention(note), "block", note.general,
    )  # fmt: skip


def _limits(note: Annotation) -> tuple[float | None, float | None]:
    """Return least and greatest value that conform: 0 to the zone, up to a roughness, else by the deviations."""
    if is_through_thread(note):
        return 1.0, None
    if note.value is None or note.upper is None or note.lower is None:
        return None, None
    if note.kind in ZONES:
        return 0.0, note.value
    highest = round(note.value + note.upper, 6)
    return (None, highest) if note.kind == "texture" else (round(note.value + note.lower, 6), highest)


def _width(note: Annotation) -> float | None:
    """Return the width of the tolerance; None where there is none, as with a gauge that says yes or no."""
    if is_through_thread(note) or note.upper is None or note.lower is None:
        return None
    return note.upper - note.lower


def _title(note: Annotation) -> str:
    if note.id in _NAMES:
        return _NAMES[note.id]
    what, _, which = note.id.replace("_", " ").partition(".")
    screw = note.text.removeprefix(f"{count_of(note)}{_TIMES}").split(" ↧")[0].removesuffix(" through")
    name = f"{what}: {f'{which} {screw}' if note.kind == 'thread' else which}"
    return f"{name} to {', '.join(note.datums)}" if note.datums else name


def _convention(note: Annotation) -> str:
    if note.kind == "thread":
        return _GAUGE_THROUGH if is_through_thread(note) else _GAUGE_DEPTH
    if note.kind == "perpendicularity" and note.diametral:
        return "diameter of the zone over the depth of the bore"
    if note.kind in _CONVENTIONS:
        return _CONVENTIONS[note.kind]
    return "the one of the group furthest from nominal" if count_of(note) > 1 else ""
