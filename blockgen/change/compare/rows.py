"""The comparison as rows of text, shared by page and document."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from blockgen.change.compare.checks import fastener_words
from blockgen.change.compare.data import Comparison, Entry, unchanged
from blockgen.change.compare.words import NOTHING, joined, of_entry, plain, rows_of
from blockgen.outputs import show

Row = tuple[str, ...]
SPEC = ("Key of the spec", "Old", "New")
SIZES = ("Dimension", "Old", "New", "Because of")
FEATURES = ("Cavity", "State", "What", "Where")
FASTENERS = ("Screws", "Old", "New")
CHECKS = ("Turn", "Check", "Old", "Margin", "New", "Margin ")
FIGURES = ("Figure", "Old", "New")
CHARACTERISTICS = ("Characteristic", "Old", "New")
DOCUMENTS = ("Made from the old design", "State", "Why")
_WORDS = {"fail": "FAIL", "warn": "WARN", "not_assessed": "not assessed", "pass": "pass"}
_TURNS = ("worse", "", "better", "added", "removed")
FATES = {"obsolete": "OBSOLETE", "damaged": "DAMAGED", "renamed": "content holds", "valid": "valid"}
_MANY_CAUSES = 4
_FIGURES = {"p50": "50 %", "p95": "95 %", "p9973": "99.73 %", "worst": "worst case"}


def spec_rows(found: Comparison) -> list[Row]:
    """Return the keys of the spec that differ."""
    return [(e.id, *_both(e)) for e in found.spec if e.state != "same"]


def _both(entry: Entry) -> tuple[str, str]:
    change = entry.changes[0]
    return plain(change.old, change.unit), plain(change.new, change.unit)


def size_rows(found: Comparison, causes: int = _MANY_CAUSES) -> list[Row]:
    """Return the dimensions that differ, with limits and with the keys of the spec that are behind them."""
    sides = (found.old.document["dimensions"], found.new.document["dimensions"])
    return [
        (e.id, *(_size(side.get(e.id)) for side in sides), _causes(e.because, causes))
        for e in rows_of(found.dimensions)
    ]


def _size(record: Mapping[str, Any] | None) -> str:
    if record is None:
        return NOTHING
    limits = show.deviations(record["fit"], record["upper"], record["lower"])
    return f"{plain(record['value'], record['unit'])} {limits}".strip()


def _causes(keys: Sequence[str], most: int) -> str:
    more = len(keys) - most
    return joined([*keys[:most], f"{more} more" if more > 0 else ""]) or NOTHING


def fastener_rows(found: Comparison) -> list[Row]:
    """Return the groups of screws and pins that differ."""
    sides = (_by_place(found.old.document["fasteners"]), _by_place(found.new.document["fasteners"]))
    return [(e.id.replace("_", " "), *(_fastener(side.get(e.id)) for side in sides)) for e in rows_of(found.fasteners)]


def _by_place(fasteners: Iterable[Mapping[str, Any]]) -> dict[str, Mapping[str, Any]]:
    return {str(fastener["where"]): fastener for fastener in fasteners}


def _fastener(of: Mapping[str, Any] | None) -> str:
    if of is None:
        return NOTHING
    torque = "" if of.get("torque") is None else plain(of["torque"], "N*m")
    engaged = "" if of.get("engagement") is None else f"{plain(of['engagement'], 'mm')} engaged"
    return joined([fastener_words(of), of.get("washer") or "", torque, engaged])


def check_rows(found: Comparison) -> list[Row]:
    """Return the checks that differ, what became worse first."""
    sides = tuple({c["id"]: c for c in side.document["checks"]} for side in (found.old, found.new))
    return [(_turn(e), e.title, *_verdict(sides[0].get(e.id)), *_verdict(sides[1].get(e.id))) for e in judged(found)]


def judged(found: Comparison) -> list[Entry]:
    """Return the checks that differ, what became worse first, other verdicts before other margins."""
    return sorted(rows_of(found.checks), key=lambda e: (_TURNS.index(_turn(e)), of_entry(e, "verdict") is None))


def _turn(entry: Entry) -> str:
    return entry.note if entry.state == "changed" else entry.state


def _verdict(check: Mapping[str, Any] | None) -> tuple[str, str]:
    return (NOTHING, NOTHING) if check is None else (_WORDS[check["verdict"]], show.margin(check.get("margin")))


def figure_rows(entries: Iterable[Entry], skipped: Sequence[str] = ()) -> list[Row]:
    """Return figures that differ; those whose id has one of the given pieces in it are left out."""
    told = [e for e in entries if e.state != "same" and not any(piece in e.id for piece in skipped)]
    return [(_figure(e.id), *_both(e)) for e in told]


def _figure(name: str) -> str:
    """Return the id of a figure in words: ``offset, 95 %``."""
    return joined(_FIGURES.get(part, part.replace("_", " ")) for part in name.split("."))


def characteristic_rows(found: Comparison) -> list[Row]:
    """Return the characteristics of drawing and inspection sheet that differ."""
    sides = tuple({c["id"]: c for c in side.document["characteristics"]} for side in (found.old, found.new))
    return [(e.id, *(_characteristic(side.get(e.id)) for side in sides)) for e in rows_of(found.characteristics)]


def _characteristic(of: Mapping[str, Any] | None) -> str:
    if of is None:
        return NOTHING
    value = plain(of.get("value"), of["unit"])
    limits = show.deviations(of.get("fit"), of.get("upper"), of.get("lower")) if of.get("value") is not None else ""
    text = str(of["text"]).replace("{}", plain(of.get("value")))
    return joined([text or value, limits, " ".join(of.get("datums") or ())])


def document_rows(found: Comparison) -> list[Row]:
    """Return what was made from the old design, obsolete things first."""
    order = tuple(FATES)
    listed = sorted(found.documents, key=lambda d: order.index(d.fate))
    return [(joined(d.files) or d.role, FATES[d.fate], "; ".join(d.reasons)) for d in listed]


def unchanged_words(found: Comparison) -> list[tuple[str, str]]:
    """Return, by what they are, how many are the same in both designs and which."""
    sections = {
        "dimensions": found.dimensions,
        "cavities": found.features,
        "holes of the base plate": found.base_features,
        "groups of screws and pins": found.fasteners,
        "checks": found.checks,
        "characteristics": found.characteristics,
        "figures of the alignment": found.alignment,
        "masses": found.mass,
        "keys of the spec": found.spec,
    }
    same = {what: [e.id for e in unchanged(entries)] for what, entries in sections.items()}
    return [(f"{len(ids)} of {len(sections[what])} {what}", ", ".join(ids) or "none") for what, ids in same.items()]


def result_words(found: Comparison) -> str:
    """Return in one sentence how much differs."""
    if found.same:
        return "Nothing differs."
    sections = {"dimensions": found.dimensions, "cavities": found.features, "checks": found.checks}
    counts = [f"{len(es) - len(unchanged(es))} of {len(es)} {what}" for what, es in sections.items()]
    obsolete = sum(1 for d in found.documents if d.fate == "obsolete")
    made = f"{obsolete} of {len(found.documents)} things made from the old design are obsolete"
    worse = sum(1 for e in found.checks if e.note == "worse" and of_entry(e, "verdict") is not None)
    verdicts = f"{worse} {'check has' if worse == 1 else 'checks have'} a worse verdict" if worse else ""
    return f"{joined(counts)} differ; {joined([verdicts, made])}."
