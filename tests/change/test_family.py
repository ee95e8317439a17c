"""The least set of blocks for a family, against every way of dividing it, and why the motors are divided."""

from collections.abc import Iterator
from itertools import permutations

import pytest
from hypothesis import HealthCheck, given, settings

from blockgen.change import family
from blockgen.change.family import Trials, one_block, only, split_family, told_of_family
from blockgen.errors import Conflict, FamilyError, InfeasibleError, MotorGroup
from blockgen.sizing.family import entries
from blockgen.sizing.size import plan_from
from blockgen.spec.load import parse_spec
from tests.sizing.families import family_records, family_text, motors

FEW = settings(max_examples=14, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
SHORT, LONG, WIDE = {"shaft_length": 40}, {"shaft_length": 62}, {"pilot_diameter": 80, "bolt_circle": 112,
                                                                   "flange_size": 98}  # fmt: skip
PILOTS = motors(2, 5, circles=(112, 118), pilots=(70, 80))


def partitions(left: tuple[str, ...]) -> Iterator[list[tuple[str, ...]]]:
    """Yield every way of dividing some motors into groups."""
    if not left:
        yield []
        return
    for rest in partitions(left[1:]):
        yield [(left[0],), *rest]
        for at, group in enumerate(rest):
            yield [*rest[:at], (left[0], *group), *rest[at + 1 :]]


def least_by_trying(records) -> tuple[int, int] | None:
    """Return the fewest blocks and the most motors that any block takes, from every partition; each set is sized."""
    tables = entries(records)
    sizes: dict[tuple[str, ...], bool] = {}

    def fits(group: tuple[str, ...]) -> bool:
        ordered = tuple(entry for entry in tables if entry in group)
        if ordered not in sizes:
            sizes[ordered] = isinstance(one_block(records, ordered), MotorGroup)
        return sizes[ordered]

    usable = tuple(entry for entry in tables if fits((entry,)))
    counts = [len(ways) for ways in partitions(usable) if all(fits(group) for group in ways)]
    return min(counts), len(usable)


@pytest.mark.slow
@FEW
@given(PILOTS)
def test_no_division_into_fewer_blocks_exists(drawn):
    records = family_records(drawn)
    found = Trials(records).least_set()
    assert (len(found), sum(len(group.entries) for group in found)) == least_by_trying(records)
    assert len({entry for group in found for entry in group.entries}) == sum(len(group.entries) for group in found)
    for group in found:
        assert isinstance(one_block(records, group.entries), MotorGroup)


@pytest.mark.slow
@FEW
@given(PILOTS.filter(lambda drawn: len(drawn) <= 3))
def test_the_number_of_blocks_does_not_depend_on_the_order(drawn):
    found = [Trials(family_records(list(order))).least_set() for order in permutations(drawn)]
    shapes = [sorted((len(g.entries), g.low, g.high) for g in groups) for groups in found]
    assert all(shape == shapes[0] for shape in shapes)


@pytest.mark.slow
@FEW
@given(PILOTS)
def test_a_split_is_needed_and_without_any_one_of_its_motors_it_is_not(drawn):
    records = family_records(drawn)
    for split in Trials(records).splits():
        assert isinstance(one_block(records, split.entries), InfeasibleError)
        for left_out in split.entries:
            rest = tuple(entry for entry in split.entries if entry != left_out)
            assert not rest or isinstance(one_block(records, rest), MotorGroup)


def test_a_family_that_goes_together_is_one_block():
    (group,) = Trials(family_records([SHORT, {"shaft_length": 42}])).least_set()
    assert group.entries == ("motor", "family.0")
    plan = plan_from(family_records([SHORT, {"shaft_length": 42}]))
    assert (group.low, group.high) == (plan.number("length_min"), plan.number("length_max"))


def test_lengths_divide_a_family_and_the_reason_names_both():
    records = family_records([SHORT, {"shaft_length": 42}, {**LONG, "name": "long one"}])
    error = split_family(records, InfeasibleError([Conflict("cause", 1.0, (), ())], []))
    assert [group.entries for group in error.groups] == [("motor", "family.0"), ("family.1",)]
    assert [split.entries for split in error.splits] == [("motor", "family.1"), ("family.0", "family.1")]
    assert "motor 3 (long one) asks for a block of at least" in error.splits[0].conflicts[0].title
    assert error.conflicts[0].title == "cause"


def test_the_first_motor_of_a_trial_keeps_its_own_name_and_keys():
    records = family_records([SHORT, {**WIDE, "name": "wide"}, {**LONG, "name": "long one"}])
    found = Trials(records).together(("family.0", "family.1"))
    assert isinstance(found, InfeasibleError)
    (conflict,) = found.conflicts
    assert conflict.title.startswith("motor 3 (long one) and motor 2 (wide): one bore")
    assert set(conflict.keys) == {"family.0.pilot_diameter", "family.1.pilot_diameter"}


def test_a_motor_that_fits_no_block_is_left_out_and_told():
    error = split_family(family_records([{}, {"shaft_length": 20}]), InfeasibleError([], []))
    assert [group.entries for group in error.groups] == [("motor",)]
    assert [split.entries for split in error.splits] == [("family.0",)]


def test_the_first_block_that_takes_a_motor_is_not_always_its_best():
    records = family_records([{"shaft_length": length} for length in (54, 44, 66, 38)])
    assert [group.entries for group in Trials(records).least_set()] == [("motor", "family.1"), ("family.0", "family.2")]


def test_many_motors_are_put_one_by_one():
    many = [{"shaft_length": 40 + n % 3} for n in range(11)] + [LONG]
    groups = Trials(family_records(many)).least_set()
    assert [len(group.entries) for group in groups] == [11, 1]


def test_a_part_of_a_family_is_a_spec_of_its_own():
    records = family_records([SHORT, WIDE, LONG])
    part = only(records, ("family.0", "family.1"))
    assert entries(part) == ("motor", "family.1")
    assert part["motor.pilot_diameter"].value == 80
    assert plan_from(only(records, ("motor",))) == plan_from(family_records([SHORT]))


def test_the_conflict_of_a_family_becomes_its_division():
    spec = parse_spec(family_text([SHORT, LONG]))
    with pytest.raises(FamilyError) as caught, told_of_family(spec):
        plan_from(spec.records)
    assert len(caught.value.groups) == 2
    assert caught.value.conflicts
    assert caught.value.cures


def test_the_conflict_of_a_single_motor_stays_what_it_is():
    spec = parse_spec(family_text([{"shaft_length": 20}]))
    with pytest.raises(InfeasibleError) as caught, told_of_family(spec):
        plan_from(spec.records)
    assert not isinstance(caught.value, FamilyError)


def test_parts_of_a_block_that_is_known_are_not_sized_for_the_reasons(monkeypatch):
    sized = []
    real = family.one_block
    monkeypatch.setattr(family, "one_block", lambda records, motors: sized.append(motors) or real(records, motors))
    many = [{"shaft_length": 40 + n % 3} for n in range(11)] + [LONG]
    error = split_family(family_records(many), InfeasibleError([], []))
    assert len(error.splits) == 11
    assert len(sized) < 100  # of 4095 sets
