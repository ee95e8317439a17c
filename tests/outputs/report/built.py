"""The report of the demo as a build writes it, once for all tests of a process that only read it."""

from __future__ import annotations

import atexit
import shutil
import tempfile
from functools import cache
from pathlib import Path

from blockgen import pipeline
from tests.examples import SERVO


@cache
def folder_of_the_demo():
    """Return the folder of a set with the report."""
    place = Path(tempfile.mkdtemp(prefix="blockgen-report-"))
    atexit.register(shutil.rmtree, place, ignore_errors=True)
    return pipeline.build(SERVO, place, only=["report"]).folder
