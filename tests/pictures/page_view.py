"""Pictures of the report page, of a change and of a sweep, as the commands make them."""

from __future__ import annotations

import shutil
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path

BROWSER = "/usr/bin/chromium"
FLAGS = (
    "--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader",
    "--enable-unsafe-swiftshader", "--ignore-gpu-blocklist", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
)  # fmt: skip


def draw_page(report: Path, path: Path, texts: Mapping[str, str]) -> None:
    """Photograph the first two screens of a report in Chromium, at the width of a desk and of a telephone."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as tool:
        browser = tool.chromium.launch(executable_path=BROWSER, args=list(FLAGS))
        shots = []
        for width, height in ((1240, 900), (390, 900)):
            page = browser.new_page(viewport={"width": width, "height": height}, color_scheme="light")
            page.goto(report.resolve().as_uri())
            page.wait_for_function("window.blockgenView && window.blockgenView.firstPicture")
            shots.append(page.screenshot())
            page.locator("canvas").first.scroll_into_view_if_needed()
            page.evaluate("document.querySelector('canvas').scrollIntoView({block: 'start'})")
            page.wait_for_timeout(500)
            shots.append(page.screenshot())
        browser.close()
    _beside(shots, path, texts)


def _beside(shots: list[bytes], path: Path, texts: Mapping[str, str]) -> None:
    import io

    from PIL import Image, PngImagePlugin

    pictures = [Image.open(io.BytesIO(shot)).convert("RGB") for shot in shots]
    gap = 24
    wide = sum(p.width for p in (pictures[1], pictures[2], pictures[3])) + 2 * gap
    sheet = Image.new("RGB", (wide, max(p.height for p in pictures)), (120, 120, 120))
    across = 0
    for picture in pictures[1:]:
        sheet.paste(picture, (across, 0))
        across += picture.width + gap
    notes = PngImagePlugin.PngInfo()
    for key, text in texts.items():
        notes.add_text(key, text)
    sheet.save(path, pnginfo=notes, optimize=True)


def draw_commands(place: Path, pictures: Path) -> None:
    """Run README's commands for a change and for a sweep, and keep their pictures."""
    for line in (
        "new axis.toml --motor servo-80 --bearing bearing-unit-15 --coupling bellows-45",
        "new next.toml --from axis.toml --motor nema-34",
        "compare axis.toml next.toml --out changes",
        "sweep axis.toml --vary base.shaft_height=60:75:5 --vary block.bearing_wall=20:28:2 --vary base.screw=M8,M10",
    ):
        subprocess.run([sys.executable, "-m", "blockgen", *line.split()], cwd=place, check=True, capture_output=True)
    (change,) = (place / "changes").glob("*.png")
    shutil.copy(change, pictures / "change.png")
    shutil.copy(place / "sweep.png", pictures / "sweep.png")
