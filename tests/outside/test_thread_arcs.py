"""Threads seen from the end against teaching material.

"How to draw Threads", en.technisches-zeichnen.net/technical-drawing/basics-02/draw-threads.php (after DIN ISO
6410-1): in the view from the end the outside diameter of an inside thread is a three-quarter circle in a narrow line.
Reached as an excerpt of a stored copy. That the open quarter is the upper right one is from memory (see
test_drawing_practice).
"""

from functools import lru_cache

import pytest

from blockgen.outputs.drawing.centre_lines import thread_marks
from blockgen.outputs.drawing.strokes import PEN_WIDTH, Arc
from blockgen.outputs.drawing.views import View
from blockgen.standards.threads import thread
from tests.sizing.strategies import sized


@lru_cache
def arcs():
    """Return the plan and the arcs of the threads that show in the view from the motor."""
    plan = sized()
    body = plan.body
    view = View("motor_end", (0.0, 0.0), (-body.width / 2, 0.0), (body.width, body.height), 1.0)
    item = thread_marks(view, plan)
    assert item is not None
    return plan, [stroke for stroke in item.strokes if isinstance(stroke, Arc)]


def test_about_three_quarters_of_the_circle_in_a_narrow_line():
    _, found = arcs()
    assert found
    assert all((arc.end - arc.start) / 360 == pytest.approx(0.75, abs=0.06) for arc in found)
    assert {PEN_WIDTH[arc.pen] for arc in found} == {0.25}


def test_at_the_outside_diameter():
    plan, found = arcs()
    size = thread(plan.text("motor_thread")).diameter
    assert {arc.radius for arc in found} == {size / 2}
