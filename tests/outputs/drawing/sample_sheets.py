"""Sheets made by hand: one with views and dimensions at 1:2, one with a table only, a busy one."""

from __future__ import annotations

import math

from blockgen.outputs.drawing.strokes import Arc, Fill, Hatch, Item, Line, Measure, Sheet, Text

HOSTILE = 'Spray & <b>"x"</b> %%c50 ^J {\\P} \u03b1\u03b2 \u4e2d\u6587 \n\x1b[31m\u202e \ud800 50%%%'
"""Words that are out to do harm, some of them without letters in either font."""


def frame(left, bottom, right, top, pen="outline"):
    corners = ((left, bottom), (right, bottom), (right, top), (left, top))
    return tuple(Line(a, b, pen) for a, b in zip(corners, corners[1:] + corners[:1], strict=True))


def arrow(tip, angle, size=3.5):
    """Return a slim filled arrow head that points along an angle in deg."""
    cosine, sine = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    back = (tip[0] - size * cosine, tip[1] - size * sine)
    side = (-sine * size / 6, cosine * size / 6)
    return Fill((tip, (back[0] + side[0], back[1] + side[1]), (back[0] - side[0], back[1] - side[1])))


def across(key, left, right, feet, level, words):
    """Return a dimension that runs along x."""
    strokes = (
        Line((left, feet), (left, level + 2)),
        Line((right, feet), (right, level + 2)),
        Line((left, level), (right, level)),
        arrow((left, level), 180),
        arrow((right, level), 0),
        Text(words, ((left + right) / 2 - 8, level + 1), 3.5),
    )
    measure = Measure("linear", (left, feet), (right, feet), (left, level), 0.0, words)
    return Item(key, "dimension", strokes, True, measure)


def upright(key, low, high, feet, level, words):
    """Return a dimension that runs along y."""
    strokes = (
        Line((feet, low), (level - 2, low)),
        Line((feet, high), (level - 2, high)),
        Line((level, low), (level, high)),
        arrow((level, low), 270),
        arrow((level, high), 90),
        Text(words, (level - 1, (low + high) / 2 - 8), 3.5, 90.0),
    )
    measure = Measure("linear", (feet, low), (feet, high), (level, low), 90.0, words)
    return Item(key, "dimension", strokes, True, measure)


def slot(x, y, length, radius):
    """Return a loop of two lines and two arcs, one arc passed from its end to its start."""
    return (
        Line((x, y - radius), (x + length, y - radius), "outline"),
        Arc((x + length, y), radius, 270.0, 90.0, "outline"),
        Line((x + length, y + radius), (x, y + radius), "outline"),
        Arc((x, y), radius, 90.0, 270.0, "outline"),
    )


def cove(x, y, size):
    """Return a square whose right upper corner is hollow: the arc runs against the sense of the loop."""
    return (
        Line((x, y), (x + size, y)),
        Line((x + size, y), (x + size, y + size / 2)),
        Arc((x + size, y + size), size / 2, 180.0, 270.0),
        Line((x + size / 2, y + size), (x, y + size)),
        Line((x, y + size), (x, y)),
    )


def ring(x, y, outer, inner):
    return Hatch(((Arc((x, y), outer, pen="outline"),), (Arc((x, y), inner, pen="outline"),)), 2.5)


def cut():
    """Return three cut areas with their outlines and a cutting line."""
    circles = tuple(Arc((200, 230), size, pen="outline") for size in (30, 15))
    areas = (ring(200, 230, 30, 15), Hatch((cove(245, 200, 50),), 2.5), Hatch((slot(320, 230, 40, 12),), 2.5))
    line = Line((150, 190), (380, 190), "cutting")
    return (*areas, *cove(245, 200, 50), *slot(320, 230, 40, 12), *circles, line)


def view_sheet():
    """Return A3 at 1:2: 160 mm by 100 mm true size from (60, 120) on paper, a bore of 60 mm, a section beside it."""
    radius = Measure("radius", (220.0, 150.0), (228.0, 156.0), (235.0, 161.25), 0.0, "R20")
    bore = Measure("diameter", (85.0, 145.0), (115.0, 145.0), (100.0, 145.0), 0.0, "\u230060 H7")
    level = across("L1", 60, 140, 120, 105, "160")
    hidden = (*frame(70, 125, 130, 165, "hidden"), Arc((100, 145), 20, 10, 350, "hidden"))
    axes = (Line((55, 145), (145, 145), "centre"), Line((100, 115), (100, 175), "centre"))
    through = (
        Line((85, 145), (115, 145)),
        arrow((85, 145), 180),
        arrow((115, 145), 0),
        Text(bore.text, (90, 146), 3.5),
    )
    leader = (Line((220, 150), (235, 161.25)), arrow((228, 156), 217), Text("R20", (236, 161), 3.5))
    words = (Text("4x M8-6H \u21a716 \u22a5 \u2225", (260, 150), 5.0), Text("A\u2013A  (1:2)", (260, 140), 7.0))
    square = Fill(((300, 100), (306, 100), (306, 106), (300, 106)))
    views = (
        Item("view.front", "outline", (*frame(60, 120, 140, 170), Arc((100, 145), 15, pen="outline")), True),
        Item("view.front.hidden", "outline", hidden, True),
        Item("axis", "centre_line", axes, True),
        level,
        across("L2", 100, 140, 145, 182, "80 \u00b10,1"),
        upright("H1", 120, 170, 60, 45, "100"),
        Item("D1", "dimension", through, True, bore),
        Item("R1", "dimension", leader, True, radius),
        Item("section.A", "section", cut(), True),
        Item("label.M1", "label", words, True),
        Item("datum.A", "datum", (square, Text("A", (301.5, 108), 3.5)), True),
    )
    paper = (
        Item("frame", "frame", (*frame(20, 10, 410, 287, "border"), *frame(230, 10, 410, 60, "thin")), False),
        Item('note<&">', "note", (Text(HOSTILE, (30, 40), 3.5), Text("", (30, 30), 3.5), Text("   ", (30, 20), 3.5))),
        Item("title", "table", (Text("Mounting block, spray carriage", (235, 45), 5.0),)),
    )
    return Sheet("drawing", "GL-040-11 & <block>", "A3", 420.0, 297.0, 0.5, (*views, *paper))


def table_sheet():
    """Return A4 with paper things only."""
    rows = tuple(Text(f"D{row}  \u2300{row},5 H7  \u00b10,01", (30.0, 250.0 - 8 * row), 3.5) for row in range(20))
    items = (Item("frame", "frame", frame(20, 10, 200, 287, "border")), Item("rows", "table", rows))
    return Sheet("inspection", "Inspection sheet", "A4", 210.0, 297.0, 1.0, items)


def busy_sheet(strokes=1500, texts=250):
    """Return A2 with many strokes and texts, a third of the texts in dimensions."""
    items = []
    for step in range(strokes // 10):
        x, y = 20.0 + 3.5 * step, 60.0 + step % 7 * 40.0
        pens = ("outline", "hidden", "centre", "thin")
        lines = tuple(Line((x, y), (x + 3 * k, y + 20 + k), pens[k % 4]) for k in range(7))
        arcs = tuple(Arc((x, y), 5.0 + k, 20.0, 300.0, pens[k]) for k in range(3))
        items.append(Item(f"view.{step}", "outline", lines + arcs, True))
    for step in range(texts):
        x, y = 20.0 + 2.0 * step, 20.0 + step % 9 * 40.0
        one = across(f"D{step}", x, x + 25, y, y + 10, "50") if step % 3 == 0 else None
        items.append(one or Item(f"T{step}", "note", (Text(f"\u2300{step} H7 \u00b10,1 M8-6H", (x, y), 3.5),)))
    return Sheet("drawing", "busy", "A2", 594.0, 420.0, 0.5, tuple(items))
