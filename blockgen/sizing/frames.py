"""Named frames of the block: where the mating parts sit."""

from __future__ import annotations

from collections.abc import Mapping

from blockgen.plan import Frame
from blockgen.record import Ledger


def frames(ledger: Ledger) -> Mapping[str, Frame]:
    """Return the frames of bearing seat, motor seat, base and coupling centre; x along the shaft, z up."""
    height, length = ledger.number("shaft_height"), ledger.number("length")
    centre = ledger.number("coupling_position") + ledger.number("coupling.length") / 2
    along, up = (1.0, 0.0, 0.0), (0.0, 0.0, 1.0)
    return {
        "bearing_seat": Frame((0.0, 0.0, height), along, up),
        "motor_seat": Frame((length, 0.0, height), along, up),
        "base": Frame((0.0, 0.0, 0.0), along, up),
        "coupling_centre": Frame((centre, 0.0, height), along, up),
    }
