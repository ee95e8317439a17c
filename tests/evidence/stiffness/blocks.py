"""A block whose stiffness was found once for all tests of a session."""

from __future__ import annotations

from functools import cache

import pytest

from blockgen.pipeline import design
from blockgen.spec.load import parse_spec
from tests.examples import STEPPER

BED = 'material = "S235JR"\nbed_stiffness = "900 N/um"'


@cache
def stepper():
    """Return the stepper block as a design with its stiffness, on heads, bonded and on a bed; two meshes."""
    pytest.importorskip("ngsolve")
    return design(parse_spec(stepper_text()), stiffness=True, band=1.0)


def stepper_text():
    """Return the stepper spec with a bed and with stiffnesses of screw and bearing."""
    text = STEPPER.read_text(encoding="utf-8")
    text = text.replace("[screw]", '[screw]\naxial_stiffness = "60 N/um"').replace(
        "[base]", '[base]\nbed_stiffness = "900 N/um"'
    )
    return text.replace("[bearing]", '[bearing]\naxial_stiffness = "80 N/um"')
