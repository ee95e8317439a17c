"""What the heads of the base screws press on: a washer where the bare head is too much, and the counterbore for it."""

from __future__ import annotations

from blockgen.mechanics.bolts import pressure_under_head, washer_bearing_diameter
from blockgen.record import Ledger
from blockgen.sizing.joint import screw_preload
from blockgen.sizing.sources import CP, cited
from blockgen.standards.din974 import counterbore
from blockgen.standards.materials import Material
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import Thread
from blockgen.standards.washers import Washer, washer, washer_sizes

_STANDARD = "ISO 7092"
# Classes whose screws ask for hardened washers (common practice, no source).
_HARD = ("10.9", "12.9")
_PRESSURE = "VDI 2230 form, from memory: p = F / A"


def decide_head(ledger: Ledger, screw: Thread, hole: float, block: Material, *, from_below: bool) -> float:
    """Enter washer, bearing face and counterbore of the base screws; return the counterbore's diameter in mm.

    Args:
        ledger: Ledger with base_screw; entries are added.
        screw: Thread of the base screws.
        hole: Clearance hole, mm.
        block: Material under the heads.
        from_below: True where the heads sit under the base plate.
    """
    bare = cap_screw(screw.size).washer_face
    small = None if from_below else _small_washer(screw)
    preload = screw_preload(ledger, screw, ledger.text("base.property_class"))
    pressure, limit = pressure_under_head(preload, bare, hole), block.bearing_pressure
    wanted = small is not None and limit is not None and pressure > limit
    using = ("base_screw", "block.material", "base.property_class", "base_screw_hole")
    if wanted and small is not None:
        return _with_washer(ledger, screw, small, using, f"{pressure:.0f} MPa under the bare head > {limit:g}")
    rule = "bearing face of the head"
    ledger.decide("base_bearing_diameter", bare, "mm", rule, using, cited("iso4762"))
    head = counterbore(screw.size).diameter
    ledger.decide("base_counterbore_diameter", head, "mm", "series 1", ("base_screw",), cited("din974"))
    return head


def _small_washer(screw: Thread) -> Washer | None:
    """Return the washer for a socket head, or None where there is none or no counterbore takes it."""
    if screw.size not in washer_sizes(_STANDARD) or counterbore(screw.size).with_small_washer is None:
        return None
    return washer(screw.size, _STANDARD)


def _with_washer(ledger: Ledger, screw: Thread, small: Washer, using: tuple[str, ...], why: str) -> float:
    hard = ledger.text("base.property_class") in _HARD
    name = f"{_STANDARD} {screw.size} {'300' if hard else '200'} HV"
    source = f"{_PRESSURE}; {cited('washers')}"
    ledger.decide("base_washer", name, "", f"washer under the head: {why} allowed", using, source)
    ledger.decide("base_washer_thickness", small.thickness, "mm", "of the washer", ("base_washer",), cited("washers"))
    outer = washer_bearing_diameter(cap_screw(screw.size).washer_face, small.outer, small.thickness)
    rule = f"lesser of the washer, {small.outer:g}, and the head's face + 1.6 x its thickness"
    ledger.decide("base_bearing_diameter", outer, "mm", rule, ("base_washer",), "VDI 2230 form, from memory")
    head = counterbore(screw.size).with_small_washer or counterbore(screw.size).diameter
    rule = "series 4: takes the washer"
    ledger.decide("base_counterbore_diameter", head, "mm", rule, ("base_washer",), f"{cited('din974')}; {CP}")
    return head
