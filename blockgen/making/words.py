"""Numbers and ids as the rows of the setup sheet show them."""

from __future__ import annotations

import math
from collections.abc import Iterable


def mm(value: float) -> str:
    """Return a length in mm to a hundredth, without needless digits."""
    return f"{round(value, 2):g}"


def box(sizes: Iterable[float]) -> str:
    """Return sizes in mm as ``160 x 130 x 90``."""
    return " x ".join(mm(size) for size in sizes)


def kg(mass: float) -> str:
    """Return a mass in kg: two decimals below 10, one above."""
    return f"{mass:.2f}" if mass < 10 else f"{mass:.1f}"


def ratio(value: float) -> str:
    """Return a length over a diameter up to the next tenth, for instance ``3.4 D``: never shown below a limit."""
    return f"{math.ceil(round(value * 10, 6)) / 10:.1f} D"


def plain(name: str) -> str:
    """Return an id such as ``bearing_bore`` in words."""
    return name.replace("_", " ")
