"""Advice as rows of a table and as part of a JSON document."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import asdict
from typing import Any

from blockgen.advise import NOISE, Advice
from blockgen.outputs import show
from blockgen.outputs.tidy import tidy

COLUMNS = ("Change", "Stiffness", "Tilt", "Frequency", "Mass", "New warnings")
NOTHING = "No single change of walls, window, outside or base screws gains more than the mesh may feign."


def lead(advice: Sequence[Advice]) -> str:
    """Return what the figures are, in words: the mesh, its error band, and what is left out."""
    worths = [advice[0].before, *(one.worth for one in advice)]
    fewest, most = (of(worth.unknowns for worth in worths) for of in (min, max))
    return (
        f"Each change alone, at the worst of all supports with free flanges, on one coarse mesh of {fewest} to {most} "
        f"unknowns. The band of a figure by itself is up to ±{max(worth.band for worth in worths):.0%}; meshes err "
        f"alike, so that differences above {NOISE:.0%} count. Changes that break a check, or lose in one respect what "
        "they gain in another, are left out."
    )


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
