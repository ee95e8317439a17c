import pytest

from blockgen.change.compare.compare import compare
from blockgen.change.compare.data import Lump, Volumes
from blockgen.change.compare.md import comparison_md, volume_rows
from blockgen.change.compare.places import feature_rows
from blockgen.console.compare_page import compare_page
from blockgen.console.plain import lines
from tests.change.sides import SERVO_TEXT, altered, side


@pytest.fixture(scope="module")
def found():
    return compare(side(), side(SERVO_TEXT.replace("servo-80", "servo-100")))


def printed(found, width=100):
    return "\n".join(lines(compare_page(found), width))


@pytest.mark.parametrize("width", [80, 120])
def test_no_line_is_wider_than_the_terminal(found, width):
    assert max(map(len, printed(found, width).splitlines())) <= width


def test_what_differs_comes_before_what_stays_and_the_result_is_last(found):
    text = printed(found)
    places = [text.index(f"\n{title}\n") for title in ("Spec", "Dimensions", "Unchanged", "What became obsolete")]
    assert places == sorted(places)
    assert text.splitlines()[-1].endswith("obsolete.")
    assert "- 26 of 47 dimensions: width, shaft_height, bearing_wall" in text


def test_alike_holes_share_a_row_that_tells_of_their_circle(found):
    rows = {row[0]: row for row in feature_rows(found, found.features)}
    assert rows["motor_thread_1 to 4"][3] == "circle 90 to 115 mm, x +3 mm"
    assert rows["motor_bore"][1:] == (
        "changed", "70 H7 (+0.030/+0.000) depth 4, then 51 through to 80 H7 (+0.030/+0.000) depth 4.5, then 51 through",
        "x +3 mm",
    )  # fmt: skip
    assert rows["dowel_1, dowel_2"][1] == "removed"


def test_holes_that_each_go_another_way_are_listed(found):
    row = next(row for row in feature_rows(found, found.base_features) if row[0].startswith("plate_thread"))
    assert row[0] == "plate_thread_2, 3, 5, 6"
    assert row[3].startswith("(44.25, 41, 0) to (41.75, 41, 0)")


def test_a_worse_verdict_is_counted_and_the_first_row():
    def failing(document):
        document["checks"][5] |= {"verdict": "fail", "margin": -0.2}
        document["checks"][6] |= {"margin": 0.01}

    text = printed(compare(side(), altered(failing)))
    assert "Checks: 1 with another verdict, 1 with another margin" in text
    row = text[text.index("worse ") :].splitlines()[0]
    assert "FAIL" in row
    assert "-20 %" in row
    assert "1 check has a worse verdict" in text


def test_a_difference_that_the_margins_do_not_show_is_counted_only():
    def slightly(document):
        document["checks"][6]["margin"] += 0.0003

    assert "1 more differ by less than their margins show." in printed(compare(side(), altered(slightly)))


def test_the_document_names_every_file_and_what_stays(found):
    text = comparison_md(found)
    assert "| GL-040-11\\_A\\_block.step | OBSOLETE |" in text.replace("_block", "\\_block") or "_block.step" in text
    assert "### Dimensions" in text
    assert "- 26 of 47 dimensions: width" in text
    assert found.new.document["spec_sha256"] in text


def test_hostile_words_stay_words():
    def hostile(document):
        document["job"]["number"] = "<b>\x1b[31m|x"

    found = compare(side(), altered(hostile))
    assert "\x1b" not in printed(found) + comparison_md(found)
    assert "<b>" not in comparison_md(found)


def test_volumes_are_told_in_both_units():
    box = (0.0,) * 6
    rows = volume_rows(Volumes(1000.0, 1500.0, (Lump(600.0, box),), (Lump(60.0, box), Lump(40.0, box))))
    assert rows == [("old block", "1000", "1.00"), ("removed", "100", "0.10"), ("added", "600", "0.60"),
                    ("new block", "1500", "1.50")]  # fmt: skip
