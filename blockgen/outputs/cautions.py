"""The fixed safety cautions that stand with every result."""

from __future__ import annotations

from blockgen.plan import Plan

_VERTICAL = (
    "A vertical or inclined axis falls when motor and screw are uncoupled, and a motor brake then holds nothing: "
    "prop the carriage before the coupling is opened."
)
_FIXED = (
    "Stored energy: isolate the drive, wait for its capacitors, relieve springs and counterweights before hands go in.",
    "Lifting: know the mass before the block is moved; use a hoist where it is heavy for one person.",
    "Edges are sharp until they are broken: deburr before the block is handled, wear gloves until then.",
    "Pinch points: coupling, carriage and screw crush fingers; turn by hand only with the drive locked out.",
    "Fit a guard over the coupling window before the drive is switched on.",
    "First-pass design for review by a qualified engineer: makers' data, local codes and licensed practice win.",
)


def cautions(plan: Plan) -> tuple[str, ...]:
    """Return the cautions; the one about falling comes first and louder where the axis is known to be vertical."""
    if plan.text("job.gravity").endswith("x"):
        return (f"THIS AXIS IS VERTICAL. {_VERTICAL}", *_FIXED)
    return (_VERTICAL, *_FIXED)
