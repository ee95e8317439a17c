"""Motor faces against published tables.

[A] NEMA stepper motor sizes, piclist.com/techref/io/stepper/nemasizes.htm (inches; its square hole spacings are
    printed beside the bolt circles and test them: 1.854, 2.744, 3.500 in).
[B] NEMA motor dimensional chart, scribd.com/document/157068687: C-face shaft, rabbet and bolt circle of 42C and 56C.
[C] sciencing.com/dimensions-nema-56c-7286242.html: 56C bolt circle 5.875 in, holes 3/8-16.
[D] IEC 60072-1:2022, abstract at standards.iteh.ai: the flange number is the pitch circle diameter in mm.
[E] Run-out classes: scribd.com/doc/66716031, reprint of DIN 42955.

No table of IEC spigots and outside diameters could be read: those stay remembered, only their pattern is tested.
"""

import pytest

from blockgen.standards.flanges import flange, flange_names, runout_class, shaft_runout

INCH = 25.4

# name: pilot, bolt circle, hole or None, shaft, square spacing [A]
STEPPERS = {
    "NEMA 14": (0.866, 1.448, None, 0.197, 1.024),
    "NEMA 17": (0.866, 1.725, None, 0.197, 1.220),
    "NEMA 23": (1.500, 2.625, 0.195, 0.250, 1.854),
    "NEMA 34": (2.875, 3.875, 0.218, 0.375, 2.744),
    "NEMA 42": (2.186, 4.950, 0.281, 0.625, 3.500),
}
SPIGOT_RUNOUT = [(22, 0.05, 0.025), (40, 0.06, 0.03), (100, 0.08, 0.04), (230, 0.1, 0.05), (450, 0.125, 0.063)]
SHAFT_RUNOUT = [(10, 0.03, 0.015), (18, 0.035, 0.018), (30, 0.04, 0.021), (50, 0.05, 0.025), (80, 0.06, 0.03)]


@pytest.mark.parametrize("name", STEPPERS)
def test_stepper_faces(name):
    pilot, circle, hole, shaft, spacing = STEPPERS[name]
    found = flange(name)
    assert (found.pilot_diameter, found.bolt_circle) == pytest.approx((pilot * INCH, circle * INCH), abs=1e-3)
    assert found.hole == (None if hole is None else pytest.approx(hole * INCH, abs=1e-3))
    assert found.shaft_diameter == pytest.approx(shaft * INCH, abs=0.006)
    assert found.square_spacing == pytest.approx(spacing * INCH, abs=0.11)


@pytest.mark.parametrize(
    ("name", "pilot", "circle", "shaft", "thread"),
    [("NEMA 42C", 3, 3.75, 0.375, "1/4-20 UNC"), ("NEMA 56C", 4.5, 5.875, 0.625, "3/8-16 UNC")],
)
def test_c_faces(name, pilot, circle, shaft, thread):
    found = flange(name)
    ours = (found.pilot_diameter, found.bolt_circle, found.shaft_diameter)
    assert ours == pytest.approx((pilot * INCH, circle * INCH, shaft * INCH))
    assert (found.thread, found.tapped) == (thread, True)


def test_frame_42_names_two_faces():
    assert flange("NEMA 42").bolt_circle != flange("NEMA 42C").bolt_circle


@pytest.mark.parametrize("name", [name for name in flange_names() if name.startswith("F")])
def test_iec_flange_number_is_the_bolt_circle(name):
    assert flange(name).bolt_circle == float(name[2:])


@pytest.mark.parametrize(("diameter", "normal", "reduced"), SPIGOT_RUNOUT)
def test_spigot_runout(diameter, normal, reduced):
    assert runout_class(diameter, "face", "normal") == normal
    assert runout_class(diameter - 0.001, "spigot", "reduced") == reduced


@pytest.mark.parametrize(("diameter", "normal", "reduced"), SHAFT_RUNOUT)
def test_shaft_runout(diameter, normal, reduced):
    assert (shaft_runout(diameter), shaft_runout(diameter, "reduced")) == (normal, reduced)
