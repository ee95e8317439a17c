"""What touches what on a sheet, worked out by plain geometry and not by the engine that placed it."""

from __future__ import annotations

import math
from itertools import combinations, pairwise

from blockgen.outputs.drawing.lettering import text_box
from blockgen.outputs.drawing.strokes import Arc, Fill, Hatch, Line, Text

PLACED = {"dimension", "label", "datum"}
NEAR = 1e-6


def overlaps(sheet):
    """Return every text that touches anything, as pairs of what is written and what it touches."""
    strokes = [(item.id, stroke, around(stroke)) for item in sheet.items for stroke in item.strokes]
    texts = [entry for entry in strokes if isinstance(entry[1], Text)]
    found = []
    for name, text, box in texts:
        for other_name, other, other_box in strokes:
            if other is not text and apart(box, other_box) and touches(box, other):
                found.append((f"{name}: {text.words}", f"{other_name}: {shown(other)}"))
    return found


def shown(stroke):
    return stroke.words if isinstance(stroke, Text) else type(stroke).__name__


def apart(box, other):
    """Tell whether two boxes (left, bottom, right, top) overlap."""
    return (
        box[0] < other[2] - NEAR and other[0] < box[2] - NEAR and box[1] < other[3] - NEAR and other[1] < box[3] - NEAR
    )


def around(stroke):
    """Return left, bottom, right, top of a stroke; of an arc those of its whole circle."""
    if isinstance(stroke, Text):
        box = text_box(stroke)
        return box.left, box.bottom, box.right, box.top
    if isinstance(stroke, Arc):
        (x, y), r = stroke.centre, stroke.radius
        return x - r, y - r, x + r, y + r
    if isinstance(stroke, Line):
        points = [stroke.start, stroke.end]
        # a level or upright line has no area of its own
        grown = 2 * NEAR
        (left, right), (low, high) = (sorted(p[i] for p in points) for i in (0, 1))
        return left - grown, low - grown, right + grown, high + grown
    if isinstance(stroke, Hatch):
        boxes = [around(piece) for loop in stroke.loops for piece in loop]
        return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)
    xs, ys = zip(*stroke.outline, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def touches(box, stroke):
    """Tell whether a box touches a stroke: a line, the line of an arc, a filled or hatched area, another text's box."""
    if isinstance(stroke, Text):
        return True
    if isinstance(stroke, Line):
        return crosses(box, stroke.start, stroke.end)
    if isinstance(stroke, Arc):
        return any(crosses(box, a, b) for a, b in pairwise(chain(stroke)))
    middle = ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
    loops = [stroke.outline] if isinstance(stroke, Fill) else [closed(loop) for loop in stroke.loops]
    sides = [side for loop in loops for side in pairwise([*loop, loop[0]])]
    return within(middle, sides) or any(crosses(box, a, b) for a, b in sides)


def closed(loop):
    """Return the points of a loop of lines and arcs, each piece turned so that it runs on from the one before."""
    points = []
    for number, piece in enumerate(loop):
        ends = chain(piece)
        after = chain(loop[(number + 1) % len(loop)])
        if min(math.dist(ends[0], p) for p in (after[0], after[-1])) < min(
            math.dist(ends[-1], p) for p in (after[0], after[-1])
        ):
            ends = ends[::-1]
        points += ends
    return points


def chain(piece):
    """Return points along a line or an arc, the chords of an arc 0.5 deg long at most."""
    if isinstance(piece, Line):
        return [piece.start, piece.end]
    count = max(2, math.ceil((piece.end - piece.start) / 0.5))
    angles = [math.radians(piece.start + (piece.end - piece.start) * i / count) for i in range(count + 1)]
    return [
        (piece.centre[0] + piece.radius * math.cos(a), piece.centre[1] + piece.radius * math.sin(a)) for a in angles
    ]


def within(point, sides):
    """Tell whether a point lies inside closed polygons: a ray to the right meets an odd number of sides."""
    x, y = point
    count = 0
    for (a, b), (c, d) in sides:
        if (b > y) != (d > y) and x < a + (y - b) / (d - b) * (c - a):
            count += 1
    return count % 2 == 1


def crosses(box, start, end):
    """Tell whether a straight line runs through the inside of a box: a point of it lies inside, or it cuts a side."""
    left, low, right, high = (box[0] + NEAR, box[1] + NEAR, box[2] - NEAR, box[3] - NEAR)
    if any(left < x < right and low < y < high for x, y in (start, end)):
        return True
    corners = [(left, low), (right, low), (right, high), (left, high)]
    return any(meet(start, end, a, b) for a, b in pairwise([*corners, corners[0]]))


def meet(a, b, c, d):
    """Tell whether two straight lines cross, each between its own ends."""
    return turn(a, b, c) * turn(a, b, d) < 0 and turn(c, d, a) * turn(c, d, b) < 0


def turn(a, b, c):
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def outside_frame(sheet, frame):
    """Return what reaches beyond the frame (left, bottom, right, top), the frame itself left out."""
    found = []
    for item in sheet.items:
        if item.id == "sheet.frame":
            continue
        for stroke in item.strokes:
            box = around(stroke) if not isinstance(stroke, Arc) else of_points(chain(stroke))
            if (
                box[0] < frame[0] - 0.01
                or box[1] < frame[1] - 0.01
                or box[2] > frame[2] + 0.01
                or box[3] > frame[3] + 0.01
            ):
                found.append((item.id, shown(stroke)))
    return found


def of_points(points):
    xs, ys = zip(*points, strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def over_fixed(sheet):
    """Return what stands at a view and reaches into title block, notes or hole table."""
    fixed = [item for item in sheet.items if item.id in {"sheet.title_block", "sheet.notes", "sheet.holes"}]
    boxes = {item.id: around_item(item) for item in fixed}
    found = [(a, b) for (a, one), (b, two) in combinations(boxes.items(), 2) if apart(one, two)]
    for item in sheet.items:
        if item.in_model:
            found += [(item.id, name) for s in item.strokes for name, box in boxes.items() if reaches(s, box)]
    return found


def reaches(stroke, box):
    """Tell whether a stroke's own box, or that of a chord of an arc, overlaps a box."""
    if isinstance(stroke, Arc):
        return any(apart(of_points([p, q]), box) for p, q in pairwise(chain(stroke)))
    return apart(around(stroke), box)


def around_item(item):
    """Return left, bottom, right, top of the lines and texts of an item."""
    boxes = [around(stroke) for stroke in item.strokes if isinstance(stroke, (Line, Text))]
    return min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes)


def leader_lines(sheet):
    """Return the straight parts of leaders by the name of what they lead to."""
    found = {}
    for item in sheet.items:
        if item.id.endswith(".leader") or (item.measure and item.measure.kind in {"radius", "diameter"}):
            found[item.id] = [s for s in item.strokes if isinstance(s, Line)][:2]
    return found


def crossed(sheet):
    """Return pairs of a leader and a line of a dimension or another leader that it crosses."""
    leaders = leader_lines(sheet)
    lines = [(i.id, s) for i in sheet.items if i.role in PLACED for s in i.strokes if isinstance(s, Line)]
    found = []
    for name, parts in leaders.items():
        own = name.removesuffix(".leader")
        for other, line in lines:
            if other.removesuffix(".leader") != own and any(meet(p.start, p.end, line.start, line.end) for p in parts):
                found.append((name, other))
    return found
