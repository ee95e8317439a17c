"""Datums, geometrical tolerances and surface textures.

A short pilot bore cannot define a direction, so the bearing seat is the primary datum A and gives the direction of the
shaft; the bearing bore is the secondary datum B and gives its centre; the base face is C and gives height and level.
"""

from __future__ import annotations

from collections.abc import Iterable

from blockgen.plan import Annotation
from blockgen.record import Ledger
from blockgen.sizing.sources import CP

DATUMS = (("A", "bearing_seat", "bearing_seat", "primary: gives the direction of the shaft"),
          ("B", "bearing_bore", "bearing_bore.bore", "secondary: gives the centre of the shaft"),
          ("C", "base", "base", "gives height and level"))  # fmt: skip

# id, face, key of the zone, datums, cylinder, reason
_FORM = (
    ("bearing_seat.flatness", "bearing_seat", "seat_flatness", (), False, "a flat datum: the unit does not rock"),
    ("bearing_seat.perpendicularity", "bearing_seat", "block.seat_perpendicularity", ("C",), False,
     "shaft parallel to the guide"),
    ("bearing_bore.perpendicularity", "bearing_bore.bore", "block.seat_perpendicularity", ("A",), True,
     "the pilot enters while the flange lies flat"),
    ("motor_bore.coaxiality", "motor_bore.bore", "block.coaxiality", ("A", "B"), True,
     "offset between journal and motor shaft"),
    ("motor_seat.parallelism", "motor_seat", "block.seat_perpendicularity", ("A",), False, "angle of the motor shaft"),
    ("base.flatness", "base", "block.base_flatness", (), False, "block does not bend as it is screwed down"),
)  # fmt: skip

_TEXTURES = (
    ("bearing_bore", "bearing_bore.bore", "fitted bore"),
    ("motor_bore", "motor_bore.bore", "fitted bore"),
    ("bearing_seat", "bearing_seat", "flange seat"),
    ("motor_seat", "motor_seat", "flange seat"),
    ("base", "base", "joint to the machine base"),
)


def datums() -> Iterable[Annotation]:
    """Yield the three datum features."""
    for letter, feature, face, reason in DATUMS:
        yield Annotation(f"datum.{letter}", "datum", feature, face, None, text=letter, reason=reason)


def form(ledger: Ledger) -> Iterable[Annotation]:
    """Yield the geometrical tolerances of seats, bores and base."""
    zone = round(ledger.number("block.seat_perpendicularity") / 2, 4)
    rule = "half of block.seat_perpendicularity; a datum is flatter than what is squared to it"
    ledger.decide("seat_flatness", zone, "mm", rule, ("block.seat_perpendicularity",), CP)
    for identifier, face, key, letters, cylinder, reason in _FORM:
        feature, _, kind = identifier.partition(".")
        width = ledger.number(key)
        yield Annotation(
            identifier, kind, feature, face, width, "mm", width, 0.0, datums=letters, diametral=cylinder, ref=key,
            covers=(identifier,), reason=reason,
        )  # fmt: skip


def textures(ledger: Ledger) -> Iterable[Annotation]:
    """Yield the textures of joined faces and of all others."""
    for feature, face, reason in _TEXTURES:
        yield _texture(ledger, feature, face, "practice.texture_joined", reason)
    yield _texture(ledger, "block", "all_other", "practice.texture_other", "faces that touch nothing")


def _texture(ledger: Ledger, feature: str, face: str, key: str, reason: str) -> Annotation:
    roughness = ledger.number(key)
    return Annotation(
        f"{feature}.texture", "texture", feature, face, roughness, "um", 0.0, -roughness, text="Ra {}", ref=key,
        covers=(f"{feature}.texture",), reason=reason,
    )  # fmt: skip
