"""Reads a maker's file as a motor or a bearing unit."""

from __future__ import annotations

from pathlib import Path

from blockgen.reading.bearing_values import bearing_values, bore_note
from blockgen.reading.faces import Surfaces, collect
from blockgen.reading.flange_values import flange_values
from blockgen.reading.found import Found, Missing, Part, Reading
from blockgen.reading.motor_values import motor_values
from blockgen.reading.mounting import Mounting, mounting_of
from blockgen.reading.read_file import StepModel, read_step

_NOT_IN_STEP = "not in a STEP model; take it from the data sheet"
_UNKNOWN = {
    "motor": ("pilot_fit", "shaft_fit", "mass", "centre_of_mass", "inertia", "rated_torque", "peak_torque"),
    "bearing": ("pilot_fit", "stack_length", "shoulder_offset", "spanner_diameter", "runout", "axial_stiffness"),
}


def read_part(path: Path, part: Part) -> Reading:
    """Return what a maker's file says about a part.

    Args:
        path: The STEP file.
        part: motor or bearing.

    Raises:
        InputError: the file is of no use, or no mounting face is found in it.
        KernelError: the kernel fails on it.
    """
    return reading_of(read_step(path), str(path), part)


def reading_of(model: StepModel, name: str, part: Part) -> Reading:
    """Return what a model says about a part.

    Raises:
        InputError: no mounting face is found.
    """
    surfaces = collect(model.shape)
    mounting = mounting_of(surfaces, name)
    inch_file = model.unit in {"in", "ft"}
    own = motor_values if part == "motor" else bearing_values
    entries = [*flange_values(mounting, part, inch_file=inch_file), *own(mounting, inch_file=inch_file)]
    found = tuple(e for e in entries if isinstance(e, Found))
    unknown = [Missing(key, _NOT_IN_STEP) for key in _UNKNOWN[part]]
    missing = (*(e for e in entries if isinstance(e, Missing)), *unknown)
    return Reading(
        part, name, model.unit, model.solids, found, missing, tuple(_notes(mounting, surfaces, part)), mounting.origin,
        mounting.axis, mounting.up, mounting.evidence,
    )  # fmt: skip


def _notes(mounting: Mounting, surfaces: Surfaces, part: Part) -> list[str]:
    notes = [
        f"Another hole pattern in the same face: {len(p.bores)} holes of {p.diameter:.2f} mm on {p.circle:.2f} mm."
        for p in mounting.others
    ]
    if part == "bearing" and bore_note(mounting):
        notes.append(bore_note(mounting))
    if mounting.has_rival:
        notes.append("Another face looks nearly as much like a mounting face: compare with the data sheet.")
    if surfaces.others:
        notes.append(f"{surfaces.others} faces are neither flat nor turned; nothing was read from them.")
    return notes
