"""Rows for the bought parts: sizes, run-outs and vectors of motor, bearing unit and screw; all may be left out."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from blockgen.evidence.characteristics import InspectionRow
from blockgen.evidence.components import measuring_diameter
from blockgen.evidence.instruments import instrument_of, significant, uncertainty_wanted
from blockgen.plan import Contributor, Plan

_MOTOR = (
    "motor with its mark (connector or terminal box) up; seen from the rear of the motor y is to the right, z is up; "
    "who looks at its flange has y to the left"
)
_UNIT = "unit as it will be mounted; seen from the motor y is to the right and z is up"
_RISES = "plus where the shaft axis goes that way as it runs towards the rear of the motor"


@dataclass(frozen=True, slots=True)
class _Vector:
    """A vector of a bought part: start of its ids, the contributor that it stands for, and its words."""

    stem: str
    stands_for: str
    title: str
    kind: str
    convention: str


VECTORS = (
    _Vector("motor.spigot", "motor.spigot_runout", "motor: shaft axis off the spigot", "offset",
            f"shaft axis at the mounting face less centre of the spigot; {_MOTOR}"),
    _Vector("motor.face_slope", "motor.face_runout", "motor: shaft axis leaning against its face", "slope",
            f"{_RISES}, against the line square to the mounting face; {_MOTOR}"),
    _Vector("bearing.offset", "bearing.runout", "bearing unit: shaft axis off the pilot", "offset",
            f"shaft axis at the flange less centre of the pilot; {_UNIT}"),
    _Vector("bearing.slope", "bearing.face_runout", "bearing unit: shaft axis leaning against its flange", "slope",
            f"{_RISES}, against the line square to the flange; {_UNIT}"),
)  # fmt: skip


def bought_rows(plan: Plan) -> Iterable[InspectionRow]:
    """Yield the rows of what is bought, in the order pilots, run-outs, vectors."""
    causes = {cause.characteristic: cause for cause in plan.contributors}
    yield from (_pilot(plan, cause) for cause in plan.contributors if cause.limits and enters(plan, cause.end))
    yield from (_run_out(plan, key) for key in causes if key in plan.records)
    for vector in VECTORS:
        if vector.stands_for in causes:
            yield from _vector(plan, vector)


def enters(plan: Plan, end: str) -> bool:
    """Tell whether a part has a pilot that enters the block; a recess takes a loose ring instead."""
    return plan.text(f"{end}.pilot_form") != "recessed"


def pilot_limits(plan: Plan, cause: Contributor) -> tuple[float, float]:
    """Return least and greatest diameter of a pilot in mm: the bore's less the clearance's.

    Raises:
        ValueError: the contributor is no clearance.
    """
    if cause.limits is None:
        raise ValueError(f"{cause.id} is no clearance: only the pilots have one")
    bore = plan.records[f"{cause.end}_bore"]
    nominal, (low, high) = plan.number(f"{cause.end}_bore"), cause.limits
    return round(nominal + (bore.upper or 0.0) - high, 6), round(nominal + (bore.lower or 0.0) - low, 6)


def _pilot(plan: Plan, cause: Contributor) -> InspectionRow:
    low, high = pilot_limits(plan, cause)
    key, name = f"{cause.end}.pilot_diameter", _part(cause.end)
    return InspectionRow(
        "", key, f"{name}: diameter of the pilot", "pilot", plan.number(key), low, high, "mm", (), "micrometer",
        uncertainty_wanted(high - low), "the piece that goes into this block", "bought",
    )  # fmt: skip


def _run_out(plan: Plan, key: str) -> InspectionRow:
    part, _, which = key.partition(".")
    title = f"{_part(part)}: {which.replace('_runout', ' run-out').replace('runout', 'run-out')}"
    limit = plan.number(key)
    return InspectionRow(
        "", key, title, "runout", None, 0.0, limit, "mm", (), instrument_of("runout"), uncertainty_wanted(limit),
        "full indicator movement; not needed where the vector is measured", "bought",
    )  # fmt: skip


def _vector(plan: Plan, vector: _Vector) -> Iterable[InspectionRow]:
    sloping = vector.kind == "slope"
    wanted = uncertainty_wanted(plan.number(vector.stands_for))
    if wanted is not None:
        across = measuring_diameter(plan, vector.stem.partition(".")[0])
        wanted = significant(1000 * wanted / across) if sloping else wanted / 2
    for letter, word in (("y", "across"), ("z", "up")):
        yield InspectionRow(
            "", f"{vector.stem}_{letter}", f"{vector.title}, {word} ({letter})", vector.kind, 0.0, None, None,
            "mm/m" if sloping else "mm", (), instrument_of(vector.kind), wanted, vector.convention, "bought",
        )  # fmt: skip


def _part(end: str) -> str:
    return {"bearing": "bearing unit"}.get(end, end)
