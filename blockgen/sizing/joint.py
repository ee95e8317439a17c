"""Preload, torque and thread limits of a screw of the tables, with the friction that the ledger holds."""

from __future__ import annotations

from blockgen.errors import InputError, Problem
from blockgen.mechanics.bolts import (
    assembly_preload,
    effective_bearing_diameter,
    least_preload,
    stress_area,
    tightening_torque,
)
from blockgen.mechanics.stripping import ThreadLimits
from blockgen.record import Ledger
from blockgen.standards.iso898 import property_class
from blockgen.standards.screws import cap_screw
from blockgen.standards.tables import quoted
from blockgen.standards.threads import Thread, thread


def known_thread(name: str, key: str) -> Thread:
    """Return a thread that the spec names.

    Raises:
        InputError: the tables have no such thread, or no screw of it.
    """
    try:
        found = thread(name)
        cap_screw(found.size)
    except ValueError as error:
        raise InputError(
            [Problem("", None, key, quoted(name), "a thread of the tables with its screw", str(error))]
        ) from error
    return found


def thread_limits(screw: Thread) -> ThreadLimits:
    """Return the limits that give the least shear areas of a thread of the tables."""
    return ThreadLimits(
        screw.pitch,
        screw.external_major_min,
        screw.external_pitch_min,
        screw.internal_pitch_max,
        screw.internal_minor_max,
    )


def screw_preload(ledger: Ledger, screw: Thread, grade: str) -> float:
    """Return the assembly preload in N of a screw tightened to the practised part of its yield point."""
    return assembly_preload(
        pitch=screw.pitch,
        d2=screw.pitch_diameter,
        d3=screw.root_diameter,
        yield_strength=property_class(grade, screw.diameter).yield_strength,
        thread_friction=ledger.number("practice.thread_friction"),
        utilisation=ledger.number("practice.preload_use"),
    )


def screw_torque(ledger: Ledger, screw: Thread, preload: float, head: float, hole: float) -> float:
    """Return the tightening torque in N*m; head (washer face) and hole diameters in mm."""
    friction = ledger.number("practice.thread_friction")
    return tightening_torque(
        preload,
        pitch=screw.pitch,
        d2=screw.pitch_diameter,
        bearing_diameter=effective_bearing_diameter(head, hole),
        thread_friction=friction,
        head_friction=friction,
    )


def sure_preload(ledger: Ledger, preload: float) -> float:
    """Return the preload in N that remains after the tool's scatter and embedding."""
    scatter = ledger.number(f"practice.scatter_{ledger.text('base.tightening')}")
    return least_preload(preload, scatter, ledger.number("practice.embedding") * preload)


def screw_reserve(ledger: Ledger, screw: Thread, grade: str) -> float:
    """Return the load in N that a tightened screw can still take on: what tightening leaves of its yield point."""
    left = 1 - ledger.number("practice.preload_use")
    area = stress_area(screw.pitch_diameter, screw.root_diameter)
    return left * property_class(grade, screw.diameter).yield_strength * area
