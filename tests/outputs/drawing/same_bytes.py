"""The fingerprint of a file that is written in a fresh process with a hash seed of its own."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]


def fingerprint(expression, seed):
    """Return the sha256 of the bytes that an expression of the writers and sample sheets gives."""
    code = (
        "import hashlib\n"
        "from blockgen.outputs.drawing.to_dxf import dxf_bytes\n"
        "from blockgen.outputs.drawing.to_pdf import pdf_bytes\n"
        "from blockgen.outputs.drawing.to_svg import svg_text\n"
        "from tests.outputs.drawing.sample_sheets import busy_sheet, table_sheet, view_sheet\n"
        f"print(hashlib.sha256({expression}).hexdigest())"
    )
    environment = {**os.environ, "PYTHONHASHSEED": str(seed), "TZ": f"UTC{seed}"}
    command = [sys.executable, "-c", code]
    run = subprocess.run(command, cwd=ROOT, env=environment, capture_output=True, text=True, check=True, timeout=120)
    return run.stdout
