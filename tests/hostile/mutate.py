"""Specs and sheets of measured values that are wrong on purpose, the same for the same seed.

Each mutation starts from a text that is right and changes one to three places of it by the grammar of the format: a
value, a key, a table, a line, a byte.
"""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Iterator

VALUES = (
    '""', '" "', '"40"', '"40 N"', '"40 mm mm"', '"mm"', '"4e400 mm"', '"nan mm"', '"inf mm"', '"-1 mm"', '"0 mm"',
    '"40 mm; rm"', '"\uff11\uff12 mm"', '"40\\u0000mm"', '"40\\nmm"', '"<script>"',
    '"=1+1"', '"../../etc/passwd"', '"é"',
    '"1e-300 mm"', '"1e300 mm"', '"40 degC"', '"40 mm**-1"', '"40 mm/0"', '"__import__"', '"40 parsec"', '"0x10 mm"',
    "nan", "inf", "-inf", "-1", "0", "-0.0", "1e308", "-1e308", "1e-320", "99999999999999999999", "9" * 400, "true",
    "false", "[]", "{}", "[[]]", "[1]", "[[1, 2, 3]]", '[["a", "b"]]', "[[nan, 1]]", "1979-05-27", "07:32:00", "0x1F",
    "0o17", "0b1", "1_000", "'raw'", '"""long\n\n"""', "[" * 200 + "]" * 200, "{a = 1}", '"' + "x" * 5000 + '"',
    '"M8"', '"M7.3"', '"H7"', '"h7/H7"', '"ZZ99"', '"servo-80"', '"no-such"', '"10.9"', '"1.4301"', '"both"', '"A2"',
)  # fmt: skip
GARBAGE = ("=", "[", "]]", "[[motor]]", "[job]", "a.b.c = 1", '"', "'''", "\\", "\t= 1", "key", "# only words",
           "schema = 2",
           "[motor.motor]", "[[family]]", "[material.X]", "[bearing",
           "x = 1 y = 2", "\u202e", "\ufeff")  # fmt: skip
CELLS = ("", " ", "nan", "inf", "-inf", "1e308", "1e400", "-1", "0", "=1+1", "@x", "12,5",
         "12 mm", "x", "é", '"', "1;2",
         "\uff11\uff12", "0x10", "99999999999999999999", "\x00", "5" * 400, "true", "-0.0")  # fmt: skip

Dice = random.Random


def specs(seed: int, count: int, starts: list[str]) -> Iterator[bytes]:
    """Yield hostile specs; the n-th is the same whatever the count."""
    for number in range(count):
        dice = Dice(f"spec/{seed}/{number}")
        yield _mutated(dice, dice.choice(starts), _SPEC)


def sheets(seed: int, count: int, start: str) -> Iterator[bytes]:
    """Yield hostile sheets of measured values."""
    for number in range(count):
        dice = Dice(f"sheet/{seed}/{number}")
        yield _mutated(dice, start, _SHEET)


def _mutated(dice: Dice, text: str, changes: tuple[Callable[[Dice, list[str]], None], ...]) -> bytes:
    lines = text.splitlines()
    for _ in range(dice.randint(1, 3)):
        dice.choice(changes)(dice, lines)
    ends = dice.choice(("\n", "\n", "\n", "\r\n", "\r"))
    data = (ends.join(lines) + ends).encode("utf-8", "surrogatepass")
    return _bytes(dice, data) if dice.random() < 0.1 else data


def _bytes(dice: Dice, data: bytes) -> bytes:
    """Change bytes: cut off, another encoding, bytes that are no text."""
    place = dice.randrange(len(data))
    return dice.choice(
        (
            data[:place],
            data[:place] + b"\xff\xfe\x00" + data[place:],
            b"\xef\xbb\xbf" + data,
            data.decode("utf-8", "replace").encode("utf-16"),
            data[:place] + bytes(dice.randrange(256) for _ in range(8)) + data[place:],
            b"",
        )
    )


def _place(dice: Dice, lines: list[str]) -> int:
    return dice.randrange(len(lines)) if lines else 0


def _value(dice: Dice, lines: list[str]) -> None:
    """Put another value behind a key."""
    keyed = [i for i, line in enumerate(lines) if re.match(r"\w+ *=", line)]
    if keyed:
        place = dice.choice(keyed)
        lines[place] = f"{lines[place].split('=')[0]}= {dice.choice(VALUES)}"


def _number(dice: Dice, lines: list[str]) -> None:
    """Multiply a number, so that it is right in form and absurd in size."""
    keyed = [i for i, line in enumerate(lines) if re.search(r"\d", line.split("#")[0])]
    if keyed:
        place = dice.choice(keyed)
        factor = dice.choice((-1, 0, 0.01, 10, 1000, 1e9))
        lines[place] = re.sub(r"\d+(\.\d+)?", lambda m: f"{float(m[0]) * factor:g}", lines[place], count=1)


def _key(dice: Dice, lines: list[str]) -> None:
    """Misspell a key or a table."""
    keyed = [i for i, line in enumerate(lines) if re.match(r"[\w\[]", line)]
    if keyed:
        place = dice.choice(keyed)
        at = dice.randrange(len(lines[place]))
        lines[place] = lines[place][:at] + dice.choice(("x", "", "_", ".", " ", "é", "]", '"')) + lines[place][at + 1 :]


def _drop(dice: Dice, lines: list[str]) -> None:
    if lines:
        del lines[_place(dice, lines)]


def _double(dice: Dice, lines: list[str]) -> None:
    if lines:
        lines.insert(_place(dice, lines), lines[_place(dice, lines)])


def _swap(dice: Dice, lines: list[str]) -> None:
    if lines:
        one, other = _place(dice, lines), _place(dice, lines)
        lines[one], lines[other] = lines[other], lines[one]


def _garbage(dice: Dice, lines: list[str]) -> None:
    lines.insert(_place(dice, lines), dice.choice(GARBAGE))


def _cell(dice: Dice, lines: list[str]) -> None:
    """Put something else into a cell of a sheet."""
    if lines:
        place = _place(dice, lines)
        cells = lines[place].split(",")
        cells[dice.randrange(len(cells))] = dice.choice(CELLS)
        lines[place] = ",".join(cells)


def _cells(dice: Dice, lines: list[str]) -> None:
    """Add or take away a cell."""
    if lines:
        place = _place(dice, lines)
        cells = lines[place].split(",")
        if dice.random() < 0.5:
            cells.insert(dice.randrange(len(cells) + 1), dice.choice(CELLS))
        else:
            del cells[dice.randrange(len(cells))]
        lines[place] = ",".join(cells)


_SPEC = (_value, _value, _value, _number, _number, _key, _key, _drop, _double, _swap, _garbage)
_SHEET = (_cell, _cell, _cell, _cells, _number, _drop, _double, _swap, _garbage)
