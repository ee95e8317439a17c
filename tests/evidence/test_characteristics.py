"""The rows of the inspection sheet: every number of the drawing, in its order, with limits and instruments."""

import pytest

from blockgen.evidence.characteristics import inspection_rows, is_through_thread
from blockgen.plan import Annotation
from tests.evidence.samples import made, rows_of

NAMES = ("servo", "large", "stepper")


@pytest.mark.parametrize("name", NAMES)
def test_every_number_of_the_drawing_has_one_row_in_its_order(name):
    plan = made(name).plan
    numbers = [row.number for row in inspection_rows(plan) if row.number and "." not in row.number]
    assert numbers == [str(n) for n in range(1, len(numbers) + 1)]
    assert len(numbers) == sum(note.number is not None for note in plan.annotations)


@pytest.mark.parametrize("name", NAMES)
def test_ids_are_unique_and_titles_tell_rows_apart(name):
    rows = inspection_rows(made(name).plan)
    assert len({row.id for row in rows}) == len({row.title for row in rows}) == len(rows)


def test_limits_are_absolute():
    rows = rows_of()
    bore = rows["motor_bore.diameter"]
    assert (bore.nominal, bore.lower, bore.upper) == (70, 70, pytest.approx(70.03))
    height = rows["block.shaft_height"]
    assert (height.lower, height.upper) == (pytest.approx(64.98), pytest.approx(65.02))
    zone = rows["motor_bore.coaxiality"]
    assert (zone.lower, zone.upper, zone.datums) == (0, 0.02, ("A", "B"))
    texture = rows["base.texture"]
    assert (texture.lower, texture.upper, texture.unit) == (None, 1.6, "um")


def test_components_follow_their_zone_and_have_no_limits():
    rows = list(rows_of().values())
    place = next(i for i, row in enumerate(rows) if row.id == "motor_bore.coaxiality")
    number = rows[place].number
    across, up = rows[place + 1 : place + 3]
    assert (across.id, across.number) == ("motor_bore.offset_y", f"{number}.1")
    assert (up.id, up.number) == ("motor_bore.offset_z", f"{number}.2")
    assert across.lower is across.upper is None


def test_a_bore_with_a_fine_band_is_not_left_to_a_calliper():
    assert "bore gauge" in rows_of()["motor_bore.diameter"].instrument
    assert rows_of()["base_screws.diameter"].instrument == "calliper"


def test_a_thread_right_through_is_answered_by_the_gauge():
    note = Annotation("x.thread", "thread", "x", "x.thread", 5.0, text="4 \u00d7 M6-6H through")
    assert is_through_thread(note)
    assert not is_through_thread(Annotation("x.thread", "thread", "x", "x.thread", 5.0, text="4 \u00d7 M6-6H"))


def test_rows_of_bought_parts_come_last_and_have_no_number():
    needed = [row.needed for row in rows_of().values()]
    assert needed == sorted(needed)  # block before bought
    assert all(not row.number for row in rows_of().values() if row.needed == "bought")
