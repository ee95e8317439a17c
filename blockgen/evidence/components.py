"""Rows for the components of vectors: where the motor bore stands, how the seats lean."""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.evidence.characteristics import InspectionRow
from blockgen.evidence.instruments import instrument_of, significant, uncertainty_wanted
from blockgen.plan import Annotation, Plan

BORE_OFFSET = "motor_bore.offset"
MOTOR_SLOPE = "motor_seat.slope"
LEVEL_SLOPE = "bearing_seat.slope_z"

_ACROSS = "seen from the motor, plus is to the right"
_UP = "plus is up"


@dataclass(frozen=True, slots=True)
class _Component:
    """One component: what follows the feature in its id, title, kind and the meaning of its sign."""

    id: str
    title: str
    kind: str
    convention: str


_OF = {
    "motor_bore.coaxiality": (
        _Component(f"{BORE_OFFSET}_y", "motor bore: centre off the shaft axis, across (y)", "offset",
                   f"centre of the bore at the motor seat less the axis through B square to A; {_ACROSS}"),
        _Component(f"{BORE_OFFSET}_z", "motor bore: centre off the shaft axis, up (z)", "offset",
                   f"centre of the bore at the motor seat less the axis through B square to A; {_UP}"),
    ),
    "motor_seat.parallelism": (
        _Component(f"{MOTOR_SLOPE}_y", "motor seat: slope across (y)", "slope",
                   "line square to the motor seat against that of A; seen from the motor, plus where it goes "
                   "to the right on its way to the motor: the block is shorter on the right then"),
        _Component(f"{MOTOR_SLOPE}_z", "motor seat: slope up (z)", "slope",
                   "lean of the line square to the motor seat against that of A; plus where it rises on its way to the "
                   "motor: the block is shorter at the top then"),
    ),
    "bearing_seat.perpendicularity": (
        _Component(LEVEL_SLOPE, "bearing seat: shaft axis to the base (z)", "slope",
                   "lean of the line square to A against the base C; plus where it rises on its way to the motor"),
    ),
}  # fmt: skip


def components(plan: Plan, note: Annotation) -> tuple[InspectionRow, ...]:
    """Return the rows of a characteristic's components; none for one that is no vector.

    They have no limits of their own: the zone that they make is judged.
    """
    parts = _OF.get(note.id, ())
    return tuple(_row(plan, note, part, f"{note.number}.{place}") for place, part in enumerate(parts, 1))


def _row(plan: Plan, note: Annotation, part: _Component, number: str) -> InspectionRow:
    sloping = part.kind == "slope"
    wanted = uncertainty_wanted(note.value)
    if wanted is not None:
        wanted = significant(1000 * wanted / measuring_diameter(plan, note.feature)) if sloping else wanted / 2
    return InspectionRow(
        number, part.id, part.title, part.kind, 0.0, None, None, "mm/m" if sloping else "mm", _datums(note),
        instrument_of(part.kind), wanted, part.convention,
    )  # fmt: skip


def _datums(note: Annotation) -> tuple[str, ...]:
    """Return the datums of a component: y and z of the shaft's own system also need the level of the base."""
    return note.datums if "C" in note.datums else (*note.datums, "C")


def measuring_diameter(plan: Plan, feature: str) -> float:
    """Return the diameter in mm over which a seat's tilt counts: the bolt circle, else the pilot."""
    end = feature.partition("_")[0]
    record = plan.records.get(f"{end}.bolt_circle")
    known = record is not None and record.value is not None
    return plan.number(f"{end}.bolt_circle" if known else f"{end}.pilot_diameter")
