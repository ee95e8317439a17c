import pytest

from blockgen.console import preset_page
from blockgen.console.plain import lines
from blockgen.spec.presets import list_presets


@pytest.mark.parametrize("width", [80, 120])
def test_all_are_listed_and_each_source_once(width):
    presets = list_presets()
    text = list(lines(preset_page.list_page(presets), width))
    assert max(map(len, text)) <= width
    listed = [line.split()[1] for line in text if line.startswith(("motor ", "bearing ", "coupling ", "material "))]
    assert sorted(listed) == sorted(preset.name for preset in presets)
    assert " ".join(" ".join(text).split()).count("invented plausible values, no maker's data") == 1


def test_one_shows_its_values_with_units():
    text = "\n".join(lines(preset_page.one_page("servo-80"), 80))
    assert "motor servo-80" in text
    assert "2.4 N\u00b7m" in text
