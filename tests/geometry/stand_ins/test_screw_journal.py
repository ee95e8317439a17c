import pytest

from tests.geometry.stand_ins.sums import rod, sizes_of

pytestmark = pytest.mark.slow


def made(**changes):
    from blockgen.geometry.kernel import bounding_box, volume_of
    from blockgen.geometry.stand_ins.screw_journal import journal_solid

    _, sizes = sizes_of(**changes)
    solid = journal_solid(sizes)
    return volume_of(solid), bounding_box(solid)


def test_steps_from_the_screw_to_the_journal():
    # shoulder 28 behind the seat, seat and lock nut's thread 17 mm to 20, journal 15 mm to 44; 60 mm of screw 23 mm
    volume, box = made()
    assert volume == pytest.approx(rod(11.5, 60) + rod(8.5, 48) + rod(7.5, 24), rel=1e-6)
    assert box == pytest.approx((-88, -11.5, -11.5, 44, 11.5, 11.5), abs=1e-6)


def test_smooth_length_ends_the_thread():
    volume, _ = made(screw={"journal_smooth_length": 20})
    assert volume == pytest.approx(rod(11.5, 60) + rod(8.5, 52) + rod(7.5, 20), rel=1e-6)


def test_seat_of_the_journals_own_diameter():
    volume, _ = made(bearing={"nut_outer_diameter": 18})
    assert volume == pytest.approx(rod(10, 60) + rod(7.5, 72), rel=1e-6)
