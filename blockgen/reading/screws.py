"""What a hole in a flange is for: a screw that goes through it, or a thread."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from blockgen.reading.confidence import Confidence
from blockgen.standards.tables import INCH, load_table
from blockgen.standards.threads import Thread, designations, thread, thread_for_clearance_hole

_SAME = 0.03  # a modelled hole this near to a listed one is that one, mm
_KINDS = (("tap_drill", "tap drill"), ("minor_diameter", "minor diameter"), ("diameter", "nominal diameter"))


@dataclass(frozen=True, slots=True)
class Fastening:
    """How a flange is screwed on.

    Args:
        kind: clearance or tapped.
        thread: The thread, or the screw that belongs in the hole; empty where none fits.
        confidence: How sure that is.
        why: In words.
    """

    kind: Literal["clearance", "tapped"]
    thread: str
    confidence: Confidence
    why: str


def fastening_of(diameter: float, *, blind: bool, inch_file: bool = False) -> Fastening:
    """Return how holes of a diameter are used.

    A model has no threads: a tapped hole is drawn with its tap drill, its minor or its nominal diameter. So a hole that
    is closed is taken as tapped, one that goes through by which table lists its diameter.

    Args:
        diameter: Hole, mm.
        blind: True where the holes are closed at their ends.
        inch_file: True where the file is in inches, so that inch threads come first.
    """
    threads = _threads(diameter, inch_file=inch_file)
    screw = thread_for_clearance_hole(diameter)
    listed = screw is not None and _is_listed(screw, diameter)
    if threads and (blind or not listed or _is_second_choice(screw)):
        return _tapped(threads, diameter, "closed holes" if blind else "holes go through")
    if screw is None or (blind and not listed):
        return _tapped([], diameter, "closed holes" if blind else "holes go through")
    return _clearance(screw, threads, blind=blind, listed=listed)


def _clearance(screw: Thread, threads: list[tuple[str, str]], *, blind: bool, listed: bool) -> Fastening:
    name = screw.designation
    if blind:
        why = f"closed behind the flange, but clearance hole of {screw.size} and no thread's"
        return Fastening("clearance", name, "low", why)
    if not listed:
        return Fastening("clearance", name, "fair", f"holes go through, not listed, {screw.size} would pass")
    rival = f"; {threads[0][1]} of {threads[0][0]} too" if threads else ""
    why = f"holes go through, clearance hole of {screw.size}{rival}"
    return Fastening("clearance", name, "fair" if threads else "high", why)


def _tapped(threads: list[tuple[str, str]], diameter: float, how: str) -> Fastening:
    if not threads:
        return Fastening("tapped", _around(diameter), "low", f"{how}, no thread lists {diameter:.3f} mm")
    name, kind = threads[0]
    more = f"; {threads[1][1]} of {threads[1][0]} too" if len(threads) > 1 else ""
    return Fastening("tapped", name, "fair", f"{how}, {kind} of {name}{more}")


def _threads(diameter: float, *, inch_file: bool) -> list[tuple[str, str]]:
    """Return the threads for which holes of a diameter are modelled, the likeliest first, and by which size."""
    found = []
    for rank, (attribute, words) in enumerate(_KINDS):
        for name in designations():
            other_series = (thread(name).series == "UN") != inch_file
            if abs(getattr(thread(name), attribute) - diameter) <= _SAME:
                found.append((other_series, rank, abs(getattr(thread(name), attribute) - diameter), name, words))
    return [(name, words) for *_, name, words in sorted(found)]


def _around(diameter: float) -> str:
    """Return the metric thread whose hole lies between its minor and its nominal diameter; empty without one."""
    return next((t.designation for t in _metric() if t.minor_diameter - 0.1 <= diameter <= t.diameter + 0.1), "")


def _metric() -> Iterator[Thread]:
    return (thread(name) for name in designations() if thread(name).series == "M")


def _is_listed(screw: Thread, diameter: float) -> bool:
    rows = load_table("iso273").rows if screw.series == "M" else load_table("inch_clearance_holes").rows
    factor = 1.0 if screw.series == "M" else INCH
    cells = next(("|".join(r[c] for c in r if c != "size") for r in rows if r["size"] == screw.size), "")
    return any(abs(float(cell) * factor - diameter) <= _SAME for cell in cells.split("|") if cell)


def _is_second_choice(screw: Thread | None) -> bool:
    rows = load_table("metric_threads").rows
    return screw is not None and any(r["choice"] == "2" for r in rows if r["size"] == screw.size)
