"""The commands: parse, call the pipeline, print."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from blockgen import __version__
from blockgen.console import printer

if TYPE_CHECKING:
    from blockgen.checks.finding import Finding

app = typer.Typer(
    name="blockgen",
    add_completion=False,
    rich_markup_mode=None,  # keeps rich out of --help
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"]},
)

SpecFile = Annotated[Path, typer.Argument(metavar="SPEC", help="The spec, a TOML file.")]
StepFile = Annotated[Path, typer.Argument(metavar="FILE", help="The maker's STEP file.")]
DraftFile = Annotated[
    Path | None, typer.Option("--out", metavar="FILE", help="Write the table of a spec here; must not exist yet.")
]
Json = Annotated[bool, typer.Option("--json", help="Print one JSON document and nothing else.")]
Strict = Annotated[bool, typer.Option("--strict", help="Count warnings as failures.")]
_ONLY = (
    "Write these only, with commas between: block, stl, assembly, drawing, base_holes, inspection; or summary for none "
    "of them. Summary, spec and manifest always come with them. Clashes are looked for with the assembly only."
)
WithStiffness = Annotated[
    bool, typer.Option("--stiffness", help='Find out the stiffness by finite elements; needs pip install ".[fea]".')
]
BandAsked = Annotated[
    float | None,
    typer.Option("--band", metavar="PERCENT", min=0.1, max=50, help="Error band asked of --stiffness, 5 without it."),
]
Quiet = Annotated[bool, typer.Option("--quiet", help="Print nothing but errors and failures.")]


def names() -> tuple[str, ...]:
    """Return the names of the commands."""
    return tuple(c.name or c.callback.__name__ for c in app.registered_commands if c.callback)


def _print_version(asked: bool) -> None:
    if asked:
        printer.say(f"blockgen {__version__}")
        raise typer.Exit


@app.callback(invoke_without_command=True)
def blockgen(
    context: typer.Context,
    version: Annotated[
        bool, typer.Option("--version", callback=_print_version, is_eager=True, help="Print the version.")
    ] = False,
) -> int:
    """Size, check and model the one-piece mounting block of a ball-screw axis.

    Example: blockgen new axis.toml, fill it in, blockgen check axis.toml, blockgen build axis.toml

    Exit codes: 0 done; 1 the design fails; 2 the input is wrong; 3 the machine or the tool failed; 130 interrupted.
    """
    del version
    if context.invoked_subcommand is None:
        printer.say(context.get_help())
    return 0


@app.command()
def new(
    file: Annotated[Path, typer.Argument(metavar="FILE", help="The spec to write; must not exist yet.")],
    motor: Annotated[str | None, typer.Option(metavar="PRESET", help="Preset of the motor.")] = None,
    bearing: Annotated[str | None, typer.Option(metavar="PRESET", help="Preset of the bearing unit.")] = None,
    coupling: Annotated[str | None, typer.Option(metavar="PRESET", help="Preset of the coupling.")] = None,
    old: Annotated[Path | None, typer.Option("--from", metavar="OLD", help="Start from this spec.")] = None,
    quiet: Quiet = False,
) -> int:
    """Write a commented spec to start from.

    Example: blockgen new axis.toml --motor NAME (blockgen presets lists the names)
    """
    from blockgen.outputs.starter_file import write_starter

    write_starter(file, {"motor": motor, "bearing": bearing, "coupling": coupling}, old)
    if not quiet:
        printer.say(f"{file} is written. Fill it in, then run: blockgen check {file}")
    return 0


@app.command()
def check(
    spec: SpecFile,
    as_json: Json = False,
    strict: Strict = False,
    quiet: Quiet = False,
    arrangement: Annotated[
        str, typer.Option(metavar="NAME", help="block, or plate to compare with a separate plate and unit.")
    ] = "block",
    stiffness: WithStiffness = False,
    band: BandAsked = None,
    advice: Annotated[
        bool, typer.Option("--advise", help="Tell what makes it stiffer or lighter, by finite elements.")
    ] = False,
) -> int:
    """Size the block and check it, without modelling it unless the stiffness is asked for.

    Example: blockgen check axis.toml --strict, blockgen check axis.toml --arrangement plate,
    blockgen check axis.toml --stiffness, blockgen check axis.toml --advise
    """
    from blockgen.advise import advise
    from blockgen.console.alignment_page import alignment_parts, arrangement_parts
    from blockgen.console.check_page import check_page
    from blockgen.console.progress import progress
    from blockgen.console.stiffness_page import advice_parts, stiffness_parts
    from blockgen.outputs.advice_rows import with_advice
    from blockgen.outputs.alignment_json import with_arrangements
    from blockgen.outputs.stiffness_rows import with_stiffness
    from blockgen.outputs.summary_json import summary
    from blockgen.pipeline import compare_arrangements, design

    with progress(quiet=quiet) as told:
        made = design(spec, stiffness=True, band=_share(band), progress=told) if stiffness else design(spec)
        found = advise(made.spec, made.plan, told) if advice else None
    rows = compare_arrangements(made, arrangement)
    if as_json:
        from blockgen.making.setup_sheet import setup_sheet
        from blockgen.outputs.making_json import with_making

        document = summary(made.plan, made.findings, made.status, made.spec_sha256, made.alignment)
        document = with_stiffness(with_arrangements(document, rows), made.stiffness)
        printer.say_json(with_advice(with_making(document, setup_sheet(made.plan)), found))
    elif not quiet:
        beside = [*alignment_parts(made.alignment), *(arrangement_parts(rows) if rows else ())]
        beside += [] if made.stiffness is None else stiffness_parts(made.stiffness)
        beside += [] if found is None else advice_parts(found)
        printer.show(check_page(made.plan, made.findings, made.status, beside))
    return _exit_code(made.findings, made.status, strict=strict, told=as_json or not quiet)


@app.command()
def build(
    spec: SpecFile,
    out: Annotated[Path, typer.Option(metavar="DIR", help="Folder for the set's own folder.")] = Path("out"),
    only: Annotated[str | None, typer.Option(metavar="ROLES", help=_ONLY)] = None,
    no_pmi: Annotated[bool, typer.Option("--no-pmi", help="Leave the tolerances out of the STEP file.")] = False,
    strict: Strict = False,
    quiet: Quiet = False,
    stiffness: WithStiffness = False,
    band: BandAsked = None,
) -> int:
    """Build all files of the block; an old set is replaced as a whole.

    Example: blockgen build axis.toml --out out --only block,drawing
    """
    from blockgen.console.check_page import build_page
    from blockgen.console.progress import progress
    from blockgen.pipeline import build as build_set

    with progress(quiet=quiet) as told:
        roles = None if only is None else only.split(",")
        made = build_set(spec, out, roles, told, tolerances=not no_pmi, stiffness=stiffness, band=_share(band))
    if not quiet:
        printer.show(build_page(made.folder, made.files, made.findings, made.status))
    return _exit_code(made.findings, made.status, strict=strict, told=not quiet)


@app.command()
def explain(
    spec: SpecFile,
    key: Annotated[
        str | None,
        typer.Argument(metavar="[KEY]", help="A dimension, an input, a check or a feature; without it all are listed."),
    ] = None,
    as_json: Json = False,
) -> int:
    """Show how a dimension, a check or a feature came about.

    Example: blockgen explain axis.toml length, blockgen explain axis.toml base_slip
    """
    from blockgen.console import explain_page
    from blockgen.pipeline import design

    made = design(spec)
    about = (made.plan, made.findings)
    if as_json:
        printer.say_json(explain_page.document(*about, key) if key else explain_page.list_document(*about))
    else:
        printer.show(explain_page.page(*about, key) if key else explain_page.list_page(*about))
    return 0


@app.command()
def inspect(
    spec: SpecFile,
    measured: Annotated[Path, typer.Argument(metavar="MEASURED", help="The filled inspection sheet, a CSV file.")],
    as_json: Json = False,
    quiet: Quiet = False,
) -> int:
    """Judge a block that was made, from what was measured on it.

    Example: blockgen inspect axis.toml measured.csv

    Accept, use with note, or reject (exit code 1); with the offset and angle that this one block gives, how to turn
    the motor, and the shim under the base.
    """
    from blockgen.alignment.heat import expansions_of
    from blockgen.console import inspect_page
    from blockgen.evidence.measured import read_measured
    from blockgen.evidence.verdict import verdict
    from blockgen.outputs.inspect_json import inspect_document
    from blockgen.pipeline import design

    made = design(spec)
    faults = [finding.title for finding in made.findings if finding.verdict == "fail"]
    values = read_measured(measured, made.plan, made.spec_sha256)
    found = verdict(made.plan, values, expansions_of(made.plan), faults)
    if as_json:
        printer.say_json(inspect_document(found, str(measured), made.spec_sha256, made.status))
    elif not quiet:
        printer.show(inspect_page.inspect_page(found, made.status))
    elif found.decision == "reject":
        from blockgen.console.plain import lines

        printer.complain("\n".join(lines(inspect_page.rejection(found), printer.width())))
    return 1 if found.decision == "reject" else 0


@app.command()
def presets(
    name: Annotated[str | None, typer.Argument(metavar="[NAME]", help="A preset; without it all of them.")] = None,
) -> int:
    """List the presets, or show what is in one.

    Example: blockgen presets

    Presets of your own are TOML files in the folder that the environment variable BLOCKGEN_PRESETS names, else in
    the folder that the list ends with. One of yours hides a shipped one of the same name.
    """
    from blockgen.console import preset_page
    from blockgen.errors import InputError
    from blockgen.spec.presets import readable_presets

    if name:
        printer.show(preset_page.one_page(name))
        return 0
    presets, problems = readable_presets()
    printer.show(preset_page.list_page(presets))
    if problems:
        raise InputError(problems)
    return 0


@app.command()
def lookup(
    kind: Annotated[str, typer.Argument(metavar="KIND", help="fit, thread, screw or material.")],
    what: Annotated[list[str], typer.Argument(metavar="WHAT", help="What to look up.")],
    as_json: Json = False,
) -> int:
    """Look up a fit, thread, screw or material.

    A material may be one of the tables or a preset.

    Example: blockgen lookup fit 60H7/h6, blockgen lookup thread M10, blockgen lookup material S235JR

    Materials of your own are presets: blockgen presets --help says where they go.
    """
    from blockgen.console import lookup_page

    if as_json:
        printer.say_json(lookup_page.document(kind, " ".join(what)))
    else:
        printer.show(lookup_page.page(kind, " ".join(what)))
    return 0


@app.command("read-motor")
def read_motor(
    file: StepFile,
    out: DraftFile = None,
    as_json: Json = False,
    quiet: Quiet = False,
) -> int:
    """Read a motor's sizes from its maker's STEP file.

    Example: blockgen read-motor motor.step --out motor.toml

    Finds mounting face, pilot, bolt pattern, flange and shaft end, says how sure each value is and why, and writes
    them as the table [motor] of a spec. Exit code 2 when there is no mounting face in the file.
    """
    return _read("motor", file, out, as_json=as_json, quiet=quiet)


@app.command("read-bearing")
def read_bearing(
    file: StepFile,
    out: DraftFile = None,
    as_json: Json = False,
    quiet: Quiet = False,
) -> int:
    """Read a bearing unit's sizes from its maker's STEP file.

    Example: blockgen read-bearing unit.step --out bearing.toml

    Finds mounting face, pilot, bolt pattern, flange and nut, says how sure each value is and why, and writes them as
    the table [bearing] of a spec. Exit code 2 when there is no mounting face in the file.
    """
    return _read("bearing", file, out, as_json=as_json, quiet=quiet)


def _read(part: Literal["motor", "bearing"], file: Path, out: Path | None, *, as_json: bool, quiet: bool) -> int:
    """Read a maker's file, write the draft where one is wanted, and print what was found."""
    from blockgen.console.reading_page import draft_text, reading_document, reading_page
    from blockgen.reading.draft import write_draft
    from blockgen.reading.part import read_part

    reading = read_part(file, part)
    written = None if out is None else str(out)
    if out is not None:
        write_draft(draft_text(reading, written), out)
    if as_json:
        printer.say_json(reading_document(reading, written))
    elif not quiet:
        printer.show(reading_page(reading, written))
    return 0


def _share(percent: float | None) -> float | None:
    return None if percent is None else percent / 100


def _exit_code(findings: Sequence[Finding], status: str, *, strict: bool, told: bool) -> int:
    """Return the exit code of a design; a failure that was not told yet goes to standard error."""
    bad = {"fail", "warn"} if strict else {"fail"}
    if not any(finding.verdict in bad for finding in findings):
        return 0
    if not told:
        from blockgen.console.check_page import failures
        from blockgen.console.plain import lines

        printer.complain("\n".join(lines(failures(findings, status, strict=strict), printer.width())))
    return 1
