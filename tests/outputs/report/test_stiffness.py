"""The section of the stiffness: what the summary has of it, and the picture as a data address."""

import json
from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from blockgen import pipeline
from blockgen.evidence.stiffness.estimate import Estimate
from blockgen.evidence.stiffness.field import Field
from blockgen.evidence.stiffness.result import Across, CaseResult, MeshUsed, Stiffness, Variant
from blockgen.outputs import stiffness_rows
from blockgen.outputs.drawing import to_svg
from blockgen.outputs.report.page import page
from tests.examples import STEPPER
from tests.outputs.report import scene_reader
from tests.outputs.report.conftest import DRAWING
from tests.outputs.report.reading import Page


def case(slope, offset, stress, lift):
    vectors = Across(*offset, 0.0), Across(*slope)
    shares = ((3.0, 4.0, lift), (60.0, 0.0, -lift))
    return CaseResult("thrust away", 400.0, *vectors, shares, Estimate(stress, 0.1), (1.0, 2.0, 3.0), (0.0, 0.0))


CASES = (case((3e-5, 4e-5, 1e-6), (0.003, 0.004), 12.0, 700.0), case((1e-5, 0.0, 0.0), (0.001, 0.0), 31.0, -50.0))
VARIANT = Variant(
    "heads", "washers bear", "free", Estimate(512.3, 12.0), (Estimate(401.2, 3.0),), CASES, 78_000
)  # fmt: skip
CORNERS = ((0.0, 0.0, 0.0), (10.0, 0.0, 0.0), (0.0, 5.0, 2.0))
FIELD = Field(
    "thrust <towards> the motor", "washers bear", "free", CORNERS, ((0, 1, 2),), ((0, 1),),
    ((0.0, 0.0, 0.001), (0.0, 0.0, 0.002), (0.0, 0.0, 0.0)), (1.0, 2.5, 0.0), 2.0,
)  # fmt: skip
FOUND = Stiffness((VARIANT,), (MeshUsed(9, 42_000), MeshUsed(20, 78_000)), 0.05, 0.02, False, FIELD)


def with_stiffness(contents, picture=None, **other):
    document = stiffness_rows.with_stiffness(contents.document, replace(FOUND, **other))
    return Page(page(replace(contents, document=document, stiffness_picture=picture)))


def test_without_finite_elements_it_says_how_to_get_them(shown):
    assert "--stiffness" in shown.words(shown.by_id["stiffness"])


def test_the_worst_load_of_each_support_is_shown(contents):
    made = with_stiffness(contents)
    (row,) = made.rows("Stiffness by support and flanges, worst load of each")
    words = [made.words(cell) for cell in row]
    assert words == ["washers bear", "free", "512 ±12", "50.0 ±1.0", "5.00 ±0.00", "401", "31.0 ±0.1", "78k"]
    assert made.figures(row) == [(512.3, "512 ±12"), (31.0, "31.0 ±0.1")]


def test_the_forces_on_the_screws_are_shown(contents):
    made = with_stiffness(contents)
    rows = made.rows("Forces on the base screws, the greatest of all supports and loads")
    assert [[made.words(cell) for cell in row][:3] for row in rows] == [["1", "5", "700"], ["2", "60", "50"]]


def test_the_words_are_those_of_the_summary(contents):
    for band, words in ((0.02, "met, 2.0%"), (0.07, "NOT met: the finest mesh was used up, 7.0%")):
        made = with_stiffness(contents, band=band)
        assert words in made.words(made.by_id["stiffness"])
        assert stiffness_rows.lead(replace(FOUND, band=band)) in made.words(made.by_id["stiffness"])


def test_the_picture_is_inside_the_page(contents):
    made = with_stiffness(contents, b"\x89PNG")
    (image,) = [of for of in made.by_id["stiffness"].iter() if of.tag.endswith("}img")]
    assert image.get("src") == "data:image/png;base64,iVBORw=="
    assert image.get("alt").startswith(
        "The block as it bends. Load: thrust <towards> the motor. Support: washers bear, free"
    )


@pytest.mark.slow
def test_the_report_of_a_build_has_the_bent_block_in_its_view(tmp_path, monkeypatch):
    """With finite elements that are made up, and a stand-in for the drawing."""
    from tests.geometry.assemblies import assembly

    monkeypatch.setattr(to_svg, "svg_text", lambda _: DRAWING)
    made = replace(pipeline.design(STEPPER), stiffness=FOUND)
    block = assembly()
    solids = pipeline.Solids(block.block, block.parts)
    words = pipeline._words(made, None, tmp_path, ["report"])
    work = pipeline.Work(made, solids, SimpleNamespace(drawing=None), words, tolerances=True)
    pipeline._write_report(work, [tmp_path / "report.html"])
    shown = Page((tmp_path / "report.html").read_text(encoding="utf-8"))
    field = json.loads("".join(shown.by_id["scene-data"].itertext()))["field"]
    assert scene_reader.reals(field["displacement"]).tolist() == pytest.approx(np.ravel(FIELD.displacement))
    assert field["words"] == "thrust <towards> the motor; washers bear; flanges free"
    assert "show the block as it bends" in shown.words(shown.by_id["view"])
    assert json.loads("".join(shown.by_id["summary-data"].itertext()))["stiffness"]["field"]["case"] == FIELD.case
