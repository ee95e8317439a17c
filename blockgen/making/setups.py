"""The setups in order: what is done in each, how the block is held, and why it comes there."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from blockgen.making.boring import way
from blockgen.making.cut import Cut, SetupId
from blockgen.making.material import material_kind
from blockgen.making.stock import Stock
from blockgen.making.words import mm, plain
from blockgen.plan import Plan

_ROUGH_CLAMPINGS = 2
"""A box is roughed in two clampings: five faces, turned over, the sixth."""

_CLAMPINGS: dict[SetupId, int] = {"rough": _ROUGH_CLAMPINGS, "base": 1, "top": 1, "sides": 1, "ends": 1, "far_end": 1}


@dataclass(frozen=True, slots=True)
class Setup:
    """One setup.

    Args:
        id: Plain id.
        title: What it is called.
        hold: How the block is held, or what is done as a whole.
        why: Why it is done so and at this place.
        cuts: Cuts in order; empty where nothing is cut.
    """

    id: SetupId
    title: str
    hold: str
    why: str
    cuts: tuple[Cut, ...] = ()


def setups(plan: Plan, stock: Stock, made: tuple[Cut, ...]) -> tuple[Setup, ...]:
    """Return the setups in order, those left out that have nothing to do.

    Args:
        plan: What was decided.
        stock: What the block is cut from.
        made: Every cut.
    """
    heads: tuple[Head, ...] = (
        _saw(stock),
        ("rough", "Rough", "vice; turn over for the sixth face", "bulk comes out first, so that stresses act now"),
        _relax(plan),
        ("base", "Base up", "on the rough top, clamped lightly", "base is the face of reference from here on"),
        ("top", "Top up", "on the finished base", "window and holes are done before the bores, or they move them"),
        ("sides", "Sides", "on the finished base, table turned", "window across is done before the bores"),
        _ends(plan),
        _far_end(plan),
        ("deburr", "Deburr", "by hand and chamfer tool", "a burr under seat or base tilts the block"),
        _coat(plan),
        _inspect(plan),
        ("assembly", "At assembly", "block aligned and torqued on its base", "pins fix what was aligned"),
    )
    always: tuple[SetupId, ...] = ("saw", "relax", "deburr", "inspect", *(("coat",) if coated(plan) else ()))
    found = [Setup(name, title, hold, why, in_order(made, name)) for name, title, hold, why in heads]
    return tuple(setup for setup in found if setup.cuts or setup.id in always)


Head = tuple[SetupId, str, str, str]


def in_order(made: tuple[Cut, ...], setup: SetupId) -> tuple[Cut, ...]:
    """Return the cuts of one setup by rank; alike ranks stay as they are."""
    return tuple(sorted((cut for cut in made if cut.setup == setup), key=lambda cut: cut.rank))


def clampings(found: tuple[Setup, ...]) -> int:
    """Return how often the block is clamped on a machine; the saw is left out."""
    return sum(_CLAMPINGS.get(setup.id, 0) for setup in found)


def _saw(stock: Stock) -> Head:
    cut = "sawn all round" if stock.piece.form == "plate" else "sawn to length"
    if stock.piece.along is None:
        cut = "as ordered"
    return "saw", "Stock", stock.piece.text, f"{cut}; certificate with it"


def _relax(plan: Plan) -> Head:
    holds = {
        "aluminium": "leave unclamped over night; no heat, it costs the temper",
        "steel": "stress-relieve; tempered or stainless: rest unclamped",
        "cast_iron": "stress-relieve, or leave unclamped as long as can be",
    }
    return "relax", "Relax", holds[material_kind(plan)], "roughed metal moves; finishing cuts come after"


def _ends(plan: Plan) -> Head:
    found = way(plan)
    hold = "on the finished base, shaft axis level; table turned for the other seat"
    end = found.large.removesuffix("_bore")
    why = f"one clamping keeps the bores in line, diam {mm(plan.number('block.coaxiality'))}; spindle at the {end} end"
    return "ends", "Bores and seats", hold, why


def _far_end(plan: Plan) -> Head:
    found = way(plan)
    hold = f"table turned 180 deg, not unclamped; dial in on the {plain(found.large)}"
    return "far_end", "Other end", hold, f"{plain(found.small)}: {found.reason}"


def coated(plan: Plan) -> bool:
    """Tell whether the block gets a finish after machining."""
    return plan.text("block.finish") not in {"", "none"} or plan.number("block.coating_thickness") > 0


def _coat(plan: Plan) -> Head:
    finish, thick = plan.text("block.finish"), plan.number("block.coating_thickness")
    name = "coating" if finish in {"", "none"} else finish
    hold = f"{name}, {mm(thick)} thick" if thick > 0 else name
    pins = ", dowel holes" if any(f.kind == "dowel_hole" for f in plan.features) else ""
    return "coat", "Coat", hold, f"mask bores, seats, base, threads{pins}: a coating closes fits"


def _inspect(plan: Plan) -> Head:
    shaft = plan.records["shaft_height"]
    height = mm(plan.number("shaft_height"))
    limits = "" if shaft.upper is None or shaft.lower is None else f" ({shaft.upper:+g}/{shaft.lower:+g})"
    hold = f"bores, shaft height {height}{limits}, length, window, threads by gauge"
    return "inspect", "Inspect", hold, "at 20 degC, unclamped on a plate; drawing and inspection sheet rule"


def rows(found: tuple[Setup, ...]) -> Iterator[tuple[str, str, str, str]]:
    """Yield setup, what, tool, remark: one line for each setup as a whole, then one for each of its cuts."""
    for number, setup in enumerate(found, 1):
        yield f"{number} {setup.title}", setup.hold, "", setup.why
        yield from (("", cut.what, cut.tool, cut.remark) for cut in setup.cuts)
