"""Motor flanges: NEMA ICS 16 and MG 1 faces, IEC 60072-1 FF and FT flanges, and their run-out classes.

"Frame 42" names two faces: ``NEMA 42`` here is the ICS 16 stepper and servo face (pilot 2.186 in, circle 4.950 in),
``NEMA 42C`` the MG 1 face (3.000 in, 3.750 in).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache
from math import sqrt

from blockgen.standards.tables import (
    Row,
    TableError,
    load_table,
    millimetres,
    number,
    one_of,
    optional,
    row_for,
    rows_by,
)


@dataclass(frozen=True, slots=True)
class MotorFlange:
    """A standard motor face, mm.

    Args:
        name: ``NEMA 23``, ``FF165``.
        standard: Standard that publishes it.
        pilot_diameter: Spigot diameter.
        pilot_length: Greatest spigot length.
        bolt_circle: Bolt circle diameter.
        hole_count: Number of holes, evenly spaced.
        outside: Side of a square face or diameter of a round one; None where the standard leaves it open.
        shape: square or round.
        hole: Clearance hole; None for a tapped flange.
        thread: Thread of a tapped flange, or the screw that belongs in the hole; None where unknown.
        tapped: True when the thread is in the motor.
        shaft_diameter: Usual shaft; None where the flange does not decide it.
        status: read or memory.
        source: Where the row was read.
    """

    name: str
    standard: str
    pilot_diameter: float
    pilot_length: float
    bolt_circle: float
    hole_count: int
    outside: float | None
    shape: str
    hole: float | None
    thread: str | None
    tapped: bool
    shaft_diameter: float | None
    status: str
    source: str

    @property
    def square_spacing(self) -> float:
        """Distance between neighbouring holes of a four-hole circle, mm; it follows from the circle."""
        return self.bolt_circle / sqrt(2)


def flange_names() -> tuple[str, ...]:
    """Return the names of all flanges in the tables."""
    return (*rows_by("nema_flanges", "name"), *rows_by("iec_flanges", "name"))


@cache
def flange(name: str) -> MotorFlange:
    """Return a motor flange by its name.

    Args:
        name: ``NEMA 23``, ``NEMA 42C``, ``FF165``, ``FT85``.

    Raises:
        TableError: no such flange in the tables.

    Source: NEMA ICS 16, NEMA MG 1, IEC 60072-1.
    """
    nema, iec = rows_by("nema_flanges", "name"), rows_by("iec_flanges", "name")
    row = one_of("motor flange", " ".join(name.split()), {**nema, **iec})
    return _nema(row) if row["name"] in nema else _iec(row)


@lru_cache(maxsize=4096)
def runout_class(spigot_diameter: float, kind: str = "spigot", quality: str = "normal") -> float:
    """Return the permitted run-out of spigot and mounting face against the shaft, mm full indicator movement.

    Args:
        spigot_diameter: Spigot diameter, mm, up to 230.
        kind: spigot or face; both have the same value.
        quality: normal or reduced.

    Raises:
        TableError: diameter, kind or quality is outside the table.

    Source: IEC 60072-1 as reprinted (DIN 42955 the same).
    """
    one_of("run-out kind", kind, dict.fromkeys(("spigot", "face")))
    return _runout("spigot", "spigot diameter", spigot_diameter, quality)


@lru_cache(maxsize=4096)
def shaft_runout(diameter: float, quality: str = "normal") -> float:
    """Return the permitted run-out of the shaft end, mm full indicator movement.

    Args:
        diameter: Shaft diameter, mm, up to 50.
        quality: normal or reduced.

    Raises:
        TableError: diameter or quality is outside the table.

    Source: IEC 60072-1 as reprinted (DIN 42955 the same).
    """
    return _runout("shaft", "shaft diameter", diameter, quality)


def iec_shaft_class(diameter: float) -> str:
    """Return the tolerance class of an IEC shaft end: j6 up to 28 mm, k6 up to 50 mm, m6 above.

    Raises:
        TableError: the diameter is not positive.

    Source: IEC 60072-1, remembered.
    """
    if diameter <= 0:
        raise TableError("shaft diameter", f"{diameter:g} mm", "a shaft is thicker than 0 mm", "give its diameter")
    if diameter <= 28:
        return "j6"
    return "k6" if diameter <= 50 else "m6"


def _runout(kind: str, field: str, diameter: float, quality: str) -> float:
    one_of("run-out class", quality, dict.fromkeys(("normal", "reduced")))
    rows = (r for r in load_table("iec_runout").rows if r["kind"] == kind)
    return number(row_for(rows, field, diameter), quality)


def _inches(row: Row, column: str) -> float | None:
    found = optional(row, column)
    return None if found is None else millimetres(found)


def _nema(row: Row) -> MotorFlange:
    return MotorFlange(
        name=row["name"],
        standard=row["standard"],
        pilot_diameter=millimetres(number(row, "pilot_diameter")),
        pilot_length=millimetres(number(row, "pilot_length")),
        bolt_circle=millimetres(number(row, "bolt_circle")),
        hole_count=4,
        outside=_inches(row, "side"),
        shape="square" if row["side"] else "round",
        hole=_inches(row, "hole"),
        thread=row["thread"] or None,
        tapped=not row["hole"],
        shaft_diameter=_inches(row, "shaft_diameter"),
        status=row["status"],
        source=row["source"],
    )


def _iec(row: Row) -> MotorFlange:
    info = load_table("iec_flanges").info
    return MotorFlange(
        name=row["name"],
        standard=info.standard,
        pilot_diameter=number(row, "pilot_diameter"),
        pilot_length=number(row, "pilot_length"),
        bolt_circle=number(row, "bolt_circle"),
        hole_count=int(row["hole_count"]),
        outside=number(row, "outside_diameter"),
        shape="round",
        hole=optional(row, "hole"),
        thread=row["thread"] or None,
        tapped=not row["hole"],
        shaft_diameter=None,
        status=info.status,
        source=info.source,
    )
