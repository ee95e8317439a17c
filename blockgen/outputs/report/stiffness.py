"""The section of the stiffness by finite elements, where it was asked for."""

from __future__ import annotations

import math
from base64 import b64encode
from collections.abc import Iterator, Mapping
from typing import Any

from blockgen.outputs.report.markup import Child, Markup, element
from blockgen.outputs.report.tables import content, table
from blockgen.outputs.report.values import Document, figure

_COLUMNS = (
    "Support",
    "Flanges",
    "Axial N/um",
    "Tilt urad",
    "Offset um",
    "First frequencies Hz",
    "Stress MPa",
    "Unknowns",
)
_NOT_ASKED = (
    "Not asked for. Build with --stiffness to have it found by finite elements; until then the checks take estimates "
    "from beams."
)


def stiffness(document: Document, picture: bytes | None) -> Markup:
    """Return the section."""
    found = document.get("stiffness")
    if not found:
        return content(element("p", _NOT_ASKED))
    rows = (_variant(variant) for variant in found["variants"])
    return content(
        element("p", _lead(found)), None if picture is None else _picture(picture, found["field"]),
        table("Stiffness by support and flanges, worst load of each", _COLUMNS, rows, right=_COLUMNS[2:]),
    )  # fmt: skip


def _lead(found: Mapping[str, Any]) -> str:
    met = "met" if found["band"] <= found["band_asked"] else "NOT met"
    return (
        "By finite elements, each figure that of the worst load with half its error band. All supports are solved on a "
        "coarse mesh, those at which a figure is judged on finer ones; bands of a coarse mesh are wide. Asked for "
        f"{found['band_asked']:.1%} where a figure is judged: {met}, {found['band']:.1%}. No support is the worst in "
        "every respect, so the checks take the worst of all. Tilt and offset are those of the motor bore against the "
        "bearing bore."
    )


def _picture(picture: bytes, field: Mapping[str, Any]) -> Markup:
    source = "data:image/png;base64," + b64encode(picture).decode("ascii")
    words = (
        f"The block as it bends. Load: {field['case']}. Support: {field['support']}, {field['flanges']} flanges. The "
        "bending is enlarged as the picture says, colours are stress."
    )
    image = element("img", src=source, alt=words, class_="wide")
    return element("figure", image, element("figcaption", words))


def _variant(variant: Mapping[str, Any]) -> tuple[Child, ...]:
    cases = variant["cases"]
    axial, stress = variant["axial_stiffness"], max((case["stress"] for case in cases), key=lambda s: s["value"])
    frequencies = ", ".join(f"{f['value']:.0f}" for f in variant["frequencies"]) or "-"
    return (
        variant["title"], variant["flanges"], figure(axial["value"], _with_band(axial["value"], axial["half"])),
        _longest(cases, "slope", 1e6), _longest(cases, "offset", 1e3), frequencies,
        figure(stress["value"], _with_band(stress["value"], stress["half"])),
        figure(variant["unknowns"], str(variant["unknowns"])),
    )  # fmt: skip


def _longest(cases: Iterator[Mapping[str, Any]], which: str, scale: float) -> str:
    length, half = max((math.hypot(case[which]["y"], case[which]["z"]), case[which]["half"]) for case in cases)
    return _with_band(length * scale, half * scale)


def _with_band(value: float, half: float) -> str:
    if value <= 0:
        return "0"
    digits = max(0, 2 - math.floor(math.log10(value)))
    return f"{value:.{digits}f} \u00b1{half:.{digits}f}"
