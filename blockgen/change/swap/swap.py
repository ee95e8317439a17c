"""Other parts on what exists: a spec with another motor, locked to base plate and bearing side of the old block."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import combinations
from pathlib import Path

from blockgen.change.swap.revision import next_revision
from blockgen.change.swap.text import Edit, Lock, insist_on, with_locks, with_models, with_presets, with_revision
from blockgen.errors import Conflict, Cure, InfeasibleError
from blockgen.outputs.starter_file import write_new
from blockgen.pipeline import Design, design
from blockgen.sizing.size import size
from blockgen.spec.load import Spec, load_spec
from blockgen.spec.presets import read_preset
from blockgen.spec.read import read_document

_FREE = "remove this line to let blockgen decide"


@dataclass(frozen=True, slots=True)
class Swap:
    """A spec that was written from an old one.

    Args:
        file: The new file.
        old: The old one.
        parts: Presets by table that were put in.
        revision: Old and new revision; the same where it was left.
        locks: What is locked.
        remarks: What could not be done, in words.
        design: What the new spec gives; None where no block can exist or nothing was put in.
        conflicts: Why no block can exist.
        cures: What would cure it.
        freed: The smallest sets of locks to free so that a block exists, or so that no check fails where one exists;
            empty where nothing has to be freed or where that does not help.
    """

    file: Path
    old: Path
    parts: Mapping[str, str]
    revision: tuple[str, str]
    locks: tuple[Lock, ...] = ()
    remarks: tuple[str, ...] = ()
    design: Design | None = None
    conflicts: tuple[Conflict, ...] = ()
    cures: tuple[Cure, ...] = ()
    freed: tuple[tuple[str, ...], ...] = ()


def swap(file: Path, old: Path, parts: Mapping[str, str | None], *, free: bool = False) -> Swap:
    """Write a spec with other parts than an old one; without other parts it is a copy.

    Args:
        file: File to write; must not exist.
        old: Spec to start from.
        parts: Preset by table: motor, bearing, coupling; None where the old one stays.
        free: Lock nothing.

    Raises:
        InputError: the old spec or the new one is wrong, a preset is not there, or the file exists.
        MachineError: it cannot be written.
    """
    document = read_document(old)
    chosen = {part: name for part, name in parts.items() if name is not None}
    for part, name in chosen.items():
        read_preset(name, None, part)
    edit = Edit.of(document)
    before, remarks = (None, ()) if free or not chosen else _before(old)
    locks = () if before is None else tuple(locks_of(before, frozenset(chosen)))
    revision = _revision(edit, chosen)
    with_models(edit, old, file, chosen)
    with_presets(edit, chosen)
    with_locks(edit, locks)
    text = document.text if edit.text() == Edit.of(document).text() else edit.text()
    insist_on(text, edit, chosen, locks)
    write_new(file, text)
    made = Swap(file, old, chosen, revision, locks, remarks)
    return _tried(made) if chosen else made


def _before(old: Path) -> tuple[Design | None, tuple[str, ...]]:
    """Return what the old spec gives; nothing to lock to where no block can exist for it."""
    try:
        return design(old), ()
    except InfeasibleError:
        return None, ("no block can exist for the old spec, so there is nothing to lock to",)


def _revision(edit: Edit, chosen: Mapping[str, str]) -> tuple[str, str]:
    job = edit.document.data.get("job", {})
    old = str(job.get("revision", "A")) if isinstance(job, Mapping) else "A"
    new = next_revision(old) if chosen else old
    if new is not None and new != old:
        with_revision(edit, old, new, f"{', '.join(f'{part} {name}' for part, name in chosen.items())} put in")
    return old, new or old


def locks_of(before: Design, chosen: frozenset[str]) -> Iterator[Lock]:
    """Yield what is locked when parts are replaced; what the spec gives already is given already.

    Args:
        before: The old design.
        chosen: Tables whose part is replaced.
    """
    plan, given = before.plan, before.spec.records
    block = f"{plan.text('job.number')} {plan.text('job.revision')}"
    kept = f"Locked: the base plate keeps its holes as {block} has them;"
    if "base.shaft_height" in given:
        yield Lock(
            "base", "shaft_height", "", "Kept: the shaft stays level with the guide. Other parts must fit under it."
        )
    if "base.screw" not in given:
        yield Lock("base", "screw", f'"{plan.text("base_screw")}"', f"{kept} {_FREE} the screw.")
    if "base.hole_positions" not in given:
        yield Lock("base", "hole_positions", _points(before), f"{kept} {_FREE} where the base screws stand.")
    for end, part in (("bearing", "bearing"), ("motor", "motor")):
        key = f"{end}_wall"
        if part not in chosen and f"block.{key}" not in given:
            why = f"Locked: the {end} side stays as {block} has it, its wall with it; {_FREE} the wall."
            yield Lock("block", key, f'"{_digits(plan.number(key))} mm"', why)
    if "block.bore_fit" not in given and "bearing" not in chosen:
        why = f"Locked: the fit of the bores of {block}; {_FREE} the fit."
        yield Lock("block", "bore_fit", f'"{plan.text("block.bore_fit")}"', why)


def _points(before: Design) -> str:
    pattern = before.plan.records["base_pattern"].value
    points = pattern if isinstance(pattern, tuple) else ()
    pairs = (f"[{_digits(float(p[0]))}, {_digits(float(p[1]))}]" for p in points if isinstance(p, tuple))
    return f"[{', '.join(pairs)}]"


def _digits(value: float) -> str:
    return repr(round(value, 6)).removesuffix(".0")


def _tried(made: Swap) -> Swap:
    """Return the swap with what the new spec gives, and which locks are to blame where that is nothing good."""
    spec = load_spec(made.file)
    keys = [f"{lock.table}.{lock.key}" for lock in made.locks if lock.toml]
    try:
        found = design(spec)
    except InfeasibleError as error:
        freed = _smallest_freed(spec, keys, _exists)
        return replace(made, conflicts=error.conflicts, cures=error.cures, freed=freed)
    if _holds(found):
        return replace(made, design=found)
    return replace(made, design=found, freed=_smallest_freed(spec, keys, _exists_and_holds))


def _smallest_freed(spec: Spec, keys: list[str], good: Callable[[Spec], bool]) -> tuple[tuple[str, ...], ...]:
    """Return the sets of keys, all of the least number, without which a spec is good."""
    for number in range(1, len(keys) + 1):
        found = tuple(some for some in combinations(keys, number) if good(_without(spec, some)))
        if found:
            return found
    return ()


def _without(spec: Spec, keys: Collection[str]) -> Spec:
    return replace(spec, records={key: record for key, record in spec.records.items() if key not in keys})


def _exists(spec: Spec) -> bool:
    try:
        size(spec)
    except InfeasibleError:
        return False
    return True


def _exists_and_holds(spec: Spec) -> bool:
    try:
        return _holds(design(spec))
    except InfeasibleError:
        return False


def _holds(found: Design) -> bool:
    return not any(finding.verdict == "fail" for finding in found.findings)
