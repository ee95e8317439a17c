"""Screws and pins with length, class, torque and engagement."""

from __future__ import annotations

from collections.abc import Sequence

from blockgen.mechanics.bolts import effective_bearing_diameter, stress_area, torsion_factor
from blockgen.plan import Fastener, Feature
from blockgen.record import Ledger
from blockgen.sizing.base_screws import BaseScrew
from blockgen.sizing.joint import screw_preload, screw_torque, sure_preload
from blockgen.sizing.mating import Flange
from blockgen.sizing.seats import FLANGE_CLASS, lengths_source
from blockgen.sizing.window import least_flange_engagement
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.iso898 import property_class
from blockgen.standards.pins import pin_length
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import Thread

_VDI = "VDI 2230 form, from memory"


def decide_screw_into_flange(ledger: Ledger, flange: Flange) -> None:
    """Decide the length in mm of the screws into a tapped flange, driven from the window; else nothing."""
    if not flange.tapped:
        return
    end, clamped = flange.end, ledger.number(f"{flange.end}_wall")
    lengths, wanted = cap_screw(flange.thread.size).lengths, clamped + least_flange_engagement(ledger, flange)
    deepest = clamped + ledger.number_or(f"{end}.flange_thickness", float("inf"))
    reaching = [n for n in lengths if wanted <= n <= deepest]
    within = [n for n in lengths if n <= deepest]
    length = reaching[0] if reaching else (within or lengths)[-1]
    using = (f"{end}_wall", "practice.engagement_flange", f"{end}.flange_thickness")
    rule = "shortest preferred length of at least wall + 1.25 d, not longer than wall + flange"
    ledger.decide(f"{end}_screw_length", length, "mm", rule, using, lengths_source(flange.thread))
    rule = f"{end}_screw_length - {end}_wall"
    ledger.decide(
        f"{end}_engagement", round(length - clamped, 6), "mm", rule, (f"{end}_screw_length", f"{end}_wall"), ""
    )


def fasteners(
    ledger: Ledger, flanges: tuple[Flange, Flange], screw: BaseScrew, features: Sequence[Feature]
) -> tuple[Fastener, ...]:
    """Return every group of equal screws and pins, and enter their preload and torque.

    Args:
        ledger: Ledger of a sized block.
        flanges: Bearing and motor flange.
        screw: The base screw.
        features: Cavities of the block.
    """
    count = len(ledger.points("base_pattern"))
    rows = [_base(ledger, screw, count), *(_flange(ledger, flange, features) for flange in flanges)]
    if ledger.known("dowel_diameter"):
        rows.append(_dowel(ledger))
    return tuple(rows)


def _tightening(ledger: Ledger, where: str, screw: Thread, grade: str) -> tuple[float, float]:
    """Enter preload in N and torque in N*m of one group and return both."""
    head = cap_screw(screw.size).washer_face
    preload = screw_preload(ledger, screw, grade)
    torque = screw_torque(ledger, screw, preload, head, clearance_hole(screw.size))
    using = ("practice.preload_use", "practice.thread_friction", f"{where}_screw", f"{where}_thread")
    friction = ledger.number("practice.thread_friction")
    strength = property_class(grade, screw.diameter).yield_strength
    area = stress_area(screw.pitch_diameter, screw.root_diameter)
    torsion = torsion_factor(screw.pitch, screw.pitch_diameter, screw.root_diameter, friction)
    rule = f"practice.preload_use x {strength:g} x {area:.7g} / {torsion:.7g}; yield point, stress area, torsion"
    ledger.decide(f"{where}_preload", round(preload, 1), "N", rule, using, _VDI)
    mean = effective_bearing_diameter(head, clearance_hole(screw.size)) / 2
    mu = "practice.thread_friction"
    rule = (
        f"{where}_preload / 1000 x ({screw.pitch:.6g} / (2 x 3.141593) + 0.57735 x {screw.pitch_diameter:.7g} x {mu} "
        f"+ {mean:.7g} x {mu}); pitch, pitch diameter, half the mean diameter under the head"
    )
    ledger.decide(f"{where}_torque", round(torque, 2), "N*m", rule, (*using, f"{where}_preload"), _VDI)
    _sure(ledger, where, preload)
    return round(preload, 1), round(torque, 2)


def _sure(ledger: Ledger, where: str, preload: float) -> None:
    """Enter the preload in N that remains after the scatter of the tool and embedding."""
    scatter = f"practice.scatter_{ledger.text('base.tightening')}"
    rule = f"{where}_preload / {scatter} - practice.embedding x {where}_preload"
    using = (f"{where}_preload", scatter, "practice.embedding")
    ledger.decide(f"{where}_preload_least", round(sure_preload(ledger, preload), 1), "N", rule, using, _VDI)


def _base(ledger: Ledger, screw: BaseScrew, count: int) -> Fastener:
    grade = ledger.text("base.property_class")
    preload, torque = _tightening(ledger, "base", screw.thread, grade)
    refs = {
        "length": "base_screw_length",
        "torque": "base_torque",
        "preload": "base_preload",
        "engagement": "base_engagement",
    }
    return Fastener(
        "base", cap_screw(screw.thread.size).standard, screw.thread.size, ledger.number("base_screw_length"),
        grade, count, torque, preload, ledger.number("base_engagement"), ledger.text("base_washer") or None, refs,
    )  # fmt: skip


def _flange(ledger: Ledger, flange: Flange, features: Sequence[Feature]) -> Fastener:
    end, name = flange.end, flange.thread.size
    preload, torque = _tightening(ledger, end, flange.thread, FLANGE_CLASS)
    length = ledger.number(f"{end}_screw_length") if ledger.known(f"{end}_screw_length") else None
    engaged = None if length is None else ledger.number(f"{end}_engagement")
    through = any(feature.through for feature in features if feature.group == f"{end}_threads")
    if engaged is not None and through:
        engaged = min(engaged, ledger.number(f"{end}_wall"))
    refs = {"length": f"{end}_screw_length", "torque": f"{end}_torque", "preload": f"{end}_preload"}
    return Fastener(
        f"{end}_flange", cap_screw(name).standard, name, length, FLANGE_CLASS, len(flange.positions), torque, preload,
        engaged, None, refs,
    )  # fmt: skip


def _dowel(ledger: Ledger) -> Fastener:
    pin = ledger.number("dowel_diameter")
    wanted = 2 * ledger.number("practice.dowel_depth") * pin
    length = pin_length(pin, wanted)
    return Fastener(
        "dowel", "ISO 8734", f"{pin:g} m6", length, "hardened", 2, None, None, None, None, {"size": "dowel_diameter"}
    )  # fmt: skip
