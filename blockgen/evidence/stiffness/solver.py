"""One mesh after the other in one process: first a coarse one, then finer where it counts."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from blockgen.errors import KernelError
from blockgen.evidence.stiffness.answers import Raw, Task, answer
from blockgen.evidence.stiffness.field import TRIANGLES_MOST, Field, field_of
from blockgen.evidence.stiffness.mesh import COARSE, EVEN, mesh_of, refine
from blockgen.evidence.stiffness.outside import Outside, outside_of
from blockgen.evidence.stiffness.result import MeshUsed
from blockgen.evidence.stiffness.solve import Bench, Response
from blockgen.evidence.stiffness.stress import von_mises


@dataclass(frozen=True, slots=True)
class Step:
    """What is to be done next.

    Args:
        marked: Elements of the mesh that are to be cut first; none to stay with the mesh.
        kinds: Places of the kinds that are to be solved, in the task.
    """

    marked: tuple[int, ...]
    kinds: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Wanted:
    """The field that is asked for: place of the kind and of the case in the task, stress away from edges in MPa."""

    kind: int
    case: int
    away: float


class Solver:
    """A task on one mesh, which can be refined."""

    def __init__(self, task: Task) -> None:
        """Mesh the subject of a task.

        Raises:
            KernelError: no mesh can be made.
        """
        self._task = task
        self._bench: Bench | None = None
        self._mesh: Any = mesh_of(task.subject, COARSE)
        self._outside = outside_of(self._mesh)
        self._kept: dict[int, tuple[Bench, Response, Outside]] = {}

    def step(self, step: Step) -> tuple[MeshUsed, dict[int, Raw]]:
        """Return the mesh and the answers of the kinds that are asked for.

        Raises:
            KernelError: no mesh can be made.
        """
        if step.marked:
            self._refine(step.marked)
        if not step.kinds:
            return MeshUsed(self._mesh.ne, 0), {}
        bench = self._bench = self._bench or Bench(self._task.subject, self._mesh)
        return MeshUsed(self._mesh.ne, bench.unknowns), {kind: self._answer(bench, kind) for kind in step.kinds}

    def _refine(self, marked: tuple[int, ...]) -> None:
        """Refine the mesh; where it does not bear that, mesh anew and finer everywhere."""
        self._bench = None
        try:
            refine(self._mesh, marked)
        except KernelError:
            self._mesh = mesh_of(self._task.subject, EVEN)
            self._outside = outside_of(self._mesh)
        finer = outside_of(self._mesh)
        if len(finer.triangles) <= TRIANGLES_MOST:
            self._outside = finer

    def _answer(self, bench: Bench, kind: int) -> Raw:
        response = bench.respond(*self._task.kinds[kind])
        self._kept[kind] = bench, response, self._outside
        return answer(bench, response, self._task.cases, self._task.mass)

    def field(self, wanted: Wanted) -> Field:
        """Return what a case does to the outside under a kind that was solved here."""
        import numpy as np

        bench, response, outside = self._kept[wanted.kind]
        support, flanges = self._task.kinds[wanted.kind]
        case = self._task.cases[wanted.case]
        factors = np.array(case.factors)
        places = bench.corners
        stress = von_mises(response.smooth @ factors)
        words = (case.title, support.title, flanges)
        return field_of(words, (places, response.displacement @ factors, stress), outside, wanted.away)
