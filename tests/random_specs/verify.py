"""What must hold for every random spec: an answer in words, or a block that is as its plan says."""

from __future__ import annotations

import copy
from collections.abc import Iterator

from blockgen.alignment.chain import align
from blockgen.alignment.heat import expansions_of
from blockgen.checks import check
from blockgen.checks.status import status
from blockgen.errors import InfeasibleError
from blockgen.plan import Body, Feature, Ligament, Plan
from blockgen.sizing.size import size
from blockgen.spec.load import parse_spec
from tests.random_specs.generate import Tables
from tests.sizing.strategies import toml

SAME = 1e-6
"""Greatest difference of two distances that are meant to be one, mm."""

NEAR = 0.01
"""The same where one is found by points on a cone, mm."""


def planned(tables: Tables) -> tuple[Plan | None, list[str]]:
    """Return the plan, or None with its faults: an infeasible answer must name a conflict and hold its cures."""
    try:
        plan = size(parse_spec(toml(tables)))
    except InfeasibleError as error:
        return None, list(_faults_of_answer(error, tables))
    findings = check(plan, align(plan, expansions_of(plan)))
    known = {"pass", "warn", "fail", "not_assessed"}
    faults = [f"{f.id}: verdict {f.verdict}" for f in findings if f.verdict not in known]
    failed = any(f.verdict == "fail" for f in findings)
    if failed != status(plan, findings).startswith("NOT FOR MANUFACTURE"):
        faults.append("status does not tell of the failed checks")
    if broken_through(plan) and not any(f.verdict == "fail" and f.id.startswith("thin_wall") for f in findings):
        faults.append("a wall of nothing and no check that fails")
    return plan, faults


def _faults_of_answer(error: InfeasibleError, tables: Tables) -> Iterator[str]:
    """Yield what is wrong with an infeasible answer; each cure with values is tried."""
    if not error.conflicts or not all(c.title and c.facts for c in error.conflicts):
        yield "infeasible without a named conflict"
    for cure in error.cures:
        if cure.changes:
            cured = copy.deepcopy(tables)
            for key, value in cure.changes:
                table, name = key.split(".")
                cured.setdefault(table, {})[name] = value
            try:
                size(parse_spec(toml(cured)))
            except InfeasibleError as still:
                yield f"cure {cure.changes} does not cure: {still}"


def built(plan: Plan) -> list[str]:
    """Return the faults of the plan's solid: count, validity, volume, places of holes, walls."""
    from blockgen.geometry.block import build_block
    from blockgen.geometry.kernel import is_valid, solids_of
    from blockgen.mechanics.volume import feature_volume, reference_volume

    block = build_block(plan)
    faults = [] if len(solids_of(block.shape)) == 1 and is_valid(block.shape) else ["not one valid solid"]
    least = min(feature_volume(f, plan.body) for f in plan.features)
    more = block.volume - reference_volume(plan)
    if broken_through(plan):  # the sum takes what two cavities share away twice
        faults += [] if more > -least / 10 else [f"volume {more:.3f} mm3 below a sum that is too small"]
    elif abs(more) > least / 10:
        faults.append(f"volume {more:.3f} mm3 off, smallest feature {least:.1f} mm3")
    for feature in plan.features:
        faults += _misplaced(feature, block.faces)
    for ligament in plan.ligaments:
        faults += _wrong_wall(ligament, plan, block.faces)
    return faults


def broken_through(plan: Plan) -> bool:
    """Tell whether cavities run into one another or out of the block that ought not to; a check fails then."""
    return any(ligament.wall <= SAME < ligament.required for ligament in plan.ligaments)


def _misplaced(feature: Feature, faces) -> Iterator[str]:
    """Yield each round face of a feature whose axis or radius is not the plan's; one at least must be there."""
    from OCP.BRepAdaptor import BRepAdaptor_Surface
    from OCP.GeomAbs import GeomAbs_Cylinder

    pieces = {s.part: s for s in feature.profile if s.start_radius == s.end_radius and s.start != s.end}
    found = 0
    for part, piece in pieces.items():
        for face in faces.get(feature.face_id(part), ()):
            surface = BRepAdaptor_Surface(face)
            if surface.GetType() != GeomAbs_Cylinder:
                yield f"{feature.face_id(part)} is no cylinder"
                continue
            found += 1
            off = max(_off_axis(surface.Cylinder(), feature), abs(surface.Cylinder().Radius() - piece.end_radius))
            if off > SAME:
                yield f"{feature.face_id(part)} is {off:g} mm off"
    if pieces and not found:
        yield f"{feature.id} is not in the solid"


def _off_axis(cylinder, feature: Feature) -> float:
    """Return how far a cylinder's axis lies from the feature's, mm."""
    place = cylinder.Axis().Location()
    apart = [a - b for a, b in zip((place.X(), place.Y(), place.Z()), feature.position, strict=True)]
    along = sum(a * b for a, b in zip(apart, feature.axis, strict=True))
    return max(abs(a - along * b) for a, b in zip(apart, feature.axis, strict=True))


def _wrong_wall(ligament: Ligament, plan: Plan, faces) -> Iterator[str]:
    """Yield a reported wall that is not the distance of the solid's own faces."""
    first, second = (_faces_of(part, plan, faces) for part in (ligament.first, ligament.second))
    if not first or not second:
        return
    measured, near = _distance(first, second), SAME * 10
    if measured > ligament.wall + SAME:  # the nearest place may lie where a third cavity has taken the face away
        measured = _distance(*(_whole_faces(part, plan) for part in (ligament.first, ligament.second)))
    if measured > ligament.wall + SAME:
        measured = min(measured, _from_cones(ligament, plan))
        near = NEAR
    if not -SAME * 10 <= measured - ligament.wall <= near:
        yield f"wall {ligament.first} to {ligament.second}: {ligament.wall:.6f} mm told, {measured:.6f} measured"


def _faces_of(part: str, plan: Plan, faces):
    """Return a feature's faces, or an outside face as it was before its edges were broken: walls count to that."""
    if part in faces:
        return (_side(part, plan.body),)
    return tuple(face for name, some in faces.items() if name.startswith(f"{part}.") for face in some)


def _from_cones(ligament: Ligament, plan: Plan) -> float:
    """Return the least distance from points on the cones of two parts to the other part, mm.

    The kernel's distance of faces misses places in the midst of a cone.
    """
    import math

    from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeVertex
    from OCP.gp import gp_Pnt

    least = math.inf
    for one, other in ((ligament.first, ligament.second), (ligament.second, ligament.first)):
        if one in {feature.id for feature in plan.features}:
            against = _whole_faces(other, plan)
            for point in _points_on_cones(plan.feature(one)):
                least = min(least, _distance([BRepBuilderAPI_MakeVertex(gp_Pnt(*point)).Vertex()], against))
    return least


def _points_on_cones(feature: Feature) -> Iterator[tuple[float, float, float]]:
    """Yield points on the tapered pieces of a feature."""
    import math

    index = max(range(3), key=lambda i: abs(feature.axis[i]))
    others = [i for i in range(3) if i != index]
    for piece in feature.profile:
        if piece.start_radius != piece.end_radius and piece.start != piece.end:
            for share, turn in ((i / 20, math.tau * j / 72) for i in range(21) for j in range(72)):
                point = list(feature.position)
                point[index] += feature.axis[index] * (piece.start + share * (piece.end - piece.start))
                radius = piece.start_radius + share * (piece.end_radius - piece.start_radius)
                point[others[0]] += radius * math.cos(turn)
                point[others[1]] += radius * math.sin(turn)
                yield point[0], point[1], point[2]


def _whole_faces(part: str, plan: Plan):
    """Return the faces of a whole cavity, as if it were the only one, or a side of the box."""
    from blockgen.geometry.block import cavity_tool

    if part not in {feature.id for feature in plan.features}:
        return (_side(part, plan.body),)
    return tuple(face for _, face in cavity_tool(plan.feature(part), plan)[1])


def _side(name: str, body: Body):
    """Return one side of the box around the block as a face."""
    from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace
    from OCP.gp import gp_Ax3, gp_Dir, gp_Pln, gp_Pnt

    half = body.width / 2
    place, normal, across = {
        "bearing_seat": ((0, 0, 0), (1, 0, 0), (0, 1, 0)),
        "motor_seat": ((body.length, 0, 0), (1, 0, 0), (0, 1, 0)),
        "base": ((0, 0, 0), (0, 0, 1), (1, 0, 0)),
        "top": ((0, 0, body.height), (0, 0, 1), (1, 0, 0)),
        "side_plus_y": ((0, half, 0), (0, 1, 0), (1, 0, 0)),
        "side_minus_y": ((0, -half, 0), (0, 1, 0), (1, 0, 0)),
    }[name]
    plane = gp_Pln(gp_Ax3(gp_Pnt(*place), gp_Dir(*normal), gp_Dir(*across)))
    return BRepBuilderAPI_MakeFace(plane, -2000, 2000, -2000, 2000).Face()


def _distance(first, second) -> float:
    """Return the least distance of two sets of faces by the kernel, mm."""
    from OCP.BRep import BRep_Builder
    from OCP.BRepExtrema import BRepExtrema_DistShapeShape
    from OCP.TopoDS import TopoDS_Compound

    def joined(some):
        whole, builder = TopoDS_Compound(), BRep_Builder()
        builder.MakeCompound(whole)
        for face in some:
            builder.Add(whole, face)
        return whole

    return float(BRepExtrema_DistShapeShape(joined(first), joined(second)).Value())
