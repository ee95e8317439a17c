import contextlib
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.change.sweep.journal import journal_path, open_journal
from blockgen.change.sweep.outcome import FEASIBLE, Outcome
from blockgen.errors import MachineError


class StoppedError(Exception):
    pass


def row(number):
    return (number, *Outcome(FEASIBLE, "why not\n", length=number / 7))


def stopped(table, rows, key="k", count=6):
    """Write rows and stop; return what was found before and the lengths that stand there after."""
    before, after = 0, []
    with contextlib.suppress(StoppedError), open_journal(table, key, count) as journal:
        before = len(journal)
        journal.add(rows)
        after = [] if journal.missing() else [found.length for found in journal.outcomes()]
        raise StoppedError
    return before, after


def test_rows_come_back_in_order_whatever_the_order_they_came_in(tmp_path):
    with open_journal(tmp_path / "t.csv", "k", 4) as journal:
        journal.add([row(2), row(0)])
        journal.add([row(3), row(1), row(2)])
        assert [found.length for found in journal.outcomes()] == [0, 1 / 7, 2 / 7, 3 / 7]
        assert len(journal) == 4
    assert not list(tmp_path.iterdir())


def test_a_variant_that_is_not_there_is_told(tmp_path):
    with open_journal(tmp_path / "t.csv", "k", 2) as journal:
        journal.add([row(1)])
        assert journal.missing() == [0]
        with pytest.raises(MachineError, match="variant 1 is not"):
            list(journal.outcomes())


@pytest.mark.slow
def test_a_journal_cut_anywhere_goes_on(tmp_path):
    table = tmp_path / "t.csv"
    stopped(table, [row(n) for n in range(5)])
    path = journal_path(table)
    whole = path.read_bytes()
    ends = [i + 1 for i, sign in enumerate(whole) if sign == ord("\n")]
    for cut in range(len(whole) + 1):
        path.write_bytes(whole[:cut])
        kept = max(sum(end <= cut for end in ends) - 1, 0)
        assert stopped(table, [row(n) for n in range(6)]) == (kept, [n / 7 for n in range(6)])
        lines = path.read_bytes().splitlines()
        assert sorted(json.loads(line)[0] for line in lines[1:]) == list(range(6))


@given(st.binary(max_size=40), st.integers(0, 5))
def test_a_line_that_does_not_read_is_done_again(tmp_path_factory, rubbish, place):
    table = tmp_path_factory.mktemp("sweep") / "t.csv"
    stopped(table, [row(n) for n in range(6)])
    lines = journal_path(table).read_bytes().splitlines(keepends=True)
    lines[place + 1] = rubbish.replace(b"\n", b"") + b"\n"
    journal_path(table).write_bytes(b"".join(lines))
    with open_journal(table, "k", 6) as journal:
        assert journal.missing() == [place]
        assert not journal.other


@pytest.mark.parametrize(("key", "count"), [("other", 6), ("k", 7)])
def test_rows_of_another_sweep_do_not_count(tmp_path, key, count):
    stopped(tmp_path / "t.csv", [row(1)])
    with open_journal(tmp_path / "t.csv", key, count) as journal:
        assert (len(journal), journal.other) == (0, True)


def test_two_sweeps_do_not_write_one_table(tmp_path):
    table = tmp_path / "t.csv"
    with open_journal(table, "k", 2) as journal:
        with pytest.raises(MachineError, match="another sweep"), open_journal(table, "k", 2):
            pass
        journal.add([row(0)])
        assert len(journal) == 1


def test_a_place_that_cannot_be_written_is_told(tmp_path):
    (tmp_path / "file").write_text("")
    with pytest.raises(MachineError, match="file"), open_journal(tmp_path / "file" / "t.csv", "k", 2):
        pass
