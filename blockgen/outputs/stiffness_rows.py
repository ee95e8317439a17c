"""The stiffness as rows of a table and as part of summary.json."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from dataclasses import asdict, replace
from typing import Any

from blockgen.evidence.stiffness.estimate import Estimate
from blockgen.evidence.stiffness.field import Field
from blockgen.evidence.stiffness.result import Across, CaseResult, Stiffness, Variant
from blockgen.outputs.tidy import tidy

COLUMNS = ("Support", "Flanges", "Axial N/um", "Tilt urad", "Offset um", "First frequencies Hz", "Stress MPa", "Mesh")
SHARE_COLUMNS = ("Screw", "Along the base N", "Lift N", "Support and load of the greatest lift")
UNITS = "stiffness N/um, offset mm, slope rad, force N, stress MPa, frequency Hz, place mm"


def lead(stiffness: Stiffness) -> str:
    """Return what the figures are, in words."""
    met = "met" if stiffness.band <= stiffness.band_asked else "NOT met: the finest mesh was used up"
    return (
        "Each figure is that of the worst load, with half its error band. All supports are solved on a coarse mesh, "
        "those at which a figure is judged on meshes that are finer where the error lies too. The last column tells "
        "the unknowns of the finest one; the bands of a coarse mesh are wide. Asked for "
        f"{stiffness.band_asked:.1%} where a figure is judged: {met}, {stiffness.band:.1%}. No support is the "
        "unfavourable one in every respect, so the checks take the worst of all. Tilt and offset are those of the "
        "motor bore against the bearing bore."
    )


def variant_rows(stiffness: Stiffness) -> Iterator[tuple[str, ...]]:
    """Yield one row for each support and kind of flanges."""
    for variant in stiffness.variants:
        stress = max(variant.cases, key=lambda case: case.stress.value).stress
        yield (
            variant.title,
            variant.flanges,
            _with_band(variant.axial_stiffness, 1.0),
            _longest(variant, lambda case: case.slope, 1e6),
            _longest(variant, lambda case: case.offset, 1e3),
            ", ".join(f"{f.value:.0f}" for f in variant.frequencies) or "-",
            _with_band(stress, 1.0),
            f"{variant.unknowns / 1000:.0f}k",
        )


def share_rows(stiffness: Stiffness) -> Iterator[tuple[str, ...]]:
    """Yield for each screw its greatest forces over all supports and loads."""
    every = [(variant, case) for variant in stiffness.variants for case in variant.cases]
    for index in range(len(every[0][1].shares) if every else 0):
        along = max(math.hypot(*case.shares[index][:2]) for _, case in every)
        variant, case = max(every, key=lambda both: both[1].shares[index][2])
        where = f"{variant.title}, {variant.flanges}; {case.title}"
        yield (f"{index + 1}", f"{along:.0f}", f"{case.shares[index][2]:.0f}", where)


def _longest(variant: Variant, quantity: Callable[[CaseResult], Across], scale: float) -> str:
    longest = max((quantity(case) for case in variant.cases), key=lambda across: across.length)
    return _with_band(Estimate(longest.length, longest.half), scale)


def _with_band(of: Estimate, scale: float) -> str:
    value, half = of.value * scale, of.half * scale
    if value <= 0:
        return "0"
    digits = max(0, 2 - math.floor(math.log10(value)))
    return f"{value:.{digits}f} ±{half:.{digits}f}"


def with_stiffness(document: Mapping[str, Any], stiffness: Stiffness | None) -> dict[str, Any]:
    """Return the summary with the stiffness where there is one."""
    if stiffness is None:
        return dict(document)
    part: dict[str, Any] = tidy({"units": UNITS, **asdict(replace(stiffness, field=None))})
    part["field"] = _about(stiffness.field)
    return {**document, "stiffness": part}


def _about(field: Field | None) -> dict[str, Any] | None:
    """Return what a field is of; its points and triangles would outweigh all else."""
    if field is None:
        return None
    sizes = {"points": len(field.points), "triangles": len(field.triangles)}
    return {"case": field.case, "support": field.support, "flanges": field.flanges, **sizes}
