"""Bearing units with what makes them hard to read: hubs on both sides, counterbores, slotted nuts, covers."""

import math

import cadquery as cq
import pytest

from blockgen.reading.mounting import find_mounting
from blockgen.reading.part import reading_of
from blockgen.reading.read_file import StepModel
from tests.reading.made_motors import as_free_form, posed

pytestmark = pytest.mark.slow

PLACES = [(x * 22, y * 22) for x, y in ((1, 1), (-1, 1), (-1, -1), (1, -1))]
TRUE = {
    "pilot_diameter": 45.0, "pilot_form": "proud", "pilot_length": 12.0, "flange_shape": "square", "flange_size": 66.0,
    "bolt_count": 4, "bolt_angle": 45.0, "bolt_hole": 6.6, "nut_outer_diameter": 28.0, "pilot_direction": "into_wall",
}  # fmt: skip


def rod(radius, low, high, at=(0, 0)):
    return cq.Solid.makeCylinder(radius, high - low, cq.Vector(*at, low), cq.Vector(0, 0, 1))


def unit(*, nut=True, slots=False, rear=False, counterbore=False, cover_screws=False):
    """Return a unit with its mounting face in z = 0 and its pilot towards +z."""
    body = cq.Solid.makeBox(66, 66, 11, cq.Vector(-33, -33, -11)).fuse(rod(22.5, -11, 12))
    body = body.fuse(rod(22.5, -29, -11)) if rear else body
    if nut:
        ring = rod(14, 11, 16)
        if slots:
            ring = ring.cut(
                *(
                    cq.Solid.makeBox(4, 4, 9, cq.Vector(x - 2, y - 2, 10))
                    for x, y in ((14, 0), (-14, 0), (0, 14), (0, -14))
                )
            )
        body = body.fuse(ring)
    tools = [rod(8.5, -40, 40), *(rod(3.3, -12, 1, p) for p in PLACES)]
    tools += [rod(5.5, -30, -5, p) for p in PLACES] if counterbore else []
    if cover_screws:
        turns = [math.radians(20 + 60 * i) for i in range(6)]
        tools += [rod(1.25, 8, 13, (18 * math.cos(a), 18 * math.sin(a))) for a in turns]
    return body.cut(*tools).Solids()[0].wrapped


FORMS = [
    {}, {"slots": True}, {"rear": True}, {"counterbore": True}, {"cover_screws": True},
    {"slots": True, "rear": True, "counterbore": True, "cover_screws": True},
]  # fmt: skip


@pytest.mark.parametrize("form", FORMS, ids=lambda f: " ".join(f) or "plain")
@pytest.mark.parametrize("change", [lambda s: s, as_free_form], ids=["as it is", "free form"])
def test_units_are_read(form, change):
    reading = reading_of(StepModel(change(posed(unit(**form), 6)), "mm", 1), "a unit", "bearing")
    assert {key: reading.value(key) for key in TRUE} == TRUE
    assert reading.value("bolt_circle") == pytest.approx(44 * math.sqrt(2), abs=1e-3)
    assert reading.value("nut_reach") == pytest.approx(16.0)
    assert reading.value("flange_thickness") == (5.0 if "counterbore" in form else 11.0)
    assert any(note.startswith("Least bore on the axis: 17.000 mm") for note in reading.notes)


def test_a_nut_that_is_left_out_is_told():
    reading = reading_of(StepModel(unit(nut=False), "mm", 1), "a unit", "bearing")
    reach = next(f for f in reading.found if f.key == "nut_reach")
    assert (reach.value, reach.confidence) == (12.0, "low")
    assert "nut may be left out" in reach.evidence
    assert "nut_outer_diameter" in {m.key for m in reading.missing}


def test_the_face_under_the_heads_is_not_the_mounting_face():
    """The hub is alike on both sides; the counterbores tell where the heads sit."""
    found = find_mounting(unit(nut=False, rear=True, counterbore=True))
    assert found.axis == pytest.approx((0, 0, 1))
