import math

import pytest

from tests.geometry.stand_ins.sums import rod, sizes_of

pytestmark = pytest.mark.slow


def made(**changes):
    from blockgen.geometry.kernel import bounding_box, is_valid, volume_of
    from blockgen.geometry.stand_ins.base_plate import plate_solid

    plan, sizes = sizes_of(**changes)
    solid = plate_solid(plan, sizes)
    assert is_valid(solid)
    return plan, volume_of(solid), bounding_box(solid)


def hole(feature):
    """Return the volume of a turned hole from its profile."""
    return sum(
        math.pi * (p.end - p.start) / 3 * (p.start_radius**2 + p.start_radius * p.end_radius + p.end_radius**2)
        for p in feature.profile
    ) + (0 if feature.profile[0].start == 0 else rod(feature.profile[0].start_radius, feature.profile[0].start))


@pytest.mark.parametrize(
    "base", [{}, {"screw_from": "below"}, {"dowels": 6, "thickness": 40}, {"dowels": 6, "thickness": 12}]
)
def test_plate_less_its_holes(base):
    plan, volume, box = made(base=base)
    thick = base.get("thickness", 25)
    length, width = plan.body.length, plan.body.width
    whole = (length + 40) * (width + 40) * thick
    assert volume == pytest.approx(whole - sum(hole(f) for f in plan.base_features), rel=1e-6)
    assert box == pytest.approx((-20, -width / 2 - 20, -thick, length + 20, width / 2 + 20, 0), abs=1e-6)
