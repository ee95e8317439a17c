"""Property tests draw new examples at the desk and the same ones in CI, so that a red run can be repeated."""

import os

from hypothesis import settings

settings.register_profile("repeatable", derandomize=True)
if os.environ.get("CI"):
    settings.load_profile("repeatable")
