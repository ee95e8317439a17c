"""Whole or not at all: whatever stops a build, the old set or the new one stands."""

from __future__ import annotations

import errno
import json
import os
import shutil
import signal
import subprocess
import sys
import threading
import time
from contextlib import contextmanager
from pathlib import Path

import pytest

from blockgen.errors import MachineError
from blockgen.outputs import exchange, lock, move_in
from blockgen.outputs.folder import new_set
from blockgen.outputs.manifest import manifest, set_is_whole

OLD = {"summary.md": "old summary", "block.step": "old block", "block.stl": "old mesh"}
NEW = {"summary.md": "new summary", "block.step": "new block"}


def write(folder, files):
    """Write a set as the pipeline does."""
    with new_set(folder) as place:
        for name, text in files.items():
            (place / name).write_text(text)
        document = manifest(place, dict.fromkeys(files, "block"), "", "")
        (place / "manifest.json").write_text(json.dumps(document))


def texts(folder):
    return {p.name: p.read_text() for p in folder.iterdir() if p.name != "manifest.json" and p.is_file()}


@pytest.fixture
def target(tmp_path):
    return tmp_path / "out" / "GL_A"


@pytest.fixture
def no_exchange(monkeypatch):
    monkeypatch.setattr(exchange, "_exchange", lambda one, other: False)


def assert_tidy(target):
    assert [p.name for p in target.parent.iterdir()] == [target.name]
    assert not (target / ".blockgen-swap").exists()


def test_a_first_set_makes_its_parents(target):
    write(target, OLD)
    assert texts(target) == OLD
    assert set_is_whole(target)
    assert_tidy(target)


@pytest.mark.parametrize("way", ["exchange", "move in"])
def test_a_second_set_replaces_the_first_and_retires_files(target, way, monkeypatch):
    if way == "move in":
        monkeypatch.setattr(exchange, "_exchange", lambda one, other: False)
    write(target, OLD)
    write(target, NEW)
    assert texts(target) == NEW
    assert set_is_whole(target)
    assert_tidy(target)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="other systems may lack it")
def test_folders_are_exchanged_in_one_step(target):
    write(target, OLD)
    before = target.stat().st_ino
    write(target, NEW)
    assert target.stat().st_ino != before


@pytest.mark.parametrize("way", ["exchange", "move in"])
def test_what_is_not_ours_stays(target, way, monkeypatch):
    if way == "move in":
        monkeypatch.setattr(exchange, "_exchange", lambda one, other: False)
    write(target, OLD)
    (target / "notes.txt").write_text("mine")
    (target / "link").symlink_to("nowhere")
    before = (target / "notes.txt").stat()
    write(target, NEW)
    after = (target / "notes.txt").stat()
    assert texts(target) == {**NEW, "notes.txt": "mine"}
    assert os.path.samestat(before, after)
    assert after.st_mtime_ns == before.st_mtime_ns
    assert (target / "link").readlink().name == "nowhere"


def test_a_folder_that_is_not_ours_is_never_moved_about(target):
    write(target, OLD)
    (target / "photos").mkdir()
    (target / "photos" / "a.jpg").write_text("mine")
    before = target.stat().st_ino
    write(target, NEW)
    assert target.stat().st_ino == before
    assert (target / "photos" / "a.jpg").read_text() == "mine"
    assert texts(target) == NEW
    assert_tidy(target)


def test_the_working_folder_is_not_taken_from_under_the_shell(target, monkeypatch):
    write(target, OLD)
    monkeypatch.chdir(target)
    write(target, NEW)
    assert set_is_whole(target)
    assert sorted(p.name for p in Path.cwd().iterdir()) == ["block.step", "manifest.json", "summary.md"]


def test_a_retired_file_that_was_changed_is_the_users(target):
    write(target, OLD)
    (target / "block.stl").write_text("repaired by hand")
    write(target, NEW)
    assert texts(target) == {**NEW, "block.stl": "repaired by hand"}


def test_a_link_to_the_folder_is_followed(target, tmp_path):
    write(target, OLD)
    (tmp_path / "link").symlink_to(target)
    write(tmp_path / "link", NEW)
    assert (tmp_path / "link").is_symlink()
    assert texts(target) == NEW


def test_rights_of_the_folder_stay(target):
    write(target, OLD)
    target.chmod(0o2750)
    write(target, NEW)
    assert target.stat().st_mode & 0o7777 == 0o2750


def stopped(target, error):
    """Start to write a set and stop."""
    with new_set(target) as place:
        (place / "summary.md").write_text("half")
        raise error


@pytest.mark.parametrize("error", [KeyboardInterrupt, ValueError, OSError(errno.ENOSPC, "No space left on device")])
def test_a_build_that_stops_leaves_the_old_set(target, error):
    write(target, OLD)
    expected = MachineError if isinstance(error, OSError) else error
    with pytest.raises(expected, match="No space left" if expected is MachineError else "^$"):
        stopped(target, error)
    assert texts(target) == OLD
    assert set_is_whole(target)
    assert_tidy(target)


def test_a_first_build_that_stops_leaves_nothing(target, tmp_path):
    with pytest.raises(KeyboardInterrupt):
        stopped(target, KeyboardInterrupt)
    assert list(tmp_path.iterdir()) == []


def write_wrongly(target):
    """Write a set in which a file has other bytes than the manifest says."""
    with new_set(target) as place:
        document = manifest(target, {"summary.md": "summary"}, "", "")
        (place / "summary.md").write_text("something else")
        (place / "manifest.json").write_text(json.dumps(document))


def test_files_that_do_not_read_back_are_refused(target):
    write(target, OLD)
    with pytest.raises(MachineError, match="GL_A: the files do not read back as they were written"):
        write_wrongly(target)
    assert texts(target) == OLD


def test_a_file_in_the_way_is_a_machine_error(target):
    target.parent.mkdir()
    target.write_text("a file")
    with pytest.raises(MachineError, match=r"GL_A: cannot be written: .*Not a directory"):
        write(target, NEW)
    assert target.read_text() == "a file"
    assert_tidy(target)


def test_a_file_in_place_of_out_is_a_machine_error(target):
    target.parent.write_text("a file")
    with pytest.raises(MachineError, match="cannot be written"):
        write(target, NEW)
    assert target.parent.read_text() == "a file"


def test_a_real_full_disk_leaves_the_old_set(tmp_path):
    mount = shutil.which("mount")
    disk = tmp_path / "disk"
    disk.mkdir()
    if mount is None or subprocess.run([mount, "-t", "tmpfs", "-o", "size=64k", "tmpfs", disk], check=False).returncode:
        pytest.skip("mounting is not permitted here")
    try:
        write(disk / "GL_A", OLD)
        with pytest.raises(MachineError, match="No space left on device"):
            write(disk / "GL_A", {**NEW, "block.step": "x" * 100_000})
        assert texts(disk / "GL_A") == OLD
        assert_tidy(disk / "GL_A")
    finally:
        subprocess.run(["umount", disk], check=True)


def test_a_failing_move_puts_the_old_set_back(target, no_exchange, monkeypatch):
    write(target, OLD)
    real, calls = os.replace, []

    def failing(source, destination, **more):
        calls.append(source)
        if len(calls) == 2:
            raise OSError(errno.EIO, "Input/output error")
        return real(source, destination, **more)

    monkeypatch.setattr(os, "replace", failing)
    with pytest.raises(MachineError, match="Input/output error"):
        write(target, {**NEW, "added.txt": "new"})
    monkeypatch.undo()
    assert texts(target) == OLD
    assert set_is_whole(target)
    assert_tidy(target)


STEPS = ("link", "rename", "replace", "unlink", "mkdir", "rmdir")


def killed_run(target, step_to_die_at, *, exchanging):
    """Build in a child that dies without warning before its n-th change of the file system; return its exit code."""
    child = os.fork()
    if child:
        return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])
    count = 0

    def deadly(function):
        def call(*arguments, **more):
            nonlocal count
            count += 1
            if count == step_to_die_at:
                os._exit(9)
            return function(*arguments, **more)

        return call

    try:
        for name in STEPS:
            setattr(os, name, deadly(getattr(os, name)))
        exchange._exchange = deadly(exchange._exchange) if exchanging else (lambda one, other: False)
        write(target, NEW)
    except BaseException:  # noqa: BLE001
        os._exit(1)
    os._exit(0)


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="needs fork and the exchange of folders")
def test_killed_at_any_step_the_old_or_the_new_set_is_whole(tmp_path):
    for step in range(1, 60):
        target = tmp_path / str(step) / "GL_A"
        write(target, OLD)
        (target / "notes.txt").write_text("mine")
        code = killed_run(target, step, exchanging=True)
        standing = texts(target)
        assert standing.pop("notes.txt") == "mine", step
        assert set_is_whole(target), step
        assert standing in (OLD, NEW), step
        write(target, NEW)
        assert texts(target) == {**NEW, "notes.txt": "mine"}, step
        assert_tidy(target)
        if code == 0:
            break
    assert code == 0
    assert step > 8


@pytest.mark.skipif(not hasattr(os, "fork"), reason="needs fork")
def test_where_folders_cannot_be_exchanged_the_next_build_mends(tmp_path):
    for step in range(1, 60):
        target = tmp_path / str(step) / "GL_A"
        write(target, OLD)
        (target / "photos").mkdir()
        code = killed_run(target, step, exchanging=False)
        move_in.recover(target)
        assert set_is_whole(target), step
        write(target, NEW)
        assert texts(target) == NEW, step
        assert (target / "photos").is_dir()
        assert_tidy(target)
        if code == 0:
            break
    assert code == 0
    assert step > 12


def test_a_file_saved_while_the_folders_change_places_is_kept(target, monkeypatch):
    write(target, OLD)
    (target / "notes.txt").write_text("first")
    real = exchange._exchange

    def saved_meanwhile(finished, place):
        (place / "notes.tmp").write_text("second")
        (place / "notes.tmp").replace(place / "notes.txt")
        (place / "late.txt").write_text("late")
        return real(finished, place)

    monkeypatch.setattr(exchange, "_exchange", saved_meanwhile)
    write(target, NEW)
    assert texts(target) == {**NEW, "notes.txt": "second", "late.txt": "late"}


def test_a_running_build_is_left_alone_and_a_dead_one_removed(target):
    dead = target.parent / ".GL_A.0badcafe.part"
    dead.mkdir(parents=True)
    (dead / "half").write_text("x")
    with new_set(target) as running:
        (running / "summary.md").write_text("slow")
        assert not dead.exists()
        write(target, NEW)
        assert (running / "summary.md").exists()
        (running / "manifest.json").write_text(json.dumps(manifest(running, {"summary.md": "summary"}, "", "")))
    assert texts(target) == {"summary.md": "slow"}
    assert_tidy(target)


def test_where_nothing_can_be_locked_only_old_remains_go(target, monkeypatch):
    monkeypatch.setattr(lock, "_lock", lambda descriptor, *, wait: "impossible")
    fresh, stale = (target.parent / f".GL_A.{name}.part" for name in ("fresh", "stale"))
    for place in (fresh, stale):
        place.mkdir(parents=True)
    os.utime(stale, (time.time() - 7200,) * 2)
    write(target, NEW)
    assert fresh.exists()
    assert not stale.exists()


def test_many_builds_at_once_leave_one_whole_set(target):
    write(target, OLD)
    builders = [threading.Thread(target=write, args=(target, {**NEW, "by": str(n)})) for n in range(8)]
    for builder in builders:
        builder.start()
    for builder in builders:
        builder.join()
    assert set_is_whole(target)
    assert texts(target)["by"] in set("01234567")
    assert_tidy(target)


@contextmanager
def another_thread():
    """Run a thread as a library may have started it; it takes signals that the main thread blocks."""
    done = threading.Event()
    thread = threading.Thread(target=done.wait)
    thread.start()
    try:
        yield thread
    finally:
        done.set()
        thread.join()


@pytest.mark.parametrize("way", ["exchange", "move in"])
@pytest.mark.parametrize("taken_by", ["main thread", "another thread"])
def test_the_interrupt_key_waits_for_the_change_of_place(target, monkeypatch, way, taken_by):
    write(target, OLD)
    real = exchange._exchange

    def interrupted(finished, place):
        thread = other if taken_by == "another thread" else threading.main_thread()
        signal.pthread_kill(thread.ident, signal.SIGINT)
        time.sleep(0.05)
        return real(finished, place) if way == "exchange" else False

    monkeypatch.setattr(exchange, "_exchange", interrupted)
    with another_thread() as other, pytest.raises(KeyboardInterrupt):
        write(target, NEW)
    assert set_is_whole(target)
    assert texts(target) == NEW
    assert_tidy(target)
    assert signal.getsignal(signal.SIGINT) is signal.default_int_handler
    assert signal.getsignal(signal.SIGTERM) is signal.SIG_DFL


def test_a_thread_of_its_own_may_write_a_set(target):
    writer = threading.Thread(target=write, args=(target, NEW))
    writer.start()
    writer.join()
    assert texts(target) == NEW
