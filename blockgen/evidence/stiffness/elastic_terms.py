"""Load and stiffness as terms of the alignment chain: known vectors, the worst support and loads of each."""

from __future__ import annotations

from blockgen.alignment.scatter import Scatter, known
from blockgen.alignment.terms import Term
from blockgen.evidence.stiffness.envelope import greatest_offset, greatest_slope
from blockgen.evidence.stiffness.result import Across, Stiffness


def elastic_terms(stiffness: Stiffness) -> tuple[Term, ...]:
    """Return offset and slope under load as known terms, each lengthened to the unfavourable end of its band.

    The two may stem from different supports and loads: the chain is then on the safe side.
    """
    found = []
    for name, end, shares in (
        ("elastic_offset", greatest_offset(stiffness.variants), (1.0, 0.0)),
        ("elastic_slope", greatest_slope(stiffness.variants), (0.0, 1.0)),
    ):
        if end.case is not None and end.value:
            across = end.case.offset if name == "elastic_offset" else end.case.slope
            found.append(Term(name, _lengthened(across), *shares, characteristic="stiffness"))
    return tuple(found)


def _lengthened(across: Across) -> Scatter:
    factor = across.most / across.length if across.length else 1.0
    return known(across.y * factor, across.z * factor)
