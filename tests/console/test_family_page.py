"""What is printed of a family: one block for each motor, or the least set of blocks with the reasons."""

from blockgen.checks import check
from blockgen.console.family_page import family_parts, split_document, split_parts
from blockgen.console.plain import lines
from blockgen.console.trouble import as_document, as_text
from blockgen.errors import Conflict, Cure, FamilyError, InfeasibleError, MotorGroup, Split
from blockgen.sizing.size import plan_from
from tests.sizing.families import family_records
from tests.sizing.strategies import sized

PILOTS = Conflict("motor 1 (a) and motor 2 (b): one bore cannot centre both pilots, 10 mm apart", 10.0,
                  ("the pilot of motor 1 (a) is 70 mm", "the pilot of motor 2 (b) is 80 mm"),
                  ("motor.pilot_diameter", "family.0.pilot_diameter"))  # fmt: skip
OTHER = Conflict("holes too near", 0.5, (), ("motor.bolt_circle",))
ERROR = FamilyError(
    InfeasibleError([PILOTS], [Cure("", "adapter ring", None, None, "mm", "adapter ring 80 / 70", 6, verified=False)]),
    [
        MotorGroup(("motor 1 (a)", "motor 3 (c)"), ("motor", "family.1"), 110.0, 116.0),
        MotorGroup(("motor 2 (b)",), ("family.0",), 112.5, 112.5),
    ],
    [
        Split(("motor 1 (a)", "motor 2 (b)"), ("motor", "family.0"), (PILOTS,)),
        Split(("motor 2 (b)", "motor 3 (c)"), ("family.0", "family.1"), (OTHER,)),
    ],
)


def test_groups_and_reasons_are_told():
    assert as_text(ERROR, 100).splitlines() == [
        "No one block takes all these motors; nothing was written.",
        "",
        "Motor 1 (a) and motor 2 (b): one bore cannot centre both pilots, 10 mm apart",
        "- the pilot of motor 1 (a) is 70 mm",
        "- the pilot of motor 2 (b) is 80 mm",
        "",
        "1 more such sets of motors are in the JSON document.",
        "",
        "2 blocks are the fewest that take them:",
        "1. motor 1 (a), motor 3 (c): 110 to 116 mm long ([motor], [[family]] no. 2)",
        "2. motor 2 (b): 112.5 mm long ([[family]] no. 1)",
        "Make a spec for each of them, with its own job number: its first motor as [motor], the others as",
        "[[family]]. Each of them is a part with its own drawing, so none is written under this number.",
        "",
        "What would give one block, the least trouble first:",
        "1. adapter ring 80 / 70 (not enough by itself)",
    ]


def test_a_conflict_that_names_no_motor_gets_their_names():
    error = FamilyError(ERROR, ERROR.groups, ERROR.splits[1:])
    assert "Motor 2 (b), motor 3 (c) do not go together: holes too near" in as_text(error)


def test_a_motor_that_fits_no_block_is_told_first():
    alone = Split(("motor 4",), ("family.2",), (Conflict("motor 4: shaft too short", 1.0, (), ()),))
    error = FamilyError(ERROR, ERROR.groups[:1], (*ERROR.splits, alone))
    text = as_text(error)
    assert text.index("Motor 4 fits no block at all") < text.index("One block is left:")
    assert "Make a spec for each" not in text


def test_the_document_has_groups_and_splits_beside_conflicts_and_cures():
    document = as_document(ERROR)
    assert document["status"] == "infeasible"
    assert len(document["conflicts"]) == len(document["cures"]) == 1
    assert document["family"] == split_document(ERROR)
    assert document["family"]["groups"][1] == {
        "motors": ["motor 2 (b)"], "entries": ["family.0"], "length_min": 112.5, "length_max": 112.5,
    }  # fmt: skip
    assert len(document["family"]["splits"]) == 2


def test_nothing_is_wider_than_the_terminal():
    for width in (60, 80):
        assert max(map(len, lines(split_parts(ERROR), width))) <= width
        plan = plan_from(family_records([{"name": "servo with a long name"}, {"shaft_length": 42}]))
        assert max(map(len, lines(family_parts(plan, check(plan)), width))) <= width


def test_one_block_is_shown_for_each_motor_and_a_turned_one_is_named():
    plan = plan_from(family_records([{}, {"bolt_circle": 96, "flange_size": 78, "bolt_hole": 5.5, "name": "next"}]))
    text = "\n".join(lines(family_parts(plan, check(plan)), 120))
    assert "One block for 2 motors" in text
    assert "motor 2 (next) is mounted turned by 45 deg" in text
    assert "4 x M5" in text


def test_a_single_motor_has_no_such_page():
    assert family_parts(sized(), ()) == []


def test_motors_that_fit_no_block_for_one_reason_share_it():
    why = (Conflict("journal too short", 1.0, ("the journal ends here",), ("screw.journal_reach",)),)
    splits = [Split((f"motor {n}",), (f"family.{n - 2}",), why) for n in (2, 3)]
    text = as_text(FamilyError(ERROR, ERROR.groups[:1], [*ERROR.splits, *splits]))
    assert "Motor 2, motor 3 fit no block at all: journal too short" in text
    assert text.count("the journal ends here") == 1
