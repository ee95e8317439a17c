import subprocess
import sys
from itertools import pairwise

import pytest

from blockgen.errors import BlockgenError
from blockgen.standards import tables
from blockgen.standards.tables import TableError, load_table, one_of, row_for, table_index


def test_every_data_file_has_its_source_and_every_source_its_file():
    assert {path.stem for path in tables.DATA.glob("*.csv")} - {"index"} == set(table_index())


@pytest.mark.parametrize("name", list(table_index()))
def test_every_table_says_where_it_comes_from(name):
    table = load_table(name)
    assert table.info.status in {"read", "computed", "memory", "row"}
    assert table.info.standard
    assert table.info.unit
    assert table.info.source
    assert table.rows
    if table.info.status == "row":
        assert {row["status"] for row in table.rows} <= {"read", "computed", "memory"}


@pytest.mark.parametrize("name", list(table_index()))
def test_rows_are_complete_and_different(name):
    rows = load_table(name).rows
    assert all(None not in row and None not in row.values() for row in rows)
    assert len({tuple(row.items()) for row in rows}) == len(rows)


@pytest.mark.parametrize("name", [n for n in table_index() if "above" in load_table(n).rows[0]])
def test_ranges_do_not_overlap(name):
    groups: dict[str, list[tuple[float, float]]] = {}
    for row in load_table(name).rows:
        group = "/".join(row.get(c, "") for c in ("characteristic", "kind", "name", "pitch"))
        groups.setdefault(group, []).append((float(row["above"]), float(row["to"])))
    for ranges in groups.values():
        assert all(above < to for above, to in ranges)
        assert all(before[1] == after[0] for before, after in pairwise(ranges))


def test_a_file_is_read_once(monkeypatch):
    first = load_table("iso273")
    monkeypatch.setattr(tables, "_read", None)
    assert load_table("iso273") is first


def test_nothing_is_read_on_import():
    code = "import blockgen.standards.lookup, blockgen.standards.tables as t; print(t.load_table.cache_info().misses)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "0"


def test_unknown_table_suggests_the_nearest():
    with pytest.raises(TableError, match=r'table "iso237".*nearest: iso273'):
        load_table("iso237")


def test_the_error_is_a_value_error_with_exit_code_2():
    with pytest.raises(ValueError, match="write M6") as caught:
        raise TableError("thread", "M6.5", "there is none", "write M6")
    assert isinstance(caught.value, BlockgenError)
    assert caught.value.exit_code == 2
    assert (caught.value.field, caught.value.value) == ("thread", "M6.5")


def test_range_bounds_belong_to_the_lower_range():
    rows = [{"above": "0", "to": "3"}, {"above": "3", "to": "6"}]
    assert row_for(rows, "size", 3)["to"] == "3"
    assert row_for(rows, "size", 3.0001)["to"] == "6"


@pytest.mark.parametrize("value", [0, -1, 6.0001, float("nan"), float("inf")])
def test_outside_the_range_is_refused(value):
    rows = [{"above": "0", "to": "3"}, {"above": "3", "to": "6"}]
    with pytest.raises(TableError, match="runs from above 0 to 6 mm"):
        row_for(rows, "size", value)


def test_an_unlike_name_lists_what_there_is():
    with pytest.raises(TableError, match="the table holds fine, coarse; take one of these"):
        one_of("series", "xyz", {"fine": 1, "coarse": 2})


def test_citation_names_standard_edition_and_status():
    index = table_index()
    assert index["iso286_grades"].citation == "ISO 286-1 (2010 edition) [memory]"
    assert index["din76"].citation == "DIN 76-1 (as reprinted 2008) [read]"
    assert index["materials"].citation == "see each row [row]"
