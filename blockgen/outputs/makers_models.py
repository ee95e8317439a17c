"""The makers' STEP files that a spec names, read and ready to be placed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from blockgen.errors import InputError
from blockgen.plan import Plan
from blockgen.record import Record
from blockgen.spec.load import model_path

if TYPE_CHECKING:
    from blockgen.geometry.stand_ins.makers_model import MakersModel

ENDS = ("bearing", "motor")


def makers_models(plan: Plan, spec_path: str) -> Mapping[str, MakersModel]:
    """Return the makers' models by ``bearing`` and ``motor``; empty where the spec names none.

    Args:
        plan: Sized plan; ``motor.model`` and ``bearing.model`` are paths from the folder of the spec.
        spec_path: Path of the spec.

    Raises:
        InputError: a file is not there, is no STEP file, holds no solid, or has no mounting face.
        KernelError: the kernel fails on a file.
    """
    named = {end: plan.records.get(f"{end}.model") for end in ENDS}
    return {end: _read(record, spec_path) for end, record in named.items() if record is not None and record.value}


def _read(record: Record, spec_path: str) -> MakersModel:
    try:
        return read_model(model_path(spec_path, record))
    except InputError as error:
        told = [replace(problem, key=problem.key or record.key) for problem in error.problems]
        raise InputError(told) from error


def read_model(path: Path) -> MakersModel:
    """Read one maker's model and find its mounting face.

    Raises:
        InputError: the file is not there, is no STEP file, holds no solid, or has no mounting face.
        KernelError: the kernel fails on it.
    """
    from blockgen.geometry.stand_ins.makers_model import MakersModel
    from blockgen.reading.mounting import find_mounting
    from blockgen.reading.read_file import read_step

    shape = read_step(path).shape
    found = find_mounting(shape, str(path))
    pilot = None if found.pilot is None else found.pilot.diameter
    holes = tuple(bore.foot for bore in found.holes.bores)
    return MakersModel(path.name, shape, found.origin, found.axis, found.up, pilot, holes)
