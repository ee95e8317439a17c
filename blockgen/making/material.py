"""The family of the block's material, which sets stock, allowances and cutting rate."""

from __future__ import annotations

from typing import Literal, get_args

from blockgen.plan import Plan
from blockgen.standards.materials import material

Kind = Literal["steel", "aluminium", "cast_iron"]


def material_kind(plan: Plan) -> Kind:
    """Return the family of the block's material: of the user's own table, else of the standards table.

    Raises:
        ValueError: the family is none of steel, aluminium and cast_iron, or the material is in no table.
    """
    name = plan.text("block.material")
    found = plan.text(f"material.{name}.kind") or material(name).kind
    for kind in get_args(Kind):
        if found == kind:
            return kind  # type: ignore[no-any-return] # one of the literals
    raise ValueError(f"material kind {found!r}: expected {', '.join(get_args(Kind))}")
