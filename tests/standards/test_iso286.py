import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.standards.iso286 import GRADES, HOLE_LETTERS, SHAFT_LETTERS, Limits, fit, is_class, limits, tolerance

SIZES = st.floats(0.5, 500)
ANY_CLASS = [
    f"{letter}{grade}" for letter in HOLE_LETTERS + SHAFT_LETTERS for grade in GRADES if letter not in ("j", "J", "K")
]


def micrometres(found):
    return round(found.lower * 1000, 4), round(found.upper * 1000, 4)


@pytest.mark.parametrize(
    ("size", "name", "lower", "upper"),
    [
        (60, "H7", 0, 30),
        (60, "h6", -19, 0),
        (70, "h7", -30, 0),
        (60, "js6", -9.5, 9.5),
        (60, "JS7", -15, 15),
        (10, "js7", -7.5, 7.5),
        (8, "K6", -7, 2),
        (300, "M6", -41, -9),
        (250, "M6", -37, -8),
        (300, "M7", -52, 0),
        (2, "K7", -10, 0),
        (2, "K9", -25, 0),
        (3, "J8", -8, 6),
        (2, "j8", -6, 8),
        (25, "j6", -4, 9),
        (40, "k7", 2, 27),
        (40, "k8", 0, 39),
        (30, "N9", -52, 0),
        (2, "N9", -29, -4),
        (30, "P8", -55, -22),
        (30, "P7", -35, -14),
        (500, "g6", -60, -20),
        (0.5, "f7", -16, -6),
    ],
)
def test_limits(size, name, lower, upper):
    assert micrometres(limits(size, name)) == (lower, upper)


@given(size=SIZES, name=st.sampled_from(ANY_CLASS))
def test_the_zone_is_as_wide_as_the_grade(size, name):
    grade = int(name.lstrip("fghjskmnpFGHJSKMNP"))
    assert limits(size, name).tolerance == pytest.approx(tolerance(size, grade), abs=1e-9)


@given(size=SIZES, letter=st.sampled_from(("f", "g", "h")), grade=st.sampled_from(GRADES))
def test_clearance_holes_mirror_clearance_shafts(size, letter, grade):
    hole, shaft = limits(size, f"{letter.upper()}{grade}"), limits(size, f"{letter}{grade}")
    assert micrometres(hole) == tuple(-value for value in reversed(micrometres(shaft)))


@given(first=SIZES, second=SIZES, grade=st.sampled_from(GRADES))
def test_tolerance_grows_with_size(first, second, grade):
    small, large = sorted((first, second))
    assert tolerance(small, grade) <= tolerance(large, grade)


@given(size=SIZES, grade=st.sampled_from(GRADES[:-1]))
def test_tolerance_grows_with_grade(size, grade):
    assert tolerance(size, grade) < tolerance(size, grade + 1)


@given(size=SIZES, grade=st.sampled_from((6, 7)))
def test_shafts_are_ordered_from_loose_to_tight(size, grade):
    middles = [limits(size, f"{letter}{grade}").middle for letter in ("f", "g", "h", "js", "k", "m", "n", "p")]
    assert middles == sorted(middles)


@given(
    size=SIZES, hole=st.sampled_from(("H6", "H7", "G7", "K7", "N7")), shaft=st.sampled_from(("g6", "h6", "k6", "p6"))
)
def test_clearances_follow_from_the_limits(size, hole, shaft):
    found = fit(size, hole, shaft)
    assert found.min_clearance == pytest.approx(found.hole.lower - found.shaft.upper, abs=1e-7)
    assert found.max_clearance - found.min_clearance == pytest.approx(
        found.hole.tolerance + found.shaft.tolerance, abs=1e-7
    )


@pytest.mark.parametrize(
    ("shaft", "kind", "least", "greatest"),
    [("h6", "clearance", 0, 0.049), ("k6", "transition", -0.021, 0.028), ("p6", "interference", -0.051, -0.002)],
)
def test_kinds_of_fit(shaft, kind, least, greatest):
    found = fit(60, "H7", shaft)
    assert (found.kind, found.min_clearance, found.max_clearance) == (kind, least, greatest)


def test_half_micrometres_of_js_survive():
    assert fit(60, "H7", "js6").min_clearance == -0.0095


def test_the_range_bound_belongs_to_the_smaller_size():
    assert limits(50, "H7") == Limits(0.0, 0.025)
    assert limits(50.001, "H7") == Limits(0.0, 0.03)


@pytest.mark.parametrize("size", [0, -5, 500.1, float("nan"), 1e308])
def test_size_outside_the_table(size):
    with pytest.raises(ValueError, match=r"nominal size .* the table runs from above 0 to 500 mm"):
        limits(size, "H7")


@pytest.mark.parametrize("name", ["X7", "H", "7", "", "Js7", "hh6", "H7/h6", "r6"])
def test_unknown_class(name):
    with pytest.raises(ValueError, match=r"tolerance class .* are known; write for instance H7 or h6"):
        limits(60, name)


@pytest.mark.parametrize("name", ["H4", "h12"])
def test_unknown_grade(name):
    with pytest.raises(ValueError, match=r"tolerance grade IT\d+: IT5 to IT11 are known"):
        limits(60, name)


@pytest.mark.parametrize("name", ["J5", "J9", "j8", "j9"])
def test_classes_that_the_standard_leaves_out(name):
    with pytest.raises(ValueError, match=r"ISO 286-1 has no such class; take [jJ]s"):
        limits(60, name)


def test_k_above_grade_8():
    with pytest.raises(ValueError, match="K9 above 3 mm: ISO 286-1 has K up to grade 8"):
        limits(60, "K9")


@pytest.mark.parametrize(("hole", "shaft"), [("h6", "H7"), ("H7", "H7"), ("h6", "h6")])
def test_classes_in_the_wrong_order(hole, shaft):
    with pytest.raises(ValueError, match="capital letter for the hole"):
        fit(60, hole, shaft)


@pytest.mark.parametrize(
    ("text", "known"), [("H7", True), (" js6 ", True), ("H12", False), ("M8x1", False), ("r6", False)]
)
def test_is_class(text, known):
    assert is_class(text) is known
