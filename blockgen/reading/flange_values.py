"""Pilot, flange and bolt pattern as values of the spec."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from blockgen.reading.confidence import Confidence, at_most, judged
from blockgen.reading.found import Found, Missing, Part
from blockgen.reading.holes import HolePattern
from blockgen.reading.inches import inch_words
from blockgen.reading.mounting import Mounting, is_stout, reach_of
from blockgen.reading.outline import Outline, bounds_of, outline_of, thickness_of
from blockgen.reading.screws import fastening_of
from blockgen.reading.vectors import Vector, cross, dot, minus, square_to

_WHOLE = 350.0
_SEAT = 0.05


def sized(
    key: str, value: float, confidence: Confidence, evidence: str, about: tuple[int, float | None], *, inch_file: bool
) -> Found:
    """Return a length as a finding.

    Args:
        key: Key of the spec.
        value: mm.
        confidence: How sure.
        evidence: In words, without inches, faces and residual.
        about: Number of faces, greatest difference between them in mm; None where that says nothing.
        inch_file: True where the file is in inches.
    """
    inches = inch_words(value, inch_file=inch_file)
    faces, residual = about
    agree = "" if residual is None or faces < 2 else f", agree within {residual:.3f} mm"
    counted = f"{faces} face{'s' if faces != 1 else ''}{agree}"
    told = "; ".join(part for part in (evidence, counted, f"= {inches}" if inches else "") if part)
    return Found(key, tidy(value), "mm", confidence, told, faces, residual)


def tidy(value: float) -> float:
    """Return a size to 0.001 mm, the last digit that a file in single precision still has."""
    return round(value, 3) + 0.0


def flange_values(mounting: Mounting, part: Part, *, inch_file: bool) -> Iterator[Found | Missing]:
    """Yield pilot, flange and bolts.

    Args:
        mounting: The mounting face.
        part: motor or bearing: which way the angles of the holes count.
        inch_file: True where the file is in inches.
    """
    limit: Confidence = "fair" if mounting.has_rival else "high"
    for entry in _all(mounting, part, inch_file=inch_file):
        if isinstance(entry, Found) and at_most(entry.confidence, limit) != entry.confidence:
            yield replace(entry, confidence=limit)
        else:
            yield entry


def _all(mounting: Mounting, part: Part, *, inch_file: bool) -> Iterator[Found | Missing]:
    yield from _pilot(mounting, inch_file=inch_file)
    yield from _flange(mounting, inch_file=inch_file)
    yield from _pattern(mounting, part, inch_file=inch_file)
    yield from _holes(mounting, part, inch_file=inch_file)


def _pilot(mounting: Mounting, *, inch_file: bool) -> Iterator[Found | Missing]:
    pilot = mounting.pilot
    if pilot is None:
        why = "nothing turned stands on the mounting face about its axis, or is sunk into it"
        yield from (Missing(key, why) for key in ("pilot_diameter", "pilot_length"))
        return
    radii = [r for f in pilot.faces for r in (f.low_radius, f.high_radius)]
    spread = max(radii) - min(radii)
    broken = pilot.sweep < _WHOLE
    outside = "outside" if pilot.form == "proud" else "inside"
    cover = f" that cover {pilot.sweep:.0f} deg" if broken else ""
    sure = judged(spread, broken=broken, by_rule=not is_stout(pilot))
    words = f"{outside} of a cylinder on the bolt circle's axis{cover}"
    yield sized("pilot_diameter", pilot.diameter, sure, words, (len(pilot.faces), spread), inch_file=inch_file)
    yield Found("pilot_form", pilot.form, "", sure, f"{outside} of that cylinder", len(pilot.faces), None)
    start = "" if abs(pilot.runout) < _SEAT else f", its cylinder begins at {pilot.runout:+.2f} mm"
    words = f"mounting face to the {'end' if pilot.form == 'proud' else 'floor'} of the pilot{start}"
    sure = judged(0.0, broken=abs(pilot.runout) > 1.0)
    yield sized("pilot_length", pilot.length, sure, words, (1 + len(pilot.faces), None), inch_file=inch_file)


def _flange(mounting: Mounting, *, inch_file: bool) -> Iterator[Found | Missing]:
    found = outline_of(mounting.rim, mounting.sides, mounting.up, mounting.axis)
    outline = found or bounds_of(mounting.face, mounting.origin, mounting.up, mounting.axis)
    sure: Confidence = "low" if found is None else judged(0.0, broken=0.0 < outline.sweep < _WHOLE)
    yield Found("flange_shape", outline.shape, "", sure, outline.rule, outline.faces, None)
    about = (outline.faces, None)
    if outline.shape == "rectangle":
        for key, size in (("flange_width", outline.width), ("flange_height", outline.height)):
            yield sized(key, size, sure, outline.rule, about, inch_file=inch_file)
    else:
        yield sized("flange_size", outline.width, sure, outline.rule, about, inch_file=inch_file)
    yield _thickness(mounting, outline, inch_file=inch_file)


def _thickness(mounting: Mounting, outline: Outline, *, inch_file: bool) -> Found | Missing:
    reach = min(max(outline.width, outline.height) / 2, reach_of(mounting))
    found = thickness_of(mounting.view, mounting.origin_foot, mounting.height, mounting.holes, reach)
    if found is None:
        return Missing("flange_thickness", "no face that looks back ends the flange, or the holes are closed")
    sure = judged(found.residual, by_rule=not found.at_holes)
    return sized(
        "flange_thickness",
        found.value,
        sure,
        found.rule,
        (found.faces, found.residual if found.at_holes else None),
        inch_file=inch_file,
    )


def _pattern(mounting: Mounting, part: Part, *, inch_file: bool) -> Iterator[Found | Missing]:
    holes = mounting.holes
    places = positions(mounting, part)
    rivals = sum(len(p.bores) >= len(holes.bores) and p.form != "free" for p in mounting.others)
    sure = judged(holes.residual, rivals=rivals)
    about = (len(holes.bores), holes.residual)
    rival = f"; {rivals} more pattern{'s' if rivals > 1 else ''} in this face" if rivals else ""
    if holes.form == "circle":
        words = f"axes of {len(holes.bores)} holes evenly about the pilot's{rival}"
        yield sized("bolt_circle", holes.circle, sure, words, about, inch_file=inch_file)
        yield Found("bolt_count", len(holes.bores), "", sure, f"holes of one size on that circle{rival}", *about)
        yield _angle(holes, places, mounting, sure)
    elif holes.form == "rectangle":
        for key, i in (("bolt_spacing_y", 0), ("bolt_spacing_z", 1)):
            size = 2 * math.fsum(abs(p[i]) for p in places) / len(places)
            yield sized(key, size, sure, f"four holes in a rectangle{rival}", about, inch_file=inch_file)
    else:
        pairs = tuple((tidy(y), tidy(z)) for y, z in places)
        words = f"{len(pairs)} holes of one size, neither evenly on a circle nor in a rectangle{rival}"
        yield Found("bolt_positions", pairs, "mm", at_most(sure, "fair"), words, *about)


def _angle(holes: HolePattern, places: list[tuple[float, float]], mounting: Mounting, sure: Confidence) -> Found:
    step = 360.0 / len(holes.bores)
    angles = [math.degrees(math.atan2(z, y)) % step for y, z in places]
    base = angles[0]
    mean = base + math.fsum((a - base + step / 2) % step - step / 2 for a in angles) / len(angles)
    angle = round(mean % step, 3) % step
    told = mounting.evidence[-1]
    fair = at_most(sure, "high" if "straight side" in told else "fair")
    return Found(
        "bolt_angle", tidy(angle), "deg", fair, f"first hole from +y as seen from the motor; {told}", len(angles), None
    )


def positions(mounting: Mounting, part: Part) -> list[tuple[float, float]]:
    """Return the holes [y, z] from the axis as the spec counts them: seen from the motor, y to the right, z up, mm."""
    right = _right(mounting, part)
    arms = [square_to(minus(b.foot, mounting.origin), mounting.axis) for b in mounting.holes.bores]
    return sorted((dot(a, right), dot(a, mounting.up)) for a in arms)


def _right(mounting: Mounting, part: Part) -> Vector:
    """Return +y of the block: a motor looks along -x, a bearing unit's mounting face along +x."""
    return cross(mounting.axis, mounting.up) if part == "motor" else cross(mounting.up, mounting.axis)


def _holes(mounting: Mounting, part: Part, *, inch_file: bool) -> Iterator[Found | Missing]:
    holes = mounting.holes
    use = fastening_of(holes.diameter, blind=holes.blind, inch_file=inch_file)
    diameters = [b.diameter for b in holes.bores]
    spread = max(diameters) - min(diameters)
    slots = any(b.sweep < _WHOLE for b in holes.bores)
    about = (sum(b.faces for b in holes.bores), spread)
    if part == "motor":
        yield Found("fastening", use.kind, "", use.confidence, use.why, len(holes.bores), None)
    if use.kind == "clearance" or part == "bearing":
        sure = at_most(judged(spread, broken=slots), "low" if use.kind == "tapped" else "high")
        words = use.why + (", open to the edge" if slots else "")
        yield sized("bolt_hole", holes.diameter, sure, words, about, inch_file=inch_file)
    elif use.thread:
        yield Found("bolt_thread", use.thread, "", use.confidence, f"{use.why} ({holes.diameter:.3f} mm)", *about)
    else:
        yield Missing("bolt_thread", use.why)
