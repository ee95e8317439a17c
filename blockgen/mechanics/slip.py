"""Slip and lift of a part held down by a pattern of equal screws.

Loads act on the rigid part; the screws share them by elementary statics. Dowels carry nothing here: friction and
dowels are never added. Forces in N, lengths in mm, moments in N*m.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

Vector = tuple[float, float]


def pattern_centre(positions: Sequence[Vector]) -> Vector:
    """Return the centroid of equal screws, mm.

    Raises:
        ValueError: there is no screw.
    """
    if not positions:
        raise ValueError("no screw positions: a pattern needs at least one screw")
    count = len(positions)
    return math.fsum(x for x, _ in positions) / count, math.fsum(y for _, y in positions) / count


def screw_pattern_inertia(positions: Sequence[Vector]) -> float:
    """Return the sum of the squared distances of the screws from their centroid, mm2.

    Raises:
        ValueError: there is no screw.
    """
    centre_x, centre_y = pattern_centre(positions)
    return math.fsum((x - centre_x) ** 2 + (y - centre_y) ** 2 for x, y in positions)


def moment_about_centre(positions: Sequence[Vector], force: Vector, point: Vector) -> float:
    """Return the moment of an eccentric force about the centroid of the screws, N*m, positive from x to y.

    Args:
        positions: Screws, mm.
        force: In the plane of the joint, N.
        point: Where the force acts, mm.

    Raises:
        ValueError: there is no screw.
    """
    centre_x, centre_y = pattern_centre(positions)
    return ((point[0] - centre_x) * force[1] - (point[1] - centre_y) * force[0]) / 1000


def shear_shares(positions: Sequence[Vector], force: Vector, moment: float = 0.0) -> tuple[Vector, ...]:
    """Return the force in the plane of the joint that falls to each screw, N.

    Args:
        positions: Screws, mm.
        force: In the plane of the joint, N.
        moment: About the normal through the centroid of the screws, N*m, positive from x to y.

    Raises:
        ValueError: there is no screw, or a moment acts on screws that all stand in one place.

    Source: elementary statics: Q_i = F/n (+) M_z r_i / sum r^2, added as vectors.
    """
    centre_x, centre_y = pattern_centre(positions)
    twist = 0.0
    if moment:
        inertia = screw_pattern_inertia(positions)
        if inertia == 0:
            raise ValueError(f"moment {moment:g} N*m on screws in one place: a second screw or a dowel must hold it")
        twist = 1000 * moment / inertia
    share_x, share_y = force[0] / len(positions), force[1] / len(positions)
    return tuple((share_x - twist * (y - centre_y), share_y + twist * (x - centre_x)) for x, y in positions)


def greatest_share(shares: Sequence[Vector]) -> float:
    """Return the length of the greatest share, N."""
    return max(math.hypot(*share) for share in shares)


def slip_safety(preloads: float, lift: float, friction: float, force: float) -> float:
    """Return friction of the whole joint over the force along it; infinite without a force.

    Args:
        preloads: Sum of the least preloads of all screws, N.
        lift: Force that lifts the part off, N.
        friction: Least coefficient of friction of the joint.
        force: Force along the joint, N.

    Source: elementary statics: S = mu (sum F_Vmin - F_lift) / F; 0 where the lift outdoes the preload.
    """
    if force == 0:
        return math.inf
    return friction * max(0.0, preloads - lift) / abs(force)


def screw_slip_safety(least_preload: float, lift: float, friction: float, shares: Sequence[Vector]) -> float:
    """Return friction at the worst screw over its share; infinite without a load.

    With an eccentric force this is the lesser figure: one screw slips first.

    Args:
        least_preload: Least preload of one screw, N.
        lift: Force that lifts the part off at one screw, N.
        friction: Least coefficient of friction of the joint.
        shares: Shear shares of all screws, N.
    """
    return slip_safety(least_preload, lift, friction, greatest_share(shares))


def tilting_loads(distances: Sequence[float], moment: float) -> tuple[float, ...]:
    """Return what a tilting moment adds to each screw of a closed joint, N; negative is relief.

    Args:
        distances: Distance of each screw from the tilting axis along the joint, mm, with sign.
        moment: Tilting moment, N*m.

    Raises:
        ValueError: every screw stands on the tilting axis.

    Source: elementary statics: dF_i = M x_i / sum x^2.
    """
    inertia = math.fsum(x * x for x in distances)
    if inertia == 0:
        raise ValueError("every screw stands on the tilting axis: none can hold a moment, spread them")
    return tuple(1000 * moment * x / inertia for x in distances)
