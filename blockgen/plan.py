"""What was decided: frozen records of every dimension, hole, tolerance and screw, each with its reason.

Coordinates in mm: x from the bearing seat plane (0) towards the motor seat plane (length), z up from the base
face, shaft axis at y = 0, z = shaft height.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from blockgen.record import Record

Point = tuple[float, float, float]
FeatureKind = Literal[
    "bore",
    "counterbored_hole",
    "tapped_hole",
    "clearance_hole",
    "window",
    "dowel_hole",
    "relief",
]


@dataclass(frozen=True, slots=True)
class Segment:
    """One turned piece of a cavity: a cylinder, cone or ring face about the feature's axis.

    Args:
        part: Plain name of the piece: mouth_chamfer, counterbore, seat, bore, shoulder, through, hole, thread, point.
        start: Distance from the mouth along the axis, mm.
        start_radius: Radius there, mm.
        end: Distance from the mouth along the axis, mm; equal to ``start`` for a flat ring.
        end_radius: Radius there, mm.
    """

    part: str
    start: float
    start_radius: float
    end: float
    end_radius: float


@dataclass(frozen=True, slots=True)
class Pocket:
    """A milled opening: a box with rounded corners about its cutting axis.

    Args:
        axis: Cutting axis, ``z`` or ``y``.
        low: Least corner (x, y, z), mm.
        high: Greatest corner (x, y, z), mm.
        corner_radius: Radius of the four edges parallel to the axis, mm; 0 only for a slot that runs out.
        open_low: True where it breaks through the outside at ``low`` along the axis.
        open_high: True where it breaks through the outside at ``high`` along the axis.
    """

    axis: Literal["z", "y"]
    low: Point
    high: Point
    corner_radius: float
    open_low: bool
    open_high: bool


@dataclass(frozen=True, slots=True)
class Feature:
    """One thing cut out of the block (or of the base plate).

    Args:
        id: Plain id such as ``motor_thread_1``.
        kind: Kind of feature.
        group: Id shared by alike features, such as ``motor_threads``.
        face: Id of the outside face in which the mouth lies.
        position: Centre of the mouth, mm.
        axis: Unit vector into the material.
        diameter: Bore, hole or tap-drill diameter, mm; window width for a window.
        depth: Full depth of that diameter from the mouth, mm; the drill point comes on top.
        through: True when it opens at its far end.
        profile: Turned pieces from the mouth inwards; empty for a pocket.
        pocket: The box for a window or relief; None for a turned cavity.
        opens_into: Ids of cavities and outside faces that it meets on purpose.
        thread: Designation such as ``M8-6H``; None without a thread.
        thread_depth: Full thread, mm.
        counterbore_diameter: mm.
        counterbore_depth: mm.
        fit: ISO 286 class of the diameter.
        upper: Upper deviation of the diameter, mm.
        lower: Lower deviation of the diameter, mm.
        call_out: Text for face names and drawing, for instance ``M8-6H depth 16``.
        keys: Dimension keys by attribute name.
    """

    id: str
    kind: FeatureKind
    group: str
    face: str
    position: Point
    axis: Point
    diameter: float
    depth: float
    through: bool
    profile: tuple[Segment, ...] = ()
    pocket: Pocket | None = None
    opens_into: tuple[str, ...] = ()
    thread: str | None = None
    thread_depth: float | None = None
    counterbore_diameter: float | None = None
    counterbore_depth: float | None = None
    fit: str | None = None
    upper: float | None = None
    lower: float | None = None
    call_out: str = ""
    keys: Mapping[str, str] = field(default_factory=dict)

    def face_id(self, part: str) -> str:
        """Return the id of one of the feature's faces."""
        return f"{self.id}.{part}"


@dataclass(frozen=True, slots=True)
class Body:
    """The outside of the block before anything is cut.

    The four edges parallel to z are rounded with ``outer_fillet``; where that is 0 they carry ``edge_chamfer`` like
    all other outside edges. Face ids: bearing_seat (x = 0), motor_seat (x = length), base (z = 0), top (z = height),
    side_plus_y, side_minus_y.
    """

    length: float
    width: float
    height: float
    outer_fillet: float
    edge_chamfer: float


@dataclass(frozen=True, slots=True)
class Annotation:
    """One characteristic to draw, to inspect and to write into the STEP file.

    Args:
        id: Characteristic id, for instance ``motor_bore.diameter``.
        kind: size (a diameter), distance, radius, depth, chamfer, thread, datum, texture, position, coaxiality,
            perpendicularity, flatness, parallelism or edge.
        feature: Feature id, feature group or outside face id.
        face: Face id on which it stands.
        value: Nominal size or width of the tolerance zone, mm (micrometres for texture); None for a datum.
        unit: Unit of value.
        upper: Upper deviation.
        lower: Lower deviation.
        fit: ISO 286 class.
        general: True where the deviations are those of the general tolerance, which the drawing states once for all.
        number: Number of the characteristic on drawing and inspection sheet; None where nothing is measured.
        covers: What it fixes, as ``<feature group or face>.<attribute>``; each such thing is fixed once.
        datums: Datum letters in order.
        diametral: True where the zone is a cylinder.
        text: Call-out text.
        ref: Dimension key of the value.
        reason: What it does for the function.
    """

    id: str
    kind: str
    feature: str
    face: str
    value: float | None
    unit: str = "mm"
    upper: float | None = None
    lower: float | None = None
    fit: str | None = None
    general: bool = False
    number: int | None = None
    covers: tuple[str, ...] = ()
    datums: tuple[str, ...] = ()
    diametral: bool = False
    text: str = ""
    ref: str | None = None
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Contributor:
    """One cause of misalignment between journal and motor shaft.

    Args:
        id: Plain id.
        end: Side at which it acts.
        quantity: offset (mm) or angle (mm over a measuring diameter).
        law: disc (uniform in a disc of radius ``size``), clearance (fit), known (vector).
        size: Radius of the disc, mm or rad; None for a clearance.
        limits: For a clearance: least and greatest diametral clearance, mm; negative where it may be tight.
        seat_x: x of the seat plane from which its arm is counted, mm.
        rotating: True where it turns with the shaft.
        characteristic: Annotation id or input key that it stands for.
    """

    id: str
    end: Literal["motor", "bearing", "both"]
    quantity: Literal["offset", "angle"]
    law: Literal["disc", "clearance", "known"]
    size: float | None
    limits: tuple[float, float] | None
    seat_x: float
    rotating: bool
    characteristic: str


@dataclass(frozen=True, slots=True)
class Fastener:
    """A group of equal screws or pins.

    Args:
        where: base, bearing_flange, motor_flange, lifting or dowel.
        standard: Standard of the part.
        size: Thread or diameter.
        length: Nominal length, mm; None where the flange thickness is not known.
        property_class: ISO 898-1 class.
        count: Number of parts.
        torque: Tightening torque, N*m.
        preload: Assembly preload, N.
        engagement: Thread engagement, mm.
        washer: Washer standard and size, or None.
        refs: Dimension keys by attribute name.
    """

    where: str
    standard: str
    size: str
    length: float | None
    property_class: str
    count: int
    torque: float | None
    preload: float | None
    engagement: float | None
    washer: str | None
    refs: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Frame:
    """A named coordinate frame: origin in mm, unit vectors of its x and z axes."""

    origin: Point
    x: Point
    z: Point


@dataclass(frozen=True, slots=True)
class Ligament:
    """The least wall between two cavities, or between a cavity and an outside face.

    Args:
        first: Feature id.
        second: Feature id or outside face id.
        wall: Least distance, mm; 0 where they meet.
        required: Least wall asked for, mm.
    """

    first: str
    second: str
    wall: float
    required: float


@dataclass(frozen=True, slots=True)
class Plan:
    """Everything that was decided about one block.

    Args:
        records: Every record by key: inputs, defaults, practice values and dimensions.
        dimensions: Keys of the dimensions, in the order of the summary.
        body: Outside of the block.
        features: Cavities of the block.
        base_features: Holes in the base plate, in the block's coordinates.
        annotations: Characteristics.
        contributors: Causes of misalignment.
        fasteners: Screws and pins.
        frames: Named frames.
        ligaments: The thinnest walls, thinnest margin first.
        notes: Findings of the sizing in words, in order (what moved, what grew, and why).
        material_density: kg/m3.
        others: The same block with each further motor of a family mounted; empty for a single motor.
    """

    records: Mapping[str, Record]
    dimensions: tuple[str, ...]
    body: Body
    features: tuple[Feature, ...]
    base_features: tuple[Feature, ...]
    annotations: tuple[Annotation, ...]
    contributors: tuple[Contributor, ...]
    fasteners: tuple[Fastener, ...]
    frames: Mapping[str, Frame]
    ligaments: tuple[Ligament, ...]
    notes: tuple[str, ...]
    material_density: float
    others: tuple[Plan, ...] = ()

    def number(self, key: str) -> float:
        """Return a numeric value of a record.

        Raises:
            TypeError: the value is not a number.
        """
        value = self.records[key].value
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            raise TypeError(f"{key} is {value!r}, not a number")
        return value

    def text(self, key: str) -> str:
        """Return a value as text; empty where there is none."""
        record = self.records.get(key)
        return "" if record is None or record.value is None else str(record.value)

    def feature(self, feature_id: str) -> Feature:
        """Return one feature.

        Raises:
            KeyError: there is no such feature.
        """
        for feature in self.features:
            if feature.id == feature_id:
                return feature
        raise KeyError(feature_id)
