"""Parts that will not go together: a measured size leaves no room for its mate."""

from __future__ import annotations

from collections.abc import Iterator
from math import hypot

from blockgen.evidence.bought import enters, pilot_limits
from blockgen.evidence.characteristics import is_through_thread, numbered
from blockgen.evidence.conformity import judged
from blockgen.evidence.measurement import Measured
from blockgen.plan import Contributor, Plan
from blockgen.standards.threads import thread

_HAIR = 1e-9


def misfits(plan: Plan, measured: Measured) -> Iterator[str]:
    """Yield in words what does not fit, each with the numbers that say so."""
    for cause in plan.contributors:
        if cause.limits is not None and enters(plan, cause.end):
            yield from _pilot(plan, measured, cause)
    for end in ("bearing", "motor"):
        yield from _bottom(plan, measured, end)
        yield from _screws(plan, measured, end)
    yield from _threads(plan, measured)
    yield from _length(plan, measured)


def _pilot(plan: Plan, measured: Measured, cause: Contributor) -> Iterator[str]:
    """A pilot enters where it is not greater than its bore; a class of its own counts where it was not measured."""
    hole, pilot = (measured.values.get(f"{cause.end}{key}") for key in ("_bore.diameter", ".pilot_diameter"))
    if hole is None:
        return
    if pilot is not None:
        doubt = hypot(hole.uncertainty, pilot.uncertainty)
        if pilot.value - hole.value > doubt + _HAIR and (cause.limits or (0.0,))[0] >= 0:
            yield (
                f"the {cause.end} pilot does not enter: {pilot.value:g} mm in a bore of {hole.value:g} mm, "
                f"{pilot.value - hole.value:.3f} mm too great"
            )
        return
    greatest = pilot_limits(plan, cause)[1]
    if judged(hole.row, hole.value, hole.uncertainty) == ("out", "below") and hole.value < greatest:
        yield (
            f"the {cause.end} bore of {hole.value:g} mm is too small for a pilot of up to {greatest:g} mm; measure "
            f"{cause.end}.pilot_diameter, or open the bore to {hole.row.lower:g} mm at least"
        )


def _bottom(plan: Plan, measured: Measured, end: str) -> Iterator[str]:
    depth = measured.values.get(f"{end}_bore.depth")
    if depth is None or not enters(plan, end):
        return
    length = plan.number(f"{end}.pilot_length")
    if depth.value + depth.uncertainty < length:
        yield f"the {end} pilot of {length:g} mm meets the bottom of its bore, {depth.value:g} mm deep: no flat seat"


def _screws(plan: Plan, measured: Measured, end: str) -> Iterator[str]:
    """Screws enter where each hole stands off by no more than half the clearance of the screw in its flange."""
    record, place = plan.records.get(f"{end}.bolt_hole"), measured.values.get(f"{end}_threads.position")
    threads = [f.thread for f in plan.features if f.group == f"{end}_threads" and f.thread]
    if record is None or record.value is None or place is None or not threads:
        return
    room = plan.number(f"{end}.bolt_hole") - thread(threads[0].rpartition("-")[0]).diameter
    if place.value - place.uncertainty > room:
        yield f"screws of the {end} flange do not enter: holes {place.value:g} mm off, {room:.2f} mm are free"


def _threads(plan: Plan, measured: Measured) -> Iterator[str]:
    engaged = {f.where: f.engagement for f in plan.fasteners}
    for note in numbered(plan):
        found = measured.values.get(note.id)
        if note.kind != "thread" or found is None:
            continue
        where = f"{note.feature.removesuffix('_threads')}_flange"
        need = engaged.get(where)
        if found.value == 0:
            yield f"{found.row.title}: the gauges refuse it"
        elif not is_through_thread(note) and need and found.value + found.uncertainty < need:
            yield f"{found.row.title}: {found.value:g} mm deep, the screws meet its end at {need:g} mm and do not clamp"


def _length(plan: Plan, measured: Measured) -> Iterator[str]:
    found = measured.values.get("block.length")
    if found is None:
        return
    low, high = plan.number("length_min"), plan.number("length_max")
    if not low - found.uncertainty <= found.value <= high + found.uncertainty:
        yield f"the shafts and the coupling need {low:g} to {high:g} mm between the seats; there are {found.value:g} mm"
