"""What stands as source in a record: the citation of the table that was looked up, with its status."""

from __future__ import annotations

from functools import cache

from blockgen.standards.tables import load_table

CP = "common practice, no source"


@cache
def cited(*tables: str) -> str:
    """Return the citations of standards tables, each with standard, edition and whether it was read or remembered."""
    return "; ".join(dict.fromkeys(load_table(name).info.citation for name in tables))
