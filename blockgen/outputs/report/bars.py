"""Bars: a picture for the eye beside a figure in words."""

from __future__ import annotations

from blockgen.outputs.report.markup import Markup, coordinate, element

_FULL = 100.0
_MOST = 1.5


def use_bar(margin: float, verdict: str) -> Markup:
    """Return the bar of a check: how much of what is allowed is used, with a mark at all of it.

    Args:
        margin: 1 - use.
        verdict: pass, warn, fail; gives the colour and the pattern.
    """
    use, at = min(max(1.0 - margin, 0.0), _MOST), _FULL / _MOST
    beyond = element("path", class_="bar-paper", d="M92 2l8 4l-8 4z") if 1.0 - margin > _MOST else None
    return element(
        "svg",
        element("rect", class_="bar-paper", x=0.0, y=2.0, width=_FULL, height=8.0),
        element("rect", class_=f"bar-{verdict}", x=0.0, y=2.0, width=max(use * at, 0.6), height=8.0),
        element("rect", class_="bar-mark", x=at - 0.4, y=0.0, width=0.8, height=12.0),
        beyond,
        viewBox="0 0 100 12", preserveAspectRatio="none", class_="bar", aria_hidden="true", focusable="false",
    )  # fmt: skip


def share_bar(share: float, class_: str = "share") -> Markup:
    """Return the bar of a share of one."""
    return element(
        "svg",
        element("rect", class_="bar-paper", x=0.0, y=2.0, width=_FULL, height=8.0),
        element("rect", class_=f"bar-{class_}", x=0.0, y=2.0, width=_FULL * min(max(share, 0.0), 1.0), height=8.0),
        viewBox=f"0 0 {coordinate(_FULL)} 12", preserveAspectRatio="none", class_="bar", aria_hidden="true",
        focusable="false",
    )  # fmt: skip
