"""Options that several commands share."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

SpecFile = Annotated[Path, typer.Argument(metavar="SPEC", help="The spec, a TOML file.")]
StepFile = Annotated[Path, typer.Argument(metavar="FILE", help="The maker's STEP file.")]
DraftFile = Annotated[
    Path | None, typer.Option("--out", metavar="FILE", help="Write the table of a spec here; must not exist yet.")
]
Json = Annotated[bool, typer.Option("--json", help="Print one JSON document and nothing else.")]
Strict = Annotated[bool, typer.Option("--strict", help="Count warnings as failures.")]
ONLY = (
    "Write these only, with commas between: block, stl, assembly, drawing, base_holes, inspection, report; or summary "
    "for none of them. Summary, spec and manifest always come with them. Clashes are looked for with the assembly or "
    "the report only."
)
WithStiffness = Annotated[
    bool, typer.Option("--stiffness", help='Find out the stiffness by finite elements; needs pip install ".[fea]".')
]
BandAsked = Annotated[
    float | None,
    typer.Option("--band", metavar="PERCENT", min=0.1, max=50, help="Error band asked of --stiffness, 5 without it."),
]
Quiet = Annotated[bool, typer.Option("--quiet", help="Print nothing but errors and failures.")]


def share(percent: float | None) -> float | None:
    """Return a share of one from per cent; None stays None."""
    return None if percent is None else percent / 100
