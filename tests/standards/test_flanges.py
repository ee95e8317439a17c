import pytest

from blockgen.standards.flanges import flange, flange_names, iec_shaft_class, runout_class, shaft_runout
from blockgen.standards.iso273 import clearance_hole
from blockgen.standards.threads import thread, thread_for_clearance_hole


@pytest.mark.parametrize("name", flange_names())
def test_every_flange_is_sound(name):
    found = flange(name)
    assert found.pilot_diameter < found.bolt_circle
    assert found.hole_count == 4
    assert found.tapped is (found.hole is None)
    width = found.hole if found.hole is not None else thread(found.thread).diameter
    assert found.bolt_circle - found.pilot_diameter > width
    if found.outside is not None:
        spread = found.square_spacing if found.shape == "square" else found.bolt_circle
        assert spread + width < found.outside
    if found.shaft_diameter is not None:
        assert found.shaft_diameter < found.pilot_diameter


@pytest.mark.parametrize("name", [n for n in flange_names() if flange(n).hole is not None])
def test_the_hole_names_a_screw_that_passes(name):
    found = flange(name)
    screw = thread_for_clearance_hole(found.hole)
    assert screw.diameter < found.hole
    if found.thread is not None:
        assert screw.designation == found.thread


@pytest.mark.parametrize("number", ["55", "65", "75", "85", "100", "115", "130", "165", "215", "265"])
def test_ff_and_ft_share_their_spigot(number):
    free, tapped = flange(f"FF{number}"), flange(f"FT{number}")
    assert free.pilot_diameter == tapped.pilot_diameter
    assert free.outside == tapped.outside
    assert free.pilot_length == tapped.pilot_length
    assert free.hole >= clearance_hole(tapped.thread, "medium")


def test_spaces_in_the_name_do_not_matter():
    assert flange("NEMA  23") == flange("NEMA 23")


def test_unknown_flange_suggests_the_nearest():
    with pytest.raises(ValueError, match=r'motor flange "NEMA 24".*nearest: NEMA'):
        flange("NEMA 24")


@pytest.mark.parametrize(("diameter", "name"), [(14, "j6"), (28, "j6"), (32, "k6"), (50, "k6"), (55, "m6")])
def test_iec_shaft_class(diameter, name):
    assert iec_shaft_class(diameter) == name


def test_runout_outside_the_table():
    with pytest.raises(ValueError, match="spigot diameter 500 mm: the table runs from above 0 to 450 mm"):
        runout_class(500)
    with pytest.raises(ValueError, match="shaft diameter 0 mm"):
        shaft_runout(0)
    with pytest.raises(ValueError, match='run-out class "precise": the table holds normal, reduced'):
        shaft_runout(10, "precise")
    with pytest.raises(ValueError, match='run-out kind "radial"'):
        runout_class(70, "radial")
    with pytest.raises(ValueError, match="a shaft is thicker than 0 mm"):
        iec_shaft_class(0)
