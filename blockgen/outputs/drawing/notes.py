"""The written notes of the drawing: tolerances, edges, textures, material, coating, order of machining."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.tables import wrapped
from blockgen.plan import Annotation, Plan

HEIGHT = 2.5
_LEADING = 1.5


def notes(plan: Plan, figures: Figures) -> list[str]:
    """Return the notes in order, each a paragraph."""
    return [*_general(plan, figures), *_edges(plan, figures), *_finish(plan, figures), *_making(plan), *_reading(plan)]


def lines(paragraphs: list[str], width: float) -> list[str]:
    """Return numbered paragraphs as lines no wider than ``width`` mm."""
    found = []
    for number, words in enumerate(paragraphs, 1):
        first, *rest = wrapped(words, width - 7.0, HEIGHT)
        found += [f"{number}\t{first}", *(f"\t{line}" for line in rest)]
    return found


def leading() -> float:
    """Return the distance of two lines, mm."""
    return HEIGHT * _LEADING


def _general(plan: Plan, figures: Figures) -> Iterator[str]:
    other = next(note for note in plan.annotations if note.id == "block.texture")
    yield (
        f"Tolerancing ISO 8015. Sizes without tolerance: {general_tolerances(plan)}. Numbers in the hole table are "
        "theoretically exact."
    )
    yield f"Surfaces without a texture symbol: Ra {figures.number(other.value or 0.0)} µm, material removed."


def general_tolerances(plan: Plan) -> str:
    """Return the general tolerance as the drawing names it."""
    text = plan.text("drawing.general_tolerance")
    return text if text.startswith("ISO") else f"ISO 2768-{text}"


def _edges(plan: Plan, figures: Figures) -> Iterator[str]:
    chamfers = [note for note in plan.annotations if note.kind == "chamfer"]
    words = "; ".join(_chamfer(note, figures) for note in chamfers)
    start = f"{words[:1].upper()}{words[1:]}. " if words else ""
    yield f"{start}All other edges as the edge sign says (ISO 13715)."


def _chamfer(note: Annotation, figures: Figures) -> str:
    return note.text.replace("{}", figures.number(note.value or 0.0, 2))


def _finish(plan: Plan, figures: Figures) -> Iterator[str]:
    finish, coat = plan.text("block.finish"), plan.number("block.coating_thickness")
    if finish in {"", "none"} and coat == 0:
        yield "Finish: bare metal, oiled or waxed for transport."
        return
    thick = f", {figures.number(coat)} mm" if coat else ""
    yield (
        f"Finish: {finish}{thick}. Mask both bores, both flange seats, the base face, all threads and dowel holes; "
        "sizes hold after coating."
    )


def _making(plan: Plan) -> Iterator[str]:
    yield (
        "Order: rough all over with the window, relax, skim the base unclamped, finish the window and base holes, then "
        "both bores and both seats in one setup. A window cut after the bores moves them."
    )
    if any(feature.kind == "dowel_hole" for feature in plan.features):
        yield "Dowel holes are drilled to pilot size and reamed together with the base at assembly."


def _reading(plan: Plan) -> Iterator[str]:
    yield "Numbers in circles: see the inspection sheet."
    yield "The STEP model is at nominal size; this drawing governs."
    threads = any(feature.thread and not feature.through for feature in plan.features)
    yield "Thread depths are least depths of full thread, +1 pitch." if threads else "Threads go through."
