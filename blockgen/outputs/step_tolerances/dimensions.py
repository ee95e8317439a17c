"""Sizes and distances with their deviations, limits and fits."""

from __future__ import annotations

from collections.abc import Mapping

from blockgen.outputs.part21 import Ref
from blockgen.outputs.step_tolerances.records import Distance, Size
from blockgen.outputs.step_tolerances.writer import Writer


def write_size(writer: Writer, size: Size) -> None:
    """Write a diameter or radius.

    The schema grants a dimension one plus-minus tolerance, either two deviations or a class; the limits of a class
    therefore stand beside the nominal value.
    """
    dimension = writer.entities.add("DIMENSIONAL_SIZE", writer.aspect(size.target), size.name)
    _represent(writer, dimension, {"nominal value": size.value, **_limits(size)})
    if size.fit:
        writer.entities.add("PLUS_MINUS_TOLERANCE", _fit(writer, size.fit), dimension)
    else:
        _deviations(writer, dimension, size.upper, size.lower)


def write_distance(writer: Writer, distance: Distance) -> None:
    """Write a distance; its description is the id of the characteristic."""
    start, end = writer.aspect(distance.start), writer.aspect(distance.end)
    dimension = writer.entities.add("DIMENSIONAL_LOCATION", "linear distance", distance.id, start, end)
    _represent(writer, dimension, {"nominal value": distance.value})
    _deviations(writer, dimension, distance.upper, distance.lower)


def _limits(size: Size) -> Mapping[str, float]:
    if not size.fit or size.upper is None or size.lower is None:
        return {}
    return {"upper limit": size.value + size.upper, "lower limit": size.value + size.lower}


def _represent(writer: Writer, dimension: Ref, values: Mapping[str, float]) -> None:
    items = [writer.item(name, "POSITIVE_LENGTH_MEASURE", value) for name, value in values.items()]
    shown = writer.entities.add("SHAPE_DIMENSION_REPRESENTATION", "", items, writer.model.context)
    writer.entities.add("DIMENSIONAL_CHARACTERISTIC_REPRESENTATION", dimension, shown)


def _deviations(writer: Writer, dimension: Ref, upper: float | None, lower: float | None) -> None:
    """Write two deviations with their signs; none under the general tolerance."""
    if upper is None or lower is None:
        return
    band = writer.entities.add("TOLERANCE_VALUE", writer.length(lower), writer.length(upper))
    writer.entities.add("PLUS_MINUS_TOLERANCE", band, dimension)


def _fit(writer: Writer, fit: str) -> Ref:
    """Return a class of ISO 286: letter of the deviation, hole or shaft, grade."""
    letter = fit.rstrip("0123456789")
    kind = "hole" if letter.isupper() else "shaft"
    return writer.entities.add("LIMITS_AND_FITS", letter, kind, fit[len(letter) :], "")
