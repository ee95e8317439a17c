"""ISO metric coarse threads (6H/6g) and unified threads (2B/2A), tap drills, stress areas, limits for stripping.

Metric: ISO 261 sizes, ISO 724 basic dimensions, ISO 965-1 deviations and tolerances. Unified: ASME B1.1 formulas.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from math import cbrt, pi, sqrt

from blockgen.standards.tables import INCH, Row, TableError, load_table, millimetres, number, one_of, quoted, rows_by

_TRIANGLE = sqrt(3) / 2  # height of the thread triangle over the pitch
_NEAR = 0.02  # a hole this close to a listed one is that one: 0.218 in is 5.537 mm, often written 5.54 mm
_BEYOND = 0.1  # a drilled hole may lie this far outside the printed range, mm
_LOOSE = 0.2  # a metric screw is still taken in a hole wider than coarse by this part of its diameter


@dataclass(frozen=True, slots=True)
class Thread:
    """One thread; lengths in mm, area in mm2.

    Args:
        designation: ``M10`` or ``1/4-20 UNC``.
        series: M or UN.
        size: Nominal size as screws and holes name it: ``M10``, ``1/4``, ``#10``.
        diameter: Nominal (basic major) diameter d.
        pitch: P.
        pitch_diameter: d2 = D2 basic.
        minor_diameter: D1 basic, of the internal thread.
        root_diameter: d3, of the screw.
        tap_drill: Drill before tapping.
        stress_area: Of the screw.
        external_major_min: Least major diameter of the screw.
        external_pitch_min: Least pitch diameter of the screw.
        internal_pitch_max: Greatest pitch diameter of the hole.
        internal_minor_max: Greatest minor diameter of the hole.
        external_class: 6g or 2A.
        internal_class: 6H or 2B.
        status: Status of the figures: computed from the formulas, or memory.
    """

    designation: str
    series: str
    size: str
    diameter: float
    pitch: float
    pitch_diameter: float
    minor_diameter: float
    root_diameter: float
    tap_drill: float
    stress_area: float
    external_major_min: float
    external_pitch_min: float
    internal_pitch_max: float
    internal_minor_max: float
    external_class: str
    internal_class: str
    status: str

    @property
    def call_out(self) -> str:
        """Designation of the tapped hole on a drawing: ``M10-6H`` or ``1/4-20 UNC-2B``."""
        return f"{self.designation}-{self.internal_class}"


@cache
def thread(designation: str) -> Thread:
    """Return a thread by its designation.

    Args:
        designation: ``M10``, ``M10x1.5`` (the coarse pitch), ``1/4-20 UNC``, ``1/4-20``, ``#10-24``.

    Raises:
        TableError: the thread is not in the tables.
    """
    name = _plain(designation)
    return _metric(name) if name in rows_by("metric_threads", "size") else _unified(name)


def designations() -> tuple[str, ...]:
    """Return all threads in the tables, metric first."""
    return tuple(rows_by("metric_threads", "size")) + tuple(rows_by("unified_threads", "designation"))


@lru_cache(maxsize=4096)
def thread_for_clearance_hole(diameter: float, series: str | None = None) -> Thread | None:
    """Return the thread whose screw belongs in a clearance hole: 6.6 or 7 mm gives M6, 9/32 in gives 1/4-20 UNC.

    A hole that the tables print decides first (metric before inch), then the metric range fine to coarse, first-choice
    sizes before second-choice ones, then a metric screw with more play than coarse. An inch thread (the coarse one) is
    given for a printed inch hole only, unless the inch series is asked for.

    Args:
        diameter: Hole, mm.
        series: M or UN; None for either.

    Returns:
        The thread, or None when no screw in the tables belongs in such a hole.

    Source: ISO 273 and ASME B18.2.8 read backwards; the order of choice is common practice, no source.
    """
    candidates = [c for c in _clearance_ranges() if series in (None, c.series) and c.holds(diameter, series)]
    if not candidates:
        return None
    return thread(min(candidates, key=lambda c: c.rank(diameter)).designation)


def stress_area(diameter: float, pitch: float, series: str = "M") -> float:
    """Return the tensile stress area in mm2.

    Source: ISO 898-1 pi/4 (d - 0.9382 P)^2; for UN threads FED-STD-H28 pi/4 (d - 0.9743 P)^2.
    """
    return pi / 4 * (diameter - (0.9382 if series == "M" else 0.9743) * pitch) ** 2


@dataclass(frozen=True, slots=True)
class _ClearanceRange:
    designation: str
    series: str
    second_choice: bool
    holes: tuple[float, ...]

    def distance(self, diameter: float) -> float:
        return min(abs(diameter - hole) for hole in self.holes)

    def in_range(self, diameter: float) -> bool:
        return min(self.holes) - _BEYOND <= diameter <= max(self.holes) + _BEYOND

    def holds(self, diameter: float, series: str | None) -> bool:
        if self.series == "UN" and series is None:
            return self.distance(diameter) <= _NEAR
        loosest = max(self.holes) * (1 + _LOOSE) if self.series == "M" else max(self.holes)
        return min(self.holes) - _BEYOND <= diameter <= max(loosest, max(self.holes) + _BEYOND)

    def rank(self, diameter: float) -> tuple[bool, bool, bool, bool, float]:
        distance = self.distance(diameter)
        return distance > _NEAR, not self.in_range(diameter), self.series == "UN", self.second_choice, distance


@cache
def _clearance_ranges() -> tuple[_ClearanceRange, ...]:
    metric = [
        _ClearanceRange(r["size"], "M", _metric_row(r["size"])["choice"] == "2", _holes(r, 1.0))
        for r in load_table("iso273").rows
    ]
    inch = [
        _ClearanceRange(_coarse_unified(r["size"]), "UN", False, _holes(r, INCH))
        for r in load_table("inch_clearance_holes").rows
    ]
    return (*metric, *inch)


def _holes(row: Row, factor: float) -> tuple[float, ...]:
    cells = [row[column] for column in row if column != "size"]
    return tuple(round(float(cell) * factor, 6) for cell in "|".join(cells).split("|") if cell)


def _coarse_unified(size: str) -> str:
    return next(r["designation"] for r in load_table("unified_threads").rows if r["size"] == size)


def _plain(designation: str) -> str:
    """Return the designation as the tables write it: ``m10x1.5`` as ``M10``, ``#10-24`` as ``10-24 UNC``."""
    text = re.sub(r"\s+", " ", designation.strip()).upper()
    metric = re.fullmatch(r"(M\d+(?:\.\d+)?)(?: ?X ?(\d+(?:\.\d+)?))?", text)
    if metric is not None:
        return _coarse(metric[1], metric[2], designation)
    return _unified_names().get(text.removeprefix("#").removeprefix("NO. "), designation.strip())


def _coarse(size: str, pitch: str | None, asked: str) -> str:
    if pitch is not None and float(pitch) != number(_metric_row(size), "pitch"):
        only = f"{size} is known with its coarse pitch {_metric_row(size)['pitch']} mm only"
        raise TableError("thread", quoted(asked), only, f"write {size}")
    return size


@cache
def _unified_names() -> Mapping[str, str]:
    names = list(rows_by("unified_threads", "designation"))
    return {n: n for n in names} | {n.split()[0]: n for n in names}


def _metric_row(size: str) -> Row:
    return one_of("thread", size, rows_by("metric_threads", "size"))


def _metric(size: str) -> Thread:
    row = _metric_row(size)
    diameter, pitch = number(row, "diameter"), number(row, "pitch")
    by_pitch = rows_by("iso965_pitch", "pitch")[row["pitch"]]
    by_diameter = _pitch_tolerances(diameter, row["pitch"])
    gap = number(by_pitch, "deviation_g") / 1000
    pitch_diameter, minor = diameter - 0.75 * _TRIANGLE * pitch, diameter - 1.25 * _TRIANGLE * pitch
    return Thread(
        designation=size,
        series="M",
        size=size,
        diameter=diameter,
        pitch=pitch,
        pitch_diameter=pitch_diameter,
        minor_diameter=minor,
        root_diameter=diameter - 17 / 12 * _TRIANGLE * pitch,
        tap_drill=number(row, "tap_drill"),
        stress_area=stress_area(diameter, pitch),
        external_major_min=diameter + gap - number(by_pitch, "major_tolerance_6") / 1000,
        external_pitch_min=pitch_diameter + gap - number(by_diameter, "external_6") / 1000,
        internal_pitch_max=pitch_diameter + number(by_diameter, "internal_6") / 1000,
        internal_minor_max=minor + number(by_pitch, "minor_tolerance_6") / 1000,
        external_class="6g",
        internal_class="6H",
        status=load_table("iso965_pitch").info.status,
    )


def _pitch_tolerances(diameter: float, pitch: str) -> Row:
    rows = load_table("iso965_pitch_diameter").rows
    return next(r for r in rows if number(r, "above") < diameter <= number(r, "to") and r["pitch"] == pitch)


def _unified(name: str) -> Thread:
    row = one_of("thread", name, {**rows_by("metric_threads", "size"), **rows_by("unified_threads", "designation")})
    diameter, pitch = number(row, "diameter"), 1 / number(row, "threads_per_inch")
    pitch_diameter, minor = diameter - 0.75 * _TRIANGLE * pitch, diameter - 1.25 * _TRIANGLE * pitch
    pitch_tolerance = unified_pitch_tolerance(diameter, pitch)
    allowance = 0.3 * pitch_tolerance
    return Thread(
        designation=row["designation"],
        series="UN",
        size=row["size"],
        diameter=millimetres(diameter),
        pitch=pitch * INCH,
        pitch_diameter=pitch_diameter * INCH,
        minor_diameter=minor * INCH,
        root_diameter=(diameter - 1.19078 * pitch) * INCH,
        tap_drill=millimetres(number(row, "tap_drill")),
        stress_area=stress_area(diameter * INCH, pitch * INCH, "UN"),
        external_major_min=(diameter - allowance - 0.060 * cbrt(pitch) ** 2) * INCH,
        external_pitch_min=(pitch_diameter - allowance - pitch_tolerance) * INCH,
        internal_pitch_max=(pitch_diameter + 1.3 * pitch_tolerance) * INCH,
        internal_minor_max=(minor + unified_minor_tolerance(diameter, pitch)) * INCH,
        external_class="2A",
        internal_class="2B",
        status="computed",
    )


def unified_pitch_tolerance(diameter: float, pitch: float) -> float:
    """Return the 2A pitch-diameter tolerance in inches, for an engagement of one diameter.

    Args:
        diameter: Basic major diameter, in.
        pitch: Pitch, in.

    Source: ASME B1.1, remembered: 0.0015 (cbrt d + sqrt Le) + 0.015 P^(2/3).
    """
    return 0.0015 * (cbrt(diameter) + sqrt(diameter)) + 0.015 * cbrt(pitch) ** 2


def unified_minor_tolerance(diameter: float, pitch: float) -> float:
    """Return the 2B minor-diameter tolerance in inches.

    Args:
        diameter: Basic major diameter, in.
        pitch: Pitch, in.

    Source: ASME B1.1, remembered: from 1/4 in 0.25 P - 0.4 P^2; below it 0.05 P^(2/3) + 0.03 P/d - 0.002, not less than
    the former and not more than 0.394 P.
    """
    coarse = 0.25 * pitch - 0.4 * pitch**2
    if diameter >= 0.25:
        return coarse
    return min(max(0.05 * cbrt(pitch) ** 2 + 0.03 * pitch / diameter - 0.002, coarse), 0.394 * pitch)
