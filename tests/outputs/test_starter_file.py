import errno

import pytest

from blockgen.errors import InputError, MachineError
from blockgen.outputs import starter_file
from blockgen.outputs.starter_file import write_starter
from blockgen.spec.load import load_spec

NONE = {"motor": None, "bearing": None, "coupling": None}


def test_a_starter_is_a_spec_that_loads(tmp_path):
    write_starter(tmp_path / "axis.toml", NONE)
    assert "job.number" in load_spec(tmp_path / "axis.toml").records


def test_a_file_that_exists_is_left_alone(tmp_path):
    file = tmp_path / "axis.toml"
    file.write_text("mine")
    with pytest.raises(InputError, match=r"axis.toml\n.*exists\n.*\n.*choose another name"):
        write_starter(file, NONE)
    assert file.read_text() == "mine"


def test_a_missing_folder_is_wrong_input(tmp_path):
    with pytest.raises(InputError, match=r"a folder that does not exist\n.*\n.*make it first: .*nowhere"):
        write_starter(tmp_path / "nowhere" / "axis.toml", NONE)


def test_a_missing_preset_writes_nothing(tmp_path):
    with pytest.raises(InputError, match="the name of a preset"):
        write_starter(tmp_path / "a.toml", {**NONE, "motor": "no-such-motor"})
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("error", [OSError(errno.ENOSPC, "No space left on device"), KeyboardInterrupt()])
def test_half_a_file_goes(tmp_path, error):
    file = tmp_path / "axis.toml"

    class FullDisk:
        def __enter__(self):
            return self

        def __exit__(self, *_):
            return None

        def write(self, text):
            raise error

    file.touch()
    expected = MachineError if isinstance(error, OSError) else KeyboardInterrupt
    with pytest.raises(expected, match="No space left" if isinstance(error, OSError) else "^$"):
        starter_file._fill(FullDisk(), "text", file)
    assert not file.exists()
