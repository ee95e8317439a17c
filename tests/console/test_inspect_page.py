"""The page of ``inspect``."""

import pytest

from blockgen.console.inspect_page import inspect_page, rejection
from blockgen.console.plain import lines
from blockgen.evidence.verdict import verdict
from tests.evidence.samples import changed, good, made, measured, vectors


def text(values, width=120):
    return list(lines(inspect_page(verdict(made().plan, measured(values)), made().status), width))


@pytest.mark.parametrize("width", [80, 100, 120])
@pytest.mark.parametrize("values", [good(), vectors()], ids=["good", "vectors"])
def test_it_fits(values, width):
    assert max(map(len, text(values, width))) <= width


def test_it_ends_with_the_verdict():
    assert text(good())[-2:] == ["Verdict", "ACCEPT"]
    told = text(changed(block__shaft_height=(64.975, 0.002)), 200)
    assert told[-2] == "USE WITH NOTE"
    assert told[-1].startswith("- 12 block: shaft height: out")


def test_what_is_not_in_comes_first():
    told = text(changed(base__flatness=(0.05, 0.002), base__texture=(1.5, 0.16)))
    start = next(i for i, line in enumerate(told) if line.startswith("Told"))
    assert told[start + 2].split()[:3] == ["out", "6", "base:"]
    assert told[start + 3].startswith("cannot be told  39 ")
    assert told[start + 4].startswith("in ")


def test_derived_zones_are_marked():
    told = text(changed(motor_bore__coaxiality=None))
    assert any("coaxiality to A, B *" in line for line in told)
    assert "* from its measured components" in told
    assert "* from its measured components" not in text(good())


def test_turns_and_why_there_are_none():
    assert any(line.startswith("Turning the motor is not judged: motor.spigot_y") for line in text(good()))
    assert any("every turn is as good as the others" in line for line in text(vectors(), 300))
    values = vectors(motor_bore__offset_y=(0.03, 0.001), motor__spigot_z=(0.03, 0.001))
    assert any("best turned by 90 deg" in line for line in text(values, 300))


def test_the_shim_says_what_it_does_not_do():
    told = "\n".join(text(changed(block__shaft_height=(64.975, 0.002)), 300))
    assert "Shim of 0.025 mm at the bearing end" in told
    assert "does nothing for the motor against the screw" in told
    assert "Not told: block.shaft_height is not measured." in text(vectors())


def test_a_rejection_in_short():
    found = verdict(made().plan, measured(changed(motor_bore__diameter=(69.98, 0.003))))
    told = list(lines(rejection(found), 120))
    assert told[0] == "REJECT"
    assert told[1].startswith("- the motor bore of 69.98 mm is too small")
