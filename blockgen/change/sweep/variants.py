"""Specs that differ from one spec in a few keys: what does not vary is read and checked once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from itertools import islice
from typing import Any

from blockgen.change.sweep.axes import Axis, Place
from blockgen.errors import InputError, Problem
from blockgen.record import Record, Value
from blockgen.spec.load import Loading, Shelf, Spec
from blockgen.spec.nonsense import contradictions
from blockgen.spec.read import Document
from blockgen.spec.tables import NEEDED, TABLES

_KEPT = 300  # tables that were read; a sample meets new ones all the time and must not keep them all


@dataclass(frozen=True, slots=True)
class Part:
    """What one table gives: records, presets used, and what is wrong with it."""

    records: Mapping[str, Record]
    used: Mapping[str, str]
    problems: tuple[Problem, ...]


@dataclass(frozen=True, slots=True, eq=False)
class _Slot:
    """A table of the spec: its model, where it stands, what stands there, and which axes vary a key of it."""

    table: str
    place: Place
    raw: Mapping[str, object]
    axes: tuple[tuple[int, str], ...] = field(default=())


class Variants:
    """The variants of a spec.

    A table is read again only for values of its own keys that have not been met; rules that join tables are applied
    to every variant. What comes out is what an edited spec file would give, save for the line numbers.
    """

    def __init__(self, document: Document, shelf: Shelf, axes: Sequence[Axis]) -> None:
        """Keep the spec and what is varied.

        Args:
            document: The spec, known to be good.
            shelf: Presets that it and the values name.
            axes: What is varied.
        """
        self._document = document
        self._shelf = shelf
        slots = _slots(document.data, axes)
        self._before = [slot for slot in slots if slot.table != "family"]
        self._after = [slot for slot in slots if slot.table == "family"]
        self._alike: dict[tuple[Place, Value], Part] = {}
        self._still = {slot.place: self._part(slot) for slot in slots if not slot.axes}
        self._moving = lru_cache(_KEPT, typed=True)(self._part)
        own: Any = document.data.get("material", {})
        self._own = tuple(own)

    def spec(self, values: Sequence[Value]) -> Spec:
        """Return the spec with a value for each axis.

        Raises:
            InputError: no such parts can exist; everything that is wrong, at once.
        """
        loading, moving = Loading(self._document, self._shelf), list[Record]()
        for slot in self._before:
            self._add(loading, slot, values, moving)
        known = len(loading.records)
        loading.named_materials(self._own)
        moving.extend(islice(loading.records.values(), known, None))
        for slot in self._after:
            self._add(loading, slot, values, moving)
        problems = loading.problems or contradictions(loading.records, self._document.file, moving)
        if problems:
            raise InputError(problems)
        return Spec(loading.records, self._document.file, tuple(sorted(loading.used.items())))

    def _add(self, loading: Loading, slot: _Slot, values: Sequence[Value], moving: list[Record]) -> None:
        part = self._still.get(slot.place)
        if part is None:
            part = self._moving(slot, *(values[i] for i, _ in slot.axes))
            moving.extend(part.records.values())
        loading.records.update(part.records)
        loading.used.update(part.used)
        loading.problems.extend(part.problems)

    def _part(self, slot: _Slot, *values: Value) -> Part:
        """Return what a table gives: which values it has hangs on the names of its keys and on its preset alone."""
        named = {name: value for (_, name), value in zip(slot.axes, values, strict=True)}
        like = (slot.place, named.get("preset"))
        if like not in self._alike:
            self._alike[like] = self._read(slot, named)
        part = self._alike[like]
        if part.problems:
            return self._read(slot, named)
        loading = Loading(self._document, self._shelf, records=dict(part.records))
        for name, value in named.items():
            if name != "preset":
                path = (*slot.place, name)
                loading.enter(slot.table, ".".join(map(str, path)), value, "given", self._document, path)
        return Part(loading.records, part.used, ())

    def _read(self, slot: _Slot, named: Mapping[str, Value]) -> Part:
        loading = Loading(self._document, self._shelf)
        given = {name: _as_in_a_file(value) for name, value in named.items()}
        loading.table(slot.table, slot.place, {**slot.raw, **given})
        return Part(loading.records, loading.used, tuple(loading.problems))


def _as_in_a_file(value: object) -> object:
    """Return a value with lists in place of tuples."""
    return [_as_in_a_file(item) for item in value] if isinstance(value, tuple) else value


def _slots(data: Mapping[str, object], axes: Sequence[Axis]) -> tuple[_Slot, ...]:
    """Return the tables in the order in which a spec is read."""
    varied = {axis.place[:-1] for axis in axes}
    places: list[tuple[str, Place, Any]] = [
        (name, (name,), data.get(name, {})) for name in TABLES if name in data or name in NEEDED or (name,) in varied
    ]
    own: Any = data.get("material", {})
    family: Any = data.get("family", [])
    places += [("material", ("material", name), raw) for name, raw in own.items()]
    places += [("family", ("family", number), raw) for number, raw in enumerate(family)]
    return tuple(
        _Slot(
            table,
            place,
            raw,
            tuple((i, str(axis.place[-1])) for i, axis in enumerate(axes) if axis.place[:-1] == place),
        )
        for table, place, raw in places
    )
