"""What is handed to the finite elements: the solid as text of the kernel, names of its faces, material, places."""

from __future__ import annotations

from dataclasses import dataclass

from blockgen.plan import Plan, Point


@dataclass(frozen=True, slots=True)
class Subject:
    """A block as the finite elements see it.

    Args:
        brep: The solid in the kernel's exchange text, mm.
        faces: Id of each face in the order of the solid: those of the plan, and ``ring_1`` .. under the heads,
            ``bearing_flange`` and ``motor_flange`` where the flanges lie on their seats.
        modulus: Modulus of elasticity, MPa.
        poisson: Poisson's ratio.
        density: kg/m3.
        screws: Base screws (x, y), mm.
        head: Diameter of the ring under a head, mm.
        bearing_seat: Centre of the bearing seat, mm.
        motor_seat: Centre of the motor seat, mm.
        coupling: Centre of the coupling, mm.
        bores: Ids of the faces that centre the pilots: bearing, motor.
        size: Greatest outside dimension, mm.
    """

    brep: bytes
    faces: tuple[str, ...]
    modulus: float
    poisson: float
    density: float
    screws: tuple[tuple[float, float], ...]
    head: float
    bearing_seat: Point
    motor_seat: Point
    coupling: Point
    bores: tuple[str, str]
    size: float


def subject_of(plan: Plan, brep: bytes, faces: tuple[str, ...]) -> Subject:
    """Return the subject of a plan and its analysis solid."""
    height, length = plan.number("shaft_height"), plan.body.length
    return Subject(
        brep=brep,
        faces=faces,
        modulus=plan.number("block_youngs_modulus"),
        poisson=plan.number("block_poisson"),
        density=plan.material_density,
        screws=_pairs(plan),
        head=plan.number("base_bearing_diameter"),
        bearing_seat=(0.0, 0.0, height),
        motor_seat=(length, 0.0, height),
        coupling=(plan.number("coupling_position") + plan.number("coupling.length") / 2, 0.0, height),
        bores=(_pilot_face(plan, "bearing"), _pilot_face(plan, "motor")),
        size=max(plan.body.length, plan.body.width, plan.body.height),
    )


def _pairs(plan: Plan) -> tuple[tuple[float, float], ...]:
    value = plan.records["base_pattern"].value
    pairs = value if isinstance(value, tuple) else ()
    return tuple((float(pair[0]), float(pair[1])) for pair in pairs if isinstance(pair, tuple))


def _pilot_face(plan: Plan, end: str) -> str:
    """Return the id of the cylinder that centres a pilot: the first one of the bore from its mouth."""
    bore = plan.feature(f"{end}_bore")
    return bore.face_id(next(s.part for s in bore.profile if s.start_radius == s.end_radius and s.end > s.start))
