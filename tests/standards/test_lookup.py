import re

import pytest

from blockgen.errors import InputError
from blockgen.standards.lookup import kinds, look_up
from blockgen.standards.materials import material_names
from blockgen.standards.screws import cap_screw_sizes
from blockgen.standards.threads import designations


def values(kind, text):
    return {label: value for label, value, _, _ in look_up(kind, text).rows}


@pytest.mark.parametrize("text", ["60H7/h6", "60 H7/h6", "60H7-h6", " 60 H7 / h6 "])
def test_fit(text):
    answer = look_up("fit", text)
    found = values("fit", text)
    assert answer.title == "60 H7/h6"
    assert found["hole H7 greatest size"] == 60.03
    assert found["shaft h6 least size"] == 59.981
    assert (found["least clearance"], found["greatest clearance"], found["kind of fit"]) == (0, 0.049, "clearance")


def test_single_class():
    found = values("fit", "12.5h6")
    assert found == {
        "shaft h6 upper deviation": 0,
        "shaft h6 lower deviation": -0.011,
        "shaft h6 greatest size": 12.5,
        "shaft h6 least size": 12.489,
    }


def test_js_says_that_it_is_unrounded():
    assert "unrounded" in look_up("fit", "60js6").note
    assert look_up("fit", "60h6").note == ""


def test_thread():
    found = values("thread", "m10")
    assert (found["tap drill"], found["clearance hole medium"]) == (8.5, 11)
    assert found["hole 6H greatest minor diameter"] == pytest.approx(8.676, abs=5e-4)
    assert look_up("thread", "#10-24").title == "10-24 UNC"


def test_screw_by_size_or_thread():
    assert values("screw", "M10")["counterbore"] == 18
    assert look_up("screw", "1/4-20 UNC") == look_up("screw", "1/4")


def test_material():
    assert values("material", "6082")["tensile strength"] == 295
    assert values("material", "6061")["pressure under a head"] == "not known"


def sources(kind, text):
    return {label: source for label, _, _, source in look_up(kind, text).rows}


def test_a_source_says_what_it_is_about():
    found = sources("material", "6082")
    assert found["Poisson's ratio"] == "Poisson's ratio remembered"
    assert found["pressure under a head"].startswith("VDI 2230:2003 pressure")
    assert "Poisson" not in found["density"]
    assert found["density"].endswith("[read]")
    assert sources("material", "C45")["Poisson's ratio"].endswith("[memory]")


def test_only_remembered_materials_are_called_remembered():
    assert look_up("material", "6082").note == "check them against the supplier's certificate"
    assert look_up("material", "S235JR").note.startswith("remembered values: ")


def test_preferred_lengths_have_the_source_of_their_own_table():
    found = sources("screw", "M10")
    assert found["preferred lengths"] == "ISO 4762 (2004 edition) [memory]"
    assert found["head height"] == "ISO 4762 (2004 edition) [read]"


def test_the_run_out_of_an_inch_thread_is_called_borrowed():
    assert "borrowed" in sources("thread", "1/4-20")["drill run-out beyond full thread"]
    assert sources("thread", "M6")["drill run-out beyond full thread"] == "DIN 76-1 (as reprinted 2008) [read]"


@pytest.mark.parametrize(
    ("kind", "text", "remedy"),
    [
        ("thread", "1/4", "nearest: 1/4-20 UNC, 1/4-28 UNF"),
        ("thread", "#10", "nearest: 10-24 UNC, 10-32 UNF"),
        ("thread", "M7", "nearest: M6, M8"),
        ("screw", "M9", "nearest: M8, M10"),
        ("thread", "M10x1.25", "write M10"),
        ("fit", "H7", "write 60H7/h6, 60H7 or 60h6"),
    ],
)
def test_what_is_near_is_named(kind, text, remedy):
    with pytest.raises(InputError, match=re.escape(remedy)) as caught:
        look_up(kind, text)
    assert caught.value.problems[0].remedy == remedy


def test_an_unknown_material_lists_names_without_aliases():
    with pytest.raises(InputError, match="EN AW-6082-T6, EN AW-7075-T6") as caught:
        look_up("material", "cheese")
    assert "GG25" not in caught.value.problems[0].expected


EVERYTHING = [
    *(("thread", name) for name in designations()),
    *(("screw", size) for size in cap_screw_sizes()),
    *(("material", name) for name in material_names()),
    *(("fit", f"{size}{name}") for size in (1, 60, 500) for name in ("H7/h6", "K7/h6", "N9/h9", "JS7", "k6")),
]


@pytest.mark.parametrize(("kind", "text"), EVERYTHING)
def test_every_row_of_every_answer_has_a_source(kind, text):
    answer = look_up(kind, text)
    assert answer.rows
    assert all(label and source for label, _, _, source in answer.rows)
    assert len({row[0] for row in answer.rows}) == len(answer.rows)


def test_kinds():
    assert kinds() == ("fit", "thread", "screw", "material")


@pytest.mark.parametrize(
    ("kind", "text", "key", "found"),
    [
        ("fit", "H7", "fit", '"H7"'),
        ("fit", "60", "fit", '"60"'),
        ("fit", "60H7/h6/h6", "fit", '"60H7/h6/h6"'),
        ("fit", "-60H7", "fit", '"-60H7"'),
        ("fit", "nanH7", "fit", '"nanH7"'),
        ("fit", "1e3H7", "tolerance class", '"e3H7"'),
        ("fit", "600H7", "nominal size", "600 mm"),
        ("fit", "60h6/H7", "fit", "h6/H7"),
        ("fit", "60X7", "tolerance class", '"X7"'),
        ("thread", "M10-6H", "thread", '"M10-6H"'),
        ("screw", "M7", "thread", '"M7"'),
        ("screw", "M18", "screw size", '"M18"'),
        ("material", "cheese", "material", '"cheese"'),
        ("gear", "M10", "lookup", '"gear"'),
    ],
)
def test_wrong_text_is_an_input_error(kind, text, key, found):
    with pytest.raises(InputError, match=key) as caught:
        look_up(kind, text)
    problem = caught.value.problems[0]
    assert (problem.key, problem.found, problem.line) == (key, found, None)
    assert problem.expected
    assert problem.remedy
