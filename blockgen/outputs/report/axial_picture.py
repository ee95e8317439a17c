"""The axial layout to scale: a cut along the shaft through block, bearing unit, coupling and motor."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from blockgen.outputs import show
from blockgen.outputs.report.markup import Markup, element, joined
from blockgen.outputs.report.spans import Span, dimension_lines, in_rows, labels
from blockgen.outputs.report.values import Document, number_of

_WIDTH, _SIDE = 860.0, 34.0
_TALLEST = 380.0
_PITCH = 19.0
_STUB = 14.0
"""How much of screw and motor is shown beyond their flanges, mm."""


@dataclass(frozen=True, slots=True)
class View:
    """From mm to the picture: x along the shaft, z up from the base.

    Args:
        scale: Units a mm.
        left: Where x = 0 is.
        base: Where z = 0 is.
        axis: Shaft height, mm.
    """

    scale: float
    left: float
    base: float
    axis: float

    def x(self, along: float) -> float:
        """Return a place along the shaft."""
        return self.left + along * self.scale

    def z(self, height: float) -> float:
        """Return a height."""
        return self.base - height * self.scale

    def box(self, low: float, high: float, bottom: float, top: float, class_: str) -> Markup:
        """Return a rectangle from mm."""
        return element(
            "rect", class_=class_, x=self.x(low), y=self.z(top), width=max(high - low, 0.0) * self.scale,
            height=max(top - bottom, 0.0) * self.scale,
        )  # fmt: skip

    def round(self, low: float, high: float, diameter: float, class_: str) -> Markup:
        """Return what is round about the shaft, cut along it."""
        return self.box(low, high, self.axis - diameter / 2, self.axis + diameter / 2, class_)


def axial_picture(document: Document) -> Markup:
    """Return the picture."""
    ends = _ends(document)
    flat = _view(document, ends, 0.0)
    rows, names = _rows(document, flat), tuple(reversed(in_rows(_names(document, flat)[0])))
    top = 16.0 + len(names) * _PITCH
    view = _view(document, ends, top)
    heights = _names(document, view)[1]
    below = view.base + 22.0
    height = below + len(rows) * _PITCH
    drawn = joined((
        _hatching(),
        *_block(document, view), *_bought(document, view),
        element("line", class_="axis", x1=_SIDE / 2, y1=view.z(view.axis), x2=_WIDTH - _SIDE / 2, y2=view.z(view.axis)),
        dimension_lines(rows, below, _PITCH, view.base + 3.0),
        labels(names, 14.0, _PITCH, heights),
    ))  # fmt: skip
    return element(
        "svg", element("title", "Axial layout to scale"), element("desc", _words(document)), drawn, class_="picture",
        viewBox=f"0 0 {_WIDTH:g} {height:.0f}", role="img", aria_labelledby="axial-caption",
    )  # fmt: skip


def _hatching() -> Markup:
    """Return the lines that mark a grip."""
    line = element("line", class_="grip-line", x1=0.0, y1=0.0, x2=0.0, y2=6.0)
    turned = "rotate(45)"
    return element(
        "defs",
        element(
            "pattern",
            line,
            id="grip-lines",
            width=5.0,
            height=6.0,
            patternUnits="userSpaceOnUse",
            patternTransform=turned,
        ),
    )


def _need(document: Document, key: str, otherwise: float = 0.0) -> float:
    found = number_of(document, key)
    return otherwise if found is None else found


def _ends(document: Document) -> tuple[float, float]:
    """Return from where to where along the shaft the picture reaches, mm."""
    bearing = _need(document, "bearing.flange_thickness", 10.0)
    motor = _need(document, "motor.flange_thickness", 8.0)
    return -bearing - _STUB, _need(document, "length") + motor + _STUB


def _view(document: Document, ends: tuple[float, float], top: float) -> View:
    height = _top(document)
    scale = min((_WIDTH - 2 * _SIDE) / (ends[1] - ends[0]), _TALLEST / height)
    left = (_WIDTH - (ends[1] - ends[0]) * scale) / 2 - ends[0] * scale
    return View(scale, left, top + height * scale, _need(document, "shaft_height"))


def _top(document: Document) -> float:
    """Return the greatest height that is shown, mm."""
    axis = _need(document, "shaft_height")
    flanges = (_flange(document, end) / 2 for end in ("bearing", "motor"))
    return max(_need(document, "height"), *(axis + half for half in flanges))


def _flange(document: Document, end: str) -> float:
    """Return how high a flange is, mm."""
    return _need(document, f"{end}.flange_size", _need(document, f"{end}.flange_height", 60.0))


def _block(document: Document, view: View) -> Iterator[Markup]:
    """Yield block, window and bores."""
    length = _need(document, "length")
    yield view.box(0.0, length, 0.0, _need(document, "height"), "metal")
    for feature in document["features"]:
        pocket = feature["pocket"]
        if feature["kind"] == "window" and pocket:
            yield view.box(pocket["low"][0], pocket["high"][0], pocket["low"][2], pocket["high"][2], "room")
    depth, through = _need(document, "bearing_bore_depth"), _need(document, "bearing_through_bore")
    yield view.round(0.0, depth, _need(document, "bearing_bore"), "room")
    yield view.round(depth, _need(document, "bearing_wall"), through, "room")
    depth, through = _need(document, "motor_bore_depth"), _need(document, "motor_through_bore")
    yield view.round(length - depth, length, _need(document, "motor_bore"), "room")
    yield view.round(length - _need(document, "motor_wall"), length - depth, through, "room")


def _bought(document: Document, view: View) -> Iterator[Markup]:
    """Yield bearing unit, lock nut, screw, motor and coupling."""
    length = _need(document, "length")
    yield from _bearing_unit(document, view)
    thick, pilot = _need(document, "motor.flange_thickness", 8.0), _need(document, "motor.pilot_length")
    yield view.round(length, length + thick, _flange(document, "motor"), "part")
    yield view.round(length + thick, length + thick + _STUB, 0.9 * _flange(document, "motor"), "part cut")
    inwards = (
        (length - pilot, length) if _text(document, "motor.pilot_form") != "recessed" else (length, length + pilot)
    )
    yield view.round(*inwards, _need(document, "motor.pilot_diameter"), "part")
    yield from _coupling(document, view)
    reach, shaft = _need(document, "screw.journal_reach"), length - _need(document, "motor.shaft_length")
    yield view.round(_ends(document)[0], reach, _need(document, "screw.journal_diameter"), "shaft")
    yield view.round(shaft, length, _need(document, "motor.shaft_diameter"), "shaft")
    start, behind = (
        _need(document, "coupling_position"),
        _need(document, "coupling_position") + _need(document, "coupling.length"),
    )
    yield view.round(start, reach, _need(document, "screw.journal_diameter"), "grip")
    yield view.round(shaft, behind, _need(document, "motor.shaft_diameter"), "grip")


def _bearing_unit(document: Document, view: View) -> Iterator[Markup]:
    thick, pilot = _need(document, "bearing.flange_thickness", 10.0), _need(document, "bearing.pilot_length")
    yield view.round(-thick, 0.0, _flange(document, "bearing"), "part")
    into = _text(document, "bearing.pilot_direction") != "away"
    yield view.round(
        *((0.0, pilot) if into else (-thick - pilot, -thick)), _need(document, "bearing.pilot_diameter"), "part"
    )
    reach, nut = _need(document, "bearing.nut_reach"), _need(document, "bearing.nut_outer_diameter")
    yield view.round(pilot if into else 0.0, reach, nut, "part")


def _coupling(document: Document, view: View) -> Iterator[Markup]:
    start, whole = _need(document, "coupling_position"), _need(document, "coupling.length")
    hub, outside = _hub(document), _need(document, "coupling.outer_diameter")
    yield view.round(start + hub, start + whole - hub, 0.85 * outside, "flexible")
    yield view.round(start, start + hub, outside, "hub")
    yield view.round(start + whole - hub, start + whole, outside, "hub")


def _hub(document: Document) -> float:
    return _need(
        document, "coupling.hub_length", _need(document, "coupling.grip_max", _need(document, "coupling.length") / 3)
    )


def _text(document: Document, key: str) -> str:
    entry = document["inputs"].get(key)
    return str(entry["value"]) if entry else ""


def _distances(document: Document) -> Iterator[tuple[str, float, float]]:
    """Yield key, start and end of each distance that is dimensioned, mm."""
    length, start = _need(document, "length"), _need(document, "coupling_position")
    reach, shaft = _need(document, "screw.journal_reach"), length - _need(document, "motor.shaft_length")
    walls = (_need(document, "bearing_wall"), length - _need(document, "motor_wall"))
    yield "bearing_wall", 0.0, walls[0]
    yield "motor_wall", walls[1], length
    yield "window_length", walls[0], walls[1]
    yield "length", 0.0, length
    yield "coupling_position", 0.0, start
    yield "journal_grip", start, reach
    yield "shaft_gap", reach, shaft
    yield "motor_grip", shaft, start + _need(document, "coupling.length")


def _rows(document: Document, view: View) -> tuple[tuple[Span, ...], ...]:
    spans = [
        Span(view.x(low), view.x(high), f"{show.plain_id(key)} {show.number(document['dimensions'][key]['value'])}")
        for key, low, high in _distances(document)
    ]
    return in_rows(spans)


def _names(document: Document, view: View) -> tuple[list[Span], dict[str, float]]:
    """Return the names of the parts as labels, and the heights at which their lines end."""
    places = list(_places(document))
    spans = [Span(view.x(along), view.x(along), name) for name, along, _ in places]
    return spans, {name: view.z(view.axis + above) for name, _, above in places}


def _places(document: Document) -> Iterator[tuple[str, float, float]]:
    """Yield the name of each part with a place on it: along the shaft and above it, mm."""
    length, start, whole = (_need(document, k) for k in ("length", "coupling_position", "coupling.length"))
    hub, rim = _hub(document), 0.35 * _need(document, "coupling.outer_diameter")
    nut, reach = _need(document, "bearing.nut_outer_diameter"), _need(document, "bearing.nut_reach")
    yield "bearing unit", -_need(document, "bearing.flange_thickness", 10.0) / 2, 0.42 * _flange(document, "bearing")
    if nut:
        yield "lock nut", reach - 1.0, 0.38 * nut
    yield "journal", (reach + start) / 2, 0.0
    yield "hub on the journal", start + hub / 2, rim
    yield "coupling", start + whole / 2, rim
    yield "hub on the motor shaft", start + whole - hub / 2, rim
    yield "motor shaft", min(length - 1.0, (start + whole + length) / 2), 0.0
    thick = _need(document, "motor.flange_thickness", 8.0)
    yield "motor", length + thick / 2, 0.42 * _flange(document, "motor")


def _words(document: Document) -> str:
    """Return what the picture shows in words."""
    told = (
        f"{show.plain_id(key)} {show.number(document['dimensions'][key]['value'])} mm"
        for key, *_ in _distances(document)
    )
    return "; ".join(told)
