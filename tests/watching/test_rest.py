"""The second process: what it writes, what it says, and that it can be ended at any moment."""

import time

import pytest

from blockgen.outputs.manifest import set_is_whole
from blockgen.pipeline import build
from blockgen.watching.rest import Rest, Task
from tests.examples import SERVO
from tests.watching.following import PATIENCE

pytestmark = pytest.mark.slow


def until(condition):
    end = time.monotonic() + PATIENCE
    while (found := condition()) is None or found is False:
        assert time.monotonic() < end, "waited too long"
        time.sleep(0.01)
    return found


@pytest.fixture
def rest():
    found = Rest()
    yield found
    found.stop()


def names(folder):
    return sorted(path.name for path in folder.iterdir())


def test_it_writes_what_a_build_writes_one_task_after_the_other(rest, tmp_path):
    for roles in ((), ("inspection",)):
        rest.begin(Task(str(SERVO), str(tmp_path / "a"), roles))
        assert rest.busy
        made = until(rest.answer)
        assert not rest.busy
        other = build(SERVO, tmp_path / "b", roles).folder
        assert {p.name: p.read_bytes() for p in made.folder.iterdir()} == {
            p.name: p.read_bytes() for p in other.iterdir()
        }
    assert rest.process.poll() is None


def test_what_it_cannot_write_it_says_in_words(rest, tmp_path):
    rest.begin(Task(str(tmp_path / "no.toml"), str(tmp_path), ()))
    assert "no such file" in until(rest.answer)
    assert not rest.busy


def test_that_it_has_died_is_said_too(rest, tmp_path):
    rest.begin(Task(str(SERVO), str(tmp_path), ("drawing",)))
    rest.process.kill()
    assert "has ended" in until(rest.answer)
    rest.begin(Task(str(SERVO), str(tmp_path), ()))
    assert until(rest.answer).files


@pytest.mark.parametrize("at_its_next_step", [True, False])
def test_ended_in_the_middle_it_leaves_the_old_set_and_nothing_that_a_build_does_not_clear(
    rest, tmp_path, at_its_next_step
):
    folder = build(SERVO, tmp_path, ()).folder
    before = {path.name: path.read_bytes() for path in folder.iterdir()}
    rest.begin(Task(str(SERVO), str(tmp_path), ("drawing",)))
    until(lambda: len(names(tmp_path)) > 1)
    process = rest.process
    rest.stop(at_its_next_step=at_its_next_step)
    assert process.poll() is not None
    assert set_is_whole(folder)
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == before
    if not at_its_next_step:
        build(SERVO, tmp_path, ())
    assert names(tmp_path) == [folder.name]
    assert rest.answer() is None
