"""Both blocks laid on each other: what is added and what is removed, from their solids."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from blockgen.change.compare.data import Lump, Volumes
from blockgen.plan import Plan

if TYPE_CHECKING:
    from blockgen.geometry import difference
    from blockgen.geometry.block import BlockSolid

LEAST = 0.001
"""Pieces of less volume in mm3 are what the kernel leaves between faces that lie in one another."""


@dataclass(frozen=True, slots=True, eq=False)
class Overlay:
    """Solids of a comparison, in the coordinates of both plans.

    Args:
        volumes: Their volumes as plain data.
        shaft_height: Height of the old block's shaft, mm.
        old: The old block.
        new: The new block.
        added: Pieces that only the new one has.
        removed: Pieces that only the old one has.
    """

    volumes: Volumes
    shaft_height: float
    old: BlockSolid
    new: BlockSolid
    added: tuple[difference.Lump, ...]
    removed: tuple[difference.Lump, ...]


def overlay(old: Plan, new: Plan) -> Overlay:
    """Model both blocks and cut each by the other.

    Raises:
        KernelError: a block cannot be built or cut.
    """
    from blockgen.geometry.block import build_block
    from blockgen.geometry.difference import lacking
    from blockgen.geometry.kernel import volume_of

    before, after = build_block(old), build_block(new)
    added, removed = _real(lacking(after.shape, before.shape)), _real(lacking(before.shape, after.shape))
    volumes = Volumes(volume_of(before.shape), volume_of(after.shape), _plain(added), _plain(removed))
    height = old.number("shaft_height")
    return Overlay(volumes, height, before, after, added, removed)


def _real(pieces: Sequence[difference.Lump]) -> tuple[difference.Lump, ...]:
    return tuple(piece for piece in pieces if piece.volume > LEAST)


def _plain(pieces: Sequence[difference.Lump]) -> tuple[Lump, ...]:
    return tuple(Lump(piece.volume, piece.box) for piece in pieces)
