"""The command as a process of its own: saves, keys, kills. Conditions are waited for, never times."""

import http.client
import json
import os
import signal
import subprocess
import sys
import threading
import time
from contextlib import closing, contextmanager
from pathlib import Path

import pytest

from blockgen.cli import run
from blockgen.outputs.manifest import set_is_whole
from blockgen.pipeline import build
from tests.examples import SERVO
from tests.watching.following import PATIENCE

TEXT = SERVO.read_text(encoding="utf-8")
PLACE = f"axis.toml:{1 + TEXT[: TEXT.index('journal_reach')].count(chr(10))}: screw.journal_reach"
ROLES = ("block", "stl", "inspection")

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(sys.platform == "win32", reason="the keys are sent as signals"),
]


class Running:
    """A watch in a process, and all that it has printed so far."""

    def __init__(self, *arguments):
        environment = {**os.environ, "COLUMNS": "100", "PYTHONIOENCODING": "utf-8"}
        self.process = subprocess.Popen(
            [sys.executable, "-m", "blockgen", "watch", *map(str, arguments)],
            stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, encoding="utf-8", env=environment,
        )  # fmt: skip
        self.lines = []
        self.reader = threading.Thread(target=self._read, daemon=True)
        self.reader.start()

    def _read(self):
        for line in self.process.stdout:
            self.lines.append(line)

    def wait_for(self, text, times=1):
        """Wait until a text has been printed so often; return the line of the last one."""
        until(lambda: sum(text in line for line in self.lines) >= times or self.process.poll() is not None)
        found = [line for line in self.lines if text in line]
        assert len(found) >= times, "".join(self.lines)
        return found[times - 1]

    def press(self, number=signal.SIGINT):
        self.process.send_signal(number)

    def ended(self):
        """Wait for the end and return exit code and everything printed."""
        code = self.process.wait(PATIENCE)
        self.reader.join(PATIENCE)
        return code, "".join(self.lines)


@contextmanager
def running(*arguments):
    found = Running(*arguments)
    try:
        yield found
    finally:
        found.process.kill()
        found.process.wait()


def until(condition):
    end = time.monotonic() + PATIENCE
    while not condition():
        assert time.monotonic() < end, "waited too long"
        time.sleep(0.02)


@pytest.fixture
def spec(tmp_path):
    path = tmp_path / "axis.toml"
    path.write_text(TEXT, encoding="utf-8")
    return path


@pytest.fixture(scope="module")
def wide(tmp_path_factory):
    """The set that a build writes for the demo with a longer journal."""
    place = tmp_path_factory.mktemp("wide")
    path = place / "axis.toml"
    path.write_text(longer(47), encoding="utf-8")
    return build(path, place / "out", ROLES).folder


def longer(millimetres):
    return TEXT.replace('journal_reach = "46 mm"', f'journal_reach = "{millimetres} mm"')


def files_of(folder):
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def roles_in(folder):
    entries = json.loads((folder / "manifest.json").read_text())["files"]
    return {entry["role"] for entry in entries}


def test_a_save_is_built_with_all_that_the_folder_had_and_the_key_ends_with_0(spec, tmp_path, wide):
    folder = build(spec, tmp_path / "out", ("inspection",)).folder
    with running(spec, "--out", tmp_path / "out") as watch:
        watch.wait_for("The set is whole")
        assert roles_in(folder) == {*ROLES, "summary", "spec"}
        before = files_of(folder)
        spec.write_text(longer("47 N #"), encoding="utf-8")
        watch.wait_for(PLACE)
        assert files_of(folder) == before
        new = tmp_path / "axis.toml.new"
        new.write_text(longer(47), encoding="utf-8")
        new.replace(spec)
        watch.wait_for("block, stl built in", times=2)
        watch.press()
        code, text = watch.ended()
    assert code == 0, text
    assert "screw.journal_reach  46 mm   47 mm" in text
    assert "Still to come: inspection" in text
    assert files_of(folder) == files_of(wide)
    assert [path.name for path in (tmp_path / "out").iterdir()] == [folder.name]


def test_the_key_pressed_twice_leaves_the_rest_and_says_so(spec, tmp_path):
    folder = build(spec, tmp_path / "out", ("inspection",)).folder
    with running(spec, "--out", tmp_path / "out") as watch:
        watch.wait_for("block, stl built in")
        watch.press()
        watch.wait_for("Still to come: inspection")
        watch.press()
        code, text = watch.ended()
    assert code == 0, text
    assert ("It lacks inspection" in text) == ("inspection" not in roles_in(folder))
    assert set_is_whole(folder)
    assert [path.name for path in (tmp_path / "out").iterdir()] == [folder.name]


@pytest.mark.skipif(not Path("/proc/self/task").is_dir(), reason="the second process is found in /proc")
def test_killed_in_the_middle_a_whole_set_stands_and_no_process_stays(spec, tmp_path):
    folder = build(spec, tmp_path / "out", ("inspection",)).folder
    with running(spec, "--out", tmp_path / "out") as watch:
        watch.wait_for("block, stl built in")
        until(lambda: children_of(watch.process.pid))
        others = children_of(watch.process.pid)
        watch.process.kill()
        watch.ended()
        assert set_is_whole(folder)
        until(lambda: not any(is_alive(pid) for pid in others))
    assert set_is_whole(folder)
    build(spec, tmp_path / "out", ("inspection",))
    assert [path.name for path in (tmp_path / "out").iterdir()] == [folder.name]


def children_of(pid):
    return Path(f"/proc/{pid}/task/{pid}/children").read_text().split()


def is_alive(pid):
    """Tell whether a process runs; one that has ended and waits to be buried does not."""
    try:
        return Path(f"/proc/{pid}/stat").read_text().rsplit(")", 1)[1].split()[0] not in {"Z", "X"}
    except OSError:
        return False


def test_served_it_shows_the_set_the_error_and_the_next_set(spec, tmp_path):
    with running(spec, "--out", tmp_path / "out", "--only", "summary", "--serve") as watch:
        address = watch.wait_for("Shown at http://127.0.0.1:").split()[2]
        watch.wait_for("built in")
        with closing(connected(address)) as line:
            line.request("GET", "/watch/news")
            news = (json.loads(row[6:]) for row in line.getresponse() if row.startswith(b"data: "))
            first = next(told for told in news if told["words"])
            assert b"113 x 104" in page(address)
            spec.write_text(longer("47 N #<b>"), encoding="utf-8")
            wrong = next(told for told in news if told["wrong"])
            assert PLACE in wrong["words"]
            assert wrong["page"] == first["page"]
            shown = page(address)
            assert b"113 x 104" in shown
            assert b"47 N" in shown
            assert b"#<b>" not in shown
            spec.write_text(longer(47), encoding="utf-8")
            again = next(told for told in news if told["page"] != first["page"])
            assert not again["wrong"]
            assert b"113.5 x 103" in page(address)
        watch.press(signal.SIGTERM)
        assert watch.ended()[0] == 0
        with pytest.raises(ConnectionRefusedError):
            page(address)


def connected(address):
    return http.client.HTTPConnection(address.removeprefix("http://").rstrip("/."), timeout=PATIENCE)


def page(address):
    with closing(connected(address)) as line:
        line.request("GET", "/")
        return line.getresponse().read()


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("no-such.toml",), "no such file"),
        (("axis.toml", "--port", "8000"), "--serve"),
        (("axis.toml", "--only", "drawings"), "--only"),
        (("axis.toml", "--serve", "--port", "65536"), "--port"),
    ],
)
def test_wrong_usage_ends_with_2_at_once(spec, tmp_path, capsys, arguments, said):
    name, *options = arguments
    assert run(["watch", str(tmp_path / name), *options]) == 2
    assert said in capsys.readouterr().err
    assert [path.name for path in tmp_path.iterdir()] == ["axis.toml"]
