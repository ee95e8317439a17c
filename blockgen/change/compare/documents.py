"""What was made from the old design, and whether it still holds for the new one."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from types import MappingProxyType

from blockgen.change.compare.data import Comparison, Document, Entry, Fate, Side, changed
from blockgen.change.compare.words import joined, size_words

_MOST = 4
# What a file of each role states; when one of these differs, the file says something that is wrong.
_STATES: Mapping[str, tuple[str, ...]] = MappingProxyType({
    "block": ("geometry", "characteristics", "material"),
    "stl": ("geometry",),
    "assembly": ("geometry", "parts", "screws", "base plate", "material"),
    "drawing": ("geometry", "characteristics", "screws", "material", "sheet"),
    "base_holes": ("base plate",),
    "inspection": ("characteristics",),
    "report": ("geometry", "characteristics", "screws", "base plate", "checks", "alignment", "material", "spec"),
    "summary": ("geometry", "characteristics", "screws", "base plate", "checks", "alignment", "material", "spec"),
    "spec": ("spec",),
})  # fmt: skip
# Things outside the set that people make from it.
_OUTSIDE: Mapping[str, tuple[str, ...]] = MappingProxyType({
    "programs for the machine tool": ("geometry", "material"),
    "base plate that is drilled": ("base plate",),
    "screws that are ordered": ("screws",),
})  # fmt: skip
_PARTS = ("motor.", "bearing.", "coupling.", "screw.")
_SHEET = ("drawing.", "block.finish", "block.coating", "job.title", "job.author", "job.project")
_NAMES = ("job.number", "job.revision")
_TELLS_ALL = frozenset({"report", "summary"})
_BARE = frozenset({"stl"})
"""Roles whose files carry neither number nor status inside."""


def documents(found: Comparison) -> tuple[Document, ...]:
    """Return what became of each document of the old set, then of what people make from it."""
    why = _reasons(found)
    names_only = _names_only(found)
    roles = list(dict.fromkeys(found.old.files.values()))
    of_set = [_document(role, found, why, names_only) for role in _STATES if role in roles]
    return (*of_set, *(_outside(what, states, why) for what, states in _OUTSIDE.items()))


def _document(role: str, found: Comparison, why: Mapping[str, str], names_only: tuple[str, ...]) -> Document:
    files = tuple(name for name, of in found.old.files.items() if of == role)
    if _same_bytes(role, found.old, found.new):
        return Document(role, files, "valid", ("both sets have the same bytes",))
    against = [state for state in _STATES[role] if state in why]
    if against:
        told = (f"it tells of {', '.join(against)}",) if role in _TELLS_ALL else tuple(why[s] for s in against)
        return Document(role, files, "obsolete", told)
    spoilt = [name for name in files if name in found.old.damaged]
    if spoilt:
        return Document(role, files, "damaged", (f"not as it was built: {joined(spoilt)}; build the old spec again",))
    renamed = () if role in _BARE else names_only
    fate: Fate = "renamed" if renamed else "valid"
    return Document(role, files, fate, renamed or ("what it states is the same",))


def _outside(what: str, states: tuple[str, ...], why: Mapping[str, str]) -> Document:
    against = tuple(why[state] for state in states if state in why)
    return Document(what, (), "obsolete" if against else "valid", against or ("what it was made from is the same",))


def _same_bytes(role: str, old: Side, new: Side) -> bool:
    """Tell whether both sets were built and their files of a role have the same bytes."""
    before, after = (
        sorted(side.hashes.get(n, "") for n, of in side.files.items() if of == role) for side in (old, new)
    )
    return bool(before) and before == after and "" not in before


def _reasons(found: Comparison) -> dict[str, str]:
    """Return in words what differs, by what documents state; what is the same is left out."""
    asked = {entry.id: entry for entry in changed(found.spec)}
    words = {
        "geometry": _geometry(found),
        "characteristics": _counted("characteristics", found.characteristics),
        "screws": joined(screw_words(entry) for entry in changed(found.fasteners)),
        "base plate": feature_counts("hole of the base plate", "holes of the base plate", found.base_features),
        "checks": _counted("checks", found.checks),
        "alignment": _counted("figures of the alignment", found.alignment),
        "material": joined(size_words(e) for e in changed(found.mass) if e.id == "material"),
        "parts": _keys("parts", (key for key in asked if key.startswith(_PARTS))),
        "sheet": _keys("what the sheet states", (key for key in asked if key.startswith(_SHEET))),
        "spec": _keys("spec", (key for key in asked if key not in _NAMES)),
    }
    return {state: text for state, text in words.items() if text}


def _geometry(found: Comparison) -> str:
    outside = [e for e in changed(found.dimensions) if e.id in {"length", "width", "height"}]
    told = joined([*map(size_words, outside), feature_counts("cavity", "cavities", found.features)])
    return told or joined(size_words(e) for e in changed(found.mass) if e.id == "volume")  # fillets and chamfers


def feature_counts(one: str, many: str, entries: tuple[Entry, ...]) -> str:
    """Return how many were added, removed, moved and changed; empty without any."""
    counts = Counter(entry.state for entry in changed(entries))
    total = sum(counts.values())
    parts = [f"{counts[state]} {state}" for state in ("added", "removed", "moved", "changed") if counts[state]]
    what = f"{total} {one if total == 1 else many}"
    return f"{what} {parts[0].split()[1]}" if len(parts) == 1 else f"{what}: {joined(parts)}" if parts else ""


def screw_words(entry: Entry) -> str:
    """Return what became of a group of screws."""
    return f"screws {entry.id.replace('_', ' ')}: {entry.state}, {entry.title}"


def _counted(what: str, entries: tuple[Entry, ...]) -> str:
    number = len(changed(entries))
    return f"{what}: {number} of {len(entries)} differ" if number else ""


def _keys(what: str, keys: Iterable[str]) -> str:
    named = list(keys)
    more = f" and {len(named) - _MOST} more" if len(named) > _MOST else ""
    return f"{what}: {', '.join(named[:_MOST])}{more}" if named else ""


def _names_only(found: Comparison) -> tuple[str, ...]:
    """Return what a file carries beside what it states: number and revision, status, hash of the spec."""
    old, new = found.old.document, found.new.document
    pairs = [(f"it is named {found.old.stem}", found.old.stem, found.new.stem)]
    pairs += [("it carries the old status", old["status"], new["status"])]
    pairs += [("it carries the old hash of the spec", old["spec_sha256"], new["spec_sha256"])]
    return tuple(words for words, one, other in pairs if one != other)
