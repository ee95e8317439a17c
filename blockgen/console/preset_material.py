"""Materials for ``lookup``: among the presets and in the tables."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from blockgen.errors import InputError, Problem
from blockgen.spec.load import unit_of
from blockgen.spec.presets import Preset, readable_presets
from blockgen.standards.lookup import LookupAnswer, look_up


def material_answer(name: str) -> LookupAnswer:
    """Return a material; as in a spec, a preset hides the material of the tables.

    Raises:
        InputError: neither presets nor tables hold it.
    """
    presets = {p.name.casefold(): p for p in readable_presets()[0] if p.kind == "material"}
    preset = presets.get(name.strip().casefold())
    if preset is not None:
        return _from_preset(preset)
    try:
        return look_up("material", name)
    except InputError as error:
        raise InputError([_with_presets(problem, presets.values()) for problem in error.problems]) from error


def _from_preset(preset: Preset) -> LookupAnswer:
    rows = tuple(
        (key.replace("_", " "), value, unit_of("material", key, value), preset.note)
        for key, value in preset.values.items()
    )
    return LookupAnswer(preset.name, rows, "check them against the supplier's certificate")


def _with_presets(problem: Problem, presets: Iterable[Preset]) -> Problem:
    """Return a problem that names the materials which are presets too."""
    names = ", ".join(preset.name for preset in presets)
    return replace(problem, expected=f"{problem.expected}; the presets hold {names}") if names else problem
