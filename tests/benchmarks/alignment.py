"""How fast the alignment is, beside a Monte Carlo of a million draws; ratios in one run.

Run as ``python tests/benchmarks/alignment.py``, or as a group of run.py. The peer draws the same offsets with numpy
and takes three quantiles of them; it gives neither angles nor what a step tighter would buy.
"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import NamedTuple

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from blockgen import load_spec, size
from blockgen.alignment.chain import align
from blockgen.alignment.heat import expansions_of
from blockgen.alignment.shares import shares
from blockgen.alignment.terms import offsets
from tests.alignment.draws import lengths, off_by
from tests.benchmarks.timing import Pair, in_turn

SPEC = Path(__file__).resolve().parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"
QUANTILES = {"p50": 0.5, "p95": 0.95, "p9973": 0.9973}


class Measured(NamedTuple):
    """Times of the whole answer beside the draws, and of the shares alone beside the whole answer.

    ``off`` says by how many of their own standard errors the draws are off the exact law, by quantile.
    """

    whole: Pair
    only_shares: Pair
    off: dict[str, float]


def measure(runs: int = 9) -> Measured:
    """Return what was measured on the demo, warm as ``check`` has it."""
    import numpy as np

    plan = size(load_spec(str(SPEC)))
    warm = expansions_of(plan)
    found = align(plan, warm)
    scatters = offsets(found.terms)

    def draws() -> None:
        np.quantile(lengths(scatters, 1), list(QUANTILES.values()))

    whole = in_turn(lambda: align(plan, warm), draws, runs)
    only_shares = in_turn(lambda: shares(found.terms), lambda: align(plan, warm), runs, each=20)
    drawn = lengths(scatters, 2)
    off = {name: off_by(drawn, getattr(found.offset, name), level) for name, level in QUANTILES.items()}
    return Measured(whole, only_shares, off)


def main() -> None:
    """Print times, ratios, and how far the draws are from the exact law."""
    found = measure()
    print(f"whole answer {found.whole.quickest * 1e3:.1f} ms, goal 10 ms")
    print(f"million draws {found.whole.second * 1e3:.0f} ms, {1 / found.whole.ratio:.0f} x as long, goal 50 x")
    print(f"shares alone {found.only_shares.quickest * 1e3:.3f} ms, goal 0.5 ms")
    for name, errors in found.off.items():
        print(f"draws off {name} by {errors:.1f} of their own standard errors")


if __name__ == "__main__":
    main()
