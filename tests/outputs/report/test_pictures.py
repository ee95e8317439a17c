"""Pictures are to scale and say the same as the words beside them."""

import pytest

from blockgen.outputs.report.alignment_picture import rings
from blockgen.outputs.report.bars import share_bar, use_bar
from tests.outputs.report.reading import Page

SPREAD = {"worst": 0.175, "p50": 0.032, "p95": 0.064, "p9973": 0.088, "limit": 0.2, "unit": "mm"}


def test_circles_are_to_scale_from_the_outside_in():
    made = rings(SPREAD)
    assert [ring.level for ring in made] == ["limit", "worst", "p9973", "p95", "p50"]
    assert len({round(ring.radius / ring.value, 6) for ring in made}) == 1


def test_a_limit_that_is_exceeded_lies_inside():
    assert [ring.level for ring in rings({**SPREAD, "limit": 0.1})][:2] == ["worst", "limit"]


def test_a_limit_far_away_is_told_in_words_alone():
    made = {ring.level: ring.radius for ring in rings({**SPREAD, "limit": 5.0})}
    assert made["limit"] is None
    assert made["worst"] == pytest.approx(132)


def test_no_limit_and_no_offset_at_all_can_be_drawn():
    assert "limit" not in {ring.level for ring in rings({**SPREAD, "limit": None})}
    assert {ring.radius for ring in rings({**dict.fromkeys(SPREAD, 0.0), "limit": None})} == {0.0}


def width_of(bar, class_):
    (rect,) = [of for of in Page(bar).root.iter() if of.get("class") == class_]
    return float(rect.get("width"))


@pytest.mark.parametrize(("margin", "width"), [(1.0, 0.6), (0.25, 50.0), (0.0, 66.67), (-0.5, 100.0), (-9.0, 100.0)])
def test_a_bar_is_as_long_as_the_use(margin, width):
    assert width_of(use_bar(margin, "pass"), "bar-pass") == pytest.approx(width, abs=0.01)


def test_a_bar_beyond_its_end_has_a_mark():
    assert "<path" in use_bar(-0.6, "fail")
    assert "<path" not in use_bar(-0.5, "fail")


def test_a_share_is_as_long_as_it_says():
    assert width_of(share_bar(0.3), "bar-share") == 30


def boxes(shown, class_):
    found = [of for of in shown.by_id["axial"].iter() if of.get("class") == class_]
    return [{name: float(of.get(name)) for name in ("x", "y", "width", "height")} for of in found]


def test_the_axial_layout_is_to_scale(contents, shown):
    values = {key: entry["value"] for key, entry in contents.document["dimensions"].items()}
    (block,) = boxes(shown, "metal")
    scale = block["width"] / values["length"]
    assert block["height"] / values["height"] == pytest.approx(scale, rel=1e-3)
    first, second = boxes(shown, "grip")
    assert first["width"] == pytest.approx(values["journal_grip"] * scale, abs=0.02)
    assert second["width"] == pytest.approx(values["motor_grip"] * scale, abs=0.02)
    assert second["x"] - first["x"] - first["width"] == pytest.approx(values["shaft_gap"] * scale, abs=0.02)
    window = boxes(shown, "room")[0]
    assert window["width"] == pytest.approx(values["window_length"] * scale, abs=0.02)
    assert window["x"] - block["x"] == pytest.approx(values["bearing_wall"] * scale, abs=0.02)
    words = {shown.words(of) for of in shown.by_id["axial"].iter() if of.tag.endswith("}text")}
    for key in ("length", "journal_grip", "motor_grip", "shaft_gap", "coupling_position"):
        assert f"{key.replace('_', ' ')} {values[key]:g}" in words
