from math import pi, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.tables import load_table
from blockgen.standards.threads import designations, stress_area, thread, thread_for_clearance_hole

ALL = st.sampled_from(designations())
METRIC = [name for name in designations() if name.startswith("M")]


@given(ALL)
def test_basic_dimensions_follow_from_the_profile(name):
    t = thread(name)
    assert t.minor_diameter == pytest.approx(t.diameter - 1.082532 * t.pitch, abs=1e-5)
    assert t.pitch_diameter == pytest.approx(t.diameter - 0.649519 * t.pitch, abs=1e-5)
    assert t.root_diameter == pytest.approx(t.diameter - (1.226869 if t.series == "M" else 1.19078) * t.pitch, abs=1e-5)


@given(ALL)
def test_diameters_are_in_order(name):
    t = thread(name)
    assert t.root_diameter < t.minor_diameter < t.internal_minor_max < t.pitch_diameter
    assert (
        t.minor_diameter
        < t.external_pitch_min
        < t.pitch_diameter
        < t.internal_pitch_max
        < t.external_major_min
        < t.diameter
    )


@given(ALL)
def test_the_tap_drill_leaves_the_thread_within_its_limits_or_close(name):
    t = thread(name)
    assert t.minor_diameter - 0.02 <= t.tap_drill <= t.internal_minor_max + 0.03


@given(ALL)
def test_stress_area_lies_between_root_and_pitch_cylinder(name):
    t = thread(name)
    assert pi / 4 * t.root_diameter**2 < t.stress_area < pi / 4 * t.pitch_diameter**2


@pytest.mark.parametrize("name", METRIC)
def test_tabled_tolerances_follow_the_formulas_of_iso_965(name):
    """Tables are rounded to the R40 series, so 7 % are allowed (the thinnest pitches are rounded hardest)."""
    t = thread(name)
    by_pitch = next(r for r in load_table("iso965_pitch").rows if float(r["pitch"]) == t.pitch)
    assert -float(by_pitch["deviation_g"]) == pytest.approx(15 + 11 * t.pitch, abs=1.1)
    major = 180 * t.pitch ** (2 / 3) - 3.15 / sqrt(t.pitch)
    assert float(by_pitch["major_tolerance_6"]) == pytest.approx(major, rel=0.07)
    minor = 433 * t.pitch - 190 * t.pitch**1.22 if t.pitch < 1 else 230 * t.pitch**0.7
    assert float(by_pitch["minor_tolerance_6"]) == pytest.approx(minor, rel=0.07)
    row = next(
        r
        for r in load_table("iso965_pitch_diameter").rows
        if float(r["above"]) < t.diameter <= float(r["to"]) and float(r["pitch"]) == t.pitch
    )
    mean = sqrt(float(row["above"]) * float(row["to"]))
    assert float(row["external_6"]) == pytest.approx(90 * t.pitch**0.4 * mean**0.1, rel=0.07)
    assert float(row["internal_6"]) == pytest.approx(1.32 * float(row["external_6"]), rel=0.07)


def test_the_two_stress_area_formulas_differ_by_about_a_percent():
    assert stress_area(10, 1.5) / stress_area(10, 1.5, "UN") == pytest.approx(1.012, abs=0.002)


@pytest.mark.parametrize(
    ("written", "name"),
    [
        ("m10", "M10"),
        (" M10 ", "M10"),
        ("M10x1.5", "M10"),
        ("M10 x 1.5", "M10"),
        ("#10-24", "10-24 UNC"),
        ("10-24", "10-24 UNC"),
        ("No. 10-32 unf", "10-32 UNF"),
        ("1/4-20", "1/4-20 UNC"),
        ("1/4-28 UNF", "1/4-28 UNF"),
    ],
)
def test_spellings(written, name):
    assert thread(written).designation == name


def test_call_outs():
    assert thread("M10").call_out == "M10-6H"
    assert thread("#10-24").call_out == "10-24 UNC-2B"
    assert thread("#10-24").size == "#10"


@pytest.mark.parametrize("written", ["M11", "M10-6H", "", "10", "1/4", "M", "1/4-21 UNC"])
def test_unknown_thread(written):
    with pytest.raises(ValueError, match=r"thread .*the table holds M1.6"):
        thread(written)


def test_fine_pitch_is_refused_with_the_coarse_one_named():
    with pytest.raises(ValueError, match=r"M10 is known with its coarse pitch 1.5 mm only; write M10"):
        thread("M10x1.25")


@pytest.mark.parametrize(
    ("hole", "name"),
    [
        (3.4, "M3"),
        (4.5, "M4"),
        (5.5, "M5"),
        (5.8, "M5"),
        (6.6, "M6"),
        (7, "M6"),
        (9, "M8"),
        (10, "M8"),
        (11, "M10"),
        (12, "M10"),
        (13.5, "M12"),
        (14.5, "M12"),
        (17.5, "M16"),
        (18.5, "M16"),
        (22, "M20"),
        (5, "M4"),
        (6, "M5"),
        (8, "M6"),
        (0.195 * 25.4, "10-24 UNC"),
        (0.218 * 25.4, "10-24 UNC"),
        (5.54, "10-24 UNC"),
        (0.281 * 25.4, "1/4-20 UNC"),
        (0.406 * 25.4, "3/8-16 UNC"),
    ],
)
def test_thread_for_a_hole(hole, name):
    assert thread_for_clearance_hole(hole).designation == name


def test_a_series_can_be_asked_for():
    assert thread_for_clearance_hole(5.5, "UN").designation == "10-24 UNC"
    assert thread_for_clearance_hole(0.218 * 25.4, "M").designation == "M5"


@pytest.mark.parametrize("hole", [0.5, 0, -3, 80, float("nan")])
def test_no_thread_for_a_hole(hole):
    assert thread_for_clearance_hole(hole) is None


@given(st.floats(1.7, 42))
def test_the_screw_goes_through_its_hole(hole):
    found = thread_for_clearance_hole(hole)
    assert found is None or found.diameter < hole


@pytest.mark.parametrize("series", ["fine", "medium", "coarse"])
@pytest.mark.parametrize(
    "row", [r for r in load_table("metric_threads").rows if r["choice"] == "1"], ids=lambda r: r["size"]
)
def test_the_inverse_finds_every_first_choice_size(row, series):
    assert thread_for_clearance_hole(clearance_hole(row["size"], series)).designation == row["size"]
