"""How fast the alignment is, beside a Monte Carlo of a million draws; ratios in one run.

Run as ``python tests/benchmarks/alignment.py``. The peer draws the same offsets with numpy and takes three quantiles.
"""

from __future__ import annotations

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from blockgen import load_spec, size
from blockgen.alignment.chain import Alignment, align
from blockgen.alignment.shares import shares
from blockgen.alignment.terms import offsets, terms_of
from tests.alignment.draws import lengths, off_by
from tests.benchmarks.timing import Pair, in_turn, many

SPEC = Path(__file__).resolve().parents[2] / "presets" / "examples" / "spray_carriage_servo.toml"
SHARES_AT_ONCE = 100


def alignment(runs: int = 9) -> tuple[Alignment, Pair, Pair]:
    """Return the alignment and two pairs of times: whole answer and peer, shares (many at once) and peer."""
    import numpy as np

    plan = size(load_spec(str(SPEC)))
    found = align(plan)
    scatters = offsets(found.terms)

    def peer() -> None:
        np.quantile(lengths(scatters, 1), [0.5, 0.95, 0.9973])

    whole = in_turn(lambda: align(plan), peer, runs)
    only_shares = in_turn(many(lambda: shares(terms_of(plan)), SHARES_AT_ONCE), peer, runs)
    return found, whole, only_shares


def main() -> None:
    """Print times, ratios, and how far the million draws are from the exact law in their own standard errors."""
    found, whole, only_shares = alignment()
    drawn = lengths(offsets(found.terms), 2)
    print(f"whole answer {whole.first * 1e3:.1f} ms, goal 10 ms")
    print(f"million draws {whole.second * 1e3:.0f} ms, {1 / whole.ratio:.0f} x as long, goal 50 x")
    print(f"terms and shares {only_shares.first / SHARES_AT_ONCE * 1e3:.3f} ms, goal 0.5 ms")
    for value, probability in ((found.offset.p50, 0.5), (found.offset.p95, 0.95), (found.offset.p9973, 0.9973)):
        error = off_by(drawn, value, probability)
        print(f"P{100 * probability:g} {value:.6f} mm, draws off by {error:.1f} of their own standard errors")


if __name__ == "__main__":
    main()
