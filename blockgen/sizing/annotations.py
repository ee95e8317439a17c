"""The characteristics of the block: the one list for drawing, inspection sheet and tolerances in the model."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from blockgen.plan import Annotation, Feature
from blockgen.record import Ledger
from blockgen.sizing import annotate_form, annotate_holes, annotate_sizes

_NOT_MEASURED = {"datum", "note", "chamfer"}
_NOT_NUMBERED = {"block.texture"}


def annotate(ledger: Ledger, features: Sequence[Feature]) -> tuple[Annotation, ...]:
    """Return every characteristic of a sized block, numbered in order; enters the records of their values."""
    found = (
        *annotate_form.datums(),
        *annotate_form.form(ledger),
        *(note for feature in features if feature.kind == "bore" for note in annotate_holes.bore(ledger, feature)),
        *annotate_sizes.outside(ledger),
        *_openings(ledger, features),
        *(
            note
            for members in annotate_holes.hole_groups(features).values()
            for note in annotate_holes.group(ledger, members)
        ),
        *annotate_form.textures(ledger),
        *annotate_sizes.edges(ledger, features),
    )
    return tuple(_numbered(found))


def _openings(ledger: Ledger, features: Sequence[Feature]) -> Iterable[Annotation]:
    for feature in features:
        if feature.pocket is not None:
            yield from (annotate_sizes.window if feature.kind == "window" else annotate_sizes.relief)(
                ledger, feature, feature.pocket
            )


def _numbered(notes: Iterable[Annotation]) -> Iterable[Annotation]:
    """Number what is measured from 1 on; datums, chamfers and notes have no number."""
    number = 0
    for note in notes:
        if note.kind in _NOT_MEASURED or note.id in _NOT_NUMBERED:
            yield note
            continue
        number += 1
        yield replace(note, number=number)
