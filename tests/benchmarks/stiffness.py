"""Stiffness of the demo as a whole process; run as ``python stiffness.py SPEC BAND``, prints one JSON object."""

from __future__ import annotations

import json
import resource
import sys
import time

from blockgen.evidence.stiffness.envelope import greatest_slope
from blockgen.pipeline import design


def main(spec: str, band: float) -> None:
    """Find the stiffness once."""
    start = time.perf_counter()
    found = design(spec, stiffness=True, band=band).stiffness
    assert found is not None
    own, solvers = (resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    document = {
        "seconds": time.perf_counter() - start,
        "processor_seconds": [own.ru_utime + own.ru_stime, solvers.ru_utime + solvers.ru_stime],
        "tilt_band": greatest_slope(found.variants).band,
        "unknowns": [mesh.unknowns for mesh in found.meshes],
        "band": found.band,
        "peaks_mib": [own.ru_maxrss / 1024, *[solvers.ru_maxrss / 1024] * 2],  # of the larger solver, twice
    }
    print(json.dumps(document))


if __name__ == "__main__":
    main(sys.argv[1], float(sys.argv[2]))
