"""Which motor of a family is to blame where no block exists: one that fits no block at all comes first."""

from __future__ import annotations

from blockgen.errors import InfeasibleError
from blockgen.sizing.defaults import complete
from blockgen.sizing.family import Records, alone, entries, named, title_of
from blockgen.sizing.rounds import decide_sizes


def at_fault(records: Records, error: InfeasibleError) -> InfeasibleError:
    """Return the conflict of the first motor that fits no block alone, else the one of the family.

    Args:
        records: Given and preset records.
        error: What the sizing of the whole family said.
    """
    motors = entries(records)
    for entry in motors if len(motors) > 1 else ():
        try:
            decide_sizes(complete(alone(records, entry)))
        except InfeasibleError as own:
            return named(own, entry, f"{title_of(records, entry)} alone")
    return error
