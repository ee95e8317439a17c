"""Families of motors for tests: a spec in which every wall is given, and a hypothesis strategy over small families."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

from blockgen.record import Record
from blockgen.spec.load import parse_spec
from tests.sizing.strategies import COMPLETE, Tables, changed, steps, toml

Motor = dict[str, Any]
WALLS = {"bearing_wall": 20, "motor_wall": 20}


def family_text(motors: list[Motor], start: Tables = COMPLETE, **changes: Any) -> str:
    """Return a spec text with several motors, each told by what differs from the motor of the start."""
    tables = changed(start, **changes)
    usual = tables["motor"]
    first, *others = [{k: v for k, v in (usual | motor).items() if v is not None} for motor in motors]
    text = toml({**tables, "motor": first})
    return text + "".join("[[family]]\n" + toml({"x": other}).split("\n", 1)[1] for other in others)


def family_records(motors: list[Motor], start: Tables = COMPLETE, **changes: Any) -> dict[str, Record]:
    """Return the records of a spec with several motors."""
    return dict(parse_spec(family_text(motors, start, **changes)).records)


def motors(
    least: int = 1, most: int = 4, circles: tuple[float, ...] = (90,), pilots: tuple[float, ...] = (70,)
) -> st.SearchStrategy[list[Motor]]:
    """Draw motors that differ in shaft, pilot length, bolt circle and pilot."""
    one = st.fixed_dictionaries(
        {
            "shaft_length": steps(28, 54),
            "pilot_length": steps(1, 6),
            "bolt_circle": st.sampled_from(circles),
            "pilot_diameter": st.sampled_from(pilots),
            "flange_size": st.just(round(max(circles) * 0.9)),
        }
    )
    return st.lists(one, min_size=least, max_size=most)
