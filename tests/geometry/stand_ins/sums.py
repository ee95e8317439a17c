"""Volumes of simple bodies by hand, and where parts stand, for the tests of stand-ins."""

from __future__ import annotations

import math

from blockgen.geometry.stand_ins.sizes import stand_in_sizes
from tests.sizing.strategies import sized


def rod(radius, length):
    return math.pi * radius**2 * length


def integral(f, low, high, steps=4000):
    """Return the integral of a function by the midpoint rule, with nodes closer to the ends."""
    total = 0.0
    for i in range(steps):
        a, b = (math.pi * (i + k) / steps for k in (0, 1))
        left, right = (low + (high - low) * (1 - math.cos(t)) / 2 for t in (a, b))
        total += f((left + right) / 2) * (right - left)
    return total


def sizes_of(**changes):
    """Return a plan with keys changed and the stand-ins' sizes."""
    plan = sized(**changes)
    return plan, stand_in_sizes(plan)


def placed(part):
    """Return a part's shape where it stands."""
    from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform

    return BRepBuilderAPI_Transform(part.shape, part.location, True).Shape()


def box_of(part):
    """Return the box of a part where it stands, mm."""
    from blockgen.geometry.kernel import bounding_box

    return bounding_box(placed(part))
