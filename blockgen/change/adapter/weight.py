"""Volume of an adapter on paper, without a kernel."""

from __future__ import annotations

import math

from blockgen.change.adapter.data import Adapter
from blockgen.mechanics.volume import body_volume, feature_volume, frustum
from blockgen.plan import Body


def outside_of(adapter: Adapter) -> Body:
    """Return the body of a plate, without its spigot, mm."""
    body = adapter.body
    return Body(body.thickness, 2 * body.half_width, body.top + body.bottom, 0.0, body.chamfer)


def volume_of_adapter(adapter: Adapter) -> float:
    """Return the volume of an adapter, mm3."""
    body, outside = adapter.body, outside_of(adapter)
    radius, edge = body.spigot_diameter / 2, body.chamfer
    holes = math.fsum(feature_volume(feature, outside) for feature in adapter.features)
    if adapter.kind == "ring":
        whole = 2 * frustum(radius - edge, radius, edge) + math.pi * radius**2 * (body.thickness - 2 * edge)
    else:
        spigot = frustum(radius - edge, radius, edge) + math.pi * radius**2 * (body.spigot_length - edge)
        whole = body_volume(outside) + spigot
    return whole - holes
