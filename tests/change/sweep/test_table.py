import csv

import pytest

from blockgen.change.sweep.axes import Axis
from blockgen.change.sweep.outcome import FEASIBLE, INFEASIBLE, Outcome
from blockgen.change.sweep.table import headings, lines, usable, write_table
from blockgen.errors import InputError, MachineError

AXES = (
    Axis("base.shaft_height", "base", ("base", "shaft_height"), "mm", (60.0, 65.0)),
    Axis("job.title", "job", ("job", "title"), "", ("=1+1", "plain")),
    Axis("base.dowels", "base", ("base", "dowels"), "", (True, 1.0)),
)
POINTS = ((60.0, "=1+1", True), (65.0, "plain", 1.0))
OUTCOMES = (Outcome(FEASIBLE, "-a", length=-1.5, screws=4), Outcome(INFEASIBLE, "too short: 3 mm"))


def written(path, statistics=False):
    names = headings(AXES, statistics=statistics)
    write_table(path, names, lines(POINTS, OUTCOMES, [0]), AXES)
    return names


def test_headings_say_unit_and_what_is_an_estimate():
    quick, exact = headings(AXES, statistics=False), headings(AXES, statistics=True)
    assert quick[:4] == ("variant", "base.shaft_height [mm]", "job.title", "base.dowels")
    assert {"offset_p95_estimate [mm]", "stiffness_estimate [N/um]", "offset_worst [mm]"} <= set(quick)
    assert {"offset_p95 [mm]", "stiffness_estimate [N/um]"} <= set(exact)
    assert len(set(quick)) == len(quick) == 2 + len(AXES) + len(Outcome._fields)


def test_text_that_a_spreadsheet_would_compute_gets_an_apostrophe(tmp_path):
    names = written(tmp_path / "t.csv")
    with (tmp_path / "t.csv").open(newline="", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert tuple(rows[0]) == names
    assert (rows[0]["job.title"], rows[0]["reason"], rows[0]["length [mm]"]) == ("'=1+1", "'-a", "-1.5")
    assert (rows[1]["job.title"], rows[1]["length [mm]"], rows[1]["front"]) == ("plain", "", "no")
    assert [row["variant"] for row in rows] == ["1", "2"]


@pytest.mark.parametrize("start", "=+-@")
def test_every_sign_that_starts_a_formula(tmp_path, start):
    rows = lines(POINTS, (Outcome(FEASIBLE, f"{start}cmd|x"), OUTCOMES[1]), [])
    write_table(tmp_path / "t.csv", headings(AXES, statistics=True), rows, AXES)
    assert f"'{start}cmd|x" in (tmp_path / "t.csv").read_text(encoding="utf-8")


@pytest.mark.slow
def test_parquet_holds_the_same_with_types(tmp_path):
    parquet = pytest.importorskip("pyarrow.parquet")
    names = written(tmp_path / "t.parquet")
    table = parquet.read_table(tmp_path / "t.parquet")
    assert tuple(table.column_names) == names
    rows = table.to_pylist()
    assert rows[0]["job.title"] == "=1+1"
    assert (rows[0]["screws"], rows[1]["screws"], rows[0]["front"]) == (4, None, True)
    assert str(table.schema.field("base.shaft_height [mm]").type) == "double"
    first = (tmp_path / "t.parquet").read_bytes()
    written(tmp_path / "t.parquet")
    assert (tmp_path / "t.parquet").read_bytes() == first


def test_an_old_table_stays_until_the_new_one_is_whole(tmp_path):
    path = tmp_path / "t.csv"
    path.write_text("old")

    def torn():
        yield (1,)
        raise MachineError("stopped")

    with pytest.raises(MachineError, match="stopped"):
        write_table(path, ("a",), torn(), AXES)
    assert [p.name for p in tmp_path.iterdir()] == ["t.csv"]
    assert path.read_text() == "old"


def test_what_cannot_be_a_table_is_told_before_anything_is_done(tmp_path, monkeypatch):
    with pytest.raises(InputError, match=r"\.csv or \.parquet"):
        usable(tmp_path / "t.xlsx")
    (tmp_path / "t.csv").mkdir()
    with pytest.raises(MachineError, match="is a folder"):
        usable(tmp_path / "t.csv")
    monkeypatch.setitem(__import__("sys").modules, "pyarrow", None)
    with pytest.raises(MachineError, match=r"pip install .*sweep"):
        usable(tmp_path / "t.parquet")
