"""What a bearing unit has beyond its mounting face: pilot, nut, seal, and the bore for the screw."""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.reading.along import Along, AxisLine
from blockgen.reading.vectors import Vector, dot, length, minus, square_to

_BEYOND = 0.2
_TOUCH = 0.05


@dataclass(frozen=True, slots=True)
class Beyond:
    """What stands beyond the mounting face of a bearing unit, mm.

    Args:
        reach: Furthest face beyond the mounting face.
        nut_diameter: Greatest turned diameter beyond the pilot; None where nothing stands there.
        nut_faces: Number of its faces.
        bore: Least bore that goes through on the axis; None without one.
        bore_length: Its length.
    """

    reach: float
    nut_diameter: float | None
    nut_faces: int
    bore: float | None
    bore_length: float


def beyond_of(view: Along, line: AxisLine, height: float, stand: float, inside: float) -> Beyond:
    """Return what stands beyond a mounting face.

    Args:
        view: The shape along the axis.
        line: What is turned about the axis.
        height: Height of the mounting face, mm.
        stand: How far the pilot stands out, mm.
        inside: Radius inside which it is looked for, mm.
    """
    near = [dot(c, view.direction) for c in view.corners if _off(c, view.direction, line.foot) <= inside]
    reach = max([*near, *(b.high for b in line.bands if b.radius <= inside)], default=height) - height
    nut = [b for b in line.bands if not b.hollow and b.high > height + stand + _BEYOND and b.radius <= inside]
    widest = max((b.radius for b in nut), default=0.0)
    same = [b for b in nut if widest - b.radius < 0.01]
    bores = [b for b in line.bands if b.hollow and b.kind == "cylinder" and b.sweep > 180.0]
    bore = min(bores, key=lambda b: (round(b.radius, 4), -b.height), default=None)
    return Beyond(
        reach, 2 * widest if nut else None, sum(len(b.faces) for b in same), None if bore is None else 2 * bore.radius,
        0.0 if bore is None else bore.height,
    )  # fmt: skip


def _off(corner: Vector, direction: Vector, foot: Vector) -> float:
    return length(minus(square_to(corner, direction), foot))
