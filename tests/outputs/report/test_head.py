"""What stands at the top: sizes, what the shop opens, what fails with its cure."""

from dataclasses import replace

from blockgen.outputs.report.page import page
from tests.outputs.report.reading import Page


def first(contents, **others):
    made = Page(page(replace(contents, **others)))
    return made, made.by_id["first"]


def test_stock_material_and_the_coupling_stand_there(contents, shown):
    words = shown.words(shown.by_id["first"])
    document = contents.document
    assert f"Stock, mm{document['making']['making.stock_form']['value']}" in words
    assert f"{document['mass']['material']}, {document['mass']['value']:.3g} kg" in words
    start = document["dimensions"]["coupling_position"]["value"]
    assert f"Coupling from the bearing seat{start:g} mm" in words


def test_the_files_of_the_shop_are_links_where_they_are_in_the_set(contents):
    made, top = first(contents)
    links = {of.get("href"): made.words(of) for of in top.iter() if of.get("href", "").startswith("GL")}
    assert links == {
        "GL-040-11_A_drawing.pdf": "drawing",
        "GL-040-11_A_block.step": "model",
        "GL-040-11_A_inspection.csv": "inspection sheet",
        "GL-040-11_A_base_holes.dxf": "holes of the base plate",
    }
    made, top = first(contents, files={"GL-040-11_A_report.html": "report"})
    assert "For the shop" not in made.words(top)
    assert "not asked for in this build" in made.words(made.by_id["inspection"])


def test_what_fails_stands_there_with_its_cure(contents):
    one, *others = contents.document["checks"]
    bad = {**one, "verdict": "fail", "explanation": "it slips: larger screws"}
    made, top = first(contents, document={**contents.document, "checks": [bad, *others]})
    assert f"What fails:{bad['title']}: it slips: larger screws" in made.words(top)


def test_each_warning_is_named_there(contents, shown):
    titles = [check["title"] for check in contents.document["checks"] if check["verdict"] == "warn"]
    assert titles
    for title in titles:
        assert title in shown.words(shown.by_id["first"])


def test_where_no_length_is_left_the_reason_stands_there(contents):
    rule = "no length is feasible in the worst case of the tolerances, 5.00 mm missing"
    dimensions = contents.document["dimensions"]
    none = {key: {**dimensions[key], "value": None, "rule": rule} for key in ("length_low", "length_high")}
    made, top = first(contents, document={**contents.document, "dimensions": {**dimensions, **none}})
    assert f"Possible length, with tolerances{rule}" in made.words(top)
    words = made.words(made.by_id["axial"])
    assert f"longest 116 mm, chosen 113 mm, {rule}." in words
