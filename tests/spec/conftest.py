"""A small valid spec, and a way to load a changed one."""

import copy
import json

import pytest

from blockgen.errors import InputError
from blockgen.spec.load import parse_spec

REQUIRED = {
    "job": {"number": "T-1"},
    "motor": {
        "pilot_diameter": "70 mm",
        "bolt_circle": "90 mm",
        "flange_size": "80 mm",
        "shaft_diameter": "19 mm",
        "shaft_length": "40 mm",
    },
    "bearing": {"pilot_diameter": "45 mm", "flange_size": "66 mm", "bolt_circle": "62 mm"},
    "screw": {"journal_diameter": "15 mm", "journal_reach": "43 mm"},
    "coupling": {"outer_diameter": "45 mm", "length": "58 mm"},
    "base": {"shaft_height": "65 mm"},
}


def _toml(tables):
    lines = []
    for table, keys in tables.items():
        lines.append(f"[{table}]")
        lines += [f"{key} = {json.dumps(value)}" for key, value in keys.items()]
    return "\n".join(lines) + "\n"


def _changed(**tables):
    sample = copy.deepcopy(REQUIRED)
    for table, keys in tables.items():
        for key, value in keys.items():
            sample.setdefault(table, {})[key] = value
            if value is None:
                del sample[table][key]
    return _toml(sample)


@pytest.fixture(autouse=True)
def no_user_presets(monkeypatch, tmp_path):
    """Keep the presets of whoever runs the tests out of them."""
    monkeypatch.setenv("BLOCKGEN_PRESETS", str(tmp_path / "no-presets"))


@pytest.fixture(name="required", scope="session")
def required_():
    """The required keys by table."""
    return copy.deepcopy(REQUIRED)


@pytest.fixture(scope="session")
def to_toml():
    """Return TOML for tables of scalars and arrays."""
    return _toml


@pytest.fixture(scope="session")
def text_with():
    """Return the sample as TOML with keys changed; None takes a key away."""
    return _changed


@pytest.fixture(scope="session")
def load_with():
    """Load the sample with keys changed."""
    return lambda **tables: parse_spec(_changed(**tables))


@pytest.fixture(scope="session")
def problems_with():
    """Return the problems of the sample with keys changed."""

    def find(**tables):
        with pytest.raises(InputError, match="expected") as caught:
            parse_spec(_changed(**tables))
        return caught.value.problems

    return find
