from dataclasses import replace

import pytest

from blockgen.errors import InputError
from blockgen.outputs import names
from blockgen.record import Record


def test_folder_and_files_carry_number_and_revision(plan):
    assert names.stem(plan) == "GL-040-11_A"
    assert names.file_names("GL-040-11_A", "block") == ("GL-040-11_A_block.step",)
    assert names.file_names("GL-040-11_A", "stl") == ("GL-040-11_A_block.stl",)
    drawing = names.file_names("GL-040-11_A", "drawing")
    assert drawing == tuple(f"GL-040-11_A_drawing.{ending}" for ending in ("pdf", "dxf", "svg"))


def test_files_know_their_role():
    files = names.roles_by_file("N_A", ["stl", "base_holes"])
    assert files == {"N_A_block.stl": "stl", "N_A_base_holes.dxf": "base_holes"}


def test_a_name_too_long_for_file_systems_is_wrong_input(plan):
    number = Record("job.number", "\u00e9" * 120, "", "given", "", line=3)
    with pytest.raises(InputError, match=r"job.number\n.*a name of 242 bytes\n.*at most 230 bytes"):
        names.stem(replace(plan, records={**plan.records, "job.number": number}))


@pytest.mark.parametrize(
    ("only", "expected"),
    [
        (None, ("block", "stl", "assembly", "drawing", "base_holes", "inspection", "report")),
        (["stl", " block"], ("block", "stl")),
        (["stl"], ("stl",)),
        (["summary", "manifest"], ()),
        (["", "stl"], ("stl",)),
        ([], ()),
    ],
)
def test_roles_come_in_their_order(only, expected):
    assert names.chosen_roles(only) == expected


def test_no_role_at_all_is_wrong_input():
    roles = "block, stl, assembly, drawing, base_holes, inspection, report"
    with pytest.raises(InputError, match=rf'--only\n.*""\n.*{roles}\n.*--only summary writes nothing else'):
        names.chosen_roles(["", " "])


def test_a_role_of_another_version_is_wrong_input():
    with pytest.raises(InputError, match=r'--only\n.*"poster"\n.*this version writes.*: block, stl'):
        names.chosen_roles(["block", "poster"])
