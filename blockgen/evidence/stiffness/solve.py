"""Answers of one mesh: what the unit loads move, and what they press on the base, support by support."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal

from blockgen.evidence.stiffness.bore_motion import across_forces, between_axes, distortion
from blockgen.evidence.stiffness.loads import UNITS
from blockgen.evidence.stiffness.reactions import Grip, grip_of
from blockgen.evidence.stiffness.recovery import Recovery
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
        displacement: (corners of the mesh, 3, 7), mm.
        stress: (points, 6, 7): stress at the points of the mesh, MPa; what of it is singular is left to the probe.
        smooth: (corners of the mesh, 6, 7): the same averaged at the corners.
        gaps: (elements, parts, 7 + 4): what the stress lacks of being smooth, of the unit loads and of the forces of
            ``across_forces``; sums of products are energies.
    """

    bearing_flange: Array
    motor_flange: Array
    bearing_bore: Array
    motor_bore: Array
    distortion: tuple[Array, Array]
    shares: Array
    whole: Array
    displacement: Array
    stress: Array
    smooth: Array
    gaps: Array

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
        self.across = across_forces(self.bores, (subject.bearing_seat, subject.motor_seat), subject.coupling)
        self.probe: Probe = probe_of(subject, mesh)
        self.recovery = Recovery(mesh, self.probe, subject.modulus, subject.poisson)
        self._grips: dict[str, tuple[Grip, Any]] = {}

    @property
    def unknowns(self) -> int:
        """Number of unknowns."""
        return int(self.system.space.ndof)

    @property
    def corners(self) -> Array:
        """Corners of the mesh (corners, 3), mm."""
        return self.recovery.places

    def across_of(self, response: Response) -> Array:
        """Return offset and slope (4, 7) of the bores' axes, motor less bearing: y, z in mm; dy/dx, dz/dx in rad."""
        import numpy as np

        seats = self.subject.bearing_seat, self.subject.motor_seat
        return np.vstack(between_axes(response.bearing_bore, response.motor_bore, seats, self.subject.coupling))

    def respond(self, support: Support, flanges: Flanges) -> Response:
        """Return what the unit loads do under a support, the flanges free to bend with the seats or rigid."""
        grip, every, seats = self._solved(support, flanges)
        loads = len(UNITS)
        displacement = every[:, :loads]
        bores = [bore.motion(displacement) for bore in self.bores]
        bent = [distortion(displacement, form, bore) for form, bore in zip(self.bore_forms, self.bores, strict=True)]
        stress = self.probe.stresses(self.system, every)
        smooth = self.recovery.smooth(stress)
        return Response(
            seats[0], seats[1], bores[0], bores[1], (bent[0], bent[1]), grip.shares(displacement),
            grip.whole(displacement), self._at_corners(displacement), stress[:, :, :loads], smooth[:, :, :loads],
            self.recovery.gaps(stress, smooth),
        )  # fmt: skip

    def _solved(self, support: Support, flanges: Flanges) -> tuple[Grip, Array, list[Array]]:
        """Return the springs, displacements (unknowns, 7 + 4) and motions (6, 7) of both seats."""
        import numpy as np

        grip, form = self._grip(support)
        if flanges == "rigid":
            self.system.hold([(form, grip.bed), (self.flange_form, RIGID)])
            return grip, *through_rigid(self.system, self.seats, self.across)
        self.system.hold([(form, grip.bed)])
        found = self.system.solve(np.hstack((unit_forces(self.seats), self.across)))
        return grip, found, [seat.motion(found[:, : len(UNITS)]) for seat in self.seats]

    def _at_corners(self, displacement: Array) -> Array:
        """Return displacements (corners, 3, loads) of displacements (unknowns, loads)."""
        corners: Array = displacement.reshape(3, -1, displacement.shape[1])[:, : self.mesh.nv].swapaxes(0, 1)
        return corners

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


def through_rigid(system: System, seats: tuple[Patch, ...], forces: Array) -> tuple[Array, list[Array]]:
    """Return displacements (unknowns, 7 + more) and motions (6, 7) of flanges that are rigid and lie on a stiff bed.

    The bed couples the seats to the six motions of each flange; these are eliminated: with the held system A, the
    coupling B, the flanges' own G, wrenches W on the flanges and forces F on the solid,
    (G - B' A^-1 B) r = W + B' A^-1 F and u = A^-1 (B r + F).

    Args:
        system: The held system, bed on the seats included.
        seats: Bearing and motor seat.
        forces: (unknowns, more): forces on the solid, each a load beside the seven unit loads.
    """
    import numpy as np

    coupling = RIGID * np.hstack([seat.columns for seat in seats])
    own = np.zeros((12, 12))
    for index, seat in enumerate(seats):
        own[6 * index : 6 * index + 6, 6 * index : 6 * index + 6] = RIGID * seat.gram
    answers = system.solve(np.hstack((coupling, forces)))
    by_motion, by_force = answers[:, :12], answers[:, 12:]
    wrenches = np.hstack((np.vstack(unit_wrenches()), coupling.T @ by_force))
    motions = np.linalg.solve(own - coupling.T @ by_motion, wrenches)
    found = by_motion @ motions
    found[:, len(UNITS) :] += by_force
    return found, [motions[:6, : len(UNITS)], motions[6:, : len(UNITS)]]
