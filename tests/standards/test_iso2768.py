import pytest

from blockgen.standards.iso2768 import angular_tolerance, edge_tolerance, general_tolerance, geometrical_tolerance


@pytest.mark.parametrize(
    ("size", "letter", "expected"),
    [
        (30, "m", 0.2),
        (30.1, "m", 0.3),
        (120, "f", 0.15),
        (121, "m", 0.5),
        (400, "c", 1.2),
        (5, "v", 0.5),
        (2500, "m", 2),
    ],
)
def test_linear(size, letter, expected):
    assert general_tolerance(size, letter) == expected


def test_default_class_is_medium():
    assert general_tolerance(50) == 0.3


def test_edges():
    assert (edge_tolerance(2), edge_tolerance(5, "c"), edge_tolerance(100)) == (0.2, 1, 1)


def test_angles_are_in_degrees():
    assert (angular_tolerance(10), angular_tolerance(60), angular_tolerance(200, "c")) == (
        1,
        pytest.approx(1 / 3),
        0.25,
    )


@pytest.mark.parametrize(
    ("characteristic", "length", "letter", "expected"),
    [
        ("flatness", 100, "K", 0.2),
        ("flatness", 101, "H", 0.2),
        ("perpendicularity", 100, "K", 0.4),
        ("perpendicularity", 150, "L", 1),
        ("symmetry", 50, "K", 0.6),
        ("run_out", 50, "K", 0.2),
    ],
)
def test_geometrical(characteristic, length, letter, expected):
    assert geometrical_tolerance(characteristic, length, letter) == expected


@pytest.mark.parametrize("size", [3, 6, 30, 120, 400, 1000, 2000])
def test_classes_widen_from_fine_to_very_coarse(size):
    widths = [general_tolerance(size, letter) for letter in ("f", "m", "c")]
    assert widths == sorted(widths)


def test_outside():
    with pytest.raises(ValueError, match=r"class v has none from 0.5 to 3 mm; write the tolerance at the dimension"):
        general_tolerance(2, "v")
    with pytest.raises(ValueError, match=r"runs from above 0.5 to 4000 mm"):
        general_tolerance(5000)
    with pytest.raises(ValueError, match='general tolerance class "x"'):
        general_tolerance(50, "x")
    with pytest.raises(ValueError, match='characteristic "roundness"'):
        geometrical_tolerance("roundness", 50)
    with pytest.raises(ValueError, match='general tolerance class "m"'):
        geometrical_tolerance("flatness", 50, "m")
