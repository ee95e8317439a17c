"""Renders README's pictures of the demo block: ``python tests/pictures/render.py``.

The block comes from the plan and the kernel's mesh, the callouts from the plan. Each picture carries the hash of the
shape that it shows, so that a test can tell when it is stale. matplotlib and vtk come with cadquery.
"""

from __future__ import annotations

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(Path(__file__).parent))
sys.path.insert(0, str(ROOT))

from axial_view import draw_layout  # noqa: E402
from block_view import draw_block  # noqa: E402
from shape_hash import shape_hash  # noqa: E402

from blockgen.pipeline import design  # noqa: E402

SPEC = ROOT / "presets" / "examples" / "spray_carriage_servo.toml"
PICTURES = ROOT / ".pictures"


def main() -> None:
    """Render both pictures."""
    plan = design(SPEC).plan
    shown = {"Shape": shape_hash(ROOT / "out" / "GL-040-11_A" / "summary.json"), "Software": "blockgen tests/pictures"}
    PICTURES.mkdir(exist_ok=True)
    draw_block(plan, PICTURES / "block.png", shown)
    draw_layout(plan, PICTURES / "axial_layout.png", shown)


if __name__ == "__main__":
    main()
