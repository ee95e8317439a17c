"""Advice as rows of a table and as part of a JSON document."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import asdict
from typing import Any

from blockgen.advise import NOISE, Advice
from blockgen.outputs import show
from blockgen.outputs.tidy import tidy

COLUMNS = ("Change", "Stiffness", "Tilt", "Frequency", "Mass", "New warnings")
LEAD = (
    f"Each change alone, on one coarse mesh, at the worst of all supports with free flanges; differences below "
    f"{NOISE:.0%} may come from the mesh. Changes that break a check, or lose in one respect what they gain in "
    "another, are left out."
)
NOTHING = "No single change of walls, window, outside or base screws gains more than the mesh may feign."


def advice_rows(advice: Sequence[Advice]) -> Iterator[tuple[str, ...]]:
    """Yield one row a change."""
    for one in advice:
        stiffer, straighter, higher = one.gains
        hertz = f"{higher:+.0%}" if one.worth.frequency else "-"
        mass = f"{one.worth.mass - one.before.mass:+.2f} kg ({one.heavier:+.0%})"
        row = (one.change.words, f"{stiffer:+.0%}", f"{-straighter:+.0%}", hertz, mass)
        yield (*row, show.joined(one.warnings) or "none")


def with_advice(document: Mapping[str, Any], advice: Sequence[Advice] | None) -> dict[str, Any]:
    """Return a document with the advice where it was asked for."""
    if advice is None:
        return dict(document)
    return {**document, "advice": tidy([asdict(one) for one in advice])}
