"""Materials of blocks, plates and bases: elasticity, strength, density, expansion, pressure under a head."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from blockgen.standards.tables import Row, load_table, number, one_of, optional

SHEAR_RULE = "0.6 x tensile strength (common practice, no source)"


@dataclass(frozen=True, slots=True)
class Material:
    """One material.

    Args:
        name: As the table spells it, ``EN AW-6082-T6``.
        kind: steel, aluminium or cast_iron.
        density: kg/m3.
        youngs_modulus: MPa.
        poisson: Poisson's ratio.
        yield_strength: Rp0.2 or ReH, for grey iron Rp0.1; MPa.
        tensile_strength: Rm, MPa.
        shear_strength: MPa.
        shear_rule: How the shear strength came about.
        expansion: Linear, 1/K.
        bearing_pressure: Permitted under a screw head, MPa; None where unknown.
        source: Which printed values these are.
        status: read or memory.
    """

    name: str
    kind: str
    density: float
    youngs_modulus: float
    poisson: float
    yield_strength: float
    tensile_strength: float
    shear_strength: float
    shear_rule: str
    expansion: float
    bearing_pressure: float | None
    source: str
    status: str


@cache
def material(name: str) -> Material:
    """Return a material by its name, case and spaces ignored (``6082``, ``en aw-6082-t6``, ``1.4301``).

    Raises:
        TableError: the material is not in the table; the message names the nearest ones.

    Source: given with each material.
    """
    rows = _by_plain_name()
    found = rows.get(_plain(name))
    return _from_row(found if found is not None else one_of("material", name, _by_any_name()))


def material_names() -> tuple[str, ...]:
    """Return the names of all materials in the table."""
    return tuple(row["name"] for row in load_table("materials").rows)


def _plain(name: str) -> str:
    return "".join(name.split()).casefold()


def _names(row: Row) -> list[str]:
    return [row["name"], *row["aliases"].split("|")]


@cache
def _by_any_name() -> Mapping[str, Row]:
    return {name: row for row in load_table("materials").rows for name in _names(row)}


@cache
def _by_plain_name() -> Mapping[str, Row]:
    return {_plain(name): row for name, row in _by_any_name().items()}


def _from_row(row: Row) -> Material:
    tensile = number(row, "tensile_strength")
    return Material(
        name=row["name"],
        kind=row["kind"],
        density=number(row, "density"),
        youngs_modulus=number(row, "youngs_modulus"),
        poisson=number(row, "poisson"),
        yield_strength=number(row, "yield_strength"),
        tensile_strength=tensile,
        shear_strength=0.6 * tensile,
        shear_rule=SHEAR_RULE,
        expansion=number(row, "expansion"),
        bearing_pressure=optional(row, "bearing_pressure"),
        source=row["source"],
        status=row["status"],
    )
