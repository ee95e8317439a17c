"""The base of every table of the spec."""

from __future__ import annotations

from typing import Any

from pydantic import BaseModel, ConfigDict, Field


def key(description: str, *, required: bool = False) -> Any:
    """Return the declaration of a key that may be left out of the file.

    Args:
        description: What it is and where it is found, for the key table and the starter spec.
        required: True where neither a default nor a derivation exists.
    """
    return Field(default=None, description=description, json_schema_extra={"required": True} if required else None)


class Table(BaseModel):
    """One table of the spec: unknown keys are errors, nothing is converted silently."""

    model_config = ConfigDict(extra="forbid", strict=True, frozen=True, defer_build=True, hide_input_in_errors=True)
