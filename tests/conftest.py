"""Property tests draw new examples at the desk and the same ones in CI, so that a red run can be repeated."""

import os
import sys

from hypothesis import settings

settings.register_profile("repeatable", derandomize=True)
# The mesher of the finite elements brings a CAD kernel of another edition. blockgen loads it in processes of its own;
# tests of the solver load it in this one, where the kernel must have bound all its functions to its own library before.
if hasattr(os, "RTLD_NOW"):
    sys.setdlopenflags(os.RTLD_NOW)
import OCP  # noqa: E402, F401

if os.environ.get("CI"):
    settings.load_profile("repeatable")
