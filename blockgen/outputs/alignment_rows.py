"""The alignment in rows of words, for the summary to read and for the terminal."""

from __future__ import annotations

from collections.abc import Iterator
from math import degrees

from blockgen.alignment.arrangements import Arrangement
from blockgen.alignment.chain import Alignment, Spread
from blockgen.alignment.shares import Share
from blockgen.outputs import show

SPREAD_COLUMNS = ("At the coupling", "P50", "P95", "P99.73", "Worst", "Allowed", "Chance of more")
SHARE_COLUMNS = ("Contributor", "Greatest", "Of variance", "Of worst", "Of angle's variance")
DECISION_COLUMNS = ("One step tighter", "P95 then", "Gain", "Cost", "How")
ARRANGEMENT_COLUMNS = ("Arrangement", "P95", "Worst", "Chance of more", "Setups", "Fitted", "To be held")


def spread_rows(alignment: Alignment) -> Iterator[tuple[str, ...]]:
    """Yield offset and angle, as a whole and by static and rotating part."""
    for title, spread in (
        ("offset, mm", alignment.offset),
        ("offset that stands still, mm", alignment.offset_static),
        ("offset that turns, mm", alignment.offset_rotating),
    ):
        yield _spread(title, spread, 1.0)
    for title, spread in (
        ("angle, deg", alignment.angle),
        ("angle that stands still, deg", alignment.angle_static),
        ("angle that turns, deg", alignment.angle_rotating),
    ):
        yield _spread(title, spread, degrees(1.0))


def _spread(title: str, spread: Spread, scale: float) -> tuple[str, ...]:
    figures = (spread.p50, spread.p95, spread.p9973, spread.worst)
    limit = "-" if spread.limit is None else f"{spread.limit * scale:.3g}"
    return (title, *(f"{figure * scale:.4f}" for figure in figures), limit, chance(spread.exceeding))


def chance(probability: float | None) -> str:
    """Return a probability as a percentage; a very small one as below a millionth."""
    if probability is None:
        return "-"
    if probability < 1e-6:
        return "< 1e-6"
    return "> 99 %" if probability > 0.99 else f"{100 * probability:.2g} %"


def share_rows(alignment: Alignment) -> Iterator[tuple[str, ...]]:
    """Yield the contributors to the offset, the greatest share first, then those to the angle alone."""
    turned = {share.id: f"{100 * share.of_variance:.1f} %" for share in alignment.shares_angle}
    for share in alignment.shares_offset:
        figures = (f"{share.greatest:.4f} mm", f"{100 * share.of_variance:.1f} %", f"{100 * share.of_worst:.1f} %")
        yield (_contributor(share), *figures, turned.get(share.id, "-"))
    shifting = {share.id for share in alignment.shares_offset}
    for share in alignment.shares_angle:
        if share.id not in shifting:
            yield (_contributor(share), "-", "-", "-", turned[share.id])


def _contributor(share: Share) -> str:
    return show.plain_id(share.id) + (" (turns)" if share.rotating else "")


def decision_rows(alignment: Alignment) -> Iterator[tuple[str, ...]]:
    """Yield what one step tighter would buy, decision by decision."""
    for bought in alignment.purchases:
        causes = ", ".join(show.plain_id(cause) for cause in bought.causes)
        yield (causes, f"{bought.p95:.4f} mm", f"{bought.gain:.4f} mm", bought.cost, bought.reason)


def arrangement_rows(rows: tuple[Arrangement, ...]) -> Iterator[tuple[str, ...]]:
    """Yield the arrangements side by side."""
    for row in rows:
        held = "; ".join(f"{held.what} {held.value}" for held in row.held)
        yield (
            f"{row.title} ({row.remark})", f"{row.p95:.3f} mm", f"{row.worst:.3f} mm", chance(row.exceeding),
            str(row.setups), str(row.fitted), held,
        )  # fmt: skip
