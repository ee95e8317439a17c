"""Trimmed sizes against the page sizes of two independent packages.

reportlab (BSD), `reportlab.lib.pagesizes`, sizes in points of 1/72 in; ezdxf (MIT),
`ezdxf.addons.drawing.layout.PAGE_SIZES`, in mm. Both are read as they are installed. ISO 216 was not read.
"""

import pytest

from blockgen.outputs.drawing.paper import TRIMMED


@pytest.mark.parametrize("size", ["A0", "A1", "A2", "A3", "A4"])
def test_sizes_in_points(size):
    from reportlab.lib import pagesizes
    from reportlab.lib.units import mm

    assert sorted(TRIMMED[size]) == pytest.approx(sorted(side / mm for side in getattr(pagesizes, size)))


@pytest.mark.slow  # the drawing add-on loads much
@pytest.mark.parametrize("size", ["A0", "A1", "A2", "A3", "A4"])
def test_sizes_in_mm(size):
    from ezdxf.addons.drawing.layout import PAGE_SIZES, Units

    width, height, unit = PAGE_SIZES[f"ISO {size}"]
    assert unit is Units.mm
    assert sorted(TRIMMED[size]) == sorted((width, height))
