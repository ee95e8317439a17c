"""How far a boring bar must reach into a bore, as a ratio to its thickness."""

from __future__ import annotations


def bar_ratio(length: float, bore: float, bar_fraction: float) -> float:
    """Return overhang over diameter of the boring bar that machines a bore.

    Args:
        length: Overhang: from the tool holder's face to the far end of the cut, mm.
        bore: Diameter of the narrowest bore that the bar passes, mm.
        bar_fraction: Bar diameter over that bore, so that chips get out.

    Source: definition; limits of the ratio are the caller's.
    """
    return length / (bore * bar_fraction)
