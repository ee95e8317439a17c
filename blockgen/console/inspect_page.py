"""What ``inspect`` prints; it ends with the verdict, since the end is what stays in sight."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from math import degrees

from blockgen.alignment.chain import Spread
from blockgen.console.check_page import status_line
from blockgen.console.page import BLANK, Line, Mark, Part, Row, Table, bullet, title
from blockgen.evidence.as_built import AsBuilt
from blockgen.evidence.clocking import Clocking, Turn
from blockgen.evidence.conformity import Conformity, limit_words, value_words
from blockgen.evidence.shim import CORRECTS, Shim, shim_words
from blockgen.evidence.verdict import Verdict, holding, percent

_ORDER = {
    "out": 0,
    "cannot be told": 1,
    "in": 2,
    "no limit": 3,
}  # of components and vectors, which are judged by what they make
_MARKS: dict[str, Mark] = {"out": "fail", "cannot be told": "warn", "in": "pass", "no limit": "quiet"}
_DECISIONS: dict[str, Mark] = {"accept": "pass", "use with note": "warn", "reject": "fail"}


def inspect_page(found: Verdict, status: str, mounted: str = "") -> list[Part]:
    """Return the page of a verdict.

    Args:
        found: The verdict.
        status: Status of the design that the block was made from.
        mounted: The motor that it is about, in words, where the block takes several.
    """
    return [
        status_line(status),
        *_characteristics(found.conformities),
        *_shafts(found.as_built),
        *_mounted(mounted),
        *_clocking(found.clocking),
        *_shim(found.shim),
        *_result(found),
    ]


def rejection(found: Verdict) -> list[Part]:
    """Return what is told even where nothing else shall be printed."""
    return [Line("REJECT", "fail"), *(bullet(reason, "fail") for reason in found.reasons)]


def _characteristics(found: Sequence[Conformity]) -> Iterator[Part]:
    measured = sorted((one for one in found if one.value is not None), key=lambda one: _ORDER[one.told])
    counts = Counter(one.told for one in found if one.row.needed == "block")
    words = [
        f"{counts[told]} {told}" for told in ("in", "out", "cannot be told", "no limit", "not measured") if counts[told]
    ]
    yield from title("Characteristics, what is not in first")
    rows = tuple(_row(one) for one in measured)
    yield Table(("Told", "No.", "Characteristic", "Value", "+-U", "Limits", "Unit"), rows, right=("Value", "+-U"))
    if any(one.rule for one in measured):
        yield Line("* from its measured components", "quiet")
    yield BLANK
    told = "Told by ISO 14253-1 (from memory): in or out where the uncertainty leaves no doubt."
    yield Line(f"Rows of the block: {', '.join(words)}. {told}")


def _row(one: Conformity) -> Row:
    row = one.row
    cells = (
        one.told, row.number, row.title + (" *" if one.rule else ""), value_words(one),
        f"{one.uncertainty:.3g}", limit_words(row), row.unit,
    )  # fmt: skip
    return Row(cells, _MARKS[one.told])


def _shafts(result: AsBuilt) -> Iterator[Part]:
    yield from title("Shafts at the coupling, as this block will give it")
    scale = degrees(1.0)
    rows = (
        _spread("offset, mm", result.offset, 1.0),
        _spread("offset planned", result.offset_before, 1.0),
        _spread("angle, deg", result.angle, scale),
        _spread("angle planned", result.angle_before, scale),
    )
    columns = ("", "P50", "P95", "P99.73", "Worst", "Allowed", "Holds")
    yield Table(columns, rows, right=columns[1:])
    y, z = result.known_offset
    heat = ", heat included" if any(term.id.startswith("heat_") for term in result.terms) else ""
    yield Line(f"Known of the offset: {y:+.4f} mm across (right as seen from the motor), {z:+.4f} mm up{heat}.")
    if result.use.likely is not None:
        asked = percent(result.probability)
        yield Line(f"Use of the coupling at {asked}: {result.use.likely:.2f} of {result.use_limit:g}.")
    yield Line(f"Not measured, still random: {', '.join(i.replace('_', ' ') for i in result.unknown) or 'nothing'}.")


def _mounted(motor: str) -> Iterator[Part]:
    """Yield which motor of a family the verdict is about."""
    if motor:
        told = f"The motor's rows, shafts, turn and verdict are those of {motor}"
        yield Line(f"{told}; no other motor of the family is judged here.", "warn")


def _spread(name: str, spread: Spread, scale: float) -> Row:
    held = holding(spread)
    figures = (spread.p50, spread.p95, spread.p9973, spread.worst)
    limit = "-" if spread.limit is None else f"{spread.limit * scale:.3g}"
    return Row((name, *(f"{f * scale:.4f}" for f in figures), limit, "-" if held is None else percent(held)))


def _clocking(found: Clocking) -> Iterator[Part]:
    yield from title("Turning the motor on its seat")
    if found.best is None:
        yield Line(f"{found.reason[:1].upper()}{found.reason[1:]}.")
        return
    columns = ("Turned by", "Offset P50", "Offset P95", "Angle P95", "Coupling use")
    yield Table(columns, tuple(_turn(turn) for turn in found.turns), right=columns[1:])
    alike = max(t.result.offset.p95 for t in found.turns) - min(t.result.offset.p95 for t in found.turns) < 5e-5
    best = "every turn is as good as the others" if alike else f"best turned by {found.best.degrees:g} deg"
    yield Line(f"Counter-clockwise as seen from the motor, 0 is its mark up; {best}; {found.reason}.")


def _turn(turn: Turn) -> Row:
    result, use = turn.result, turn.result.use.likely
    return Row(
        (f"{turn.degrees:g} deg", f"{result.offset.p50:.4f} mm", f"{result.offset.p95:.4f} mm",
         f"{degrees(result.angle.p95):.4f} deg", "-" if use is None else f"{use:.2f}")
    )  # fmt: skip


def _shim(found: Shim | None) -> Iterator[Part]:
    yield from title("Shim under the base")
    if found is None:
        yield Line("Not told: block.shaft_height is not measured.")
        return
    words = shim_words(found)
    yield Line(f"{words[:1].upper()}{words[1:]}.")
    yield Line(f"{CORRECTS[:1].upper()}{CORRECTS[1:]}.", "quiet")


def _result(found: Verdict) -> Iterator[Part]:
    mark = _DECISIONS[found.decision]
    yield from title("Verdict")
    yield Line(found.decision.upper(), mark)
    yield from (bullet(reason, "fail") for reason in found.reasons)
    yield from (bullet(note, "warn") for note in found.notes)
