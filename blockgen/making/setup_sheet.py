"""The setup sheet: stock, setups, tools, class of time and masses as rows for a table, and a record for each number."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from blockgen.making.lifting import CAUTION, Load, lifting
from blockgen.making.practice import PRACTICE
from blockgen.making.setups import rows, setups
from blockgen.making.stock import Stock, outside, stock
from blockgen.making.time_class import TimeClass, time_class
from blockgen.making.tools import Tool, cuts, tools
from blockgen.making.words import box, kg, mm, ratio
from blockgen.plan import Plan
from blockgen.record import Record

Row = tuple[str, ...]
NOTES = (
    "Sizes are nominal; drawing and its tolerances rule.",
    "Tap drills are for cutting taps; a forming tap needs a wider drill.",
    "Reach is from the face that is up; add what the holder needs.",
)


@dataclass(frozen=True, slots=True)
class SheetTable:
    """One table of the sheet: title, heads of the columns, rows of text, and a note below it (may be empty)."""

    title: str
    columns: Row
    rows: tuple[Row, ...]
    note: str = ""


@dataclass(frozen=True, slots=True)
class SetupSheet:
    """How the block is made.

    Args:
        title: Number, revision and title of the block.
        stock: Item, value, remark.
        setups: Setup, what, tool, remark, in order.
        tools: Tool, reach, reach over diameter, used for.
        time: Part of the estimate, amount, minutes.
        lifting: What is lifted, mass, how, remark.
        notes: What holds for the whole sheet.
        records: How every number came about, practice values first.
    """

    title: str
    stock: SheetTable
    setups: SheetTable
    tools: SheetTable
    time: SheetTable
    lifting: SheetTable
    notes: tuple[str, ...]
    records: tuple[Record, ...]

    @property
    def tables(self) -> tuple[SheetTable, ...]:
        """All tables in the order in which the shop needs them."""
        return self.stock, self.setups, self.tools, self.time, self.lifting


def setup_sheet(plan: Plan) -> SetupSheet:
    """Return the setup sheet of a block.

    Args:
        plan: What was decided; nothing else is read.

    Raises:
        ValueError: the family of the block's material is not known.
    """
    material = stock(plan)
    made = cuts(plan)
    steps = setups(plan, material, made)
    time = time_class(plan, material, steps)
    loads, sums = lifting(plan, material)
    decided = (*material.records, *(record for cut in made for record in cut.records), *time.records, *sums)
    return SetupSheet(
        " ".join(plan.text(f"job.{key}") for key in ("number", "revision", "title")),
        _stock_table(plan, material),
        SheetTable("Setups", ("Setup", "What", "Tool", "Remark"), tuple(rows(steps))),
        _tool_table(tools(made)), _time_table(time), _lifting_table(plan, loads),
        NOTES, once((*PRACTICE.values(), *decided)),
    )  # fmt: skip


def once(records: Iterable[Record]) -> tuple[Record, ...]:
    """Return records with each key once, the first one kept."""
    found: dict[str, Record] = {}
    for record in records:
        found.setdefault(record.key, record)
    return tuple(found.values())


def _stock_table(plan: Plan, found: Stock) -> SheetTable:
    piece = found.piece
    cut = [
        ("Stock", piece.text, _source(found)),
        ("Stock along length x width x height", f"{box(piece.sizes)} mm", "allowances on every face included"),
        ("Block", f"{box(outside(plan))} mm", plan.text("block.material")),
        ("Mass of stock / block", f"{kg(found.rough_mass)} / {kg(found.finished_mass)} kg", ""),
        ("Removed", f"{found.removed:.0f} cm3", f"{found.share * 100:.0f} % of the stock"),
        ("Certificate", f"Rm {mm(plan.number('block_tensile_strength'))} MPa or more",
         "strength falls with thickness: ask for this stock's"),
    ]  # fmt: skip
    if found.other is not None:
        more = found.other.volume / piece.volume - 1
        cut.insert(1, ("Or", found.other.text, f"{abs(more) * 100:.0f} % {'more' if more > 0 else 'less'} metal"))
    return SheetTable("Stock", ("Item", "Value", "Remark"), tuple(cut))


def _source(found: Stock) -> str:
    if found.piece.along is None:
        return "no bar or plate of the tables is large enough"
    return f"{found.piece.standard}; usually stocked, from memory: ask"


def _tool_table(laid: tuple[Tool, ...]) -> SheetTable:
    lines = tuple(
        (
            tool.name,
            "" if tool.reach is None else mm(tool.reach),
            "" if tool.ratio is None else ratio(tool.ratio),
            ", ".join(tool.used_for),
        )
        for tool in laid
    )
    return SheetTable("Tools", ("Tool", "Reach mm", "Reach / D", "For"), lines)


def _time_table(found: TimeClass) -> SheetTable:
    lines = tuple((part.what, f"{part.count:g} {part.rate}", f"{part.minutes:.0f}") for part in found.parts)
    total = (f"class: {found.name}", "sum", f"{found.minutes:.0f}")
    note = "Estimate to compare blocks by, no quotation; rates are common practice, no source."
    return SheetTable("Machining time", ("Part", "Amount", "min"), (*lines, total), note)


def _lifting_table(plan: Plan, loads: tuple[Load, ...]) -> SheetTable:
    limit = plan.number("practice.lifting_mass")
    lines = tuple(
        (load.what, f"{kg(load.mass)} kg", f"hoist, over {limit:g} kg" if load.hoist else "by hand", load.remark)
        for load in loads
    )
    return SheetTable("Lifting", ("What", "Mass", "How", "Remark"), lines, CAUTION)
