"""The material of block and base: a table of the user's own, a preset, or the standards table."""

from __future__ import annotations

from blockgen.errors import InputError, Problem
from blockgen.mechanics.stripping import SHEAR_RATIO
from blockgen.record import Ledger
from blockgen.standards.materials import SHEAR_RULE, Material, material
from blockgen.standards.tables import TableError, quoted

# Poisson's ratio of metals where an own material gives none (common practice, no source).
_POISSON = 0.3
_LIGHTEST, _HEAVIEST = 500.0, 25000.0


_NEEDED = ("kind", "density", "youngs_modulus", "yield_strength", "tensile_strength", "expansion")


def resolve_material(ledger: Ledger, part: str) -> Material:
    """Return the material of ``block`` or ``base``; an own table or preset wins over the standards table.

    Raises:
        InputError: neither the spec, a preset nor the table knows it, or an own table lacks values.
    """
    name = ledger.text(f"{part}.material")
    missing = [key for key in _NEEDED if not ledger.known(f"material.{name}.{key}")]
    if len(missing) == len(_NEEDED):
        return _listed(name, f"{part}.material")
    if missing:
        found = ", ".join(key for key in _NEEDED if key not in missing)
        remedy = f"add {', '.join(missing)} under [material.{name!r}]"
        raise InputError([Problem("", None, f"{part}.material", found, "a whole material table", remedy)])
    return _sensible(_own(ledger, name))


def _sensible(found: Material) -> Material:
    """Refuse an own material whose values no metal has.

    Raises:
        InputError: yield above tensile strength, or a density outside 500 to 25000 kg/m3.
    """
    key = f"material.{found.name}"
    if found.yield_strength > found.tensile_strength:
        text = f"{found.yield_strength:g} MPa above tensile_strength {found.tensile_strength:g} MPa"
        raise InputError([Problem("", None, f"{key}.yield_strength", text, "at most the tensile strength", "")])
    if not _LIGHTEST <= found.density <= _HEAVIEST:
        text = f"{found.density:g} kg/m3"
        raise InputError([Problem("", None, f"{key}.density", text, f"{_LIGHTEST:g} to {_HEAVIEST:g} kg/m3", "")])
    return found


def _listed(name: str, key: str) -> Material:
    try:
        return material(name)
    except TableError as error:
        expected = "a material of the table, a preset or a [material.NAME] table"
        raise InputError([Problem("", None, key, quoted(name), expected, error.remedy)]) from error


def _own(ledger: Ledger, name: str) -> Material:
    def value(quantity: str) -> float:
        return ledger.number(f"material.{name}.{quantity}")

    def known(quantity: str) -> bool:
        return ledger.known(f"material.{name}.{quantity}")

    shear_known = known("shear_strength")
    density = ledger[f"material.{name}.density"]
    return Material(
        name=name,
        kind=ledger.text(f"material.{name}.kind"),
        density=value("density"),
        youngs_modulus=value("youngs_modulus"),
        poisson=value("poisson") if known("poisson") else _POISSON,
        yield_strength=value("yield_strength"),
        tensile_strength=value("tensile_strength"),
        shear_strength=value("shear_strength") if shear_known else SHEAR_RATIO * value("tensile_strength"),
        shear_rule=density.source if shear_known else SHEAR_RULE,
        expansion=value("expansion"),
        bearing_pressure=value("bearing_pressure") if known("bearing_pressure") else None,
        source=density.source,
        status=density.origin,
    )


def enter_material(ledger: Ledger, part: str, of: Material) -> None:
    """Enter the strength and stiffness of a part's material for the checks; what the material does not tell is None."""
    using, source = (f"{part}.material",), f"{of.source} [{of.status}]"
    for name, value, unit in (
        ("tensile_strength", of.tensile_strength, "MPa"),
        ("bearing_pressure", of.bearing_pressure, "MPa"),
        ("youngs_modulus", of.youngs_modulus, "MPa"),
        ("poisson", of.poisson, ""),
        ("expansion", of.expansion, "1/K"),
    ):
        ledger.decide(f"{part}_{name}", value, unit, f"of {of.name}", using, source)
