"""The stock: least wasteful bar or plate that holds the block with its allowances, else a block to order; masses."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from blockgen.making.material import Kind, material_kind
from blockgen.making.practice import CP, constant, decided
from blockgen.making.words import box
from blockgen.mechanics.volume import reference_volume
from blockgen.plan import Plan
from blockgen.record import Record
from blockgen.standards.stock import bar_sections, plate_thicknesses
from blockgen.standards.tables import load_table

DIRECTIONS = ("length", "width", "height")
Sizes = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece of stock.

    Args:
        form: flat bar, square bar, plate, or what is ordered in their place.
        standard: Standard of its dimensions; empty for a block made to order.
        along: Direction of the block (0 length, 1 width, 2 height) along the bar, or through the plate; None for a
            block made to order.
        sizes: Along length, width and height of the block, mm.
    """

    form: str
    standard: str
    along: int | None
    sizes: Sizes

    @property
    def volume(self) -> float:
        """Volume, mm3."""
        return math.prod(self.sizes)

    @property
    def text(self) -> str:
        """What is ordered: section and sawn length of a bar, thickness and sawn sides of a plate; mm."""
        if self.along is None:
            return f"{self.form}, {box(self.sizes)}"
        single = self.sizes[self.along]
        others = sorted(size for i, size in enumerate(self.sizes) if i != self.along)
        if self.form == "plate":
            return f"plate {box([single])} thick, sawn {box(others)}"
        return f"{self.form} {box(others)}, sawn {box([single])} long"


@dataclass(frozen=True, slots=True)
class Stock:
    """What the block is cut from.

    Args:
        piece: The piece taken.
        other: The best piece of the other form (bar or plate), or None.
        kind: Family of the material.
        rough_mass: Mass of the piece, kg.
        finished_mass: Mass of the block, kg.
        removed: Volume cut away, cm3.
        share: Part of the piece that is cut away, 0 to 1.
        records: How each number came about.
    """

    piece: Piece
    other: Piece | None
    kind: Kind
    rough_mass: float
    finished_mass: float
    removed: float
    share: float
    records: tuple[Record, ...]


def skin(kind: Kind) -> float:
    """Return what is taken off a rolled face, mm; a casting is taken as a sawn face."""
    return constant("sawn_face") if kind == "cast_iron" else constant(f"skin_{kind}")


def outside(plan: Plan) -> Sizes:
    """Return length, width and height of the block, mm."""
    return plan.body.length, plan.body.width, plan.body.height


def bars(plan: Plan, kind: Kind) -> Iterator[Piece]:
    """Yield every bar that holds the block, in each of the three directions and both ways round."""
    block, rolled = outside(plan), 2 * skin(kind)
    for along in range(3):
        first, second = (i for i in range(3) if i != along)
        for bar in bar_sections(kind):
            for section in sorted({(bar.thickness, bar.width), (bar.width, bar.thickness)}):
                if section[0] >= block[first] + rolled and section[1] >= block[second] + rolled:
                    sizes = {along: sawn(block[along]), first: section[0], second: section[1]}
                    yield Piece(bar.form, bar.standard, along, (sizes[0], sizes[1], sizes[2]))


def plates(plan: Plan, kind: Kind) -> Iterator[Piece]:
    """Yield the thinnest plate that holds the block in each of the three directions."""
    block = outside(plan)
    for along in range(3):
        need = block[along] + 2 * skin(kind)
        plate = next((p for p in plate_thicknesses(kind) if p.thickness >= need), None)
        if plate is not None:
            sides = [plate.thickness if i == along else sawn(block[i]) for i in range(3)]
            yield Piece("plate", plate.standard, along, (sides[0], sides[1], sides[2]))


def sawn(size: float, step: str = "sawn_step") -> float:
    """Return a sawn size in mm: the finished one and two sawn faces, up to the next step."""
    width = constant(step)
    return math.ceil(round((size + 2 * constant("sawn_face")) / width, 6)) * width


def to_order(plan: Plan, kind: Kind) -> Piece:
    """Return the block that is ordered where neither bar nor plate is large enough."""
    length, width, height = (sawn(size, "block_step") for size in outside(plan))
    form = "casting or sawn piece of continuous-cast bar" if kind == "cast_iron" else "forged or sawn block to size"
    return Piece(form, "", None, (length, width, height))


def choose(plan: Plan, kind: Kind) -> tuple[Piece, Piece | None]:
    """Return the piece taken and the best of the other form: the bar unless it wastes much more than the plate."""
    bar = min(bars(plan, kind), key=_waste, default=None)
    plate = min(plates(plan, kind), key=_waste, default=None)
    if bar is None or plate is None:
        return bar or plate or to_order(plan, kind), None
    return (bar, plate) if bar.volume <= constant("bar_over_plate") * plate.volume else (plate, bar)


def _waste(piece: Piece) -> tuple[float, int, Sizes]:
    # Direction and sizes only settle which of two equally good pieces is taken.
    return piece.volume, piece.along or 0, piece.sizes


def stock(plan: Plan) -> Stock:
    """Return the stock of a block with masses and what is cut away.

    Raises:
        ValueError: the family of the material is not known.
    """
    kind = material_kind(plan)
    piece, other = choose(plan, kind)
    finished = reference_volume(plan)
    density = plan.material_density * 1e-9
    removed = piece.volume - finished
    found = Stock(
        piece, other, kind, piece.volume * density, finished * density, removed / 1000, removed / piece.volume, ()
    )
    sizes = _size_records(plan, found)
    return Stock(
        piece, other, kind, found.rough_mass, found.finished_mass, found.removed, found.share,
        (*sizes, *_mass_records(plan, found, sizes)),
    )  # fmt: skip


def _size_records(plan: Plan, found: Stock) -> tuple[Record, ...]:
    piece, rolled = found.piece, f"making.skin_{found.kind}"
    sides = []
    for i, name in enumerate(DIRECTIONS):
        cut = piece.along is None or (i == piece.along) != (piece.form == "plate")
        step = "making.block_step" if piece.along is None else "making.sawn_step"
        rule = (
            f"{name} + 2 x making.sawn_face; up to the next step"
            if cut
            else f"{name} + 2 x {rolled}; up to the next {piece.form} of the table"
        )
        using = (name, "making.sawn_face", step) if cut else (name, rolled)
        sides.append(decided(plan, f"stock_{name}", piece.sizes[i], "mm", rule, using, source=_source(piece, cut=cut)))
    return (_form_record(plan, found), *sides)


def _source(piece: Piece, *, cut: bool) -> str:
    if cut:
        return CP
    table = load_table("stock_plates" if piece.form == "plate" else "stock_bars").info
    return f"{piece.standard}, sizes usually stocked [{table.status}]"


def _form_record(plan: Plan, found: Stock) -> Record:
    rule = "nothing in the tables is large enough"
    if found.piece.along is not None:
        rule = "least volume; a bar before a plate up to making.bar_over_plate times its volume"
    facts = {"volume": (round(found.piece.volume / 1000, 1), "cm3")}
    if found.other is not None:
        facts["volume of the other form"] = (round(found.other.volume / 1000, 1), "cm3")
    using = ("length", "width", "height", "block.material", "making.bar_over_plate")
    return decided(plan, "stock_form", found.piece.text, "", rule, using, facts)


def _mass_records(plan: Plan, found: Stock, sizes: tuple[Record, ...]) -> tuple[Record, ...]:
    density = {"density": (plan.material_density, "kg/m3")}
    finished = {"finished volume": (round(found.piece.volume / 1000 - found.removed, 1), "cm3")}
    sides, geometry = sizes[1:], "geometry"
    rough = "stock_length x stock_width x stock_height"
    removed = decided(
        plan, "removed_volume", round(found.removed, 1), "cm3", f"{rough} / 1000 - finished volume", sides, finished,
        geometry,
    )  # fmt: skip
    return (
        decided(plan, "stock_mass", round(found.rough_mass, 3), "kg", f"{rough} x density / 1e9", sides, density,
                geometry),
        decided(plan, "finished_mass", round(found.finished_mass, 3), "kg", "finished volume x density / 1e6",
                ("block.material",), {**finished, **density}, geometry),
        removed,
        decided(plan, "removed_share", round(found.share, 3), "", f"making.removed_volume x 1000 / ({rough})",
                (removed, *sides), source=geometry),
    )  # fmt: skip
