"""What ``presets`` prints."""

from __future__ import annotations

from typing import Any

from blockgen.console.page import BLANK, Line, Part, Row, Table
from blockgen.console.sources import numbered
from blockgen.outputs import show
from blockgen.spec.load import unit_of
from blockgen.spec.presets import Preset, read_preset, user_folder

_WARNING = "Representative and remembered values must be checked against the maker's data sheet before anything is cut."


def _short(value: object) -> Any:
    """Return a number to four significant digits, anything else as it is."""
    return f"{value:.4g}" if isinstance(value, float) else value


def list_page(presets: tuple[Preset, ...]) -> list[Part]:
    """Return the page that lists presets."""
    numbers, sources = numbered([preset.source for preset in presets])
    rows = tuple(Row((p.kind, p.name, p.status, n)) for p, n in zip(presets, numbers, strict=True))
    return [
        Table(("Kind", "Name", "Status", "Source"), rows, right=("Source",)),
        *sources,
        BLANK,
        Line(_WARNING),
        Line(f"Presets of your own, one TOML file each, belong in {user_folder()}"),
    ]


def one_page(name: str) -> list[Part]:
    """Return the page of one preset.

    Raises:
        InputError: there is none of that name, or its file is broken.
    """
    preset = read_preset(name)
    rows = tuple(
        Row((key, show.with_unit(_short(value), unit_of(preset.kind, key, value))))
        for key, value in preset.values.items()
    )
    return [
        Line(f"{preset.kind} {preset.name}", "title"),
        Line(f"Source: {preset.source} ({preset.status})"),
        BLANK,
        Table(("Key", "Value"), rows),
        BLANK,
        Line(_WARNING),
    ]
