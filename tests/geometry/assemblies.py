"""Assemblies for tests: a plan with its block and parts, and ways to spoil one of them."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from types import SimpleNamespace

from tests.sizing.strategies import sized

WAYS = {
    "usual": {},
    "across": {"block": {"window_axis": "y"}},
    "below": {"base": {"screw_from": "below"}},
    "dowels": {"base": {"dowels": 6}},
    "pocket": {"block": {"window_floor": 20}},
    "tapped": {"motor": {"bolt_hole": None, "bolt_thread": "M6", "fastening": "tapped"}},
    "recessed": {"motor": {"pilot_form": "recessed", "pilot_fit": "H7"}},
    "away": {"bearing": {"pilot_direction": "away"}},
}


@cache
def assembly(way="usual"):
    """Return plan, block and parts of one way to design."""
    return of_plan(sized(**WAYS[way]))


def of_plan(plan):
    from blockgen.geometry.block import build_block
    from blockgen.geometry.stand_ins.parts import parts

    block = build_block(plan)
    return SimpleNamespace(plan=plan, block=block, parts=parts(plan, block))


def with_sizes(plan, **values):
    """Return a plan with other values under keys whose dots are written as two underscores."""
    records = dict(plan.records)
    for name, value in values.items():
        key = name.replace("__", ".")
        records[key] = replace(records[key], value=value)
    return replace(plan, records=records)


def with_shape(parts, part_id, shape):
    """Return parts with another shape for one of them."""
    return tuple(replace(part, shape=shape) if part.id == part_id else part for part in parts)


def pair_of(made, first, second):
    """Return two parts of an assembly measured against each other."""
    from blockgen.geometry.interference import measured_pair, placed
    from blockgen.geometry.planned_contacts import Contact, planned_contacts

    solids = placed(part for part in made.parts if part.id in {first, second})
    contact = planned_contacts(made.plan, made.parts).get(frozenset((first, second)), Contact(""))
    return measured_pair(solids[first], solids[second], contact)
