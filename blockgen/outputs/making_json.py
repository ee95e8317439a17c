"""The numbers of the setup sheet with their reasons, for ``summary.json``."""

from __future__ import annotations

from typing import Any

from blockgen.making.setup_sheet import SetupSheet
from blockgen.outputs.summary_json import dimension_document
from blockgen.outputs.tidy import tidy


def with_making(document: dict[str, Any], sheet: SetupSheet) -> dict[str, Any]:
    """Return a summary with the records of the setup sheet under ``making``."""
    records = {record.key: dimension_document(record) for record in sheet.records}
    return {**document, "making": tidy(records)}
