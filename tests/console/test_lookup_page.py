import pytest

from blockgen.console import lookup_page
from blockgen.console.plain import lines
from blockgen.errors import InputError


@pytest.fixture(autouse=True)
def _own_presets(tmp_path, monkeypatch):
    monkeypatch.setenv("BLOCKGEN_PRESETS", str(tmp_path))


def text(kind, what, width=80):
    return list(lines(lookup_page.page(kind, what), width))


@pytest.mark.parametrize("width", [80, 120])
def test_each_source_stands_once_below_the_table(width):
    shown = text("material", "S235JR", width)
    assert max(map(len, shown)) <= width
    assert sum("EN 10025-2" in line for line in shown) == 1
    assert shown.index("Sources") > shown.index("Poisson's ratio                0.3       1")


@pytest.mark.parametrize("name", ["cast-tooling-plate", "EN-GJS-500-7", "en-gjs-500-7"])
def test_a_material_may_be_a_preset(name):
    document = lookup_page.document("material", name)
    assert document["title"].casefold() == name.casefold()
    assert {row["label"]: row["unit"] for row in document["rows"]}["yield strength"] == "MPa"
    assert document["rows"][0]["source"].startswith(f"preset {document['title']}: ")


def test_a_preset_hides_the_material_of_the_tables(tmp_path):
    head = 'kind = "material"\nname = "S235JR"\nsource = "our supplier"\nstatus = "read"\n'
    (tmp_path / "S235JR.toml").write_text(f"{head}[material]\nyield_strength = '225 MPa'\n")
    assert "yield strength  225 MPa       1" in text("material", "S235JR")


def test_what_is_not_found_names_the_presets_too(tmp_path):
    (tmp_path / "broken.toml").write_text("not toml")
    with pytest.raises(InputError, match="the presets hold EN-GJS-500-7, cast-tooling-plate"):
        lookup_page.page("material", "cheese")
    with pytest.raises(InputError, match="size in mm") as caught:
        lookup_page.page("fit", "H7")
    assert "presets" not in str(caught.value)
