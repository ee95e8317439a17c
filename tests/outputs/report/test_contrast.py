"""Contrast of the colours as the style gives them, by WCAG 2: text 4.5, marks 3."""

import re
from importlib.resources import files

import pytest

STYLE = files("blockgen.outputs.report").joinpath("style.css").read_text(encoding="utf-8")
TEXT = [(ink, paper) for ink in ("ink", "quiet", "link", "bad", "unknown", "good", "open") for paper in ("paper",)]
TEXT += [(ink, "raised") for ink in ("ink", "quiet", "link")]
TEXT += [(name, f"{name}-soft") for name in ("good", "open", "bad", "unknown")]
MARKS = [(name, "paper") for name in ("good", "open", "bad", "link")] + [(n, "raised") for n in ("good", "open", "bad")]
MARKS += [("grip", "shaft"), ("ink", "metal"), ("ink", "part"), ("ink", "hub"), ("ink", "shaft")]


def palettes():
    blocks = re.findall(r":root \{([^}]*)\}", STYLE)
    return [dict(re.findall(r"--([\w-]+): (#[0-9a-f]{3,6})", block)) for block in blocks]


def luminance(colour):
    digits = colour[1:] if len(colour) == 7 else "".join(c * 2 for c in colour[1:])
    parts = [int(digits[i : i + 2], 16) / 255 for i in (0, 2, 4)]
    red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one, other):
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


def test_black_on_white_is_21():
    assert contrast("#000", "#fff") == pytest.approx(21)


@pytest.mark.parametrize("index", range(3), ids=["light", "dark", "print"])
def test_text_and_marks_can_be_read(index):
    palette = palettes()[index]
    poor = {pair: contrast(*(palette[n] for n in pair)) for pair in TEXT}
    assert not {pair: c for pair, c in poor.items() if c < 4.5}
    marks = {pair: contrast(*(palette[n] for n in pair)) for pair in MARKS}
    assert not {pair: c for pair, c in marks.items() if c < 3}


def test_all_three_palettes_name_the_same_colours():
    assert len({frozenset(palette) for palette in palettes()}) == 1
