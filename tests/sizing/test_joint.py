"""Preload and torque with the friction and scatter of the ledger."""

import pytest

from blockgen.sizing.joint import screw_preload, screw_torque, sure_preload
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.screws import cap_screw
from blockgen.standards.threads import thread
from tests.sizing.strategies import ledger


# Engineering notes, section 4: 8.8, friction 0.12, 90 % of yield.
@pytest.mark.parametrize(
    ("name", "torque"), [("M4", 3.1), ("M5", 6.2), ("M6", 10.5), ("M8", 25), ("M10", 50), ("M12", 85)]
)
def test_torques_of_class_8_8(name, torque):
    start, screw = ledger(), thread(name)
    preload = screw_preload(start, screw, "8.8")
    found = screw_torque(start, screw, preload, cap_screw(name).washer_face, clearance_hole(name))
    assert found == pytest.approx(torque, rel=0.04)


def test_a_higher_class_gives_more_preload():
    start, screw = ledger(), thread("M10")
    loads = [screw_preload(start, screw, grade) for grade in ("8.8", "10.9", "12.9")]
    assert loads == sorted(loads)
    assert loads[0] < loads[-1]


def test_a_better_tool_leaves_more_sure_preload():
    ways = ("hand", "torque_wrench", "torque_wrench_calibrated", "angle")
    left = [sure_preload(ledger(base={"tightening": way}), 10000.0) for way in ways]
    assert left == sorted(left)
    assert left[1] == pytest.approx(10000 / 1.8 - 1000)
