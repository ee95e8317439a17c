"""What differs between two designs: plain frozen data."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any, Literal

if TYPE_CHECKING:
    from blockgen.change.rework.rework import Change as Rework
    from blockgen.pipeline import Design

State = Literal["changed", "moved", "added", "removed", "same"]
Fate = Literal["obsolete", "damaged", "renamed", "valid"]
Box = tuple[float, float, float, float, float, float]


@dataclass(frozen=True, slots=True)
class Asked:
    """A value that stands in a spec or its presets, in the default unit of its key."""

    value: Any
    unit: str


@dataclass(frozen=True, slots=True)
class Side:
    """One of the two designs.

    Args:
        path: The spec or folder as the user named it.
        kind: spec, or folder for a set that was built.
        document: Its dimension summary as plain data; for a folder what was written there.
        asked: What its spec asks for, by dotted key.
        files: Role by name of the files of the set; those that a build would write for a spec.
        hashes: SHA-256 by name of those files; empty for a spec.
        whole: Whether the set is whole by its manifest; None for a spec.
        remarks: What speaks against the set, in words.
        damaged: Its files that are missing, or not as its manifest has them.
        design: The design that its spec gives now; None where only data are compared.
    """

    path: str
    kind: Literal["spec", "folder"]
    document: Mapping[str, Any]
    asked: Mapping[str, Asked] = field(default_factory=dict)
    files: Mapping[str, str] = field(default_factory=dict)
    hashes: Mapping[str, str] = field(default_factory=dict)
    whole: bool | None = None
    remarks: tuple[str, ...] = ()
    damaged: tuple[str, ...] = ()
    design: Design | None = None

    @property
    def stem(self) -> str:
        """Number and revision, as they name folder and files."""
        job = self.document["job"]
        return f"{job['number']}_{job['revision']}"


@dataclass(frozen=True, slots=True)
class Change:
    """One attribute that differs; None where a side has none."""

    name: str
    old: Any
    new: Any
    unit: str = ""


@dataclass(frozen=True, slots=True)
class Entry:
    """One thing that stands in one of the designs or in both.

    Args:
        id: Its key or id; in the old design where it stands there.
        state: changed, moved, added, removed or same.
        title: What it is, in words; may be empty.
        changes: Attributes that differ; all of them where it is added or removed.
        new_id: Its id in the new design where that is another one.
        group: Id that it shares with alike ones.
        because: Changed keys of the spec from which the change comes.
        note: What it means: worse or better for a check; else empty.
    """

    id: str
    state: State
    title: str = ""
    changes: tuple[Change, ...] = ()
    new_id: str | None = None
    group: str = ""
    because: tuple[str, ...] = ()
    note: str = ""


@dataclass(frozen=True, slots=True)
class Document:
    """A document or thing that was made from the old design.

    Args:
        role: Its role in a set, or what it is.
        files: Names of its files; empty where it is no file of ours.
        fate: obsolete; damaged (a file is not as it was built); renamed (only number, revision, status or hash in it
            are old); or valid.
        reasons: Why, in words.
    """

    role: str
    files: tuple[str, ...]
    fate: Fate
    reasons: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Lump:
    """One connected piece of volume: mm3, and the box about it (least x, y, z, greatest x, y, z) in mm."""

    volume: float
    box: Box


@dataclass(frozen=True, slots=True)
class Volumes:
    """Both blocks laid on each other: bearing seats at x = 0, bases at z = 0, shafts at y = 0.

    Args:
        old: Volume of the old block, mm3.
        new: Volume of the new block, mm3.
        added: Pieces that only the new block has, the greatest first.
        removed: Pieces that only the old block has, the greatest first.
    """

    old: float
    new: float
    added: tuple[Lump, ...]
    removed: tuple[Lump, ...]


@dataclass(frozen=True, slots=True)
class Comparison:
    """Everything that was compared.

    Args:
        old: The old design.
        new: The new one.
        spec: Keys of the spec.
        dimensions: Dimensions with limits and fits.
        features: Cavities of the block.
        base_features: Holes in the base plate.
        characteristics: What drawing and inspection sheet state.
        fasteners: Screws and pins.
        checks: Verdicts and margins.
        alignment: Offset and angle of the shafts, and what they come from.
        mass: Mass, material, volume and stock.
        documents: What was made from the old design, and whether it still holds.
        not_comparable: Checks that only one side could judge, and why.
        volumes: Added and removed volume; None where no solids were made.
        rework: Whether the old block can be re-machined into the new one, and what would join them; None where it was
            not looked for.
    """

    old: Side
    new: Side
    spec: tuple[Entry, ...]
    dimensions: tuple[Entry, ...]
    features: tuple[Entry, ...]
    base_features: tuple[Entry, ...]
    characteristics: tuple[Entry, ...]
    fasteners: tuple[Entry, ...]
    checks: tuple[Entry, ...]
    alignment: tuple[Entry, ...]
    mass: tuple[Entry, ...]
    documents: tuple[Document, ...]
    not_comparable: tuple[str, ...] = ()
    volumes: Volumes | None = None
    rework: Rework | None = None

    @property
    def status(self) -> Change:
        """The status of both designs."""
        return Change("status", self.old.document["status"], self.new.document["status"])

    @property
    def same(self) -> bool:
        """Whether nothing differs."""
        entries = (*self.spec, *self.dimensions, *self.features, *self.base_features, *self.characteristics,
                   *self.fasteners, *self.checks, *self.alignment, *self.mass)  # fmt: skip
        return all(e.state == "same" for e in entries) and self.status.old == self.status.new


def changed(entries: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """Return the entries that differ."""
    return tuple(entry for entry in entries if entry.state != "same")


def unchanged(entries: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """Return the entries that are the same in both designs."""
    return tuple(entry for entry in entries if entry.state == "same")
