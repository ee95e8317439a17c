"""Plain data as JSON with the same bytes every time."""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from typing import Any


def as_json(document: Mapping[str, Any]) -> str:
    """Return a document as JSON text with a line feed at its end; the same document gives the same text."""
    return json.dumps(document, indent=2, ensure_ascii=False, allow_nan=False) + "\n"


def tidy(of: Any) -> Any:
    """Return plain data with numbers rounded, so that the last bits of a float never reach a file.

    Numbers of 0.001 and more are rounded to 1e-6, smaller ones to six significant digits; what is not finite
    becomes None.
    """
    if isinstance(of, float):
        return _rounded(of)
    if isinstance(of, Mapping):
        return {str(key): tidy(part) for key, part in of.items()}
    if isinstance(of, (list, tuple)):
        return [tidy(part) for part in of]
    return of


def _rounded(number: float) -> float | None:
    if not math.isfinite(number):
        return None
    if abs(number) < 1e-12:
        return 0.0
    return round(number, 6) if abs(number) >= 1e-3 else float(f"{number:.6g}")
