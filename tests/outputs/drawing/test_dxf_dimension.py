"""The text of a dimension: measured where it can be."""

from __future__ import annotations

import pytest

from blockgen.outputs.drawing.dxf_dimension import measured, override
from blockgen.outputs.drawing.strokes import Measure


def of(text, kind="linear"):
    return Measure(kind, (0.0, 0.0), (10.0, 0.0), (0.0, 5.0), 0.0, text)


@pytest.mark.parametrize(
    ("kind", "value", "sign", "text", "expected"),
    [
        ("linear", 160.0, ".", "160", ""),
        ("linear", 12.5, ",", "12,5", ""),
        ("linear", 12.5, ".", "12,5", "12,5"),
        ("linear", 80.0, ",", "80 \u00b10,1", "<> \u00b10,1"),
        ("linear", 80.0, ",", "180 \u00b10,1", "180 \u00b10,1"),
        ("linear", 80.0, ",", "80,5", "80,5"),
        ("linear", 8.0, ".", "8 \u00b10.8", "<> \u00b10.8"),
        ("linear", 4.0, ".", "4x 4", "4x <>"),
        ("linear", 4.0, ".", "4 (4)", "4 (4)"),
        ("diameter", 60.0, ".", "\u230060 H7", "<> H7"),
        ("diameter", 9.0, ".", "4x \u23009", "4x <>"),
        ("diameter", 60.0, ".", "60 H7", "60 H7"),
        ("radius", 20.0, ".", "R20", ""),
        ("linear", 1 / 3, ".", "0.333", ""),
        ("linear", 7.0, ".", "a\\b {c}", "a\\\\b \\{c\\}"),
        ("linear", 7.0, ".", "a\nb", "a\ufffdb"),
    ],
)
def test_the_number_stays_measured_where_it_is_shown_once(kind, value, sign, text, expected):
    assert override(of(text, kind), value, sign) == expected


def test_a_level_dimension_measures_along_x_and_an_upright_one_along_y():
    slanting = {"first": (0.0, 0.0), "second": (-3.0, 4.0), "on_line": (0.0, 9.0), "text": ""}
    assert measured(Measure("linear", angle=0.0, **slanting)) == 3.0
    assert measured(Measure("linear", angle=90.0, **slanting)) == 4.0
    assert measured(Measure("radius", angle=0.0, **slanting)) == 5.0
