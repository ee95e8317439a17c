"""Text from a spec made harmless for the place where it is shown: a line, Markdown, a TOML string, a terminal."""

from __future__ import annotations

import re
import unicodedata

# Order and direction marks hide what a text really says; "Cf" holds them and the zero-width characters.
_UNSEEN = frozenset({"Cc", "Cf", "Cs", "Co", "Cn"})
_ANSI = re.compile(r"\x1b(?:\[[0-?]*[ -/]*[@-~]|\][^\x07\x1b]*(?:\x07|\x1b\\)?|[@-Z\\-_])")
# What would start emphasis, code, a link, a tag, a table cell or an entity; the rest stays readable as plain text.
_MARKDOWN = re.compile(r"[\\`*\[<|~]|(?<![^\W_])_|_(?![^\W_])|&(?=#?\w+;)")
_BLOCK_START = re.compile(r"^(?:[-+=>#]|\d+(?=[.)]))")
_TOML_SHORT = {"\b": "\\b", "\t": "\\t", "\n": "\\n", "\f": "\\f", "\r": "\\r", '"': '\\"', "\\": "\\\\"}
_BARE_KEY = re.compile(r"[A-Za-z0-9_-]+")


def one_line(text: str) -> str:
    """Return the text on one line, without terminal control sequences and unseen characters."""
    spaced = " ".join(_ANSI.sub("", text).split())
    return "".join(c for c in spaced if unicodedata.category(c) not in _UNSEEN)


def markdown(text: str) -> str:
    """Return text that Markdown, HTML inside it and its tables show as it stands, within a line."""
    return _MARKDOWN.sub(lambda m: "&lt;" if m.group() == "<" else "\\" + m.group(), one_line(text))


def markdown_start(text: str) -> str:
    """Return text that Markdown shows as it stands at the start of a line: no list, heading or quotation."""
    return _BLOCK_START.sub(lambda m: m.group() + "\\" if m.group().isdigit() else "\\" + m.group(), markdown(text))


def toml_string(text: str) -> str:
    """Return a TOML basic string with its quotes; it reads back to the same text."""
    return '"' + "".join(_toml_character(c) for c in text) + '"'


def toml_key(key: str) -> str:
    """Return a TOML key, quoted where it must be."""
    return key if _BARE_KEY.fullmatch(key) else toml_string(key)


def _toml_character(character: str) -> str:
    if character in _TOML_SHORT:
        return _TOML_SHORT[character]
    if unicodedata.category(character) in _UNSEEN:
        code = ord(character)
        return f"\\u{code:04x}" if code <= 0xFFFF else f"\\U{code:08x}"
    return character
