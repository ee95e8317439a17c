"""Memory over many builds in one process; run as ``python memory.py SPEC OUT_FOLDER BUILDS``, prints two numbers, MiB.

The first is the resident memory after a tenth of the builds, the second after all of them.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

from blockgen import build


def resident() -> float:
    """Return the memory of this process that is in use now, MiB (Linux)."""
    pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[1])
    return pages * os.sysconf("SC_PAGE_SIZE") / 2**20


def main(spec: str, out: str, builds: int) -> None:
    """Build again and again."""
    warm = max(builds // 10, 1)
    for index in range(builds):
        build(spec, out, ["block", "stl"])
        if index + 1 == warm:
            print(f"{resident():.1f}", flush=True)
    print(f"{resident():.1f}")


if __name__ == "__main__":
    main(sys.argv[1], sys.argv[2], int(sys.argv[3]))
