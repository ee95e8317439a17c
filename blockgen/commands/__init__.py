"""The commands: parse, call the pipeline, print. One file a command; the order here is the order of ``--help``."""

from blockgen.commands import new, check, build, explain, inspect, presets, lookup, read  # noqa: F401, I001 # in the order of --help
from blockgen.commands.app import app, names

__all__ = ["app", "names"]
