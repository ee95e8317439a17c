"""The two flange joints as sizing and checks see them: what pulls on their screws and what turns them."""

from __future__ import annotations

import math
from collections.abc import Sequence

from blockgen.mechanics.contact import Face, Pull, opening_safety, ring_face
from blockgen.mechanics.slip import pattern_centre, tilting_loads
from blockgen.sizing.loads import Records, known, motor_weight, number

Positions = Sequence[tuple[float, float]]


def flange_face(records: Records, end: str) -> Face:
    """Return the face between a flange and its seat: its outline less the bore."""
    size = number(records, f"{end}.flange_size")
    width = number(records, f"{end}.flange_width", size) / 2
    height = number(records, f"{end}.flange_height", size) / 2
    circular = known(records, f"{end}.flange_shape") and records[f"{end}.flange_shape"].value == "round"
    return ring_face(width, height, number(records, f"{end}_bore"), round_=circular)


def bearing_pull(records: Records) -> float:
    """Return the thrust in N that pulls the bearing flange off its seat.

    The unit stands outside its wall: thrust towards the motor presses its flange on to the seat, thrust away from
    the motor pulls on its screws.
    """
    return number(records, "thrust_away")


def motor_pull(records: Records) -> Pull:
    """Return what the motor's weight does to its seat, which looks towards the motor; u is y and v is z.

    Down along +x the motor hangs on its screws; along -x it stands on its seat.
    """
    x, y, z = motor_weight(records)
    arm = number(records, "motor.centre_of_mass") / 1000
    # The weight presses the edge that is downhill and opens the one uphill.
    return Pull(x, -y * arm, -z * arm)


def motor_screw_pull(records: Records, positions: Positions) -> float:
    """Return the greatest pull in N of the hanging motor on one of its screws (y, z) in mm from the axis."""
    pull, centre = motor_pull(records), pattern_centre(positions)
    shares = [0.0] * len(positions)
    for axis, moment in ((0, pull.open_u), (1, pull.open_v)):
        distances = [place[axis] - centre[axis] for place in positions]
        if moment and any(abs(distance) > 1e-9 for distance in distances):
            shares = [a + b for a, b in zip(shares, tilting_loads(distances, moment), strict=True)]
    return max(0.0, max(shares) + pull.lift / len(positions))


def motor_opening(records: Records, positions: Positions, sure: float) -> float:
    """Return the safety against a gap under the motor flange; ``sure`` is the least preload of one screw, N."""
    face = flange_face(records, "motor")
    return opening_safety(face, pattern_centre(positions), len(positions) * sure, [motor_pull(records)])


def torque_slip(positions: Positions, sure: float, friction: float, torque: float) -> float:
    """Return the friction of a flange at its screws over the torque that turns it; infinite without a torque.

    Args:
        positions: Screws (y, z) from the axis, mm.
        sure: Least preload of one screw, N.
        friction: Coefficient of friction of the joint.
        torque: N*m.

    Source: elementary statics, friction taken at each screw: S = mu F_V sum r / M.
    """
    held = friction * sure * math.fsum(math.hypot(*place) for place in positions) / 1000
    return math.inf if torque == 0 else held / abs(torque)
