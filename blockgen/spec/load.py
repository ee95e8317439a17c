"""From a spec file to records: every value given or taken from a preset, in default units, with its line."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from blockgen.errors import InputError, Problem
from blockgen.record import Origin, Record, Value
from blockgen.spec.nonsense import contradictions
from blockgen.spec.presets import Preset, load_preset, preset_paths, suggestion
from blockgen.spec.problems import closest, nearest_key, show, validated
from blockgen.spec.read import Document, parse_document, read_document
from blockgen.spec.table import Table
from blockgen.spec.tables import MODELS, NEEDED, TABLES, alternatives, both_ways, missing
from blockgen.spec.values import Kind

#: Version of the spec file's form.
SCHEMA = 1
_TOP = ("schema", *TABLES, "material", "family")


@dataclass(frozen=True, slots=True)
class Spec:
    """What was asked for.

    Args:
        records: Given and preset values by dotted key, in default units.
        path: Spec file as the user named it.
        preset_files: Name and sha256 of each preset used.
    """

    records: Mapping[str, Record]
    path: str
    preset_files: tuple[tuple[str, str], ...] = ()


def load_spec(path: str | Path, preset_folder: str | Path | None = None) -> Spec:
    """Read a spec file with its presets.

    Args:
        path: The TOML file.
        preset_folder: The user's own presets; else BLOCKGEN_PRESETS, else the user's configuration folder.

    Raises:
        InputError: everything that is wrong with the file, at once.
    """
    return Loading(read_document(path), Shelf(preset_folder)).spec()


def parse_spec(text: str, path: str = "spec.toml", preset_folder: str | Path | None = None) -> Spec:
    """Read a spec from its text; paths in it are relative to the folder of ``path``.

    Raises:
        InputError: everything that is wrong with it, at once.
    """
    return Loading(parse_document(text, path), Shelf(preset_folder)).spec()


@dataclass(slots=True)
class Shelf:
    """Presets by name; a folder is listed when the first one is asked for, and a file is read once.

    Args:
        folder: The user's own presets; else BLOCKGEN_PRESETS, else the user's configuration folder.
        read: Presets that were read before, by small-letter name.
        paths: Files by small-letter name; None until a folder is listed, empty where there are no further files.
    """

    folder: str | Path | None = None
    read: dict[str, Preset] = field(default_factory=dict)
    paths: dict[str, Path] | None = None

    def preset(self, name: str) -> Preset | None:
        """Return a preset by its name, whatever its case; None where there is none.

        Raises:
            InputError: its file is broken.
        """
        known = self.read.get(name.casefold())
        if known is not None:
            return known
        file = self.files().get(name.casefold())
        return None if file is None else self.read.setdefault(name.casefold(), load_preset(file))

    def files(self) -> dict[str, Path]:
        """Return the files by small-letter name."""
        if self.paths is None:
            self.paths = preset_paths(self.folder)
        return self.paths


@dataclass(slots=True)
class Loading:
    """One spec on its way in; collects problems so that they are reported together."""

    document: Document
    shelf: Shelf
    problems: list[Problem] = field(default_factory=list)
    records: dict[str, Record] = field(default_factory=dict)
    used: dict[str, str] = field(default_factory=dict)

    def spec(self) -> Spec:
        """Return the spec.

        Raises:
            InputError: everything that is wrong with it, at once.
        """
        if self.document.data.keys() <= {"schema"}:
            remedy = "`blockgen new FILE` writes a spec to start from"
            raise InputError([self.document.problem((), "a file without any table", "a spec", remedy)])
        self.top_level()
        for name in (n for n in TABLES if n in self.document.data or n in NEEDED):
            self.table(name, (name,), self.document.data.get(name, {}))
        self.materials()
        self.families()
        self.models()
        if not self.problems:
            self.problems.extend(contradictions(self.records, self.document.file))
        if self.problems:
            raise InputError(sorted(self.problems, key=self.place))
        return Spec(self.records, self.document.file, tuple(sorted(self.used.items())))

    def place(self, problem: Problem) -> tuple[bool, bool, int]:
        """Return where a problem is told: the spec before presets, what stands in a line before what is missing."""
        return problem.file != self.document.file, problem.line is None, problem.line or 0

    def top_level(self) -> None:
        """Look at the names of the tables and at the version of the form."""
        for name, value in self.document.data.items():
            if name not in _TOP:
                self.problems.append(self.unknown(name, value))
        schema = self.document.data.get("schema", SCHEMA)
        if type(schema) is not int or schema != SCHEMA:  # true and 1.0 equal 1
            remedy = "this version of blockgen reads schema 1 only"
            self.problems.append(self.document.problem(("schema",), show(schema), "schema = 1", remedy))

    def unknown(self, name: str, value: object) -> Problem:
        """Return the problem of a table or key that no spec has."""
        if isinstance(value, (Mapping, list)):
            near = closest(name, _TOP)
            remedy = f"did you mean [{near[0]}]?" if near else f"the tables are {', '.join(_TOP[1:])}"
            return self.document.problem((name,), f"unknown table [{name}]", "a table of the spec", remedy)
        return self.document.problem((name,), f"unknown key {name}", "schema or a table", nearest_key(name))

    def table(self, table: str, path: tuple[str | int, ...], raw: object) -> None:
        """Enter the values of one table and of its preset."""
        given = validated(self.document, table, path, raw, self.problems)
        names_preset = "preset" in given
        preset = self.preset(given.pop("preset", None), MODELS[table], path)
        self.alternatives(table, path, given)
        from_preset = {} if preset is None else self.left(table, preset, given)
        if preset is not None or not names_preset:  # what a preset that cannot be had would give is not missing
            self.required(table, path, given | from_preset)
        for name in MODELS[table].model_fields:
            key = ".".join(map(str, (*path, name)))
            if given.get(name) is not None:
                self.enter(table, key, given[name], "given", self.document, (*path, name))
            elif preset is not None and name in from_preset:
                self.enter_preset(table, key, from_preset[name], preset)

    @staticmethod
    def left(table: str, preset: Preset, given: Mapping[str, object]) -> dict[str, Any]:
        """Return what a preset gives beside the spec; its name names the part unless the spec does."""
        displaced = alternatives(table, given)
        values = {"name": preset.name, **preset.values}
        if "data_source" in MODELS[table].model_fields:
            values.setdefault("data_source", preset.note)
        return {k: v for k, v in values.items() if k not in given and k not in displaced}

    def preset(self, name: str | None, model: type[Table], path: tuple[str | int, ...]) -> Preset | None:
        """Return the preset that a table names; None where it names none or one that cannot be had."""
        if name is None:
            return None
        where = (*path, "preset")
        try:
            preset = self.shelf.preset(name)
        except InputError as error:
            self.problems.extend(error.problems)
            return None
        if preset is None:
            remedy = suggestion(name, self.shelf.files())
            self.problems.append(self.document.problem(where, show(name), "the name of a preset", remedy))
            return None
        if MODELS[preset.kind] is not model:
            found = f'"{name}", a preset of kind {preset.kind}'
            self.problems.append(self.document.problem(where, found, f"a preset for [{path[0]}]"))
            return None
        self.used[preset.name] = preset.document.sha256
        return preset

    def alternatives(self, table: str, path: tuple[str | int, ...], given: Mapping[str, object]) -> None:
        """Tell what is said in two ways."""
        for one, other in both_ways(table, given):
            found, remedy = f"both {one} and {other}", "give one of them"
            self.problems.append(self.document.problem((*path, other), found, "one way to say it", remedy))

    def required(self, table: str, path: tuple[str | int, ...], known: Mapping[str, object]) -> None:
        """Tell which required keys are not there."""
        model = MODELS[table].model_fields
        for name in missing(table, known):
            remedy = f"add {name} to [{path[0]}]: {model[name].description}"
            problem = self.document.problem((*path, name), "nothing", "a value: the key is required", remedy)
            self.problems.append(problem)

    def enter(
        self, table: str, key: str, value: Value, origin: Origin, document: Document, path: tuple[str | int, ...]
    ) -> None:
        """Enter a value of the spec."""
        unit = unit_of(table, path[-1], value)
        line = document.line(*path)
        self.records[key] = Record(key, value, unit, origin, "given in the spec", {}, document.file, line=line)

    def enter_preset(self, table: str, key: str, value: Value, preset: Preset) -> None:
        """Enter a value of a preset."""
        unit = unit_of(table, key.rsplit(".", 1)[-1], value)
        origin: Origin = "standard" if preset.status == "standard" else "preset"
        self.records[key] = Record(key, value, unit, origin, f"taken from preset {preset.name}", {}, preset.note)

    def materials(self) -> None:
        """Enter the user's materials, then those of presets that block and base name."""
        own = self.document.data.get("material", {})
        if not isinstance(own, Mapping):
            problem = self.document.problem(("material",), show(own), "tables such as [material.my-alloy]")
            self.problems.append(problem)
            return
        for name, raw in own.items():
            self.table("material", ("material", name), raw)
        self.named_materials(own)

    def named_materials(self, own: Iterable[str]) -> None:
        """Enter the materials that block and base name and that are none of the user's own."""
        folded = {name.casefold(): name for name in own}
        for key in ("block.material", "base.material"):
            if key in self.records:
                self.material(key, folded)

    def material(self, key: str, own: dict[str, str]) -> None:
        """Spell a material as its own table does, or fetch its preset; the standards table knows the others."""
        record = self.records[key]
        name = str(record.value)
        if name.casefold() not in own:
            preset = self.material_preset(name)
            if preset is None:
                return
            self.used[preset.name] = preset.document.sha256
            own[name.casefold()] = preset.name
            for field_name, value in preset.values.items():
                self.enter_preset("material", f"material.{preset.name}.{field_name}", value, preset)
        self.records[key] = replace(record, value=own[name.casefold()])

    def material_preset(self, name: str) -> Preset | None:
        """Return the preset of a material; None where there is none of that name."""
        try:
            preset = self.shelf.preset(name)
        except InputError as error:
            self.problems.extend(error.problems)
            return None
        return preset if preset is not None and preset.kind == "material" else None

    def families(self) -> None:
        """Enter the further motors."""
        raw = self.document.data.get("family", [])
        if not isinstance(raw, list):
            self.problems.append(self.document.problem(("family",), show(raw), "an array of tables [[family]]"))
            return
        for index, one in enumerate(raw):
            self.table("family", ("family", index), one)

    def models(self) -> None:
        """Check that the makers' files that the spec names are there."""
        for record in model_records(self.records):
            file = model_path(self.document.file, record)
            if not file.is_file():
                path = tuple(record.key.split("."))
                problem = self.document.problem(path, show(record.value), "a STEP file that exists")
                self.problems.append(problem)


def unit_of(table: str, name: object, value: object) -> str:
    """Return the default unit of a key; empty for text, flags and plain numbers."""
    if isinstance(value, (bool, str)):
        return ""
    for part in MODELS[table].model_fields[str(name)].metadata:
        if isinstance(part, Kind):
            return part.unit
    return ""


def model_records(records: Mapping[str, Record]) -> list[Record]:
    """Return the records that name a maker's STEP file."""
    return [r for r in records.values() if r.key.endswith(".model") and not r.key.startswith("material.")]


def model_path(spec_path: str, record: Record) -> Path:
    """Return where a maker's STEP file lies: relative paths start at the folder of the spec."""
    return Path(spec_path).parent / str(record.value)
