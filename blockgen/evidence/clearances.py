"""What solids showed: least distances and common volumes of the parts of an assembly, and what reaches the screws."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Kind = Literal["clear", "seated", "engaged", "clash"]


@dataclass(frozen=True, slots=True)
class Pair:
    """Two parts that come near one another.

    Args:
        first: Part id.
        second: Part id.
        kind: clear; seated: planned contact, faces touch; engaged: planned overlap of a thread in its tap drill hole or
            of a pin in its pilot hole; clash: all else that touches or overlaps.
        distance: Least distance, mm; 0 where they touch or overlap.
        volume: Common volume, mm3.
        expected: Common volume that is planned, mm3; None where none is planned or it cannot be told.
        planned: What holds them together by the plan; empty where nothing does.
    """

    first: str
    second: str
    kind: Kind
    distance: float
    volume: float
    expected: float | None = None
    planned: str = ""

    @property
    def beyond(self) -> float:
        """Common volume beyond the planned one, mm3."""
        return max(0.0, self.volume - (self.expected or 0.0))

    @property
    def name(self) -> str:
        """Both parts."""
        return f"{self.first} and {self.second}"


@dataclass(frozen=True, slots=True)
class Clearance:
    """A distance that has a name.

    Args:
        id: Plain id.
        title: From what to what.
        distance: Least distance, mm; negative for what lies beyond a plane or a limit.
        asked: Distance asked for, mm; None where none is.
        key: Record behind what is asked; empty where nothing is.
        first: Part that is measured.
        second: Part, face or limit against which it is measured.
        note: What to know about it.
    """

    id: str
    title: str
    distance: float
    asked: float | None
    key: str
    first: str
    second: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Access:
    """Whether a tool reaches one place.

    Args:
        where: base, motor, bearing, coupling or lock_nut.
        part: Id of the screw, or the hub or nut in words.
        tool: Tool and how it is held.
        free: True where it reaches and turns.
        length: Free length along the tool's axis, mm.
        needed: Length asked for, mm.
        angle: Free swing, deg; None for tools that are not swung.
        needed_angle: Swing asked for, deg; None for the same.
        in_way: Ids of the parts in the way.
        directions: Free directions from to, deg, about the shaft: seen from the motor, counter-clockwise from +y.
        note: What to know about it.
    """

    where: str
    part: str
    tool: str
    free: bool
    length: float
    needed: float
    angle: float | None = None
    needed_angle: float | None = None
    in_way: tuple[str, ...] = ()
    directions: tuple[tuple[float, float], ...] = ()
    note: str = ""


@dataclass(frozen=True, slots=True)
class Clearances:
    """Everything that was found out about the room between the parts.

    Args:
        pairs: Pairs that come near, in the order of the parts.
        named: Distances with a name.
        access: Tools at their places.
        apart: Number of pairs whose bounding boxes are too far apart to be measured.
        not_made: Planned contacts that the solids do not show: names of both parts, and what is off.
    """

    pairs: tuple[Pair, ...]
    named: tuple[Clearance, ...]
    access: tuple[Access, ...]
    apart: int
    not_made: tuple[str, ...] = ()

    @property
    def clashes(self) -> tuple[Pair, ...]:
        """Pairs that clash, the greatest volume first."""
        found = [pair for pair in self.pairs if pair.kind == "clash"]
        return tuple(sorted(found, key=lambda pair: (-round(pair.beyond, 6), pair.first, pair.second)))
