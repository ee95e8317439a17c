"""What a bearing unit has beyond its mounting face, as values of the spec."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.reading.beyond import beyond_of
from blockgen.reading.confidence import judged
from blockgen.reading.flange_values import sized
from blockgen.reading.found import Found, Missing
from blockgen.reading.mounting import Mounting

_MORE = 0.2


def bearing_values(mounting: Mounting, *, inch_file: bool) -> Iterator[Found | Missing]:
    """Yield the direction of the pilot, nut and seal.

    Args:
        mounting: The mounting face.
        inch_file: True where the file is in inches.
    """
    if mounting.pilot is not None:
        words = "the mounting face is taken to be the one that the pilot stands on"
        sure = judged(0.0, by_rule=True)
        yield Found("pilot_direction", "into_wall", "", sure, words, len(mounting.pilot.faces), None)
    found = beyond_of(mounting.view, mounting.line, mounting.height, mounting.stand, mounting.inside)
    if found.reach > mounting.stand + _MORE:
        words = "mounting face to the furthest face inside the pilot's diameter; a screw in the model would count too"
        yield sized("nut_reach", found.reach, judged(0.0, by_rule=True), words, (2, None), inch_file=inch_file)
    else:
        words = "nothing stands further out than the pilot, so its end; the nut may be left out of the model"
        yield sized("nut_reach", max(found.reach, mounting.stand), "low", words, (1, None), inch_file=inch_file)
    if found.nut_diameter is None:
        yield Missing("nut_outer_diameter", "nothing turned stands further out than the pilot")
    else:
        words = "greatest turned part further out than the pilot"
        about = (found.nut_faces, None)
        yield sized(
            "nut_outer_diameter", found.nut_diameter, judged(0.0, by_rule=True), words, about, inch_file=inch_file
        )


def bore_note(mounting: Mounting) -> str:
    """Return what the bore on the axis is, in words; empty where there is none."""
    found = beyond_of(mounting.view, mounting.line, mounting.height, mounting.stand, mounting.inside)
    return (
        "" if found.bore is None else f"Least bore on the axis: {found.bore:.3f} mm, {found.bore_length:.2f} mm long."
    )
