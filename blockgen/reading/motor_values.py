"""Shaft end and body of a motor as values of the spec."""

from __future__ import annotations

from collections.abc import Iterator

from blockgen.reading.confidence import judged
from blockgen.reading.flange_values import sized
from blockgen.reading.found import Found, Missing
from blockgen.reading.mounting import Mounting
from blockgen.reading.outline import body_of
from blockgen.reading.shaft import Shaft, cut_of, shaft_of


def motor_values(mounting: Mounting, *, inch_file: bool) -> Iterator[Found | Missing]:
    """Yield shaft and body.

    Args:
        mounting: The mounting face.
        inch_file: True where the file is in inches.
    """
    stand, widest = mounting.stand, mounting.inside
    shaft = shaft_of(mounting.line, mounting.height, stand, widest)
    if shaft is None:
        why = "nothing turned stands out further than the pilot on its axis"
        yield from (Missing(key, why) for key in ("shaft_diameter", "shaft_length", "shaft_end"))
    else:
        yield from _shaft(shaft, inch_file=inch_file)
        yield from _end(mounting, shaft, inch_file=inch_file)
    yield from _body(mounting, inch_file=inch_file)


def _shaft(shaft: Shaft, *, inch_file: bool) -> Iterator[Found | Missing]:
    rivals = len(shaft.steps)
    steps = f"; further steps of {', '.join(f'{d:.2f}' for d in shaft.steps)} mm" if rivals else ""
    sure = judged(shaft.spread, rivals=rivals)
    words = f"longest cylinder beyond the pilot, on its axis{steps}"
    yield sized("shaft_diameter", shaft.diameter, sure, words, (shaft.faces, shaft.spread), inch_file=inch_file)
    yield sized(
        "shaft_length",
        shaft.length,
        judged(0.0),
        "mounting face to the end of the shaft",
        (2, None),
        inch_file=inch_file,
    )
    if shaft.smooth is None:
        yield Missing("shaft_smooth_length", "a thinner part stands in front of the shaft's cylinder")
        return
    grooves = f"; {shaft.grooves} groove{'s' if shaft.grooves > 1 else ''} in it" if shaft.grooves else ""
    words = f"end of the shaft, with its chamfer, to the shoulder{grooves}; where it is ground is not modelled"
    sure = judged(0.0, by_rule=True)
    yield sized("shaft_smooth_length", shaft.smooth, sure, words, (1, None), inch_file=inch_file)


def _end(mounting: Mounting, shaft: Shaft, *, inch_file: bool) -> Iterator[Found | Missing]:
    cut = cut_of(mounting.view, mounting.origin_foot, shaft, mounting.height, mounting.stand)
    if cut is None:
        words = "no flat face along it; models may leave the keyway out"
        yield Found("shaft_end", "plain", "", "fair", words, shaft.faces, None)
        return
    more = f", {cut.count} of them" if cut.count > 1 else ""
    yield Found("shaft_end", cut.form, "", judged(0.0), f"{cut.what} along the shaft{more}", cut.faces, None)
    if cut.form == "keyed":
        words = f"{cut.what}, end to end" if cut.what == "key" else "keyway, end to end; the key may be shorter"
        sure = judged(0.0, by_rule=cut.what != "key")
        yield sized("key_length", cut.length, sure, words, (cut.faces, None), inch_file=inch_file)
        words = f"between the walls of the {cut.what}"
        yield sized("key_width", cut.width, judged(0.0), words, (cut.faces, None), inch_file=inch_file)


def _body(mounting: Mounting, *, inch_file: bool) -> Iterator[Found | Missing]:
    body = body_of(mounting.view, mounting.line, mounting.height, mounting.sides)
    if body is None:
        yield Missing("body_length", "nothing behind the mounting face")
        return
    if body.size is None:
        yield Missing("body_size", "no long cylinder or pair of sides behind the flange")
    else:
        words = "longest outside behind the flange"
        yield sized("body_size", body.size, "fair", words, (body.faces, None), inch_file=inch_file)
    words = "mounting face to the furthest corner behind it, connectors included"
    yield sized("body_length", body.length, "fair", words, (1, None), inch_file=inch_file)
