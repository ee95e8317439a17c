"""Property classes of screws: ISO 898-1 (carbon and alloy steel) and ISO 3506-1 (stainless steel)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from blockgen.standards.tables import load_table, number, one_of, optional, row_for


@dataclass(frozen=True, slots=True)
class PropertyClass:
    """Strength of a screw, MPa.

    Args:
        name: ``8.8``, ``A2-70``.
        tensile: Least tensile strength Rm.
        yield_strength: Least ReL or Rp0.2 (for 8.8 and above, and stainless).
        yield_kind: Which of the two it is.
        proof: Stress under proof load Sp; None where the standard gives none.
        source: Standard, with the status of the figures.
    """

    name: str
    tensile: float
    yield_strength: float
    yield_kind: str
    proof: float | None
    source: str


@lru_cache(maxsize=4096)
def property_class(name: str, diameter: float) -> PropertyClass:
    """Return the strength of a property class; 8.8 is stronger above 16 mm.

    Args:
        name: 4.6, 5.6, 8.8, 10.9, 12.9, A2-70 or A4-80.
        diameter: Nominal diameter of the screw, mm.

    Raises:
        TableError: the class is not in the table, or not for that diameter.

    Source: ISO 898-1, Table 3; ISO 3506-1.
    """
    table = load_table("iso898")
    one_of("property class", name, dict.fromkeys(r["name"] for r in table.rows))
    row = row_for((r for r in table.rows if r["name"] == name), f"diameter for class {name}", diameter)
    return PropertyClass(
        name=name,
        tensile=number(row, "tensile"),
        yield_strength=number(row, "yield_strength"),
        yield_kind=row["yield_kind"],
        proof=optional(row, "proof"),
        source=f"{row['standard']} [{row['status']}]",
    )
