"""Checks along the shaft: each can hold and each can miss."""

from dataclasses import replace

import pytest

from blockgen.checks import check
from blockgen.checks.shaft_line import shaft_line
from tests.sizing.strategies import sized


def verdict(plan, name):
    return next(f for f in shaft_line(plan) if f.id == name).verdict


def with_value(plan, **values):
    """Return the plan with record values changed, as if somebody had decided otherwise."""
    records = dict(plan.records)
    for key, value in values.items():
        name = key.replace("__", ".")
        records[name] = replace(records[name], value=value)
    return replace(plan, records=records)


def test_layout_after_tolerances():
    assert verdict(sized(), "axial_layout") == "pass"
    assert verdict(sized(block={"length": 100}), "axial_layout") == "warn"  # length_low is 100.7


@pytest.mark.parametrize("end", ["journal", "motor"])
def test_grips(end):
    plan = sized()
    assert verdict(plan, f"{end}_grip") == "pass"
    assert verdict(with_value(plan, **{f"{end}_grip": 15.9}), f"{end}_grip") == "fail"


def test_gap():
    plan = sized()
    assert verdict(plan, "shaft_gap") == "pass"
    assert verdict(with_value(plan, shaft_gap=0.9), "shaft_gap") == "fail"


@pytest.mark.parametrize(("seat", "word"), [(38, "pass"), (39, "pass"), (37, "pass"), (40, "fail"), (36, "fail")])
def test_stack_on_seat(seat, word):
    assert verdict(sized(screw={"seat_length": seat}), "stack_on_seat") == word


@pytest.mark.parametrize("change", [{"screw": {"seat_length": None}}, {"bearing": {"stack_length": None}}])
def test_stack_is_not_assessed_without_its_data(change):
    assert verdict(sized(**change), "stack_on_seat") == "not_assessed"


@pytest.mark.parametrize(
    ("bores", "journal", "motor"),
    [((8, 24), "pass", "pass"), ((16, 24), "fail", "pass"), ((8, 18), "pass", "fail"), ((8, 19), "pass", "pass")],
)
def test_coupling_bores(bores, journal, motor):
    plan = sized(coupling={"bore_min": bores[0], "bore_max": bores[1]})
    assert verdict(plan, "coupling_bore_journal") == journal
    assert verdict(plan, "coupling_bore_motor") == motor


def test_coupling_bores_are_not_assessed_without_a_range():
    plan = sized(coupling={"bore_min": None, "bore_max": None})
    assert verdict(plan, "coupling_bore_journal") == "not_assessed"


@pytest.mark.parametrize(("peak", "word"), [(8, "pass"), (30, "pass"), (31, "fail"), (None, "not_assessed")])
def test_coupling_rating(peak, word):
    plan = sized(motor={"peak_torque": None}) if peak is None else sized(motor={"peak_torque": peak})
    assert verdict(plan, "coupling_rating") == word


def test_rating_is_not_assessed_without_the_coupling_s():
    assert verdict(sized(coupling={"rated_torque": None}), "coupling_rating") == "not_assessed"


@pytest.mark.parametrize(("shape", "count"), [("plain", 0), ("keyed", 1), ("flat", 1)])
def test_keyed_shafts_are_a_warning(shape, count):
    found = [f for f in check(sized(motor={"shaft_end": shape})) if f.id == "keyed_shaft"]
    assert [f.verdict for f in found] == ["warn"] * count
