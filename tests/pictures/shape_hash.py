"""The hash of what a picture shows: the features, the box and the places along the shaft."""

from __future__ import annotations

import hashlib
import json
from pathlib import Path

ALONG = ("length", "coupling_position", "shaft_gap", "journal_grip", "motor_grip", "bearing_wall", "motor_wall")


def shape_hash(summary_json: Path) -> str:
    """Return the SHA-256 of the shape in a ``summary.json``."""
    summary = json.loads(summary_json.read_text(encoding="utf-8"))
    along = {key: summary["dimensions"][key]["value"] for key in ALONG}
    shape = [summary["features"], summary["bounding_box"], along]
    return hashlib.sha256(json.dumps(shape, sort_keys=True).encode()).hexdigest()
