"""The section of the stiffness by finite elements, where it was asked for."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterator, Mapping
from typing import Any

from blockgen.evidence.stiffness.estimate import Estimate
from blockgen.evidence.stiffness.result import Across, CaseResult, MeshUsed, Stiffness, Variant
from blockgen.outputs import stiffness_rows
from blockgen.outputs.report.markup import Child, Markup, element
from blockgen.outputs.report.tables import content, table
from blockgen.outputs.report.values import Document, figure

_NOT_ASKED = (
    "Not asked for. Build with --stiffness to have it found by finite elements; until then the checks take estimates "
    "from beams."
)


def stiffness(document: Document, picture: bytes | None) -> Markup:
    """Return the section."""
    told = document.get("stiffness")
    if not told:
        return content(element("p", _NOT_ASKED))
    found, columns, shares = _evidence(told), stiffness_rows.COLUMNS, stiffness_rows.SHARE_COLUMNS
    return content(
        element("p", stiffness_rows.lead(found)), None if picture is None else _picture(picture, told["field"]),
        table("Stiffness by support and flanges, worst load of each", columns, _rows(found), right=columns[2:]),
        table(
            "Forces on the base screws, the greatest of all supports and loads", shares,
            stiffness_rows.share_rows(found), right=shares[1:3],
        ),
    )  # fmt: skip


def _evidence(told: Mapping[str, Any]) -> Stiffness:
    """Return the evidence as it stands in the summary; its field is too large to stand there."""
    variants, meshes = tuple(map(_variant, told["variants"])), tuple(MeshUsed(**mesh) for mesh in told["meshes"])
    return Stiffness(variants, meshes, told["band_asked"], told["band"], told["point_mass"])


def _variant(told: Mapping[str, Any]) -> Variant:
    others = {
        "axial_stiffness": Estimate(**told["axial_stiffness"]),
        "frequencies": tuple(Estimate(**one) for one in told["frequencies"]),
        "cases": tuple(map(_case, told["cases"])),
    }
    return Variant(**{**told, **others})


def _case(told: Mapping[str, Any]) -> CaseResult:
    vectors = {name: Across(**told[name]) for name in ("offset", "slope")}
    lists = {name: tuple(told[name]) for name in ("stress_place", "distortion")}
    shares = tuple(map(tuple, told["shares"]))
    return CaseResult(**{**told, **vectors, **lists, "shares": shares, "stress": Estimate(**told["stress"])})


def _picture(picture: bytes, field: Mapping[str, Any]) -> Markup:
    source = "data:image/png;base64," + b64encode(picture).decode("ascii")
    words = (
        f"The block as it bends. Load: {field['case']}. Support: {field['support']}, {field['flanges']} flanges. The "
        "bending is enlarged as the picture says, colours are stress."
    )
    image = element("img", src=source, alt=words, class_="wide")
    return element("figure", image, element("figcaption", words))


def _rows(found: Stiffness) -> Iterator[tuple[Child, ...]]:
    for variant, cells in zip(found.variants, stiffness_rows.variant_rows(found), strict=True):
        title, flanges, axial, tilt, offset, frequencies, stress, mesh = cells
        worst = max(case.stress.value for case in variant.cases)
        yield (
            title, flanges, figure(variant.axial_stiffness.value, axial), tilt, offset, frequencies,
            figure(worst, stress), mesh,
        )  # fmt: skip
