"""From a spec to a set of files: load, size, check, model, write."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from blockgen import __version__
from blockgen.alignment.arrangements import Arrangement, arrangements
from blockgen.alignment.chain import Alignment, align
from blockgen.alignment.heat import expansions_of
from blockgen.checks import check
from blockgen.checks.finding import Finding
from blockgen.checks.status import status
from blockgen.errors import InputError, Problem
from blockgen.evidence.stiffness.elastic_terms import elastic_terms
from blockgen.evidence.stiffness.result import Stiffness
from blockgen.outputs import names
from blockgen.outputs.alignment_json import with_arrangements
from blockgen.outputs.folder import new_set
from blockgen.outputs.manifest import manifest
from blockgen.outputs.spec_toml import spec_toml
from blockgen.outputs.stiffness_rows import with_stiffness
from blockgen.outputs.summary_json import summary
from blockgen.outputs.summary_md import summary_md
from blockgen.outputs.tidy import as_json
from blockgen.plan import Plan
from blockgen.sizing.size import size
from blockgen.spec.fingerprint import spec_hash
from blockgen.spec.load import Spec, load_spec

if TYPE_CHECKING:
    from blockgen.geometry.block import BlockSolid

Progress = Callable[[str], None]


@dataclass(frozen=True, slots=True)
class Design:
    """A sized and checked block.

    Args:
        spec: What was asked.
        plan: What was decided.
        alignment: How far out of line the shafts will be.
        findings: What the checks found.
        status: released for review, PRELIMINARY or NOT FOR MANUFACTURE, with the reason.
        spec_sha256: Hash of the resolved spec.
        stiffness: Evidence from finite elements; None where it was not asked for.
    """

    spec: Spec
    plan: Plan
    alignment: Alignment
    findings: tuple[Finding, ...]
    status: str
    spec_sha256: str
    stiffness: Stiffness | None = None


@dataclass(frozen=True, slots=True)
class BuildResult:
    """What a build wrote.

    Args:
        folder: Folder of the set.
        files: Role by file name; the manifest is not among them.
        plan: What was decided.
        findings: What the checks found.
        status: released for review, PRELIMINARY or NOT FOR MANUFACTURE, with the reason.
    """

    folder: Path
    files: dict[str, str]
    plan: Plan
    findings: tuple[Finding, ...]
    status: str


def design(
    spec_or_path: Spec | str | Path,
    *,
    stiffness: bool = False,
    band: float | None = None,
    progress: Progress | None = None,
) -> Design:
    """Load, size and check; neither the CAD kernel nor finite elements are loaded unless the stiffness is asked for.

    Args:
        spec_or_path: A loaded spec, or the path of a spec file.
        stiffness: Find out the stiffness by finite elements.
        band: Half the error band over the value that is asked of it.
        progress: Called with a few words as each step of the stiffness begins.

    Raises:
        InputError: the spec is wrong.
        InfeasibleError: no block can exist for it.
        MachineError: the finite element library is not installed.
    """
    spec = spec_or_path if isinstance(spec_or_path, Spec) else load_spec(spec_or_path)
    plan = size(spec)
    found = stiffness_of(plan, band, progress) if stiffness else None
    alignment = align(plan, expansions_of(plan), elastic_terms(found) if found else ())
    findings = check(plan, alignment, found) if found else check(plan, alignment)
    return Design(spec, plan, alignment, findings, status(plan, findings), spec_hash(spec), found)


def stiffness_of(plan: Plan, band: float | None = None, progress: Progress | None = None) -> Stiffness:
    """Return the stiffness of a plan's block by finite elements.

    Args:
        plan: What was decided.
        band: Half the error band over the value that is asked for; the usual one where it is None.
        progress: Called with a few words as each step begins.

    Raises:
        MachineError: the finite element library is not installed.
        KernelError: the solid cannot be made or meshed.
    """
    from blockgen.evidence.stiffness.library import library
    from blockgen.evidence.stiffness.run import BAND, stiffness

    library()  # before anything slow
    from blockgen.geometry.analysis import analysis_shape

    shape = analysis_shape(plan)
    return stiffness(plan, shape.brep, shape.faces, BAND if band is None else band, progress)


def compare_arrangements(made: Design, arrangement: str) -> tuple[Arrangement, ...]:
    """Return the arrangements side by side where ``plate`` is asked for, none for ``block``.

    Raises:
        InputError: another arrangement is asked for.
    """
    if arrangement == "block":
        return ()
    if arrangement != "plate":
        expected = "block, or plate for a separate motor plate with a foot-mounted unit"
        raise InputError([Problem("command line", None, "--arrangement", f'"{arrangement}"', expected, "")])
    return arrangements(made.plan, made.alignment.offset.limit)


def build(
    spec_or_path: Spec | str | Path,
    out: str | Path = "out",
    only: Iterable[str] | None = None,
    progress: Progress | None = None,
    *,
    stiffness: bool = False,
    band: float | None = None,
) -> BuildResult:
    """Build the files of a block, all or none.

    Args:
        spec_or_path: A loaded spec, or the path of a spec file.
        out: Folder in which the folder of the set is made.
        only: Roles to write beside summary, spec and manifest; None for all.
        progress: Called with a few words as each step begins.
        stiffness: Find out the stiffness by finite elements.
        band: Half the error band over the value that is asked of it.

    Returns:
        What was written. A failed check does not stop a build; it stands in the status.

    Raises:
        InputError: the spec or a role is wrong.
        InfeasibleError: no block can exist for the spec.
        MachineError: the files cannot be written.
        KernelError: the solid does not come out as planned.
    """
    roles = names.chosen_roles(only)
    told = progress or (lambda _: None)
    told("sizing and checking")
    made = design(spec_or_path, stiffness=True, band=band, progress=told) if stiffness else design(spec_or_path)
    folder = Path(out) / names.stem(made.plan)
    with new_set(folder) as place:
        files = _write_solid(made, place, roles, told) | _write_sheets(made, place, roles, told)
        files |= _write_words(made, place, folder, roles)
        told("checking the files")
        _write(place / names.MANIFEST, as_json(manifest(place, files, made.spec_sha256, made.status)))
    return BuildResult(folder, files, made.plan, made.findings, made.status)


def _write_solid(made: Design, place: Path, roles: Sequence[str], told: Progress) -> dict[str, str]:
    """Model the block and write the files that need the solid."""
    wanted = [role for role in roles if role in names.FROM_THE_SOLID]
    if not wanted:
        return {}
    told("modelling the block")
    from blockgen.geometry.block import build_block
    from blockgen.outputs.step import write_block_step
    from blockgen.outputs.stl import write_block_stl

    solid, start = build_block(made.plan), names.stem(made.plan)
    for role in wanted:
        files = [place / name for name in names.file_names(start, role)]
        told(f"writing {', '.join(file.name for file in files)}")
        if role == "block":
            write_block_step(solid, made.plan, files[0], made.status, __version__)
        elif role == "stl":
            write_block_stl(solid, made.plan, files[0])
        else:
            _write_drawing(made, solid, files)
    return names.roles_by_file(start, wanted)


def _write_drawing(made: Design, solid: BlockSolid, files: Sequence[Path]) -> None:
    from blockgen.outputs.drawing_set import drawing_set, pictures, write_drawing

    write_drawing(drawing_set(made.plan, pictures(solid), made.status), *files, made.status)


def _write_sheets(made: Design, place: Path, roles: Sequence[str], told: Progress) -> dict[str, str]:
    """Write the files of the shop that need no solid: hole pattern of the base, inspection sheet."""
    wanted, start = [role for role in roles if role not in names.FROM_THE_SOLID], names.stem(made.plan)
    for name, role in names.roles_by_file(start, wanted).items():
        told(f"writing {name}")
        if role == "base_holes":
            from blockgen.outputs.drawing_set import write_base_holes

            write_base_holes(made.plan, made.status, place / name)
        else:
            from blockgen.outputs.inspection_csv import inspection_csv

            _write(place / name, inspection_csv(made.plan, made.spec_sha256, made.status))
    return names.roles_by_file(start, wanted)


def _write_words(made: Design, place: Path, folder: Path, roles: Iterable[str]) -> dict[str, str]:
    """Write summary and spec."""
    from blockgen.making.setup_sheet import setup_sheet
    from blockgen.outputs.making_json import with_making

    start = names.stem(made.plan)
    listed = names.roles_by_file(start, roles) | names.ALWAYS
    rows = compare_arrangements(made, "plate")
    document = summary(made.plan, made.findings, made.status, made.spec_sha256, made.alignment)
    document = with_stiffness(document, made.stiffness)
    document = with_making(with_arrangements(document, rows), setup_sheet(made.plan))
    _write(place / names.SUMMARY_JSON, as_json(document))
    about = (made.plan, made.findings, made.status, made.spec_sha256, listed)
    text = summary_md(*about, made.alignment, rows, made.stiffness)
    _write(place / names.SUMMARY_MD, text)
    _write(place / names.SPEC_TOML, spec_toml(made.spec, made.plan, folder))
    return dict(names.ALWAYS)


def _write(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8", newline="\n")
