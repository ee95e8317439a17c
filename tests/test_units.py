"""Quantities: units, dimensions, and what is refused."""

import contextlib
import math
import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.units import DIMENSIONS, UnitProblem, _ask_pint, quantity, unit_names, usual_conversions


@pytest.mark.parametrize(
    ("text", "unit", "value"),
    [
        ("40 mm", "mm", 40.0),
        ("40mm", "mm", 40.0),
        ("2.875 in", "mm", 73.025),
        ("1 inch", "mm", 25.4),
        ("1 ft", "mm", 304.8),
        ("10 um", "mm", 0.01),
        ("10 µm", "mm", 0.01),
        ("5 thou", "mm", 0.127),
        ("3 kN", "N", 3000.0),
        ("1 lbf", "N", 4.44822161526),
        ("12 N*m", "N*m", 12.0),
        ("12 N·m", "N*m", 12.0),
        ("100 lbf*in", "N*m", 11.2984829028),
        ("100 lbf in", "N*m", 11.2984829028),
        ("100 oz*in", "N*m", 0.706155181423),
        ("2 lb", "kg", 0.90718474),
        ("250 g", "kg", 0.25),
        ("60 arcmin", "deg", 1.0),
        ("1 mrad", "deg", 0.0572957795131),
        ("68 degF", "degC", 20.0),
        ("293.15 K", "degC", 20.0),
        ("20 °C", "degC", 20.0),
        ("70 GPa", "MPa", 70000.0),
        ("1000 psi", "MPa", 6.89475729317),
        ("1 bar", "MPa", 0.1),
        ("350 N/mm", "N/um", 0.35),
        ("1 N*m/deg", "N*m/rad", 57.2957795131),
        ("0.9 kg*cm^2", "kg*m^2", 0.9e-4),
        ("2.7 g/cm^3", "kg/m^3", 2700.0),
        ("23e-6 1/K", "1/K", 23e-6),
        ("95 %", "", 0.95),
        ("95%", "", 0.95),
        (0.95, "", 0.95),
        (40, "mm", 40.0),
        ("-.5e1", "mm", -5.0),
    ],
)
def test_a_quantity_arrives_in_the_default_unit(text, unit, value):
    assert quantity(text, unit) == pytest.approx(value, rel=1e-11)


@pytest.mark.parametrize(
    ("value", "unit", "words"),
    [
        ("40 N", "mm", 'expected a length such as "40 mm".*"N" is a unit of force'),
        ("40 mm", "N", '"mm" is a unit of length'),
        ("10 %", "deg", '"%" is a plain number'),
        ("1 N*m/rad", "N*m", "unit of angular stiffness"),
        ("12 Nm", "N*m", "write N\\*m"),
        ('2"', "mm", "write in"),
        ("40 mmm", "mm", "write mm"),
        ("12,5 mm", "mm", 'decimals are written with a point: "12.5 mm"'),
        ("nan", "mm", "expected a length"),
        ("inf mm", "mm", "expected a length"),
        (math.nan, "mm", "finite and at most 100000 mm"),
        (-math.inf, "mm", "finite"),
        ("1e308 mm", "mm", "finite and at most"),
        ("1e999 mm", "mm", "finite and at most"),
        (10**400, "mm", "finite"),
        (True, "mm", "expected a length"),
        ([1], "mm", "expected a length"),
        (None, "mm", "expected a length"),
        ("", "mm", "expected a length"),
        ("mm", "mm", "expected a length"),
        ("1 mm**9", "mm", "not a known unit"),
        ("1 __import__('os')", "mm", "not a known unit"),
        ("1 degC*m", "degC", "measures something else"),
        ("٤٠ mm", "mm", "expected a length"),
    ],
)
def test_what_is_not_such_a_quantity_is_refused_in_words(value, unit, words):
    with pytest.raises(UnitProblem, match=words):
        quantity(value, unit)


LENGTHS = {"mm": 1.0, "cm": 10.0, "in": 25.4, "um": 1e-3, "ft": 304.8}


@given(st.floats(-300, 300).map(lambda v: round(v, 9)), st.sampled_from(sorted(LENGTHS)))
def test_a_length_survives_a_change_of_unit(value, unit):
    there = quantity(f"{value!r} {unit}", "mm")
    assert there / LENGTHS[unit] == pytest.approx(value, rel=1e-11, abs=1e-300)


@given(st.integers(1, 3000))
def test_inches_and_millimetres_give_the_same_number(sixty_fourths):
    inches = sixty_fourths / 64
    assert quantity(f"{inches} in", "mm") == quantity(f"{inches * 25.4:.12g} mm", "mm")


@pytest.mark.parametrize("unit", [u for u in DIMENSIONS if u])
def test_every_default_unit_reads_itself(unit):
    assert quantity(f"0.001 {unit}", unit) == quantity(0.001, unit) == 0.001


@given(st.text(max_size=30), st.sampled_from(sorted(DIMENSIONS)))
def test_any_text_is_a_number_or_a_problem(text, unit):
    with contextlib.suppress(UnitProblem):
        assert math.isfinite(quantity(text, unit))


def test_all_units_of_the_list_are_understood():
    known = [u for u in unit_names() if any(_reads(u, default) for default in DIMENSIONS)]
    assert set(unit_names()) - set(known) == {"s", "ms", "min"}  # no key is a time


def _reads(unit, default):
    try:
        quantity(f"0.0001 {unit}", default)
    except UnitProblem:
        return False
    return True


def test_default_units_need_no_pint():
    code = "import sys; from blockgen.units import quantity; quantity('40 mm', 'mm'); sys.exit('pint' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0


def test_usual_conversions_are_what_pint_says():
    assert len(usual_conversions()) > 30
    for (written, unit), (factor, offset) in usual_conversions().items():
        assert _ask_pint(written, written, unit) == (factor, offset)


@pytest.mark.parametrize("value", ["1e-300 mm", 1e-300, "-1e-20 mm"])
def test_amounts_below_every_machine_are_refused(value):
    with pytest.raises(UnitProblem, match="0 or at least"):
        quantity(value, "mm")
