"""blockgen sizes, checks and models the one-piece mounting block of a ball-screw axis.

``from blockgen import load_spec, size, check, build`` loads what these need when they are first used.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from blockgen.checks import check
    from blockgen.pipeline import BuildResult, build
    from blockgen.sizing.size import size
    from blockgen.spec.load import load_spec

__version__ = "0.1.0"
__all__ = ["BuildResult", "__version__", "build", "check", "load_spec", "size"]

_HOMES = {
    "BuildResult": "blockgen.pipeline",
    "build": "blockgen.pipeline",
    "check": "blockgen.checks",
    "load_spec": "blockgen.spec.load",
    "size": "blockgen.sizing.size",
}


def __getattr__(name: str) -> object:
    """Load a public function when it is asked for, so that importing the package costs nothing."""
    home = _HOMES.get(name)
    if home is None:
        raise AttributeError(f"module 'blockgen' has no attribute {name!r}; it offers {', '.join(sorted(_HOMES))}")
    return getattr(import_module(home), name)


def __dir__() -> list[str]:
    return sorted([*globals(), *_HOMES])
