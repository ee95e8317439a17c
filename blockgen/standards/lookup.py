"""Answers to ``blockgen lookup``: fit, thread, screw or material as labelled rows; printing is the caller's work."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from blockgen.errors import InputError, Problem
from blockgen.standards import din76, din974, iso273, iso286, materials, screws, threads, washers
from blockgen.standards.tables import TableError, load_table, quoted, rows_by

AnswerRow = tuple[str, float | str, str, str]


@dataclass(frozen=True, slots=True)
class LookupAnswer:
    """One answer.

    Args:
        title: What was looked up.
        rows: Label, value, unit, source of each line.
        note: What the reader has to know; may be empty.
    """

    title: str
    rows: tuple[AnswerRow, ...]
    note: str


def kinds() -> tuple[str, ...]:
    """Return what can be looked up."""
    return tuple(_ANSWERS)


def look_up(kind: str, text: str) -> LookupAnswer:
    """Answer one question about the published tables.

    Args:
        kind: fit, thread, screw or material.
        text: ``60H7/h6``, ``60H7``, ``M10``, ``1/4-20 UNC``, ``EN AW-6082-T6``.

    Raises:
        InputError: no such kind, or the tables do not hold what was asked.
    """
    answer = _ANSWERS.get(kind)
    if answer is None:
        raise _refused(
            "lookup", quoted(kind), f"one of {', '.join(_ANSWERS)}", "write for instance: lookup fit 60H7/h6"
        )
    try:
        return answer(text.strip())
    except TableError as error:
        raise _refused(error.field, error.value, error.limit, error.remedy) from error


def _refused(key: str, found: str, expected: str, remedy: str) -> InputError:
    return InputError([Problem("", None, key, found, expected, remedy)])


_FIT_FORM = "a size in mm with a hole class, a shaft class, or both with an oblique stroke between them"


def _source(table: str) -> str:
    return load_table(table).info.citation


def _split_fit(text: str) -> tuple[float, list[str]]:
    plain = "".join(text.split()).replace("-", "/")
    start = next((i for i, letter in enumerate(plain) if letter.isalpha()), len(plain))
    classes = plain[start:].split("/")
    try:
        size = float(plain[:start])
    except ValueError:
        size = 0.0
    if size <= 0 or len(classes) > 2 or not classes[0]:
        raise TableError("fit", quoted(text), _FIT_FORM, "write 60H7/h6, 60H7 or 60h6")
    return size, classes


def _fit(text: str) -> LookupAnswer:
    size, classes = _split_fit(text)
    rows = [row for name in classes for row in _limit_rows(size, name)]
    if len(classes) == 2:
        rows += _clearance_rows(iso286.fit(size, *classes))
    halves = any(name.lower().startswith("js") for name in classes)
    note = "js and JS are the unrounded +-IT/2" if halves else ""
    return LookupAnswer(f"{size:g} {'/'.join(classes)}", tuple(rows), note)


def _limit_rows(size: float, name: str) -> list[AnswerRow]:
    found = iso286.limits(size, name)
    part = "hole" if iso286.is_hole(name) else "shaft"
    source = _source("iso286_deviations")
    return [
        (f"{part} {name} upper deviation", found.upper, "mm", source),
        (f"{part} {name} lower deviation", found.lower, "mm", source),
        (f"{part} {name} greatest size", round(size + found.upper, 7), "mm", source),
        (f"{part} {name} least size", round(size + found.lower, 7), "mm", source),
    ]


def _clearance_rows(found: iso286.Fit) -> list[AnswerRow]:
    return [
        ("least clearance", found.min_clearance, "mm", "computed"),
        ("greatest clearance", found.max_clearance, "mm", "computed"),
        ("kind of fit", found.kind, "", "computed"),
    ]


def _thread(text: str) -> LookupAnswer:
    found = _thread_named(text)
    metric = found.series == "M"
    basic, limit = ("ISO 724", _source("iso965_pitch")) if metric else ("ASME B1.1", f"ASME B1.1 [{found.status}]")
    borrowed = "" if metric else ", by pitch: a metric rule borrowed for inch threads"
    outside, inside = found.external_class, found.internal_class
    rows: list[AnswerRow] = [
        ("nominal diameter", found.diameter, "mm", _source("metric_threads" if metric else "unified_threads")),
        ("pitch", found.pitch, "mm", _source("metric_threads" if metric else "unified_threads")),
        ("pitch diameter d2", found.pitch_diameter, "mm", f"{basic} [computed]"),
        ("minor diameter D1", found.minor_diameter, "mm", f"{basic} [computed]"),
        ("root diameter d3", found.root_diameter, "mm", f"{basic} [computed]"),
        ("tap drill", found.tap_drill, "mm", _source("metric_threads" if metric else "unified_threads")),
        ("stress area", found.stress_area, "mm2", "ISO 898-1 [computed]" if metric else "FED-STD-H28 [computed]"),
        (f"screw {outside} least major diameter", found.external_major_min, "mm", limit),
        (f"screw {outside} least pitch diameter", found.external_pitch_min, "mm", limit),
        (f"hole {inside} greatest pitch diameter", found.internal_pitch_max, "mm", limit),
        (f"hole {inside} greatest minor diameter", found.internal_minor_max, "mm", limit),
        ("drill run-out beyond full thread", din76.drill_runout(found), "mm", _source("din76") + borrowed),
    ]
    return LookupAnswer(found.designation, tuple(rows + _clearance_holes(found.size)), f"tapped hole: {found.call_out}")


def _thread_named(text: str) -> threads.Thread:
    """Return a thread; where there is none, the remedy names those of the nearest size."""
    try:
        return threads.thread(text)
    except TableError as error:
        near = _near_threads(text)
        if not near:
            raise
        raise TableError(error.field, error.value, error.limit, f"nearest: {', '.join(near)}") from None


def _near_threads(text: str) -> list[str]:
    """Return the inch threads of the size asked for, or the metric threads next to it; empty where it names none."""
    size = text.strip().upper().removeprefix("#").removeprefix("NO. ").partition("-")[0]
    inch = [name for name in threads.designations() if name.partition("-")[0] == size and "-" in name]
    metric = re.fullmatch(r"M(\d+(?:\.\d+)?)", text.strip().upper())
    if inch or metric is None:
        return inch
    sizes = sorted((name for name in threads.designations() if name.startswith("M")), key=lambda n: float(n[1:]))
    return sorted(sizes, key=lambda n: abs(float(n[1:]) - float(metric[1])))[:2]


def _clearance_holes(size: str) -> list[AnswerRow]:
    table = "iso273" if size in rows_by("iso273", "size") else "inch_clearance_holes"
    return [(f"clearance hole {s}", iso273.clearance_hole(size, s), "mm", _source(table)) for s in iso273.SERIES]


def _screw(text: str) -> LookupAnswer:
    screw = screws.cap_screw(_screw_size(text))
    metric = screw.size.startswith("M")
    table = "iso4762" if metric else "asme_b18_3"
    source, lengths = _source(table), _source(f"{table}_lengths")
    rows: list[AnswerRow] = [
        ("head diameter (plain, greatest)", screw.head_diameter, "mm", source),
        ("head height", screw.head_height, "mm", source),
        ("key", screw.key_size, "mm", source),
        ("short arm of the key", screw.key_short_arm, "mm", _source("hex_keys" if metric else "asme_b18_3")),
        ("face under the head (least)", screw.washer_face, "mm", source),
        ("thread length", screw.thread_length, "mm", source),
        ("preferred lengths", ", ".join(f"{n:g}" for n in screw.lengths), "mm", lengths),
        *_clearance_holes(screw.size),
        *_counterbore_rows(screw.size),
    ]
    return LookupAnswer(f"{screw.standard} {screw.size}", tuple(rows), "")


def _screw_size(text: str) -> str:
    """Return the size of a screw given by size or by thread: ``1/4-20 UNC`` gives ``1/4``."""
    plain = text.upper().replace(" ", "")
    return plain if plain in screws.cap_screw_sizes() else _thread_named(text).size


def _counterbore_rows(size: str) -> list[AnswerRow]:
    found = din974.counterbore(size)
    source = _source("din974") if size.startswith("M") else f"{found.source} [{found.status}]"
    rows: list[AnswerRow] = [("counterbore", found.diameter, "mm", source)]
    for standard, diameter in (("ISO 7092", found.with_small_washer), ("ISO 7089", found.with_washer)):
        if diameter is not None and size in washers.washer_sizes(standard):
            outer = washers.washer(size, standard).outer
            rows.append((f"washer {standard} outer diameter", outer, "mm", _source("washers")))
            rows.append((f"counterbore with {standard} washer", diameter, "mm", source))
    return rows


def _material(text: str) -> LookupAnswer:
    found = _material_named(text)
    source, about = _split_source(found)
    pressure = about.get("VDI", source)
    rows: list[AnswerRow] = [
        ("density", found.density, "kg/m3", source),
        ("modulus of elasticity", found.youngs_modulus, "MPa", source),
        ("Poisson's ratio", found.poisson, "", about.get("Poisson's", source)),
        ("yield strength", found.yield_strength, "MPa", source),
        ("tensile strength", found.tensile_strength, "MPa", source),
        ("shear strength", found.shear_strength, "MPa", found.shear_rule),
        ("thermal expansion", found.expansion, "1/K", source),
        (
            "pressure under a head",
            found.bearing_pressure or "not known",
            "MPa" if found.bearing_pressure else "",
            pressure,
        ),
    ]
    remembered = "remembered values: " if found.status == "memory" else ""
    return LookupAnswer(found.name, tuple(rows), f"{remembered}check them against the supplier's certificate")


def _material_named(text: str) -> materials.Material:
    """Return a material; where there is none, the message lists the names without their aliases."""
    try:
        return materials.material(text)
    except TableError as error:
        known = f"the table holds {', '.join(materials.material_names())}"
        raise TableError(error.field, error.value, known, error.remedy) from None


def _split_source(of: materials.Material) -> tuple[str, Mapping[str, str]]:
    """Return the source of most values with its status, and by first word the parts that are about one value only."""
    parts = of.source.split("; ")
    about = {part.split()[0]: part for part in parts if part.startswith(("VDI", "Poisson's"))}
    return f"{'; '.join(p for p in parts if p not in about.values())} [{of.status}]", about


_ANSWERS: Mapping[str, Callable[[str], LookupAnswer]] = {
    "fit": _fit,
    "thread": _thread,
    "screw": _screw,
    "material": _material,
}
