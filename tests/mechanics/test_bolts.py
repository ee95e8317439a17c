"""Preload, torque and losses: rules that hold for every screw, and cases worked by hand."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.mechanics import bolts

M8 = {"pitch": 1.25, "d2": 7.188, "d3": 6.466}
frictions = st.floats(0.06, 0.3)


def preload(friction, **change):
    return bolts.assembly_preload(**(M8 | {"yield_strength": 640.0, "thread_friction": friction} | change))


@given(frictions)
def test_preload_stays_below_its_share_of_the_yield_force(friction):
    assert 0 < preload(friction) < 0.9 * 640 * bolts.stress_area(7.188, 6.466)


@given(frictions, st.floats(0.001, 0.1))
def test_more_friction_leaves_less_preload(friction, more):
    assert preload(friction + more) < preload(friction)


@given(frictions)
def test_equivalent_stress_is_the_share_of_yield(friction):
    force = preload(friction, utilisation=0.7)
    diameter = bolts.stress_diameter(7.188, 6.466)
    tension = force / bolts.stress_area(7.188, 6.466)
    thread_torque = force * 7.188 / 2 * (1.25 / (math.pi * 7.188) + friction / math.cos(math.pi / 6))
    shear = thread_torque / (math.pi * diameter**3 / 12)  # plastic section modulus
    assert math.sqrt(tension**2 + 3 * shear**2) == pytest.approx(0.7 * 640)


@given(st.floats(100.0, 1e5), frictions, frictions)
def test_preload_from_torque_undoes_the_torque(force, thread, head):
    joint = {"pitch": 1.25, "d2": 7.188, "bearing_diameter": 11.0, "thread_friction": thread, "head_friction": head}
    torque = bolts.tightening_torque(force, **joint)
    assert bolts.preload_from_torque(torque, **joint) == pytest.approx(force)


def test_torque_without_friction_is_that_of_the_wedge():
    smooth = {"pitch": 1.25, "d2": 7.188, "bearing_diameter": 11.0, "thread_friction": 0.0, "head_friction": 0.0}
    assert bolts.tightening_torque(10000.0, **smooth) * 2 * math.pi == pytest.approx(10000 * 1.25 / 1000)


@pytest.mark.parametrize(
    ("diameter", "pitch", "head", "hole", "torque"),
    [(4, 0.7, 7.0, 4.5, 3.1), (5, 0.8, 8.5, 5.5, 6.2), (6, 1.0, 10.0, 6.6, 10.5), (8, 1.25, 13.0, 9.0, 25.3)],
)
def test_torque_of_socket_head_screws_of_class_8_8(diameter, pitch, head, hole, torque):
    """Independent hand calculation with friction 0.12 and 90 % of the yield strength."""
    d2, d3 = diameter - 0.6495 * pitch, diameter - 1.2269 * pitch
    force = bolts.assembly_preload(pitch=pitch, d2=d2, d3=d3, yield_strength=640.0, thread_friction=0.12)
    bearing = bolts.effective_bearing_diameter(head, hole)
    friction = {"thread_friction": 0.12, "head_friction": 0.12}
    found = bolts.tightening_torque(force, pitch=pitch, d2=d2, bearing_diameter=bearing, **friction)
    assert found == pytest.approx(torque, abs=0.05)


def test_least_preload_subtracts_every_loss():
    assert bolts.least_preload(18000.0, 1.6, 1500.0, 250.0) == pytest.approx(18000 / 1.6 - 1750)
    assert bolts.least_preload(1000.0, 2.0, 900.0) == 0.0


def test_tightening_factor_below_one_is_refused():
    with pytest.raises(ValueError, match=r"tightening factor 0\.8 is below 1"):
        bolts.least_preload(1000.0, 0.8, 0.0)


def test_embedding_loss_spreads_over_screw_and_parts():
    assert bolts.embedding_loss(0.008, 3e-6, 1e-6) == pytest.approx(2000.0)


def test_steel_screw_in_warmer_aluminium_gains_preload():
    assert bolts.thermal_loss(11.5e-6 - 23e-6, 40.0, 30.0, 3e-6, 1e-6) == pytest.approx(-3450.0)
    assert bolts.thermal_loss(0.0, 40.0, 30.0, 3e-6, 1e-6) == 0.0


def test_screw_resilience_is_a_row_of_bars():
    bars = (3.2 + 2.64 + 20) / (math.pi * 16) + (4 + 5) / (math.pi / 4 * 6.466**2)
    assert bolts.screw_resilience(8.0, 6.466, 20.0, 5.0, 205000.0) == pytest.approx(bars / 205000)


@given(st.floats(5.0, 80.0), st.floats(0.5, 0.6))
def test_clamped_resilience_is_the_sum_over_thin_discs(length, tangent):
    steps = 2000
    total = 0.0
    for step in range(steps):
        depth = (step + 0.5) * length / steps
        area = math.pi / 4 * ((13 + 2 * depth * tangent) ** 2 - 9**2)
        total += length / steps / (70000 * area)
    assert bolts.clamped_resilience(13.0, 9.0, length, 70000.0, tangent) == pytest.approx(total, rel=1e-4)


def test_pressure_under_a_head():
    assert bolts.pressure_under_head(18600.0, 13.0, 9.0) == pytest.approx(18600 / (math.pi / 4 * (169 - 81)))


def test_hole_as_wide_as_the_head_is_refused():
    with pytest.raises(ValueError, match="hole of 13 mm under a bearing face of 13 mm: nothing bears, add a washer"):
        bolts.pressure_under_head(18600.0, 13.0, 13.0)


def test_the_softer_part_takes_less():
    assert bolts.load_factor(4.0, 1.0) == pytest.approx(0.2)
    assert bolts.load_factor(1.0, 4.0) == pytest.approx(0.8)


def test_a_pull_that_the_screw_shares_opens_the_joint_later():
    assert bolts.pull_safety(1000.0, 500.0) == pytest.approx(2.0)
    assert bolts.pull_safety(1000.0, 500.0, 0.2) == pytest.approx(2.5)
    assert bolts.pull_safety(1000.0, 0.0) == math.inf


def test_load_reserve_by_hand():
    assert bolts.load_reserve(900.0, 10.0, 100.0, 0.25, 200.0) == pytest.approx(2.0)
    assert bolts.load_reserve(900.0, 10.0, 100.0, 0.25, 0.0) == math.inf


def test_a_thin_washer_does_not_spread_to_its_rim():
    assert bolts.washer_bearing_diameter(14.0, 20.0, 1.0) == pytest.approx(15.6)
    assert bolts.washer_bearing_diameter(14.0, 20.0, 5.0) == 20.0
