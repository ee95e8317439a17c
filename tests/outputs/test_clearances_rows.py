"""Clearances in words: one cell a column, alike tools in one row."""

from blockgen.evidence.clearances import Access, Clearance, Clearances, Pair
from blockgen.outputs import clearances_rows as words
from blockgen.outputs.clearances_json import clearances_document, with_clearances
from blockgen.outputs.tidy import as_json

KEYS = tuple(Access("base", f"base_screw_{n}", "hexagon key 8", True, 90.0, 90.0, 360.0, 60.0) for n in range(1, 5))
FOUND = Clearances(
    (
        Pair("block", "motor", "seated", 0.0, 0.0, None, "flange on its seat"),
        Pair("block", "coupling", "clash", 0.0, 812.444),
        Pair("block", "motor_screw_1", "clash", 0.0, 130.0, 100.0, "thread"),
        Pair("block", "base_screw_1", "clear", 0.5, 0.0),
        Pair("block", "base_screw_2", "clear", 0.5, 0.0),
        Pair("coupling", "window", "clear", 0.25, 0.0),
    ),
    (
        Clearance("shaft_ends", "Journal end to motor shaft end", 27.0, 4.0, "coupling.gap_min", "journal", "motor"),
        Clearance("nut_bore", "Lock nut to its bore", 8.51234, None, "", "bearing_unit", "block"),
    ),
    (
        *KEYS,
        Access("motor", "motor_screw_2", "hexagon key 5", False, 20.0, 70.0, 0.0, 60.0, ("motor",)),
        Access("coupling", "journal hub", "hexagon key", True, 30.0, 30.0, directions=((75.0, 105.0), (270.0, 270.0))),
    ),
    17,
    ("block and motor: apart",),
)


def test_each_row_has_a_cell_for_each_column():
    for columns, rows in (
        (words.NAMED_COLUMNS, words.named_rows(FOUND)),
        (words.CLASH_COLUMNS, words.clash_rows(FOUND)),
        (words.TIGHT_COLUMNS, words.tight_rows(FOUND)),
        (words.ACCESS_COLUMNS, words.access_rows(FOUND)),
    ):
        made = list(rows)
        assert made
        assert {len(row) for row in made} == {len(columns)}


def test_distances_and_volumes_have_their_units():
    assert list(words.named_rows(FOUND)) == [
        ("Journal end to motor shaft end", "27 mm", "4 mm", "journal, motor"),
        ("Lock nut to its bore", "8.51 mm", "-", "bearing unit, block"),
    ]
    assert list(words.clash_rows(FOUND)) == [
        ("block, coupling", "812.4 mm3", "-", "812.4 mm3"),
        ("block, motor screw 1", "130 mm3", "100 mm3", "30 mm3"),
    ]
    assert list(words.tight_rows(FOUND)) == [
        ("coupling, window", "0.25 mm"),
        ("block, base screw 1 and 1 more", "0.5 mm"),
    ]


def test_alike_tools_stand_in_one_row():
    rows = list(words.access_rows(FOUND))
    assert rows[0] == ("base screw 1 and 3 more", "hexagon key 8", "yes", "360 deg", "-")
    assert rows[1] == ("motor screw 2", "hexagon key 5", "no: 20 of 70 mm", "0 deg", "motor")
    assert rows[2] == ("journal hub", "hexagon key", "yes", "from 75 to 105 and 270 deg", "-")


def test_counts_tell_how_many_pairs_there_are():
    assert words.counts(FOUND) == (
        "6 pairs of parts come near: 1 seated, 0 engaged, 3 clear, 2 clash; 17 are further apart; "
        "not made as planned: 1."
    )


def test_the_document_has_pairs_clashes_and_access():
    document = clearances_document(FOUND)
    assert [pair["second"] for pair in document["clashes"]] == ["coupling", "motor_screw_1"]
    assert document["clashes"][1]["beyond"] == 30.0
    assert len(document["pairs"]) == 6
    assert document["pairs_apart"] == 17
    assert document["access"][5]["directions"] == [[75.0, 105.0], [270.0, 270.0]]
    assert document["access"][4]["in_way"] == ["motor"]
    assert document["limits"]["practice.clash_volume"]["unit"] == "mm3"
    assert as_json(document) == as_json(clearances_document(FOUND))


def test_a_summary_without_clearances_stays_as_it_is():
    summary = {"schema": 1}
    assert with_clearances(summary, None) is summary
    assert list(with_clearances(summary, FOUND)) == ["schema", "clearances"]
