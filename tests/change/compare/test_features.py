from hypothesis import given
from hypothesis import strategies as st

from blockgen.change.compare.features import feature_entries
from tests.change.sides import side


def hole(number, x, diameter=6.8, face="motor_seat", kind="tapped_hole"):
    return {
        "id": f"hole_{number}", "kind": kind, "group": "holes", "face": face, "position": [x, 0.0, 10.0],
        "axis": [-1.0, 0.0, 0.0], "diameter": diameter, "depth": 20.0, "call_out": f"diam {diameter:g}",
    }  # fmt: skip


def states(old, new):
    return [(e.id, e.new_id, e.state) for e in feature_entries(old, new)]


def test_a_hole_amid_a_row_is_one_added_hole_though_the_others_get_other_numbers():
    old = [hole(1, 10.0), hole(2, 50.0)]
    new = [hole(1, 10.0), hole(2, 30.0), hole(3, 50.0)]
    assert states(old, new) == [("hole_1", None, "same"), ("hole_2", "hole_3", "same"), ("hole_2", None, "added")]


def test_a_hole_at_another_place_moved():
    found = feature_entries([hole(1, 10.0)], [hole(1, 12.5)])[0]
    assert (found.state, found.changes[0].name, found.changes[0].new) == ("moved", "position", [12.5, 0.0, 10.0])


def test_a_wider_hole_changed_even_where_it_moved():
    found = feature_entries([hole(1, 10.0)], [hole(1, 12.5, 8.5)])[0]
    assert found.state == "changed"
    assert [(c.name, c.unit) for c in found.changes] == [("position", "mm"), ("diameter", "mm")]


def test_another_kind_of_hole_with_the_same_id_is_another_hole():
    assert states([hole(1, 10.0)], [hole(1, 10.0, kind="clearance_hole")]) == [
        ("hole_1", None, "removed"), ("hole_1", None, "added"),
    ]  # fmt: skip


def test_what_only_one_side_has_is_told_in_full():
    found = feature_entries([], [hole(1, 10.0)])[0]
    assert {c.name: c.new for c in found.changes}["diameter"] == 6.8
    assert all(c.old is None for c in found.changes)


@given(st.permutations(range(19)))
def test_order_and_numbers_of_cavities_say_nothing(order):
    features = side().document["features"]
    shuffled = [{**features[i], "id": f"x_{i}"} for i in order]
    assert {e.state for e in feature_entries(features, shuffled)} == {"same"}


@given(st.sets(st.integers(0, 18)))
def test_each_cavity_is_told_of_once(kept):
    features = side().document["features"]
    some = [features[i] for i in sorted(kept)]
    found = feature_entries(features, some)
    assert sorted(e.id for e in found) == sorted(f["id"] for f in features)
    assert sum(e.state == "removed" for e in found) == len(features) - len(some)
