"""The material of block and base: a table of the user's own, a preset, or the standards table."""

from __future__ import annotations

from dataclasses import fields

from blockgen.errors import InputError, Problem
from blockgen.record import Ledger
from blockgen.standards.materials import Material, material


def resolve_material(ledger: Ledger, part: str) -> Material:
    """Return the material of ``block`` or ``base``; own values win over the standards table.

    Raises:
        InputError: neither the spec, a preset nor the table knows it.
    """
    name = ledger.text(f"{part}.material")
    own = {f.name: _own(ledger, name, f.name) for f in fields(Material)}
    given = {key: value for key, value in own.items() if value is not None}
    if not given:
        return _listed(name, f"{part}.material")
    return _own_material(name, given, part)


def _own(ledger: Ledger, name: str, quantity: str) -> object:
    key = f"material.{name}.{quantity}"
    return ledger[key].value if ledger.known(key) else None


def _listed(name: str, key: str) -> Material:
    try:
        return material(name)
    except ValueError as error:
        raise InputError(
            [Problem("", None, key, repr(name), "a material of the table, a preset or a [material.NAME]", str(error))]
        ) from error


def _own_material(name: str, given: dict[str, object], part: str) -> Material:
    needed = ("kind", "density", "youngs_modulus", "yield_strength", "tensile_strength", "expansion")
    missing = [key for key in needed if key not in given]
    if missing:
        found = ", ".join(sorted(given))
        remedy = "add " + ", ".join(f"{key} = ..." for key in missing) + f" under [material.{name!r}]"
        raise InputError([Problem("", None, f"{part}.material", found, "a full material table", remedy)])
    defaults: dict[str, object] = {
        "name": name,
        "poisson": 0.3,
        "shear_strength": 0.6 * float(str(given["tensile_strength"])),
        "bearing_pressure": None,
        "source": "the spec's own material",
        "status": "given",
    }
    return Material(**{**defaults, **given})  # type: ignore[arg-type]
