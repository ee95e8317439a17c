"""The fonts that come with the package: unaltered, with their licences."""

from __future__ import annotations

from importlib.resources import files
from io import BytesIO

import pytest

from blockgen.outputs.drawing.lettering import FONTS, font_bytes

FOLDER = files("blockgen.outputs.drawing") / "fonts"


def test_only_fonts_that_are_used_and_what_is_said_about_them():
    names = {entry.name for entry in FOLDER.iterdir()}
    assert {name for name in names if name.endswith(".ttf")} == {f"{font}.ttf" for font in FONTS}
    said = (FOLDER / "README.txt").read_text(encoding="utf-8")
    assert not [name for name in names - {"README.txt"} if name not in said]


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("osifont-COPYRIGHT.txt", "this font does not by itself cause the resulting document to be covered"),
        ("LGPL-3.txt", "GNU LESSER GENERAL PUBLIC LICENSE"),
        ("GPL-3.txt", "GNU GENERAL PUBLIC LICENSE"),
        ("DejaVu-LICENCE.txt", "Tavmjong Bah"),
    ],
)
def test_licences_are_there(name, words):
    text = " ".join((FOLDER / name).read_text(encoding="utf-8").split())
    assert words in text


@pytest.mark.parametrize("font", FONTS)
def test_documents_may_embed_the_font(font):
    """fsType 0 of OpenType: installable embedding."""
    from fontTools.ttLib import TTFont

    assert TTFont(BytesIO(font_bytes(font)))["OS/2"].fsType == 0
