"""Offset and angle of one measured block: exact law against independent draws, and what must hold for any block."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from blockgen.alignment.chain import spread
from blockgen.alignment.heat import expansions_of
from blockgen.alignment.scatter import Scatter, disc, gaussian, known
from blockgen.evidence.as_built import as_built, length_spread
from tests.alignment.draws import off_by
from tests.evidence.samples import good, made, measured, vectors

PLAN = made().plan
COUNT = 200_000


def test_a_good_block_has_a_narrower_law_than_its_plan():
    result = as_built(PLAN, measured(good()))
    for before, after in ((result.offset_before, result.offset), (result.angle_before, result.angle)):
        assert after.p50 < before.p50
        assert after.p95 < before.p95
        assert after.p9973 < before.p9973
        assert after.worst < before.worst


@settings(max_examples=20, deadline=None)
@given(st.floats(0.05, 3), st.floats(1.05, 3))
def test_more_doubt_makes_the_law_wider(scale, factor):
    less, more = (as_built(PLAN, measured(vectors(s))) for s in (scale, scale * factor))
    for one, other in ((less.offset, more.offset), (less.angle, more.angle)):
        assert one.rms < other.rms
        assert one.p9973 < other.p9973
        assert one.worst < other.worst


@settings(max_examples=20, deadline=None)
@given(st.floats(0.05, 0.5), st.floats(0, 2 * math.pi))
def test_a_known_error_moves_the_median(length, angle):
    y, z = length * math.cos(angle), length * math.sin(angle)
    there = as_built(PLAN, measured(vectors(motor_bore__offset_y=(y, 0.001), motor_bore__offset_z=(z, 0.001))))
    home = as_built(PLAN, measured(vectors()))
    assert home.offset.p50 < there.offset.p50 < length + home.offset.worst
    assert abs(there.offset.p50 - length) < home.offset.p95
    assert there.known_offset == pytest.approx((y, z), abs=1e-9)
    assert there.angle == home.angle


PAIRS = (
    ("motor_bore", "offset", 0.012, -0.007),
    ("motor_seat", "slope", 0.05, 0.11),
    ("motor", "spigot", 0.01, 0.004),
    ("motor", "face_slope", -0.2, 0.1),
    ("bearing", "offset", 0.002, -0.003),
    ("bearing", "slope", 0.06, 0.02),
)


def with_pairs(*, turned):
    values = {}
    for feature, name, across, up in PAIRS:
        y, z = (-up, across) if turned else (across, up)
        values |= {f"{feature}__{name}_y": (y, 0.002), f"{feature}__{name}_z": (z, 0.002)}
    return as_built(PLAN, measured(vectors(**values)))


def test_turning_every_vector_turns_the_result():
    first, second = with_pairs(turned=False), with_pairs(turned=True)
    y, z = first.known_offset
    assert second.known_offset == pytest.approx((-z, y))
    y, z = first.known_angle
    assert second.known_angle == pytest.approx((-z, y))
    assert second.offset.p95 == pytest.approx(first.offset.p95)
    assert second.angle.p95 == pytest.approx(first.angle.p95)


def test_signs_of_the_chain():
    """d = o_m + (xc - L) theta_m - o_b - xc theta_b, with the numbers of the example."""
    length, centre = PLAN.number("length"), PLAN.number("coupling_position") + PLAN.number("coupling.length") / 2
    found = with_pairs(turned=False)
    for part in (0, 1):
        bore, seat, spigot, face, offset, slope = (pair[2 + part] for pair in PAIRS)
        expected = bore + spigot + (centre - length) * (seat + face) / 1000 - offset - centre * slope / 1000
        assert found.known_offset[part] == pytest.approx(expected)
        assert found.known_angle[part] == pytest.approx((seat + face - slope) / 1000)


def drawn(doubts):
    """Draw offsets of the example with every vector measured; ``doubts`` are U of y and z of each."""
    rng = np.random.default_rng(20261125)
    length, centre = PLAN.number("length"), PLAN.number("coupling_position") + PLAN.number("coupling.length") / 2

    def vector(name, y, z):
        across, up = doubts[name]
        return y + across / 2 * rng.standard_normal(COUNT) + 1j * (z + up / 2 * rng.standard_normal(COUNT))

    def play(hole, pilot):
        direction = np.exp(2j * np.pi * rng.random(COUNT))
        true_hole = hole[0] + hole[1] / 2 * rng.standard_normal(COUNT)
        true_pilot = pilot[0] + pilot[1] / 2 * rng.standard_normal(COUNT)
        return np.maximum(true_hole - true_pilot, 0) / 2 * direction

    def run_out(movement):
        return movement / 2 * np.sqrt(rng.random(COUNT)) * np.exp(2j * np.pi * rng.random(COUNT))

    bore, seat, spigot, face, offset, slope = (vector(f"{a}.{b}", y, z) for a, b, y, z in PAIRS)
    motor = bore + spigot + play((70.015, 0.003), (69.985, 0.003)) + run_out(PLAN.number("motor.shaft_runout"))
    bearing = offset + play((45.0125, 0.0025), (44.992, 0.002)) + run_out(PLAN.number("screw.journal_runout"))
    total = motor + (centre - length) * (seat + face) / 1000 - bearing - centre * slope / 1000
    return np.abs(total), np.abs(seat + face - slope) / 1000


@pytest.mark.slow
@pytest.mark.parametrize("unlike", [False, True], ids=["radial", "planar"])
def test_independent_draws_agree(unlike):
    doubts = {f"{a}.{b}": (0.004, 0.016) if unlike else (0.004, 0.004) for a, b, _, _ in PAIRS}
    values = {}
    for feature, name, y, z in PAIRS:
        across, up = doubts[f"{feature}.{name}"]
        values |= {f"{feature}__{name}_y": (y, across), f"{feature}__{name}_z": (z, up)}
    sizes = {"motor_bore__diameter": (70.015, 0.003), "motor__pilot_diameter": (69.985, 0.003),
             "bearing_bore__diameter": (45.0125, 0.0025), "bearing__pilot_diameter": (44.992, 0.002)}  # fmt: skip
    result = as_built(PLAN, measured(vectors(**values, **sizes)))
    lengths, slopes = drawn(doubts)
    for level, offset, angle in (
        (0.5, result.offset.p50, result.angle.p50),
        (0.95, result.offset.p95, result.angle.p95),
    ):
        assert off_by(lengths, offset, level) < 3
        assert off_by(slopes, angle, level) < 3


def test_lines_alone_are_taken_as_round():
    lines = [known(0.01, 0.0), Scatter("gaussian_y", 0.002)]
    assert length_spread(lines, 0.02, 0.95) == spread([known(0.01, 0.0), gaussian(0.002)], 0.02, 0.95)


def test_the_planar_law_is_taken_where_doubts_differ():
    scatters = [disc(0.01), known(0.02, 0.0)]
    up = length_spread([*scatters, Scatter("gaussian_z", 0.01)], 0.03, 0.95)
    along = length_spread([*scatters, Scatter("gaussian_y", 0.01)], 0.03, 0.95)
    assert along.p95 > up.p95  # doubt along the known vector makes it longer, across it hardly does
    assert along.exceeding > up.exceeding


def test_heat_is_a_known_vector_too():
    cold, warm = as_built(PLAN, measured(good())), as_built(PLAN, measured(good()), expansions_of(PLAN))
    assert cold.known_offset == pytest.approx((0, 0))
    assert warm.known_offset[1] != pytest.approx(0, abs=1e-4)


def test_the_coupling_is_used_less_than_planned():
    result = as_built(PLAN, measured(good()))
    assert result.use.likely < made().alignment.use.likely
    assert result.use_limit == PLAN.number("limits.coupling_use")
