"""The fixed order of entities, tried on small texts."""

import random
import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.outputs.part21_order import STYLES, in_fixed_order, references

KEPT = {
    1: "PRODUCT('block; #9 (a)','x''y',(#2,#3))",
    2: "PRODUCT_CONTEXT('',$,'mechanical')",
    3: "SHAPE_REPRESENTATION('',(#4,#5),#2)",
    4: "MANIFOLD_SOLID_BREP('',#2)",
    5: "MANIFOLD_SOLID_BREP('two',#2)",
}
TAIL = {
    6: f"{STYLES}('',(#7,#8),#2)",
    7: "STYLED_ITEM('color',(#9),#4)",
    8: "STYLED_ITEM('color',(#10),#5)",
    9: "CURVE_STYLE('',#11,#12)",
    10: "CURVE_STYLE('',#13,#12)",
    11: "FONT('continuous')",
    12: "COLOUR_RGB('',0.1,0.2,0.3)",
    13: "FONT('continuous')",
    14: f"{STYLES}('',(#15),#3)",
    15: "STYLED_ITEM('color',(#9),#3)",
}


def text(bodies):
    return "DATA;\n" + "".join(f"#{n} = {body};\n" for n, body in bodies.items()) + "ENDSEC;\nEND-ISO-10303-21;\n"


def shuffled(seed):
    """Return the file as another process might write it: styles in another order, under other numbers."""
    chance = random.Random(seed)
    order = list(TAIL)
    chance.shuffle(order)
    new = {n: n for n in KEPT} | {n: 100 + i for i, n in enumerate(order)}
    bodies = KEPT | {n: TAIL[n] for n in order}
    swapped = bodies[6].replace("(#7,#8)", "(#8,#7)") if chance.random() < 0.5 else bodies[6]
    bodies = bodies | {6: swapped}
    renumber = re.compile(r"'(?:[^']|'')*'|#(\d+)")
    return text(
        {new[n]: renumber.sub(lambda m: f"#{new[int(m[1])]}" if m[1] else m[0], body) for n, body in bodies.items()}
    )


def entities(data):
    return {int(n): body for n, body in re.findall(r"#(\d+) = (.*);\n", data)}


@given(st.integers(0, 10**6))
def test_the_order_of_styles_leaves_no_trace(seed):
    assert in_fixed_order(shuffled(seed)) == in_fixed_order(text(KEPT | TAIL))


def test_what_is_no_style_keeps_its_order_and_its_texts():
    found = entities(in_fixed_order(shuffled(3)))
    assert [found[n] for n in range(1, 6)] == list(KEPT.values())


def test_numbers_run_from_one_and_all_references_resolve():
    found = entities(in_fixed_order(text({n * 7: re.sub(r"(?<!; )#(\d+)", lambda m: f"#{int(m[1]) * 7}", b)
                                          for n, b in (KEPT | TAIL).items()})))  # fmt: skip
    assert list(found) == list(range(1, len(found) + 1))
    assert all(number in found for body in found.values() for number in references(body))


def test_equal_styles_are_told_once():
    found = list(entities(in_fixed_order(text(KEPT | TAIL))).values())
    assert found.count("FONT('continuous')") == 1
    assert sum(body.startswith("CURVE_STYLE") for body in found) == 1
    assert sum(body.startswith("STYLED_ITEM") for body in found) == 3


def test_lines_are_joined_but_texts_are_not():
    broken = "DATA;\n#1 = PRODUCT('a\n b',\n  'c',(\n  #2));\n#2=CONTEXT();\nENDSEC;\nEND-ISO-10303-21;\n"
    assert in_fixed_order(broken) == (
        "DATA;\n#1 = PRODUCT('a\n b','c',(#2));\n#2 = CONTEXT();\nENDSEC;\nEND-ISO-10303-21;\n"
    )


@pytest.mark.parametrize(
    ("body", "expected"), [("A(#1,(#2,#33))", [1, 2, 33]), ("A('#4',#5)", [5]), ("A('it''s #6',$)", [])]
)
def test_references_in_texts_do_not_count(body, expected):
    assert references(body) == expected
