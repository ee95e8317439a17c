"""How far a tool must reach into a bore or a pocket, as a ratio to its thickness."""

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


def cutter_ratio(depth: float, cutter_diameter: float) -> float:
    """Return depth of cut over cutter diameter of a milled pocket.

    Args:
        depth: Depth of the pocket from the side that it is milled from, mm.
        cutter_diameter: mm.

    Source: definition; limits of the ratio are the caller's.
    """
    return depth / cutter_diameter


def pocket_reach(depth: float, both_sides: bool) -> float:
    """Return the depth that a cutter must reach, mm: half where the pocket goes through and is cut from both sides."""
    return depth / 2 if both_sides else depth


def greatest_cutter_diameter(corner_radius: float, corner_to_cutter: float) -> float:
    """Return the greatest cutter that can roll round an inside corner, mm.

    Args:
        corner_radius: Inside corner radius, mm.
        corner_to_cutter: Corner radius over cutter radius asked for, above 1 so that the cutter never stands in
            the corner.
    """
    return 2 * corner_radius / corner_to_cutter
