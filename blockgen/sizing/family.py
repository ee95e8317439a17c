"""The further motors of a family: each as if it alone were mounted, and the block as each of them sees it.

A family is one block for several motors, of which one at a time is mounted. Every rule is written for one motor; it
sees a further motor through a ledger of its own, in which that motor stands under the plain ``motor.`` keys.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, replace
from functools import lru_cache

from blockgen.errors import Conflict, Cure, InfeasibleError, InputError
from blockgen.record import Ledger, Record
from blockgen.sizing.mating import Flange
from blockgen.sizing.seats import SeatThread
from blockgen.sizing.sources import CP

FIRST = "motor"
_ENTRY = re.compile(r"family\.\d+")
# What the motor's end of the block has in common for all motors.
_BLOCK = "wall|bore|through_bore|shaft_height|pilot_depth"
_DOTTED = re.compile(r"(?<![\w.])motor\.")
_PLAIN = re.compile(rf"(?<![A-Za-z0-9_])motor_(?!\d|{_BLOCK})")
# What the fitter sets anew with each motor.
_SET = ("coupling_low", "coupling_high", "coupling_position", "journal_grip", "shaft_gap",
        "coupling_clearance_in_window")  # fmt: skip
_SET_WORD = re.compile(rf"\b({'|'.join(_SET)})\b")
_NAME = re.compile(r"motor_(\d+)_")
# Least wall of an adapter ring, mm (common practice, no source).
_RING_LEAST = 2.0
# Pilots nearer than half of 0.0001 in are one size: a sheet in inches rounds to that, mm (arithmetic).
_ONE_SIZE = 0.00127

Records = Mapping[str, Record]


@dataclass(frozen=True, slots=True)
class Member:
    """One further motor as the rules see it.

    Args:
        entry: Its table in the spec, such as ``family.0``.
        ledger: What is known of it and its seat, under the keys of a single motor.
        flange: Its flange.
        seat: Its tapped holes; None for a tapped flange.
    """

    entry: str
    ledger: Ledger
    flange: Flange
    seat: SeatThread | None

    @property
    def name(self) -> str:
        """Return what its features and values begin with: ``motor_2`` for the first further motor."""
        return name_of(self.entry)

    @property
    def outline(self) -> Flange:
        """Return the flange under the name of its table, for rules that only look at its size."""
        return replace(self.flange, end=self.entry)


def entries(records: Records) -> tuple[str, ...]:
    """Return the tables of all motors of a spec: ``motor``, then ``family.0`` and so on."""
    found = {match[0] for key in records if key.startswith("family.") and (match := _ENTRY.match(key))}
    return (FIRST, *sorted(found, key=lambda entry: int(entry.partition(".")[2])))


def name_of(entry: str) -> str:
    """Return what features and values of a motor begin with: ``motor``, ``motor_2`` and so on."""
    return FIRST if entry == FIRST else f"motor_{int(entry.partition('.')[2]) + 2}"


def entry_of(name: str) -> str | None:
    """Return the table of the further motor to which a feature or value belongs by its name; None for any other."""
    match = _NAME.match(name)
    return f"family.{int(match[1]) - 2}" if match else None


def title_of(records: Records, entry: str) -> str:
    """Return a motor in words: its number in the spec, and its name where it has one."""
    record = records.get(f"{entry}.name")
    named = "" if record is None or record.origin == "assumed" else f" ({record.value})"
    return f"motor {name_of(entry).removeprefix('motor').strip('_') or '1'}{named}"


def alone(records: Records, entry: str) -> dict[str, Record]:
    """Return the records with one motor of the family only."""
    kept = {key: record for key, record in records.items() if not key.startswith(("motor.", "family."))}
    return kept | _moved(records, entry, FIRST)


def swapped(records: Records, entry: str) -> dict[str, Record]:
    """Return the records of the same family with another motor in the first place."""
    kept = {key: record for key, record in records.items() if not key.startswith(("motor.", f"{entry}."))}
    return kept | _moved(records, entry, FIRST) | _moved(records, FIRST, entry)


def _moved(records: Records, entry: str, to: str) -> dict[str, Record]:
    start = f"{entry}."
    names = {key: f"{to}.{key.removeprefix(start)}" for key in records if key.startswith(start)}
    return {new: replace(records[old], key=new) for old, new in names.items()}


@lru_cache(maxsize=8192)
def renamed(text: str, entry: str) -> str:
    """Return a key or a rule of a single motor as it stands for one motor of the family."""
    if entry == FIRST:
        return text
    name = name_of(entry)
    return _SET_WORD.sub(rf"{name}_\1", _PLAIN.sub(f"{name}_", _DOTTED.sub(f"{entry}.", text)))


def graft(record: Record, entry: str) -> Record:
    """Return a record of one motor under the keys that it has in the family."""
    inputs = {renamed(key, entry): replace(of, ref=renamed(of.ref or key, entry)) for key, of in record.inputs.items()}
    return replace(record, key=renamed(record.key, entry), rule=renamed(record.rule, entry), inputs=inputs)


def is_of_motor(key: str) -> bool:
    """Tell whether a key stands for one motor, and not for the block or for all motors."""
    return renamed(key, "family.0") != key


def as_mounted(ledger: Ledger, member: Member) -> Ledger:
    """Return the block so far with a further motor mounted in place of the first."""
    kept = [record for record in ledger if not is_of_motor(record.key)]
    own = [record for record in member.ledger if is_of_motor(record.key)]
    fitted = ((key, f"{member.name}_{key}") for key in _SET)
    return Ledger([*kept, *own, *(replace(ledger[there], key=key) for key, there in fitted if there in ledger)])


def enter_member(ledger: Ledger, member: Member) -> None:
    """Enter what is known and decided of a further motor under its own keys."""
    for record in member.ledger:
        if is_of_motor(record.key) and renamed(record.key, member.entry) not in ledger:
            ledger.enter(graft(record, member.entry))


def named(error: InfeasibleError, entry: str, title: str) -> InfeasibleError:
    """Return the error of one motor under the keys that it has in the family; ``title`` says whose it is."""
    conflicts = [
        replace(
            c,
            title=f"{title}: {c.title}",
            facts=tuple(renamed(fact, entry) for fact in c.facts),
            keys=tuple(renamed(key, entry) for key in c.keys),
        )
        for c in error.conflicts
    ]
    cures = [
        replace(
            c,
            key=renamed(c.key, entry),
            text=renamed(c.text, entry),
            changes=tuple((renamed(key, entry), value) for key, value in c.changes),
        )
        for c in error.cures
    ]
    return InfeasibleError(conflicts, cures)


@contextmanager
def under_own_keys(entry: str) -> Iterator[None]:
    """Tell wrong input of one motor under the keys that it has in the family.

    Raises:
        InputError: with the keys of the spec.
    """
    try:
        yield
    except InputError as error:
        problems = [replace(p, key=renamed(p.key, entry)) for p in error.problems]
        raise InputError(problems) from error


def require_one_pilot(records: Records) -> None:
    """Refuse motors of different pilots: one bore cannot centre both.

    Raises:
        InfeasibleError: with the two pilots, and an adapter ring where its wall is thick enough.
    """
    motors = sorted(entries(records), key=lambda entry: _pilot(records, entry))
    small, large = motors[0], motors[-1]
    missing = _pilot(records, large) - _pilot(records, small)
    if missing > _ONE_SIZE:
        facts = tuple(f"the pilot of {title_of(records, e)} is {_pilot(records, e):g} mm" for e in (small, large))
        keys = (f"{small}.pilot_diameter", f"{large}.pilot_diameter")
        names = f"{title_of(records, small)} and {title_of(records, large)}"
        words = f"{names}: one bore cannot centre both pilots, {missing:g} mm apart"
        raise InfeasibleError([Conflict(words, round(missing, 6), facts, keys)], _rings(records, small, large))


def with_one_pilot(records: Records) -> dict[str, Record]:
    """Return the records with the largest pilot for each motor whose pilot is that size but for rounding in inches."""
    changed = dict(records)
    largest = max(entries(records), key=lambda entry: _pilot(records, entry))
    size = _pilot(records, largest)
    for entry in entries(records):
        key, own = f"{entry}.pilot_diameter", _pilot(records, entry)
        if 0 < size - own <= _ONE_SIZE:
            rule = f"{own:.6g} mm, taken as the {size:.6g} mm of {largest}: one size to four decimals of an inch"
            changed[key] = replace(records[key], value=size, rule=rule)
    return changed


def _pilot(records: Records, entry: str) -> float:
    value = records[f"{entry}.pilot_diameter"].value
    return float(value) if isinstance(value, (int, float)) else 0.0


def _rings(records: Records, small: str, large: str) -> tuple[Cure, ...]:
    """Return the adapter ring that would centre the smaller pilot in the larger bore, where it has a wall."""
    inner, outer = _pilot(records, small), _pilot(records, large)
    wall = (outer - inner) / 2
    if wall < _RING_LEAST:
        return ()
    text = (
        f"adapter ring {outer:g} / {inner:g} mm for {title_of(records, small)}, wall {wall:g} mm ({CP}: at least "
        f"{_RING_LEAST:g} mm); it adds two clearances to the offset of the shafts, and this version does not model it"
    )
    return (Cure("", "adapter ring", None, None, "mm", text, 6, verified=False),)
