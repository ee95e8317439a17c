"""Two solids against each other: least distance and common volume."""

from __future__ import annotations

import math
from collections.abc import Iterator

import numpy as np
from OCP.BRep import BRep_Tool
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepClass3d import BRepClass3d_SolidClassifier
from OCP.BRepExtrema import BRepExtrema_DistanceSS
from OCP.TopAbs import TopAbs_IN, TopAbs_VERTEX
from OCP.TopoDS import TopoDS, TopoDS_Shape

from blockgen.errors import KernelError
from blockgen.geometry.kernel import indexed, shape_list, solids_of, volume_of
from blockgen.geometry.solid_part import Element, SolidPart, gap, gaps, holds

_TOUCH = 1e-6
"""Distance up to which the kernel's figures are taken for contact, mm."""

_FAR = 1e6

# Cheap questions first: they bound the dear ones. By rank of both elements: corner 0, edge 1, face 2.
_DEARNESS = np.array([[0, 1, 2], [1, 4, 3], [2, 3, 5]])


def least_distance(first: SolidPart, second: SolidPart, within: float = _FAR) -> float:
    """Return the least distance of two surfaces, mm: 0 where they touch or cross, infinite beyond ``within``.

    Faces, edges and corners are taken in the order of the distance of their boxes; none that could not be nearer
    than the best so far is handed to the kernel.

    Args:
        first: Part where it stands.
        second: Part where it stands.
        within: Distance from which it no longer matters, mm.
    """
    best = within + _TOUCH
    for bound, one, other in _candidates(first, second, best):
        if bound >= best or best < _TOUCH:
            break
        found = BRepExtrema_DistanceSS(one.shape, other.shape, one.bounds, other.bounds, best, _TOUCH / 10)
        if found.IsDone():
            best = min(best, float(found.DistValue()))
    if best < _TOUCH:
        return 0.0
    return best if best <= within else math.inf


def _candidates(first: SolidPart, second: SolidPart, within: float) -> Iterator[tuple[float, Element, Element]]:
    """Yield pairs of elements by the distance of their boxes, cheap pairs first among equals."""
    sides = [_near(first, second, within), _near(second, first, within)]
    if not all(len(side) for side in sides):
        return
    apart = gaps(first.boxes[sides[0]], second.boxes[sides[1]])
    rows, columns = np.nonzero(apart < within)
    bounds = np.round(apart[rows, columns], 9)
    dear = _DEARNESS[_ranks(first)[sides[0]][rows], _ranks(second)[sides[1]][columns]]
    for place in np.lexsort((columns, rows, dear, bounds)):
        one, other = sides[0][rows[place]], sides[1][columns[place]]
        yield float(bounds[place]), first.elements[one], second.elements[other]


def _near(part: SolidPart, other: SolidPart, within: float) -> np.ndarray[tuple[int, ...], np.dtype[np.int64]]:
    """Return the numbers of the elements that are not too far from another part's box."""
    return np.nonzero(gaps(part.boxes, np.array([other.box]))[:, 0] < within)[0]


def _ranks(part: SolidPart) -> np.ndarray[tuple[int, ...], np.dtype[np.int64]]:
    return np.array([element.rank for element in part.elements])


def one_in_other(first: SolidPart, second: SolidPart) -> bool:
    """Tell whether one of two solids whose surfaces do not touch lies wholly inside the other."""
    return _inside(first, second) or _inside(second, first)


def _inside(outer: SolidPart, inner: SolidPart) -> bool:
    """Tell whether a solid of one part lies inside another; one corner of each is enough, as no surfaces touch."""
    if not (outer.solid and inner.solid and holds(outer.box, inner.box)):
        return False
    corners = [TopoDS.Vertex_s(indexed(solid, TopAbs_VERTEX).FindKey(1)) for solid in solids_of(inner.shape)]
    return any(
        BRepClass3d_SolidClassifier(solid, BRep_Tool.Pnt_s(corner), _TOUCH).State() == TopAbs_IN
        for solid in solids_of(outer.shape)
        for corner in corners
    )


def common_solids(first: SolidPart, second: SolidPart) -> list[TopoDS_Shape]:
    """Return the solids that two parts have in common.

    Raises:
        KernelError: the kernel cannot intersect them.
    """
    common = BRepAlgoAPI_Common()
    common.SetArguments(shape_list([first.shape]))
    common.SetTools(shape_list([second.shape]))
    common.Build()
    if not common.IsDone():
        raise KernelError(f"the kernel could not intersect {first.id} and {second.id}")
    return list(solids_of(common.Shape()))


def common_volume(first: SolidPart, second: SolidPart) -> float:
    """Return the common volume of two parts, mm3."""
    return math.fsum(volume_of(solid) for solid in common_solids(first, second))


def meets(first: SolidPart, second: SolidPart) -> bool:
    """Tell whether two solids touch, cross or lie in one another."""
    if gap(first.box, second.box) > 0.0:
        return False
    return least_distance(first, second, 0.0) == 0.0 or one_in_other(first, second)
