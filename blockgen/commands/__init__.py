"""The commands: parse, call the pipeline, print. One file a command; the order here is the order of ``--help``."""

# ruff: noqa: I001
from blockgen.commands import new, check, build, watch, explain, inspect, compare, sweep, presets, lookup, read  # noqa: F401
from blockgen.commands.app import app, names

__all__ = ["app", "names"]
