"""Share of each term in the variance and in the worst case of the sum."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import fsum
from typing import Literal

from blockgen.alignment.scatter import greatest, mean_square, scaled
from blockgen.alignment.terms import Term

Quantity = Literal["offset", "angle"]


@dataclass(frozen=True, slots=True)
class Share:
    """What one term does to the sum.

    Args:
        id: Id of the term.
        characteristic: Characteristic or input key that it stands for.
        rotating: True where it turns with the shaft.
        greatest: Its own greatest length, mm or rad.
        mean_square: Its own E[r^2], mm2 or rad2.
        of_variance: Part of the sum of all mean squares, 0 to 1.
        of_worst: Part of the sum of all greatest lengths, 0 to 1.
    """

    id: str
    characteristic: str
    rotating: bool
    greatest: float
    mean_square: float
    of_variance: float
    of_worst: float


def shares(terms: Iterable[Term], quantity: Quantity = "offset") -> tuple[Share, ...]:
    """Return the shares of all terms that touch a quantity, the greatest first.

    Source: variances of independent vectors add: E[r^2] of the sum is the sum of E[r_i^2].
    """
    rows = []
    for term in terms:
        factor = term.offset_factor if quantity == "offset" else term.angle_factor
        if factor:
            scatter = scaled(term.scatter, factor)
            rows.append((term, greatest(scatter), mean_square(scatter)))
    squares, lengths = fsum(r[2] for r in rows) or 1.0, fsum(r[1] for r in rows) or 1.0
    found = [
        Share(term.id, term.characteristic, term.rotating, most, square, square / squares, most / lengths)
        for term, most, square in rows
    ]
    return tuple(sorted(found, key=lambda share: (-share.of_variance, share.id)))
