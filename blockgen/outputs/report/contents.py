"""What a report is made from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from blockgen.evidence.characteristics import InspectionRow
from blockgen.outputs.report.viewer import Viewer


@dataclass(frozen=True, slots=True)
class Contents:
    """What a report is made from.

    Args:
        document: The summary, the very one that becomes ``summary.json``.
        drawing: The drawing as SVG text.
        spec: The resolved spec as text.
        files: Role by name of the files in the set.
        inspection: Rows of the inspection sheet.
        view: The 3D view; None where nothing was modelled.
        stiffness_picture: PNG of the bent block; None without finite elements.
    """

    document: Mapping[str, Any]
    drawing: str
    spec: str
    files: Mapping[str, str]
    inspection: tuple[InspectionRow, ...] = ()
    view: Viewer | None = None
    stiffness_picture: bytes | None = None
