"""``blockgen inspect`` as an inspector meets it."""

import json
import subprocess
import sys

import pytest

from blockgen.cli import run
from tests.evidence.samples import SERVO, changed, good, sheet
from tests.test_imports import HEAVY


@pytest.fixture
def filled(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)

    def write(values):
        (tmp_path / "measured.csv").write_text(sheet(values))
        return ["inspect", str(SERVO), "measured.csv"]

    return write


REJECTED = changed(motor_bore__diameter=(69.98, 0.003))


def test_accept_and_note_end_with_0_and_reject_with_1(filled, capsys):
    assert run(filled(good())) == 0
    assert capsys.readouterr().out.endswith("Verdict\nACCEPT\n")
    assert run(filled(changed(block__shaft_height=(64.975, 0.002)))) == 0
    assert "USE WITH NOTE" in capsys.readouterr().out
    assert run(filled(REJECTED)) == 1
    assert "REJECT" in capsys.readouterr().out


def test_json_is_one_document_and_nothing_else(filled, capsys):
    assert run([*filled(REJECTED), "--json"]) == 1
    told = capsys.readouterr()
    assert (json.loads(told.out)["verdict"], told.err) == ("reject", "")


def test_quiet_tells_a_rejection_only(filled, capsys):
    assert run([*filled(good()), "--quiet"]) == 0
    assert capsys.readouterr() == ("", "")
    assert run([*filled(REJECTED), "--quiet"]) == 1
    told = capsys.readouterr()
    assert told.out == ""
    assert told.err.startswith("REJECT\n- the motor bore of 69.98 mm")


def test_a_wrong_sheet_ends_with_2(filled, capsys):
    assert run(filled({})) == 2
    assert "measured.csv: value" in capsys.readouterr().err
    assert run(["inspect", str(SERVO), "none.csv", "--json"]) == 2
    assert json.loads(capsys.readouterr().out)


def test_help_names_the_sheet(capsys):
    assert run(["inspect", "--help"]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert "MEASURED" in out
    assert "blockgen inspect axis.toml measured.csv" in out


def test_nothing_heavy_is_loaded(filled):
    script = (
        "import sys; from blockgen.cli import run; code = run(sys.argv[1:]); "
        "print(code, sorted({n.split('.')[0] for n in sys.modules} & " + repr(HEAVY) + "))"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, *filled(good()), "--quiet"],
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    assert done.stdout == "0 []\n"
