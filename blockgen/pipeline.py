"""From a spec to a set of files: load, size, check, model, write."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

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
    from blockgen.evidence.clearances import Clearances
    from blockgen.geometry.block import BlockSolid
    from blockgen.geometry.stand_ins.part import AssemblyPart
    from blockgen.outputs.drawing_set import DrawingSet

Progress = Callable[[str], None]
_Made = TypeVar("_Made")


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


@dataclass(frozen=True, slots=True)
class Solids:
    """What was modelled.

    Args:
        block: The block.
        parts: All parts of the assembly; empty where none is asked for.
        clearances: What they leave to one another; None without them.
    """

    block: BlockSolid
    parts: tuple[AssemblyPart, ...] = ()
    clearances: Clearances | None = None


@dataclass(frozen=True, slots=True)
class Words:
    """What is told of a design.

    Args:
        document: What becomes ``summary.json``.
        summary: Text of ``summary.md``.
        spec: Text of ``spec.toml``.
        files: Role by name of the files in the set.
    """

    document: dict[str, Any]
    summary: str
    spec: str
    files: dict[str, str]


@dataclass(frozen=True, slots=True)
class Work:
    """All that the files of a set are written from.

    Args:
        design: The design, judged by its solids too.
        solids: What was modelled; None where no role needs it.
        drawn: The sheets; None where no role shows them.
        words: What is told of the design.
        tolerances: Whether the STEP file of the block carries them.
    """

    design: Design
    solids: Solids | None
    drawn: DrawingSet | None
    words: Words
    tolerances: bool


def _needed(made: _Made | None) -> _Made:
    """Return what a role needs.

    Raises:
        ValueError: it was not made, since ``names`` does not say that the role needs it.
    """
    if made is None:
        raise ValueError("the role is missing in FROM_THE_SOLID or WITH_DRAWING")
    return made


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
    findings = check(plan, alignment, stiffness=found) if found else check(plan, alignment)
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
    from blockgen.evidence.stiffness.library import installed
    from blockgen.evidence.stiffness.run import BAND, stiffness

    installed()  # before anything slow

    def solid() -> tuple[bytes, tuple[str, ...]]:
        from blockgen.geometry.analysis import analysis_shape  # loads the kernel, while the solvers start

        shape = analysis_shape(plan)
        return shape.brep, shape.faces

    return stiffness(plan, solid, BAND if band is None else band, progress)


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
    tolerances: bool = True,
    stiffness: bool = False,
    band: float | None = None,
) -> BuildResult:
    """Build the files of a block, all or none.

    Args:
        spec_or_path: A loaded spec, or the path of a spec file.
        out: Folder in which the folder of the set is made.
        only: Roles to write beside summary, spec and manifest; None for all.
        progress: Called with a few words as each step begins.
        tolerances: False to leave the tolerances out of the STEP file of the block.
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
        solids = _solids(made, roles, told)
        made = _judged(made, solids)
        work = Work(made, solids, _drawn(made, solids, roles, told), _words(made, solids, folder, roles), tolerances)
        files = _write_words(work.words, place) | _write_roles(work, roles, place, told)
        told("checking the files")
        _write(place / names.MANIFEST, as_json(manifest(place, files, made.spec_sha256, made.status)))
    return BuildResult(folder, files, made.plan, made.findings, made.status)


def _solids(made: Design, roles: Sequence[str], told: Progress) -> Solids | None:
    """Model what the roles need: the block, and the parts about it; None where nothing is modelled."""
    if not set(roles) & set(names.FROM_THE_SOLID):
        return None
    told("modelling the block")
    from blockgen.geometry.block import build_block

    block = build_block(made.plan)
    if not set(roles) & names.WITH_PARTS:
        return Solids(block)
    told("modelling the parts about it")
    from blockgen.geometry.interference import clearances
    from blockgen.geometry.stand_ins.parts import parts
    from blockgen.outputs.makers_models import makers_models

    about = parts(made.plan, block, makers_models(made.plan, made.spec.path))
    told("measuring clearances")
    return Solids(block, about, clearances(made.plan, block, about))


def _judged(made: Design, solids: Solids | None) -> Design:
    """Return the design judged by its solids too, where the parts about the block were modelled."""
    if solids is None or solids.clearances is None:
        return made
    findings = check(made.plan, made.alignment, solids.clearances, made.stiffness)
    return replace(made, findings=findings, status=status(made.plan, findings))


def _drawn(made: Design, solids: Solids | None, roles: Sequence[str], told: Progress) -> DrawingSet | None:
    """Return the sheets where a role shows them."""
    if solids is None or not set(roles) & names.WITH_DRAWING:
        return None
    told("drawing the sheets")
    from blockgen.outputs.drawing_set import drawing_set, pictures

    return drawing_set(made.plan, pictures(solids.block), made.status)


def _words(made: Design, solids: Solids | None, folder: Path, roles: Sequence[str]) -> Words:
    """Return all that is told of the design; what other files show comes from it."""
    from blockgen.making.setup_sheet import setup_sheet
    from blockgen.outputs.clearances_json import with_clearances
    from blockgen.outputs.layout_json import with_layout
    from blockgen.outputs.making_json import with_making

    listed = names.roles_by_file(names.stem(made.plan), roles) | names.ALWAYS
    rows = compare_arrangements(made, "plate")
    found = solids.clearances if solids else None
    document = summary(made.plan, made.findings, made.status, made.spec_sha256, made.alignment)
    document = with_stiffness(with_layout(document, made.plan), made.stiffness)
    document = with_making(with_arrangements(document, rows), setup_sheet(made.plan))
    document = with_clearances(document, found)
    about = (made.plan, made.findings, made.status, made.spec_sha256, listed)
    text = summary_md(*about, made.alignment, rows, found, made.stiffness)
    return Words(document, text, spec_toml(made.spec, made.plan, folder), listed)


def _write_words(words: Words, place: Path) -> dict[str, str]:
    _write(place / names.SUMMARY_JSON, as_json(words.document))
    _write(place / names.SUMMARY_MD, words.summary)
    _write(place / names.SPEC_TOML, words.spec)
    return dict(names.ALWAYS)


def _write_roles(work: Work, roles: Sequence[str], place: Path, told: Progress) -> dict[str, str]:
    """Write the files of the roles, one role after the other."""
    start = names.stem(work.design.plan)
    for role in roles:
        files = [place / name for name in names.file_names(start, role)]
        told(f"writing {', '.join(file.name for file in files)}")
        _WRITERS[role](work, files)
    return names.roles_by_file(start, roles)


def _write_block(work: Work, files: Sequence[Path]) -> None:
    from blockgen.outputs.step import write_block_step

    block, made = _needed(work.solids).block, work.design
    write_block_step(block, made.plan, files[0], made.status, __version__, tolerances=work.tolerances)


def _write_stl(work: Work, files: Sequence[Path]) -> None:
    from blockgen.outputs.stl import write_block_stl

    write_block_stl(_needed(work.solids).block, work.design.plan, files[0])


def _write_assembly(work: Work, files: Sequence[Path]) -> None:
    from blockgen.outputs.assembly_step import write_assembly_step

    write_assembly_step(_needed(work.solids).parts, work.design.plan, files[0], work.design.status, __version__)


def _write_drawing(work: Work, files: Sequence[Path]) -> None:
    from blockgen.outputs.drawing_set import write_drawing

    pdf, dxf, svg = files
    write_drawing(_needed(work.drawn), pdf, dxf, svg, work.design.status)


def _write_base_holes(work: Work, files: Sequence[Path]) -> None:
    from blockgen.outputs.drawing_set import write_base_holes

    write_base_holes(work.design.plan, work.design.status, files[0])


def _write_inspection(work: Work, files: Sequence[Path]) -> None:
    from blockgen.outputs.inspection_csv import inspection_csv

    made = work.design
    _write(files[0], inspection_csv(made.plan, made.spec_sha256, made.status))


def _write_report(work: Work, files: Sequence[Path]) -> None:
    from blockgen.evidence.characteristics import inspection_rows
    from blockgen.outputs.drawing.to_svg import svg_text
    from blockgen.outputs.report.contents import Contents
    from blockgen.outputs.report.page import page
    from blockgen.outputs.report.scene import scene
    from blockgen.outputs.report.viewer import viewer
    from blockgen.outputs.stiffness_picture import stiffness_png

    made, words, solids = work.design, work.words, _needed(work.solids)
    field = made.stiffness.field if made.stiffness else None
    view = viewer(scene(made.plan, solids.block, solids.parts, field))
    about = (words.document, svg_text(_needed(work.drawn).drawing), words.spec, words.files, inspection_rows(made.plan))
    _write(files[0], page(Contents(*about, view, None if field is None else stiffness_png(field))))


_WRITERS: Mapping[str, Callable[[Work, Sequence[Path]], None]] = {
    "block": _write_block,
    "stl": _write_stl,
    "assembly": _write_assembly,
    "drawing": _write_drawing,
    "base_holes": _write_base_holes,
    "inspection": _write_inspection,
    "report": _write_report,
}


def _write(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8", newline="\n")
