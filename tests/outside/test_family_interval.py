"""Lengths of a family block against a search by hand: a length is possible when every motor has a coupling place.

Source: the inequalities of a single axial layout, written out again here (elementary geometry along the shaft; the
same that a designer writes beside a sketch). Every length on a half-millimetre grid is tried with every place of the
coupling on it; what is left for all motors is the set of possible lengths. Nothing of the closed form is used.
"""

import pytest
from hypothesis import HealthCheck, given, settings

from blockgen.errors import InfeasibleError
from blockgen.sizing.family_members import family_start
from blockgen.sizing.rounds import decide_sizes
from tests.sizing.families import WALLS, family_records, motors

pytestmark = pytest.mark.slow  # more than a second
FEW = settings(max_examples=50, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
STEP = 0.5
JOURNAL, SMOOTH, NUT = 46.0, 28.0, 16.0
COUPLING = {"outer_diameter": 45, "swing_diameter": 47, "length": 58, "hub_length": 20, "grip_min": 14, "grip_max": 20,
            "gap_min": 4, "clamp_position": 6, "clamp_access_radius": 5, "clearance": 2}  # fmt: skip
SPEC = {
    "screw": {"journal_reach": JOURNAL, "journal_smooth_length": SMOOTH},
    "bearing": {"nut_reach": NUT},
    "coupling": COUPLING,
    "block": WALLS,
}
LENGTHS = [80 + STEP * n for n in range(160)]
PLACES = [10 + STEP * n for n in range(160)]


def fits(length, start, motor):
    """Tell whether one motor can be mounted on a block of a length with the coupling at a place, all in mm."""
    end, shaft = start + COUPLING["length"], length - motor["shaft_length"]
    journal, depth = JOURNAL - start, end - shaft
    bearing_wall, motor_wall = WALLS["bearing_wall"], length - WALLS["motor_wall"]
    key, position = COUPLING["clamp_access_radius"], COUPLING["clamp_position"]
    return (
        COUPLING["grip_min"] <= journal <= min(COUPLING["grip_max"], SMOOTH)
        and COUPLING["grip_min"] <= depth <= min(COUPLING["grip_max"], motor["shaft_length"])
        and shaft - JOURNAL >= COUPLING["gap_min"]
        and start >= NUT + COUPLING["clearance"]
        and end <= length - motor["pilot_length"] - COUPLING["clearance"]
        and start + position >= bearing_wall + key
        and end - position <= motor_wall - key
        # The bearing bore, 50, is smaller than the swing with its clearance, 51: the coupling stays in the window.
        and start >= bearing_wall + COUPLING["clearance"]
    )


def possible(motor):
    """Return the lengths on the grid at which one motor can be mounted, mm."""
    return {length for length in LENGTHS if any(fits(length, start, motor) for start in PLACES)}


@FEW
@given(motors())
def test_the_lengths_of_a_family_are_those_that_all_its_motors_allow(drawn):
    left = set.intersection(*(possible(motor) for motor in drawn))
    records = family_records(drawn, **SPEC)
    if not left:
        with pytest.raises(InfeasibleError):
            decide_sizes(*family_start(records))
        return
    ledger, _, _ = decide_sizes(*family_start(records))
    assert ledger.number("length_min") == pytest.approx(min(left), abs=1e-6)
    assert ledger.number("length_max") == pytest.approx(max(left), abs=1e-6)
    assert left == {n for n in LENGTHS if min(left) <= n <= max(left)}


@FEW
@given(motors(2, 4))
def test_each_motor_gets_a_coupling_place_that_fits_it_at_the_chosen_length(drawn):
    try:
        ledger, _, _ = decide_sizes(*family_start(family_records(drawn, **SPEC)))
    except InfeasibleError:
        return
    names = ("", *(f"motor_{number}_" for number in range(2, len(drawn) + 1)))
    for name, motor in zip(names, drawn, strict=True):
        assert fits(ledger.number("length"), ledger.number(f"{name}coupling_position"), motor)
