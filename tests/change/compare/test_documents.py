from dataclasses import replace

from blockgen.change.compare.compare import compare
from tests.change.sides import SERVO_TEXT, altered, side


def fates(found):
    return {document.role: document.fate for document in found.documents}


def reasons(found, role):
    return next(document.reasons for document in found.documents if document.role == role)


def test_another_revision_alone_leaves_every_content_valid():
    found = compare(side(), side(SERVO_TEXT.replace('revision = "A"', 'revision = "B"')))
    told = fates(found)
    assert told.pop("stl") == "valid"
    assert {told.pop(role) for role in ("programs for the machine tool", "base plate that is drilled",
                                        "screws that are ordered")} == {"valid"}  # fmt: skip
    assert set(told.values()) == {"renamed"}
    assert reasons(found, "drawing") == ("it is named GL-040-11_A", "it carries the old hash of the spec")


def test_a_moved_hole_of_the_base_plate_makes_the_plate_obsolete_and_not_the_block():
    def moved(document):
        document["base_features"][0]["position"][0] += 5.0

    found = compare(side(), altered(moved))
    told = fates(found)
    assert told["base_holes"] == told["base plate that is drilled"] == told["assembly"] == "obsolete"
    assert told["block"] == told["stl"] == told["drawing"] == "valid"
    assert reasons(found, "base_holes") == ("1 hole of the base plate moved",)


def test_a_tolerance_makes_drawing_and_sheet_obsolete_and_not_the_mesh():
    def tighter(document):
        note = next(c for c in document["characteristics"] if c["id"] == "bearing_bore.diameter")
        note["upper"] = 0.016

    told = fates(compare(side(), altered(tighter)))
    assert told["drawing"] == told["inspection"] == told["block"] == "obsolete"
    assert told["stl"] == told["base_holes"] == told["programs for the machine tool"] == "valid"


def test_another_margin_concerns_the_report_only():
    def other(document):
        document["checks"][5]["margin"] = 0.01

    told = fates(compare(side(), altered(other)))
    assert {role for role, fate in told.items() if fate == "obsolete"} == {"report", "summary"}


def test_cavities_are_counted_by_what_became_of_them():
    def changed(document):
        document["features"].pop()
        document["features"][0]["diameter"] = 47.0

    found = compare(side(), altered(changed))
    assert reasons(found, "stl") == ("2 cavities: 1 removed, 1 changed",)


def test_files_with_the_same_bytes_are_valid_whatever_differs():
    def moved(document):
        document["base_features"][0]["position"][0] += 5.0

    old = replace(side(), files={"a_base_holes.dxf": "base_holes"}, hashes={"a_base_holes.dxf": "1"})
    new = replace(altered(moved), files={"b_base_holes.dxf": "base_holes"}, hashes={"b_base_holes.dxf": "1"})
    assert fates(compare(old, new))["base_holes"] == "valid"
    assert fates(compare(old, replace(new, hashes={"b_base_holes.dxf": "2"})))["base_holes"] == "obsolete"


def test_only_roles_of_the_old_set_are_told_of():
    found = compare(replace(side(), files={"summary.md": "summary"}), side())
    assert [d.role for d in found.documents if d.files] == ["summary"]


def test_a_file_that_is_not_as_it_was_built_is_never_called_valid():
    old = replace(side(), files={"a_block.step": "block", "a_block.stl": "stl"}, damaged=("a_block.step",))
    found = compare(old, side())
    assert (fates(found)["block"], fates(found)["stl"]) == ("damaged", "valid")
    assert "a_block.step" in reasons(found, "block")[0]
