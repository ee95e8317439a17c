"""An adapter between the block that exists and another motor: plain frozen data."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from blockgen.change.rework.data import Operation
from blockgen.plan import Annotation, Fastener, Feature
from blockgen.record import Record

Kind = Literal["ring", "plate"]


@dataclass(frozen=True, slots=True)
class AdapterBody:
    """The outside of an adapter, about the shaft: x = 0 on the face towards the block, + towards the motor.

    Args:
        thickness: Length along the shaft without the spigot, mm.
        spigot_diameter: What enters the bore of the block; outside of a ring, mm.
        spigot_length: How far it enters, towards -x, mm; 0 for a ring.
        half_width: Half the plate across, mm; 0 for a ring.
        top: Upper edge above the shaft, mm; 0 for a ring.
        bottom: Lower edge below the shaft, mm; 0 for a ring.
        chamfer: Edge breaks, mm.
    """

    thickness: float
    spigot_diameter: float
    spigot_length: float
    half_width: float
    top: float
    bottom: float
    chamfer: float


@dataclass(frozen=True, slots=True)
class ChainShare:
    """What an adapter does to the shafts, cold; offsets at the coupling's centre in mm, angle in rad.

    Args:
        worst_before: Worst offset of the new motor on a block of its own.
        worst_after: The same with the adapter.
        p95_before: Not exceeded with 95 %, on a block of its own.
        p95_after: The same with the adapter.
        angle_before: Worst angle on a block of its own.
        angle_after: The same with the adapter.
        terms: Greatest offset at the coupling's centre by added term, mm.
        limit: Parallel offset allowed; None where there is none.
    """

    worst_before: float
    worst_after: float
    p95_before: float
    p95_after: float
    angle_before: float
    angle_after: float
    terms: Mapping[str, float]
    limit: float | None


@dataclass(frozen=True, slots=True)
class Adapter:
    """One adapter.

    Args:
        kind: ring or plate.
        title: In words.
        pain: Rank, the least first, with what it counts.
        why_pain: What makes it so.
        records: Its sizes, each with rule, inputs, source and origin.
        body: Its outside.
        features: What is cut into it, in its own coordinates.
        annotations: Sizes, fits and geometrical tolerances for its drawing.
        fasteners: Its screws.
        operations: What is done to the block for it.
        length_interval: Least and greatest length between the seats, adapter included, mm.
        length: Length between bearing seat and motor seat with it, mm.
        turn: Angle by which the motor is turned, deg.
        chain: What it does to the shafts.
        material: Its material.
        density: kg/m3.
        remarks: What to know.
    """

    kind: Kind
    title: str
    pain: int
    why_pain: str
    records: Mapping[str, Record]
    body: AdapterBody
    features: tuple[Feature, ...]
    annotations: tuple[Annotation, ...]
    fasteners: tuple[Fastener, ...]
    operations: tuple[Operation, ...]
    length_interval: tuple[float, float]
    length: float
    turn: float
    chain: ChainShare
    material: str
    density: float
    remarks: tuple[str, ...]

    def number(self, key: str) -> float:
        """Return a size in the unit of its record.

        Raises:
            TypeError: the value is not a number.
        """
        value = self.records[key].value
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            raise TypeError(f"{key} is {value!r}, not a number")
        return value
