"""Stripping of a screw's thread and of the thread in which it sits; shared by base and flange joints."""

from __future__ import annotations

from blockgen.checks.finding import Finding, Question, at_least, not_assessed
from blockgen.mechanics.stripping import external_shear_area, internal_shear_area, shear_force
from blockgen.plan import Fastener, Plan
from blockgen.sizing.joint import thread_limits
from blockgen.standards.iso898 import property_class
from blockgen.standards.threads import thread

MODEL = (
    "FED-STD-H28/2 areas at least material, from memory; every turn carries alike, shear strength 0.6 of tensile; "
    "other models differ up to twofold"
)


def strip(plan: Plan, fastener: Fastener, end: str, part: str, working: float) -> Finding:
    """Compare the force at which the weaker thread strips with full preload and load.

    Args:
        plan: What was decided.
        fastener: The screws.
        end: base, bearing or motor.
        part: ``block`` or ``base``: which is tapped.
        working: Load in N that the screw feels beside its preload.
    """
    name = plan.text("base_screw" if end == "base" else f"{end}_thread")
    ask = Question(
        f"{end}_strip", f"Threads of the {end} screws hold at full preload",
        (f"{end}_preload", f"{end}_engagement", f"{end}_thread", "base_screw", f"{part}_tensile_strength",
         "limits.strip_safety", "thrust_away"),
        f"a thread strips: longer engagement, a stronger {part}, or a lower torque", MODEL,
    )  # fmt: skip
    if fastener.engagement is None or fastener.preload is None:
        return not_assessed(plan, ask, f"{end}.flange_thickness")
    screw = thread(name)
    limits = thread_limits(screw)
    tapped = shear_force(internal_shear_area(limits, fastener.engagement), plan.number(f"{part}_tensile_strength"))
    tensile = property_class(fastener.property_class, screw.diameter).tensile
    own = shear_force(external_shear_area(limits, fastener.engagement), tensile)
    force = fastener.preload + working
    text = (
        f"thread in the {part} {tapped / force:.2f}, thread of the screw {own / force:.2f} times {force / 1000:.1f} kN"
    )
    return at_least(plan, ask, min(tapped, own) / force, plan.number("limits.strip_safety"), "", text)
