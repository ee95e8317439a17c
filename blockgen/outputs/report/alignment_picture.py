"""Offset or angle of the shafts as circles to scale: half, 95 %, 99.73 %, worst, and what is allowed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from blockgen.outputs import show
from blockgen.outputs.report.markup import Markup, element, joined

_SIZE, _MIDDLE, _REACH = 300.0, 150.0, 132.0
_LABELS, _WIDTH, _PITCH = 322.0, 520.0, 40.0
_FAR = 4.0
"""Times the worst from which the allowance would make all else a dot, and is told in words alone."""

_LEVELS = (
    ("limit", "allowed"), ("worst", "worst case"), ("p9973", "99.73 % inside"), ("p95", "95 % inside"),
    ("p50", "half inside"),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Ring:
    """One circle: its level, name, value, and radius in the picture (None where it lies outside)."""

    level: str
    name: str
    value: float
    radius: float | None


def rings(spread: Mapping[str, Any]) -> tuple[Ring, ...]:
    """Return the circles from the outside in."""
    known = [(level, name, float(spread[level])) for level, name in _LEVELS if spread[level] is not None]
    worst = float(spread["worst"])
    inside = [value for level, _, value in known if level != "limit" or value <= _FAR * worst]
    scale = _REACH / max(inside) if max(inside) > 0 else 0.0
    far = max(inside)
    made = (Ring(level, name, value, value * scale if value <= far else None) for level, name, value in known)
    return tuple(sorted(made, key=lambda ring: -ring.value))


def alignment_picture(spread: Mapping[str, Any], title: str) -> Markup:
    """Return the picture of one quantity.

    Args:
        spread: Worst case, percentiles and allowance, as the summary has them.
        title: Name of the quantity.
    """
    shown = rings(spread)
    drawn = joined((*(_circle(ring) for ring in shown if ring.radius is not None), _cross()))
    named = joined(_label(ring, 46.0 + i * _PITCH, spread["unit"]) for i, ring in enumerate(shown))
    return element(
        "svg", element("title", title), drawn, named, class_="picture rings", role="img",
        viewBox=f"0 0 {_WIDTH:g} {_SIZE:g}",
    )  # fmt: skip


def _circle(ring: Ring) -> Markup:
    return element("circle", class_=f"ring ring-{ring.level}", cx=_MIDDLE, cy=_MIDDLE, r=max(ring.radius or 0.0, 0.5))


def _cross() -> Markup:
    low, high = _MIDDLE - _REACH - 10.0, _MIDDLE + _REACH + 10.0
    return element("path", class_="axis", d=f"M{low} {_MIDDLE}H{high}M{_MIDDLE} {low}V{high}")


def _label(ring: Ring, at: float, unit: str) -> Markup:
    """Return name and value of a circle with a line to it."""
    value = f"{show.significant(ring.value, 3)} {unit}"
    lead = None
    if ring.radius is not None:
        x, y = _touch(ring.radius, at)
        lead = element("path", class_="thin", d=f"M{x:.2f} {y:.2f}L{_LABELS - 6:.2f} {at - 4:.2f}")
    far = "" if ring.radius is not None else ", outside the picture"
    words = (
        element("text", ring.name, class_="label strong", x=_LABELS, y=at),
        element("text", f"{value}{far}", class_="label", x=_LABELS, y=at + 16.0),
    )
    return element("g", lead, *words)


def _touch(radius: float, at: float) -> tuple[float, float]:
    """Return where the line of a label meets its circle: as near to the label's height as the circle comes."""
    up = max(-0.9 * radius, min(0.9 * radius, (at - 4 - _MIDDLE) * 0.5))
    return _MIDDLE + (radius**2 - up**2) ** 0.5, _MIDDLE + up
