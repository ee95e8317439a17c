"""What the motors of a family share before anything is sized: longest pilot, depth of equal threads; their seats."""

from __future__ import annotations

from blockgen.record import Ledger
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
        greatest = max(view.number_or(f"motor.{name}", 0.0) for view in views.values())
        using = tuple(f"{e}.{name}" for e in views)
        ledger.decide(f"family_motor_{name}", greatest, "mm", rule, using, CP)
    deepest = max((seat.blind_wall for _, seat in seats.values() if seat is not None), default=0.0)
    ledger.decide("family_motor_blind_wall", deepest, "mm", "deepest tapped holes of the family", (), CP)
    thread = seats[entry][0].thread
    alike = [seat for other, seat in seats.values() if other.thread == thread and seat is not None]
    if alike and seats[entry][1] is not None:
        depth = max(seat.thread_depth for seat in alike)
        rule = f"deepest full thread that a motor of the family asks of {thread.designation}"
        ledger.decide("family_motor_thread_depth", depth, "mm", rule, (), CP)
