"""The first sheet of the demo's drawing, as its PDF shows it."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from pathlib import Path

import pypdfium2
from PIL.PngImagePlugin import PngInfo

_WIDTH = 2000


def sheet_hash(svg: Path) -> str:
    """Return the SHA-256 of the drawing's SVG, by which a test tells whether the picture is stale."""
    return hashlib.sha256(svg.read_bytes()).hexdigest()


def draw_sheet(pdf: Path, path: Path, metadata: Mapping[str, str]) -> None:
    """Render the first page of a PDF."""
    page = pypdfium2.PdfDocument(pdf)[0]
    picture = page.render(scale=_WIDTH / page.get_width()).to_pil().convert("L")
    texts = PngInfo()
    for keyword, text in metadata.items():
        texts.add_text(keyword, text)
    picture.save(path, optimize=True, pnginfo=texts)
