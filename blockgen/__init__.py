"""blockgen sizes, checks and models the one-piece mounting block of a ball-screw axis.

What stands in ``__all__`` is the public interface; each name is loaded when it is first used. Lengths are in mm,
forces in N, torques in N*m, angles in degrees. With a spec in ``axis.toml``:

    >>> import blockgen
    >>> spec = blockgen.load_spec("axis.toml")
    >>> made = blockgen.design(spec)
    >>> made.plan.number("length")
    94.0
    >>> made.plan.records["length"].rule
    '(length_low + length_high) / 2; middle of the interval, to 0.5, to 0.1 where that leaves it'
    >>> made.status.split(":")[0]
    'PRELIMINARY'
    >>> [finding.title for finding in made.findings if finding.verdict == "fail"]
    []
    >>> result = blockgen.build(spec, out="out", only=["inspection"])
    >>> sorted(result.files)
    ['T-001_A_inspection.csv', 'spec.toml', 'summary.json', 'summary.md']

What cannot be is an exception with the facts in it:

    >>> try:
    ...     blockgen.design(blockgen.load_spec("too_short.toml"))
    ... except blockgen.InfeasibleError as error:
    ...     print(error.conflicts[0].title)
    key to motor-side clamp screw against shallowest grip of the motor shaft: 7.00 mm missing
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from blockgen.checks import check
    from blockgen.errors import BlockgenError, InfeasibleError, InputError, KernelError, MachineError
    from blockgen.pipeline import BuildResult, Design, build, design
    from blockgen.plan import Plan
    from blockgen.sizing.size import size
    from blockgen.spec.load import Spec, load_spec

__version__ = "0.1.0"
__all__ = [
    "BlockgenError",
    "BuildResult",
    "Design",
    "InfeasibleError",
    "InputError",
    "KernelError",
    "MachineError",
    "Plan",
    "Spec",
    "__version__",
    "build",
    "check",
    "design",
    "load_spec",
    "size",
]

_HOMES = {
    "BlockgenError": "blockgen.errors",
    "BuildResult": "blockgen.pipeline",
    "Design": "blockgen.pipeline",
    "InfeasibleError": "blockgen.errors",
    "InputError": "blockgen.errors",
    "KernelError": "blockgen.errors",
    "MachineError": "blockgen.errors",
    "Plan": "blockgen.plan",
    "Spec": "blockgen.spec.load",
    "build": "blockgen.pipeline",
    "check": "blockgen.checks",
    "design": "blockgen.pipeline",
    "load_spec": "blockgen.spec.load",
    "size": "blockgen.sizing.size",
}


def __getattr__(name: str) -> object:
    """Load a public name when it is asked for, so that importing the package costs nothing."""
    home = _HOMES.get(name)
    if home is None:
        raise AttributeError(f"module 'blockgen' has no attribute {name!r}; it offers {', '.join(sorted(_HOMES))}")
    return getattr(import_module(home), name)


def __dir__() -> list[str]:
    return sorted([*globals(), *_HOMES])
