"""Answers of one mesh: what the unit loads move, and what they press on the base, support by support."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal

from blockgen.evidence.stiffness.bore_motion import distortion
from blockgen.evidence.stiffness.loads import UNITS
from blockgen.evidence.stiffness.reactions import Grip, grip_of
from blockgen.evidence.stiffness.rigid import Patch, patch_of
from blockgen.evidence.stiffness.stress import Probe, probe_of
from blockgen.evidence.stiffness.subject import Subject
from blockgen.evidence.stiffness.supports import Support
from blockgen.evidence.stiffness.system import System

if TYPE_CHECKING:
    from blockgen.evidence.stiffness.rigid import Array

Flanges = Literal["free", "rigid"]
RIGID = 1e6
"""Bed between a face and a rigid flange, N/mm3: as soft as 0.2 mm of steel."""


@dataclass(frozen=True, slots=True)
class Response:
    """What the unit loads do, columns in the order of UNITS.

    Args:
        bearing_flange: Motion (6, 7) of the seat under the bearing flange, about the centre of the seat.
        motor_flange: Motion (6, 7) of the seat under the motor flange.
        bearing_bore: Motion (6, 7) of the bearing bore, about the centre of the bearing seat.
        motor_bore: Motion (6, 7) of the motor bore, about the centre of the motor seat.
        distortion: (7, 7) of each bore, mm2: mean square of what of its displacement is no rigid motion.
        shares: (screws, 3, 7): force in N of the block on the base nearest to each screw.
        whole: Wrench (6, 7) of the block on the base about the centre of the bearing seat.
        stress: (points, 6, 7): stress at the points of the mesh, MPa; what of it is singular is left to the probe.
    """

    bearing_flange: Array
    motor_flange: Array
    bearing_bore: Array
    motor_bore: Array
    distortion: tuple[Array, Array]
    shares: Array
    whole: Array
    stress: Array

    @property
    def compliance(self) -> Array:
        """(7, 7): what each unit load moves at the place and in the sense of each other; symmetric."""
        import numpy as np

        return np.vstack((self.bearing_flange[:1], self.motor_flange))


class Bench:
    """A meshed subject that is loaded under one support after the other."""

    def __init__(self, subject: Subject, mesh: Any) -> None:
        """Assemble all that does not depend on the support."""
        self.subject, self.mesh = subject, mesh
        self.system = System(mesh, subject.modulus, subject.poisson)
        space = self.system.space
        self.seats = tuple(
            patch_of(space, (f"{end}_flange",), place)
            for end, place in (("bearing", subject.bearing_seat), ("motor", subject.motor_seat))
        )
        self.bores = tuple(
            patch_of(space, (face,), place)
            for face, place in zip(subject.bores, (subject.bearing_seat, subject.motor_seat), strict=True)
        )
        self.bore_forms = tuple(self.system.area_form((face,)) for face in subject.bores)
        self.flange_form = self.system.area_form(("bearing_flange", "motor_flange"))
        self.probe: Probe = probe_of(subject, mesh)
        self._grips: dict[str, tuple[Grip, Any]] = {}

    @property
    def unknowns(self) -> int:
        """Number of unknowns."""
        return int(self.system.space.ndof)

    def respond(self, support: Support, flanges: Flanges) -> Response:
        """Return what the unit loads do under a support, the flanges free to bend with the seats or rigid."""
        grip, form = self._grip(support)
        beds = [(form, grip.bed)]
        if flanges == "free":
            self.system.hold(beds)
            displacement = self.system.solve(unit_forces(self.seats))
            seats = [seat.motion(displacement) for seat in self.seats]
        else:
            self.system.hold([*beds, (self.flange_form, RIGID)])
            displacement, seats = through_rigid(self.system, self.seats)
        bores = [bore.motion(displacement) for bore in self.bores]
        bent = [distortion(displacement, form, bore) for form, bore in zip(self.bore_forms, self.bores, strict=True)]
        return Response(
            seats[0], seats[1], bores[0], bores[1], (bent[0], bent[1]), grip.shares(displacement),
            grip.whole(displacement), self.probe.stresses(self.system, displacement),
        )  # fmt: skip

    def _grip(self, support: Support) -> tuple[Grip, Any]:
        if support.id not in self._grips:
            self._grips[support.id] = grip_of(self.system, self.subject, support), self.system.area_form(support.faces)
        return self._grips[support.id]


def unit_wrenches() -> tuple[Array, Array]:
    """Return the wrenches (6, 7) of the unit loads on the bearing seat and on the motor seat."""
    import numpy as np

    bearing, motor = np.zeros((6, len(UNITS))), np.zeros((6, len(UNITS)))
    bearing[0, 0] = 1.0
    motor[:, 1:] = np.eye(6)
    return bearing, motor


def unit_forces(seats: tuple[Patch, ...]) -> Array:
    """Return the nodal forces (unknowns, 7) of the unit loads on flanges that bend with their seats."""
    return sum(seat.spread(wrench) for seat, wrench in zip(seats, unit_wrenches(), strict=True))  # type: ignore[return-value]


def through_rigid(system: System, seats: tuple[Patch, ...]) -> tuple[Array, list[Array]]:
    """Return displacements (unknowns, 7) and motions (6, 7) of flanges that are rigid and lie on a stiff bed.

    The bed couples the seats to the six motions of each flange; these are eliminated: with the held system A, the
    coupling B and the flanges' own G, (G - B' A^-1 B) r = F and u = A^-1 B r.
    """
    import numpy as np

    coupling = RIGID * np.hstack([seat.columns for seat in seats])
    own = np.zeros((12, 12))
    for index, seat in enumerate(seats):
        own[6 * index : 6 * index + 6, 6 * index : 6 * index + 6] = RIGID * seat.gram
    answers = system.solve(coupling)
    motions = np.linalg.solve(own - coupling.T @ answers, np.vstack(unit_wrenches()))
    return answers @ motions, [motions[:6], motions[6:]]
