"""A filled sheet, and everything that may be wrong with one."""

import pytest

from blockgen.errors import InputError, MachineError
from blockgen.evidence.measured import read_measured
from tests.evidence.samples import good, made, rows_of, sheet


def read(tmp_path, text, encoding="utf-8"):
    path = tmp_path / "measured.csv"
    path.write_bytes(text if isinstance(text, bytes) else text.encode(encoding))
    of = made()
    return read_measured(path, of.plan, of.spec_sha256)


def problems(tmp_path, text):
    with pytest.raises(InputError, match=r"measured\.csv") as told:
        read(tmp_path, text)
    return told.value.problems


def line_of(text, identifier):
    return next(n for n, line in enumerate(text.splitlines(), 1) if f",{identifier}," in line)


def without(text, *ids):
    return "".join(line for line in text.splitlines(keepends=True) if not any(f",{i}," in line for i in ids))


def test_a_filled_sheet_comes_back(tmp_path):
    found = read(tmp_path, sheet(good()))
    assert {key: (m.value, m.uncertainty) for key, m in found.values.items()} == good()


def test_a_spreadsheet_may_add_a_mark_and_its_own_line_ends(tmp_path):
    text = sheet(good()).replace("\n", "\r\n")
    assert len(read(tmp_path, text, "utf-8-sig").values) == len(good())


def test_columns_of_the_users_own_and_another_order_do_no_harm(tmp_path):
    of = made()
    body = "".join(f"x,{row.id},,{row.unit},,{of.spec_sha256}\n" for row in rows_of().values())
    filled = body.replace("motor_bore.diameter,,mm,", "motor_bore.diameter,0.002,mm,70.011")
    found = read(tmp_path, "mine,ID,uncertainty,unit,value,spec_hash\n" + filled)
    assert {key: m.value for key, m in found.values.items()} == {"motor_bore.diameter": 70.011}


def test_bought_rows_may_be_left_out(tmp_path):
    bought = [row.id for row in rows_of().values() if row.needed == "bought"]
    assert len(read(tmp_path, without(sheet(good()), *bought)).values) == len(good())


def test_a_missing_row_is_told_by_its_id(tmp_path):
    (problem,) = problems(tmp_path, without(sheet(good()), "base.flatness"))
    assert (problem.key, problem.found) == ("base.flatness", "no such row")


def test_many_missing_rows_are_told_at_once(tmp_path):
    text = "\n".join(sheet(good()).splitlines()[:9])
    (problem,) = problems(tmp_path, text)
    assert "rows are missing" in problem.found
    assert "base.flatness" in problem.found


@pytest.mark.parametrize("column", ["spec_hash", "id", "value", "unit", "uncertainty"])
def test_a_missing_column(tmp_path, column):
    (problem,) = problems(tmp_path, sheet(good()).replace(f"{column},", "other,", 1))
    assert (problem.key, problem.found) == (column, "no such column")


def test_a_column_twice(tmp_path):
    (problem,) = problems(tmp_path, sheet(good()).replace("nominal", "value", 1))
    assert problem.found == "the column stands there more than once"


def test_an_unknown_id_gets_the_nearest_one(tmp_path):
    text = sheet(good()).replace(",motor.spigot_y,", ",motor.spigott_y,")
    (problem,) = problems(tmp_path, text)
    assert (problem.found, problem.remedy) == ("motor.spigott_y", "write motor.spigot_y")
    assert problem.line == line_of(text, "motor.spigott_y")


def test_the_sheet_of_another_spec_is_one_problem(tmp_path):
    text = sheet(good("large"), "large")
    (problem,) = problems(tmp_path, text)
    assert (problem.key, problem.found) == ("spec_hash", made("large").spec_sha256)
    assert problem.expected == made().spec_sha256


def test_one_line_of_another_spec_and_one_without(tmp_path):
    lines = sheet(good()).splitlines()
    lines[7] = "0" * 64 + lines[7][64:]
    lines[9] = lines[9][64:]
    found = problems(tmp_path, "\n".join(lines))
    assert [(p.line, p.key, p.found) for p in found] == [(8, "spec_hash", "0" * 64), (10, "spec_hash", "nothing")]


def test_duplicates(tmp_path):
    text = sheet(good())
    line = next(line for line in text.splitlines() if ",base.flatness," in line)
    (problem,) = problems(tmp_path, text + line + "\n")
    assert problem.key == "base.flatness"
    assert problem.found == f"again; first in line {line_of(text, 'base.flatness')}"


def test_all_problems_come_together_in_the_order_of_the_file(tmp_path):
    text = sheet(good() | {"base.flatness": ("-0.01", 0.002), "block.length": ("113,01", 0.02),
                           "block.width": ("104", "", "N")})  # fmt: skip
    found = problems(tmp_path, without(text, "base.texture"))
    assert [p.key for p in found] == ["base.flatness", "block.length", "block.width", "base.texture"]
    assert [p.line for p in found][:3] == [line_of(text, p.key) for p in found[:3]]


def test_um_for_mm_is_converted(tmp_path):
    found = read(tmp_path, sheet({"base.flatness": ("12", "2", "um")}))
    assert (found.values["base.flatness"].value, found.values["base.flatness"].uncertainty) == (0.012, 0.002)


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("", "an empty file"),
        ("\n\n# only a remark\n", "an empty file"),
        ("spec_hash;id;value;unit;uncertainty\n", "columns separated by semicolons"),
        ("spec_hash\tid\tvalue\tunit\tuncertainty\n", "columns separated by tabs"),
        ('spec_hash,id,value,unit,uncertainty\n"a"b,c\n', "expected after"),
        (b"spec_hash,id\n\xb5m,", "byte 14 is none of UTF-8"),
    ],
)
def test_files_that_are_no_sheet(tmp_path, text, found):
    (problem,) = problems(tmp_path, text)
    assert found in problem.found


def test_nothing_measured(tmp_path):
    (problem,) = problems(tmp_path, sheet({}))
    assert problem.found == "no value at all"


def test_no_such_file_and_a_folder(tmp_path):
    of = made()
    with pytest.raises(InputError, match="no such file"):
        read_measured(tmp_path / "none.csv", of.plan, of.spec_sha256)
    with pytest.raises(InputError, match="a folder"):
        read_measured(tmp_path, of.plan, of.spec_sha256)


def test_a_file_that_cannot_be_read(tmp_path, monkeypatch):
    path = tmp_path / "measured.csv"
    path.write_text("x")

    def fails(_):
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(type(path), "read_bytes", fails)
    with pytest.raises(MachineError, match="cannot be read: Permission denied"):
        read_measured(path, made().plan, "x")


def test_a_zone_that_contradicts_its_vector(tmp_path):
    values = good() | {"motor_bore.offset_y": (0.02, 0.001), "motor_bore.coaxiality": (0.005, 0.002)}
    (problem,) = problems(tmp_path, sheet(values))
    assert problem.key == "motor_bore.coaxiality"
    assert "0.04 mm" in problem.found
