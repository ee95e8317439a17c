"""What the file says of tolerances, as plain records: no kernel, no numbers of entities."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

SizeName = Literal["diameter", "radius"]


@dataclass(frozen=True, slots=True)
class Target:
    """What a characteristic stands on.

    Args:
        name: Id of the feature, the group or the face.
        faces: Ids of its faces.
        pattern: True for a group of equal features, False for one feature.
        axis: True where the common axis of the faces counts, not their surface.
    """

    name: str
    faces: tuple[str, ...]
    pattern: bool = False
    axis: bool = False


@dataclass(frozen=True, slots=True)
class Datum:
    """A datum feature: letter and what it stands on."""

    id: str
    letter: str
    target: Target


@dataclass(frozen=True, slots=True)
class Size:
    """A diameter or radius.

    Args:
        id: Id of the characteristic.
        name: Which of the two.
        target: The faces that have it.
        value: Nominal, mm.
        upper: Upper deviation, mm; None under the general tolerance.
        lower: Lower deviation, mm; None under the general tolerance.
        fit: ISO 286 class.
    """

    id: str
    name: SizeName
    target: Target
    value: float
    upper: float | None
    lower: float | None
    fit: str | None


@dataclass(frozen=True, slots=True)
class Distance:
    """A distance between two faces, or a face and an axis; value and deviations like those of a size, mm."""

    id: str
    start: Target
    end: Target
    value: float
    upper: float | None
    lower: float | None


@dataclass(frozen=True, slots=True)
class Zone:
    """A geometrical tolerance.

    Args:
        id: Id of the characteristic.
        kind: flatness, perpendicularity, parallelism, coaxiality or position.
        target: What lies in the zone.
        width: Width or diameter of the zone, mm.
        datums: Letters in order.
        diametral: True where the zone is a cylinder.
    """

    id: str
    kind: str
    target: Target
    width: float
    datums: tuple[str, ...]
    diametral: bool


@dataclass(frozen=True, slots=True)
class Texture:
    """Greatest roughness Ra in micrometres; no target for all faces without their own."""

    id: str
    target: Target | None
    roughness: float


@dataclass(frozen=True, slots=True)
class CallOut:
    """What the format has no tolerance for: a named property of the faces.

    Args:
        id: Id of the characteristic.
        name: Name of the property.
        target: The faces that have it.
        texts: Texts by name.
        lengths: Lengths by name, mm.
    """

    id: str
    name: str
    target: Target
    texts: Mapping[str, str]
    lengths: Mapping[str, float]


Record = Datum | Size | Distance | Zone | Texture | CallOut


@dataclass(frozen=True, slots=True)
class Tolerances:
    """All that one file carries.

    Args:
        records: In the order of the plan's characteristics.
        general: Class of the general tolerance, such as ``ISO 2768-mK``; empty for none.
        left_out: Ids of characteristics whose faces the solid does not have.
    """

    records: tuple[Record, ...]
    general: str
    left_out: tuple[str, ...]
