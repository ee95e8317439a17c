"""The section of the stiffness: what the summary has of it, and the picture as a data address."""

from dataclasses import replace

from blockgen.outputs.report.page import page
from tests.outputs.report.reading import Page


def across(y, z, half=0.0):
    return {"y": y, "z": z, "half": half}


def case(slope, offset, stress):
    return {"slope": across(*slope), "offset": across(*offset), "stress": {"value": stress, "half": 0.1}}


VARIANT = {
    "unknowns": 78_000,
    "title": "washers bear", "flanges": "free", "axial_stiffness": {"value": 512.3, "half": 12.0},
    "frequencies": [{"value": 401.2, "half": 3.0}],
    "cases": [case((3e-5, 4e-5, 1e-6), (0.003, 0.004), 12.0), case((1e-5, 0.0), (0.001, 0.0), 31.0)],
}  # fmt: skip
FIELD = {"case": "thrust <towards> the motor", "support": "washers bear", "flanges": "free"}
FOUND = {
    "field": FIELD,
    "meshes": [{"unknowns": 42_000}, {"unknowns": 78_000}],
    "band": 0.02,
    "band_asked": 0.05,
    "variants": [VARIANT],
}


def with_stiffness(contents, picture=None, **other):
    document = {**contents.document, "stiffness": {**FOUND, **other}}
    return Page(page(replace(contents, document=document, stiffness_picture=picture)))


def test_without_finite_elements_it_says_how_to_get_them(shown):
    assert "--stiffness" in shown.words(shown.by_id["stiffness"])


def test_the_worst_load_of_each_support_is_shown(contents):
    made = with_stiffness(contents)
    (row,) = made.rows("Stiffness by support and flanges, worst load of each")
    words = [made.words(cell) for cell in row]
    assert words == [
        "washers bear",
        "free",
        "512 \u00b112",
        "50.0 \u00b11.0",
        "5.00 \u00b10.00",
        "401",
        "31.0 \u00b10.1",
        "78000",
    ]
    assert made.figures(row) == [(512.3, "512 \u00b112"), (31.0, "31.0 \u00b10.1"), (78000.0, "78000")]


def test_a_band_that_was_not_met_is_told(contents):
    for band, words in (
        (0.02, "Asked for 5.0% where a figure is judged: met, 2.0%"),
        (0.07, "Asked for 5.0% where a figure is judged: NOT met, 7.0%"),
    ):
        made = with_stiffness(contents, band=band)
        assert words in made.words(made.by_id["stiffness"])


def test_the_picture_is_inside_the_page(contents):
    made = with_stiffness(contents, b"\x89PNG")
    (image,) = [of for of in made.by_id["stiffness"].iter() if of.tag.endswith("}img")]
    assert image.get("src") == "data:image/png;base64,iVBORw=="
    assert image.get("alt").startswith(
        "The block as it bends. Load: thrust <towards> the motor. Support: washers bear, free"
    )
