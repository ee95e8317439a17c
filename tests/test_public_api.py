"""The public interface: small, typed, and as its own examples show it."""

import doctest
import inspect
import shutil
from pathlib import Path

import pytest

import blockgen

HERE = Path(__file__).parent


def test_the_examples_of_the_package_run(tmp_path, monkeypatch):
    shutil.copy(HERE / "required_keys.toml", tmp_path / "axis.toml")
    shutil.copy(HERE.parent / "presets/examples/spray_carriage_too_short.toml", tmp_path / "too_short.toml")
    monkeypatch.chdir(tmp_path)
    found = doctest.testmod(blockgen)
    assert found.attempted >= 7
    assert found.failed == 0


@pytest.mark.parametrize("name", [n for n in blockgen.__all__ if n != "__version__"])
def test_each_public_name_is_documented_and_typed(name):
    thing = getattr(blockgen, name)
    assert thing.__doc__
    if inspect.isfunction(thing):
        signature = inspect.signature(thing)
        assert signature.return_annotation is not inspect.Signature.empty
        assert all(p.annotation is not inspect.Parameter.empty for p in signature.parameters.values())


def test_a_name_that_is_not_offered_says_what_is():
    with pytest.raises(AttributeError, match="load_spec"):
        blockgen.no_such_thing  # noqa: B018
