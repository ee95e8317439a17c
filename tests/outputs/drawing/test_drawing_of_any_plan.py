"""The drawing of any plan that sizes and whose block builds: it finds room, and nothing touches anything."""

from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings

from blockgen.geometry.block import build_block
from blockgen.outputs.drawing.base_holes import base_holes_sheet
from blockgen.outputs.drawing.paper import paper
from blockgen.outputs.drawing_set import drawing_set, pictures
from tests.outputs.drawing.touching import outside_frame, over_fixed, overlaps
from tests.sizing.strategies import sized_or_left, tables

pytestmark = pytest.mark.slow


@settings(max_examples=25, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
@given(tables())
def test_any_plan_finds_room_and_nothing_touches_anything(drawn):
    plan = sized_or_left(drawn)
    found = drawing_set(plan, pictures(build_block(plan)), "PRELIMINARY: mating sizes are assumed")
    base = base_holes_sheet(plan, replace(found.words.titles, kind="Hole pattern of the base"), found.words.figures)
    for sheet in (found.drawing, base):
        area = paper(sheet.size).area
        assert overlaps(sheet) == []
        assert outside_frame(sheet, (area.left, area.bottom, area.right, area.top)) == []
        assert over_fixed(sheet) == []
    for sheet in (*found.inspection, *found.setup):
        assert overlaps(sheet) == []
