"""Random specs through sizing, checks and the builder.

``python -m tests.random_specs.run --sized 10000 --built 1000 --seed 1`` prints what came out, each fault with its
number, and ends with 1 when there is one. ``--one N`` prints the N-th spec.
"""

from __future__ import annotations

import argparse
import collections
import sys
import traceback
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from multiprocessing import get_context

from tests.random_specs.generate import specs
from tests.random_specs.verify import built, planned
from tests.sizing.strategies import toml


def tried(numbered, *, solids: int) -> tuple[int, str, list[str]]:
    """Return number, outcome and faults of one spec; solids are built for numbers below ``solids``."""
    number, tables = numbered
    try:
        plan, faults = planned(tables)
        if plan is None:
            return number, "infeasible", faults
        if number < solids:
            return number, "built", faults + built(plan)
    except Exception:  # noqa: BLE001 # a crash is what is looked for
        return number, "crashed", [traceback.format_exc(limit=-3)]
    return number, "sized", faults


def run(seed: int, count: int, solids: int, workers: int = 2) -> tuple[collections.Counter, dict[int, list[str]]]:
    """Return how often each outcome came, and the faults by number."""
    outcomes, faults = collections.Counter(), {}
    # spawned: the kernel's threads of this process would not live on in a fork
    with ProcessPoolExecutor(workers, mp_context=get_context("spawn")) as pool:
        answers = pool.map(partial(tried, solids=solids), enumerate(specs(seed, count)), chunksize=20)
        for number, outcome, found in answers:
            outcomes[outcome] += 1
            if found:
                faults[number] = found
    return outcomes, faults


def main() -> int:
    """Run from the command line."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--sized", type=int, default=10000)
    parser.add_argument("--built", type=int, default=1000, help="of the first specs, how many are built too")
    parser.add_argument("--one", type=int)
    given = parser.parse_args()
    if given.one is not None:
        print(toml(list(specs(given.seed, given.one + 1))[-1]))
        return 0
    outcomes, faults = run(given.seed, given.sized, given.built)
    for number, found in sorted(faults.items()):
        print(f"spec {number}:")
        print("\n".join(f"  {line}" for line in found))
    print(", ".join(f"{outcome} {count}" for outcome, count in sorted(outcomes.items())), f"; faults in {len(faults)}")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
