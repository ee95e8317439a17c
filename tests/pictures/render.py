"""Renders README's pictures of the demo block: ``python tests/pictures/render.py``.

The block comes from the plan and the kernel's mesh, the callouts from the plan. Each picture carries the hash of the
shape that it shows, so that a test can tell when it is stale. matplotlib and vtk come with cadquery. The picture of the
report needs Chromium in /usr/bin.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(Path(__file__).parent))
sys.path.insert(0, str(ROOT))

from axial_view import draw_layout  # noqa: E402
from block_view import draw_block  # noqa: E402
from drawing_view import draw_sheet, sheet_hash  # noqa: E402
from page_view import draw_commands, draw_page  # noqa: E402
from shape_hash import shape_hash  # noqa: E402

from blockgen.pipeline import design  # noqa: E402

SPEC = ROOT / "presets" / "examples" / "spray_carriage_servo.toml"
PICTURES = ROOT / ".pictures"
DEMO = ROOT / "out" / "GL-040-11_A"


def main() -> None:
    """Render the pictures."""
    plan = design(SPEC).plan
    shown = {"Shape": shape_hash(DEMO / "summary.json"), "Software": "blockgen tests/pictures"}
    PICTURES.mkdir(exist_ok=True)
    draw_block(plan, PICTURES / "block.png", shown)
    draw_layout(plan, PICTURES / "axial_layout.png", shown)
    sheet = {"Sheet": sheet_hash(DEMO / "GL-040-11_A_drawing.svg"), "Software": "blockgen tests/pictures"}
    draw_sheet(DEMO / "GL-040-11_A_drawing.pdf", PICTURES / "drawing.png", sheet)
    draw_page(DEMO / "GL-040-11_A_report.html", PICTURES / "report.png", shown)
    with tempfile.TemporaryDirectory() as place:
        draw_commands(Path(place), PICTURES)


if __name__ == "__main__":
    main()
