"""Which base screws may be taken, and in which order."""

import pytest

from blockgen.errors import InputError
from blockgen.sizing.base_choice import choices, usual_screw
from tests.sizing.strategies import ledger, sized


def test_larger_before_more():
    found = choices(ledger(base={"screw": None}))
    assert found == tuple((name, count) for count in (4, 6) for name in ("M8", "M10", "M12", "M16"))


@pytest.mark.parametrize(
    ("change", "expected"),
    [
        ({"screw": "M10"}, (("M10", 4), ("M10", 6))),
        ({"screw": "M10", "screw_count": 8}, (("M10", 8),)),
        ({"screw": "M10", "hole_positions": [[15, 40], [15, -40]]}, (("M10", 2),)),
    ],
)
def test_what_is_given_is_kept(change, expected):
    assert choices(ledger(base=change)) == expected


def test_usual_for_the_larger_flange():
    assert usual_screw(ledger()) == (80.0, "M8")
    assert usual_screw(ledger(motor={"flange_size": 130})) == (130.0, "M10")


def test_the_reason_is_told():
    assert "slip" in sized(base={"screw": None}).records["base_screw"].rule
    assert "none of them holds" in sized(base={"screw": None}, screw={"thrust": 90000}).records["base_screw"].rule


def test_an_unknown_screw_is_refused_before_anything_is_worked_out():
    with pytest.raises(InputError, match="M64"):
        sized(base={"screw": "M64"})
