"""The page as a whole: well-formed, alone, linked, readable without pictures."""

import re
from itertools import pairwise

import pytest

from blockgen.outputs.report.page import page, script
from tests.outputs.report.reading import Strict, local


def test_it_is_well_formed_html_and_xml(text, shown):
    assert text.startswith("<!DOCTYPE html>\n")
    tags = Strict(text).tags
    assert [tag for tag, _ in tags][:2] == ["html", "head"]
    assert len(tags) == sum(1 for _ in shown.root.iter())


def test_nothing_is_loaded_from_elsewhere(text, shown):
    for of in shown.root.iter():
        for name, value in of.attrib.items():
            plain = name.rpartition("}")[2]
            if plain in {"src", "href", "action", "data", "poster", "srcset"}:
                assert re.fullmatch(r"#[\w.-]+|[\w.%-]+|data:image/png;base64,.*", value), value
    styles = "".join(shown.words(of) for of in shown.all("style"))
    assert "@import" not in styles
    assert set(re.findall(r"url\(([^)]*)\)", styles)) <= {"#grip-lines"}
    scripts = [of for of in shown.all("script") if of.get("type") != "application/json"]
    assert not [of for of in scripts if of.get("src")]
    assert not re.search(r"fetch\(|XMLHttpRequest|import\(", "".join(shown.words(of) for of in scripts))


def test_ids_are_unique_and_every_link_has_its_place(shown):
    ids = [of.get("id") for of in shown.root.iter() if of.get("id")]
    assert len(ids) == len(set(ids))
    links = {of.get("href")[1:] for of in shown.all("a") if of.get("href").startswith("#")}
    assert links <= set(ids)
    assert {f"dimension-{key}" for key in ("length", "bearing_bore")} <= links
    assert "feature-motor_bore" in ids


def test_files_are_linked_beside_it(contents, shown):
    links = {of.get("href") for of in shown.by_id["files"].iter() if of.get("href")}
    assert links == set(contents.files)
    assert "GL-040-11_A_report.html" in links


def test_headings_come_in_order_and_sections_have_names(shown):
    levels = [int(local(of)[1]) for of in shown.root.iter() if re.fullmatch(r"h[1-6]", local(of))]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))
    for section in shown.all("section"):
        assert shown.words(shown.by_id[section.get("aria-labelledby")])
    nav = {of.get("href")[1:] for of in shown.all("nav")[0].iter() if of.get("href")}
    assert nav == {section.get("id") for section in shown.all("section")}


def test_landmarks_skip_link_and_language_are_there(shown):
    assert shown.root.get("lang") == "en"
    assert [len(shown.all(tag)) for tag in ("header", "nav", "main", "footer")] == [1, 1, 1, 1]
    first = next(of for of in shown.root.iter() if local(of) == "a")
    assert first.get("href") == "#content"
    assert local(shown.by_id["content"]) == "main"


def test_tables_have_captions_and_scopes(shown):
    for table in shown.all("table"):
        assert shown.words(table[0])
        heads = [of.get("scope") for of in table.iter() if local(of) == "th"]
        assert set(heads) == {"col", "row"}


def test_pictures_have_names_and_bars_stay_silent(shown):
    for svg in shown.all("svg"):
        named = svg.get("aria-label") or svg.get("aria-labelledby") or any(local(of) == "title" for of in svg)
        assert svg.get("aria-hidden") == "true" or (svg.get("role") == "img" and named)


def test_the_status_comes_first(contents, shown):
    body = shown.all("body")[0]
    first = next(of for of in body.iter() if local(of) == "p")
    assert shown.words(first) == f"Status: {contents.document['status']}"
    order = [section.get("id") for section in shown.all("section")]
    assert order.index("cautions") < 3


def test_it_prints_on_a4(text):
    style = text[text.index("@media print") :]
    for rule in ("size: A4", "break-inside: avoid", "::details-content", "print-color-adjust: exact"):
        assert rule in style
    assert "beforeprint" in text


def test_its_size_leaves_room_for_the_model(text):
    assert len(text.encode()) < 1_200_000


def test_a_script_that_would_end_its_element_is_refused():
    for ending in ("a]]>b", "'</SCRIPT>'"):
        with pytest.raises(ValueError, match="signs that end it"):
            script(ending)


def test_the_same_contents_give_the_same_page(contents, text):
    assert page(contents) == text
