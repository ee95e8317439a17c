import pytest

from blockgen.change.compare.checks import check_entries, fastener_entries, turn


def check(verdict="pass", margin=0.5, name="slip"):
    return {"id": name, "title": "Slip", "verdict": verdict, "margin": margin, "value": 1.0, "limit": 2.0, "unit": "N"}


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        (check("pass"), check("fail"), "worse"),
        (check("pass", -0.1), check("warn", 0.9), "worse"),
        (check("pass"), check("not_assessed", None), "worse"),
        (check("not_assessed", None), check("warn"), "better"),
        (check("pass", 0.5), check("pass", 0.4), "worse"),
        (check("pass", None), check("pass", 0.4), ""),
        (check("pass", 0.5), check("pass", 0.5), ""),
    ],
)
def test_the_verdict_counts_before_the_margin(old, new, told):
    assert turn(old, new) == told
    assert turn(new, old) == {"worse": "better", "better": "worse", "": ""}[told]


def test_a_check_that_only_one_side_has():
    found = check_entries([check()], [check(name="lift")])
    assert [(e.id, e.state) for e in found] == [("slip", "removed"), ("lift", "added")]


def fastener(where="base", count=4, length=60.0):
    return {"where": where, "standard": "ISO 4762", "size": "M8", "length": length, "class": "8.8", "count": count}


def test_two_groups_at_one_place_are_kept_apart():
    old, new = [fastener(), fastener(count=2)], [fastener(), fastener(count=3)]
    assert [(e.id, e.state) for e in fastener_entries(old, new)] == [("base", "same"), ("base_2", "changed")]


def test_screws_are_named_as_they_are_ordered():
    assert fastener_entries([fastener()], [fastener(length=None)])[0].title == "4 x ISO 4762 M8 - 8.8"
