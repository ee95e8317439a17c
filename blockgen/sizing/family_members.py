"""What the motors of a family share before anything is sized: longest pilot, depth of equal threads; their seats."""

from __future__ import annotations

from dataclasses import replace

from blockgen.record import Ledger, Record
from blockgen.sizing.defaults import complete
from blockgen.sizing.family import FIRST, Member, Records, alone, entries
from blockgen.sizing.loads import decide_loads
from blockgen.sizing.material import resolve_material
from blockgen.sizing.mating import Flange, flange
from blockgen.sizing.seats import SeatThread, decide_seat_thread
from blockgen.sizing.sources import CP

Seat = tuple[Flange, SeatThread | None]


def family_start(records: Records) -> tuple[Ledger, tuple[Member, ...]]:
    """Return the ledger to size from and the further motors; none of these where the spec has one motor only.

    Args:
        records: Given and preset records, patterns already turned.
    """
    start, all_entries = complete(records), entries(records)
    if len(all_entries) == 1:
        return start, ()
    views = {entry: complete(alone(records, entry)) for entry in all_entries}
    seats = {entry: seat_of(view.copy()) for entry, view in views.items()}
    for entry, ledger in (*views.items(), (FIRST, start)):
        _enter_shared(ledger, entry, views, seats)
    kin = []
    for entry in all_entries[1:]:
        ledger = views[entry]
        kin.append(Member(entry, ledger, *seat_of(ledger)))
    return start, tuple(kin)


def seat_of(ledger: Ledger) -> Seat:
    """Return the flange of a single motor and its tapped holes; both are entered."""
    decide_loads(ledger)
    found = flange(ledger, FIRST)
    return found, decide_seat_thread(ledger, found, resolve_material(ledger, "block"))


def _enter_shared(ledger: Ledger, entry: str, views: dict[str, Ledger], seats: dict[str, Seat]) -> None:
    """Enter what the motors of a family ask of one another's holes and bore."""
    for name, rule in (
        ("pilot_length", "longest pilot of the family"),
        ("flange_size", "greatest flange of the family"),
    ):
        key = f"motor.{name}"
        asked = {e: view for e, view in views.items() if view.known(key)}
        inputs = {f"{e}.{name}": replace(view[key].as_input(), ref=f"{e}.{name}") for e, view in asked.items()}
        greatest = max((view.number(key) for view in asked.values()), default=0.0)
        ledger.enter(Record(f"family_motor_{name}", greatest, "mm", "sized", rule, inputs, CP))
    deepest = max((seat.blind_wall for _, seat in seats.values() if seat is not None), default=0.0)
    ledger.decide("family_motor_blind_wall", deepest, "mm", "deepest tapped holes of the family", (), CP)
    _enter_equal_threads(ledger, entry, seats)


def _enter_equal_threads(ledger: Ledger, entry: str, seats: dict[str, Seat]) -> None:
    """Enter how deep the holes of one thread are, whichever motor asks for it: they are drilled alike."""
    own, seat = seats[entry]
    if seat is not None:
        depth = max(s.thread_depth for other, s in seats.values() if s is not None and other.thread == own.thread)
        rule = f"deepest full thread that a motor of the family asks of {own.thread.designation}"
        ledger.decide("motor_thread_depth_alike", depth, "mm", rule, (), CP)
