"""Milled faces: outside, seats and base; window and relief; upright edges."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.making.cut import FIRST, LAST, SEATS, WINDOW, Cut, SetupId
from blockgen.making.practice import constant, decided, face_mills
from blockgen.making.words import mm, ratio
from blockgen.plan import Feature, Plan
from blockgen.record import Record

_HAIR = 1e-6


def milling_cuts(plan: Plan) -> Iterator[Cut]:
    """Yield faces, window, relief and upright edges."""
    yield from rough_faces(plan)
    yield from finished_faces(plan)
    for feature in plan.features:
        if feature.kind == "window":
            yield from window_cuts(plan, feature)
        elif feature.kind == "relief":
            yield relief_cut(feature)
    yield from edge_cuts(plan)


def _mill(plan: Plan, face: str, across: float) -> tuple[float, bool, Record]:
    """Return the face mill for a width in mm, whether it takes the face in one pass, and the record."""
    wanted = constant("face_mill_wider") * across
    size = next((d for d in face_mills() if d >= wanted), face_mills()[-1])
    using = ("making.face_mill_wider", "making.face_mills", "length", "width", "height")
    rule = "smallest usual one over making.face_mill_wider x width of cut; else the largest"
    record = decided(plan, f"{face}_face_mill", size, "mm", rule, using, {"width of cut": (across, "mm")})
    return size, size >= across, record


def rough_faces(plan: Plan) -> Iterator[Cut]:
    """Yield the roughing of all six faces."""
    size, _, record = _mill(plan, "rough", min(plan.body.length, plan.body.width, plan.body.height))
    yield Cut(
        "rough", FIRST, "block", f"mill all six faces, {mm(constant('rough_left'))} left on each",
        f"face mill diam {mm(size)}", "square to one another", records=(record,),
    )  # fmt: skip


def finished_faces(plan: Plan) -> Iterator[Cut]:
    """Yield the finishing of base, top, sides and both seats."""
    body = plan.body
    across = any(f.kind == "window" and f.pocket is not None and f.pocket.axis == "y" for f in plan.features)
    yield _base(plan)
    yield _face(plan, "top", FIRST, "top", f"mill top to height {mm(body.height)}", (body.length, body.width))
    yield _face(plan, "sides" if across else "ends", FIRST, "sides", f"mill both sides to width {mm(body.width)}",
                (body.length, body.height), "table turned 90 deg")  # fmt: skip
    length = plan.records["length"]
    limits = "" if length.upper is None or length.lower is None else f" ({length.upper:+g}/{length.lower:+g})"
    square = f"square to the bores {mm(plan.number('block.seat_perpendicularity'))}"
    yield _face(plan, "ends", SEATS, "seats", f"mill both seats to length {mm(body.length)}{limits}",
                (body.width, body.height), square)  # fmt: skip


def _base(plan: Plan) -> Cut:
    flat = mm(plan.number("block.base_flatness"))
    size, once, record = _mill(plan, "base", min(plan.body.length, plan.body.width))
    remark = f"slacken, shim, clamp lightly; flat {flat}" + ("" if once else ", fly cutter for one pass")
    return Cut("base", LAST, "base", "skim base in the free state", f"face mill diam {mm(size)}", remark,
               records=(record,))  # fmt: skip


def _face(
    plan: Plan, setup: SetupId, rank: int, face: str, what: str, sides: tuple[float, float], remark: str = ""
) -> Cut:
    size, once, record = _mill(plan, face, min(sides))
    passes = "" if once else "in passes"
    words = ", ".join(text for text in (remark, passes) if text)
    return Cut(setup, rank, face, what, f"face mill diam {mm(size)}", words, records=(record,))


def window_cuts(plan: Plan, window: Feature) -> Iterator[Cut]:
    """Yield roughing and finishing of the window, from one side or half from each."""
    depth, cutter = plan.number("window_cut_depth"), plan.number("block.cutter_diameter")
    both = depth < window.depth - _HAIR
    over = depth / cutter
    limits = ("practice.cut_depth_ratio", "practice.cut_depth_ratio_hard")
    record = decided(plan, "window_ratio", round(over, 3), "", "window_cut_depth / block.cutter_diameter",
                     ("window_cut_depth", "block.cutter_diameter", *limits), source="definition")  # fmt: skip
    tool = f"end mill diam {mm(cutter)}"
    left = mm(constant("rough_left"))
    sides = _sides(window, both=both)
    size = window.call_out.removeprefix("window ").partition(" through")[0].partition(" depth")[0]
    yield Cut("rough", WINDOW, window.id, f"window {size}, {left} left on each wall", tool,
              f"drill in first; {' and '.join(words for _, words in sides)}", depth, over, (record,))  # fmt: skip
    for setup, words in sides:
        floor = "" if window.through else ", floor to depth"
        yield Cut(
            setup, WINDOW, window.id, f"finish window {size}, {mm(depth)} deep{floor}", tool,
            f"{words}, {ratio(over)}: {window_word(plan, over)}; corners R {mm(plan.number('window_corner_radius'))}",
            depth, over,
        )  # fmt: skip


def window_word(plan: Plan, over: float) -> str:
    """Return what a depth over cutter diameter means for the window."""
    if over <= plan.number("practice.cut_depth_ratio"):
        return "normal"
    if over <= plan.number("practice.cut_depth_ratio_hard"):
        return "long cutter, light cuts"
    return "difficult, ask the shop first"


def _sides(window: Feature, *, both: bool) -> tuple[tuple[SetupId, str], ...]:
    """Return the setups in which the window is finished, with the side in words."""
    if window.pocket is not None and window.pocket.axis == "y":
        return (("sides", "half from each side" if both else "from one side"),)
    if both:
        return (("base", "half from the base"), ("top", "half from the top"))
    return (("top", "from the top"),)


def relief_cut(relief: Feature) -> Cut:
    """Return the milling of the relief across the base."""
    what = f"relief {mm(relief.diameter)} wide, {mm(relief.depth)} deep, across"
    tool = f"end mill up to diam {mm(relief.diameter)}"
    return Cut("base", WINDOW, relief.id, what, tool, "before the skim; the block stands on its two ends")


def edge_cuts(plan: Plan) -> Iterator[Cut]:
    """Yield what is done to the outside edges."""
    body = plan.body
    if body.outer_fillet > 0:
        yield Cut("top", FIRST, "block", f"round four upright edges R {mm(body.outer_fillet)}", "end mill on the flank",
                  f"{mm(body.height)} high: in passes, or half from each end")  # fmt: skip
    if body.edge_chamfer > 0:
        yield Cut("deburr", FIRST, "block", f"break outside edges {mm(body.edge_chamfer)} x 45 deg",
                  "chamfer tool 90 deg or file", "no burr on seats, base and bore mouths")  # fmt: skip
