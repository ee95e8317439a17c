"""The hole table: a tag beside each hole, and its theoretically exact place from the datums."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from functools import partial

from blockgen.outputs.drawing.box import Box
from blockgen.outputs.drawing.figures import Figures
from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.placement import Candidate
from blockgen.outputs.drawing.setup_page import written
from blockgen.outputs.drawing.strokes import Item, Point, Text
from blockgen.outputs.drawing.symbols import SMALL
from blockgen.outputs.drawing.tables import Column
from blockgen.outputs.drawing.views import View
from blockgen.plan import Feature
from blockgen.sizing.family import entry_of, name_of

_LETTERS = "GHJKLMNPQRST"
COLUMNS = (Column("Hole", 16.0), Column("x from A", 24.0), Column("y from B", 24.0), Column("z from C", 24.0),
           Column("What", 92.0))  # fmt: skip


def hole_tags(features: Sequence[Feature]) -> Mapping[str, str]:
    """Return the tag of each hole by feature id: a letter for the group and a number; no letter of a datum is used."""
    groups: dict[str, list[Feature]] = {}
    for feature in features:
        if feature.profile and feature.kind != "bore":
            groups.setdefault(feature.group, []).append(feature)
    return {
        feature.id: f"{letter}{number}"
        for letter, members in zip(_LETTERS, groups.values(), strict=False)
        for number, feature in enumerate(members, 1)
    }


def hole_rows(features: Sequence[Feature], figures: Figures) -> list[list[str]]:
    """Return the rows of the table; what runs along a direction has no place in it."""
    tags = hole_tags(features)
    bore = next(f for f in features if f.id == "bearing_bore")
    return [
        [tags[f.id], *(_place(f, axis, figures) for axis in range(3)), _what(f, bore, figures)]
        for f in features
        if f.id in tags
    ]


def plate_tags(plate: Sequence[Feature], block: Sequence[Feature]) -> Mapping[str, str]:
    """Return the tags of the plate's holes: those of the block's holes over them, one name for one place."""
    tags = hole_tags(block)
    over = {_spot(f): tags[f.id] for f in block if f.id in tags and abs(f.axis[2]) > 0.5}
    own = hole_tags(plate)
    return {f.id: over.get(_spot(f), f"{own[f.id]} plate") for f in plate}


def _spot(feature: Feature) -> tuple[float, float]:
    return round(feature.position[0], 3), round(feature.position[1], 3)


def plate_rows(features: Sequence[Feature], block: Sequence[Feature], figures: Figures) -> list[list[str]]:
    """Return the rows of the table of a base plate: places from the bearing seat plane and the shaft's axis."""
    tags = plate_tags(features, block)
    return [
        [tags[f.id], figures.number(f.position[0]), figures.number(f.position[1]), written(f.call_out, figures)]
        for f in features
    ]


def _place(feature: Feature, axis: int, figures: Figures) -> str:
    if abs(feature.axis[axis]) > 0.5:
        return "–"
    return figures.number(feature.position[axis])


def _what(feature: Feature, bore: Feature, figures: Figures) -> str:
    """Return what a hole is; on a seat with the circle it lies on in brackets, as an auxiliary size."""
    names = {"tapped_hole": "thread", "clearance_hole": "hole", "counterbored_hole": "counterbored hole",
             "dowel_hole": "dowel pilot hole"}  # fmt: skip
    place = feature.face.replace("_", " ")
    what = f"{feature.thread or names[feature.kind]}, {place}"
    if not feature.face.endswith("_seat"):
        return what
    further = entry_of(feature.group)
    what += "" if further is None else f", {name_of(further).replace('_', ' ')}"
    circle = 2 * math.dist(feature.position[1:], bore.position[1:])
    return f"{what} (on ⌀{figures.number(circle, 2)})"


def tag_candidates(view: View, feature: Feature, tag: str) -> Iterator[Candidate]:
    """Yield places for a tag beside its hole, upper right first."""
    x, y = view.point(*feature.position)
    radius = max(max(piece.start_radius, piece.end_radius) for piece in feature.profile) * view.scale
    for number, away in enumerate((1.2, 2.5, 4.0, 6.0, 8.5, 11.0)):
        for rank, (right, up) in enumerate(((1, 1), (-1, 1), (1, -1), (-1, -1))):
            reach = 0.72 * radius + away
            yield _candidate(feature, tag, (x + right * reach, y + up * reach), right, up, 4.0 * number + rank)
        for rank, (right, up) in enumerate(((1, 0), (-1, 0), (0, 1), (0, -1))):
            reach = radius + 1.5 + away
            yield _candidate(feature, tag, (x + right * reach, y + up * reach), right, up, 4.0 * number + rank + 1)


def _candidate(feature: Feature, tag: str, corner: Point, right: int, up: int, cost: float) -> Candidate:
    shape = text_box(Text(tag, (0.0, 0.0), SMALL))
    width, height = shape.right, SMALL
    left = corner[0] - (width if right < 0 else width / 2 if right == 0 else 0.0)
    low = corner[1] - (height if up < 0 else height / 2 if up == 0 else 0.0)
    text = Text(tag, (left, low), SMALL)
    box: Box = text_box(text)
    return Candidate(cost, (box,), (), partial(_item, feature.id, text))


def _item(identifier: str, text: Text) -> tuple[Item, ...]:
    return (Item(f"tag.{identifier}", "label", (text,), in_model=True),)
