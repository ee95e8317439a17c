"""The revision that follows another one."""

from __future__ import annotations

import re

_LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"
"""Without I and O, which are read as 1 and 0 [common practice, no source]."""

_NUMBERED = re.compile(r"(?P<start>.*?)(?P<number>\d+)", re.DOTALL)
_LETTERED = re.compile(r"(?P<start>.*?)(?P<letters>[A-HJ-NP-Z]{1,3})", re.DOTALL)


def next_revision(revision: str) -> str | None:
    """Return the next revision: A to B, Z to AA, 07 to 08, R3 to R4; None where it ends otherwise."""
    if not revision.isascii():
        return None
    numbered, lettered = _NUMBERED.fullmatch(revision), _LETTERED.fullmatch(revision.upper())
    if numbered:
        digits = numbered["number"]
        return f"{numbered['start']}{int(digits) + 1:0{len(digits)}d}" if len(digits) < 10 else None
    if lettered and not lettered["start"][-1:].isalpha():
        letters = _next_letters(lettered["letters"])
        start = revision[: len(lettered["start"])]
        return start + (letters if revision[len(start) :].isupper() else letters.lower())
    return None


def _next_letters(letters: str) -> str:
    """Return the letters after those given, as a number that is counted with letters."""
    head, last = letters[:-1], letters[-1]
    if last != _LETTERS[-1]:
        return head + _LETTERS[_LETTERS.index(last) + 1]
    return (_next_letters(head) if head else _LETTERS[0]) + _LETTERS[0]
