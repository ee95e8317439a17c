"""ISO 2768-1 (linear, edge and angular) and ISO 2768-2 (geometrical) general tolerances.

ISO 2768-2 has been withdrawn in favour of ISO 22081, which holds no table; drawings still cite it.
"""

from __future__ import annotations

from functools import lru_cache

from blockgen.standards.tables import TableError, load_table, number, one_of, optional, row_for


@lru_cache(maxsize=4096)
def general_tolerance(size: float, letter: str = "m") -> float:
    """Return the permitted +- deviation of a linear size, mm.

    Args:
        size: Nominal size, mm, 0.5 to 4000.
        letter: f, m, c or v.

    Raises:
        TableError: size or letter is outside the table.

    Source: ISO 2768-1, Table 1.
    """
    return _cell("iso2768_linear", size, letter)


@lru_cache(maxsize=4096)
def edge_tolerance(size: float, letter: str = "m") -> float:
    """Return the permitted +- deviation of an external radius or chamfer height, mm.

    Raises:
        TableError: size or letter is outside the table.

    Source: ISO 2768-1, Table 2.
    """
    return _cell("iso2768_edges", size, letter)


@lru_cache(maxsize=4096)
def angular_tolerance(shorter_leg: float, letter: str = "m") -> float:
    """Return the permitted +- deviation of an angle, deg.

    Args:
        shorter_leg: Length of the shorter side of the angle, mm.
        letter: f, m, c or v.

    Raises:
        TableError: length or letter is outside the table.

    Source: ISO 2768-1, Table 3.
    """
    return _cell("iso2768_angular", shorter_leg, letter) / 60


@lru_cache(maxsize=4096)
def geometrical_tolerance(characteristic: str, length: float, letter: str = "K") -> float:
    """Return a general geometrical tolerance, mm.

    Args:
        characteristic: flatness (straightness the same), perpendicularity, symmetry or run_out.
        length: Nominal length, mm (for perpendicularity the shorter side).
        letter: H, K or L.

    Raises:
        TableError: characteristic, length or letter is outside the table.

    Source: ISO 2768-2, Tables 1 to 4.
    """
    rows = load_table("iso2768_geometrical").rows
    one_of("characteristic", characteristic, dict.fromkeys(r["characteristic"] for r in rows))
    one_of("general tolerance class", letter, dict.fromkeys("HKL"))
    row = row_for((r for r in rows if r["characteristic"] == characteristic), "length", length)
    return number(row, letter)


def _cell(table: str, size: float, letter: str) -> float:
    one_of("general tolerance class", letter, dict.fromkeys("fmcv"))
    row = row_for(load_table(table).rows, "nominal size", size)
    found = optional(row, letter)
    if found is None:
        limit = f"class {letter} has none from {row['above']} to {row['to']} mm"
        raise TableError("general tolerance", f"{size:g} mm", limit, "write the tolerance at the dimension")
    return found
