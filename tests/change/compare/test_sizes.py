from blockgen.change.compare.data import Asked
from blockgen.change.compare.sizes import asked_entries, causes, dimension_entries


def record(value, **inputs):
    refs = {name: {"ref": ref} for name, ref in inputs.items()}
    return {"value": value, "unit": "mm", "upper": None, "lower": None, "fit": None, "inputs": refs}


def document(shaft, wall):
    return {
        "inputs": {"motor.shaft_length": record(shaft), "motor.mass": record(wall)},
        "dimensions": {
            "wall": record(wall, a="motor.mass"),
            "length": record(shaft + wall, a="motor.shaft_length", b="wall"),
            "width": record(100.0, a="motor.shaft_length"),
        },
    }


def asked(**values):
    return {f"motor.{key}": Asked(value, "mm") for key, value in values.items()}


def test_keys_of_the_spec_are_added_removed_changed_or_the_same():
    old = {"a": Asked(1.0, "mm"), "b": Asked(2.0, "mm"), "c": Asked(3.0, "mm")}
    new = {"a": Asked(1.0, "mm"), "b": Asked(2.5, "mm"), "d": Asked(4.0, "deg")}
    found = {e.id: (e.state, [(c.old, c.new, c.unit) for c in e.changes]) for e in asked_entries(old, new)}
    assert found == {
        "a": ("same", []),
        "b": ("changed", [(2.0, 2.5, "mm")]),
        "c": ("removed", [(3.0, None, "mm")]),
        "d": ("added", [(None, 4.0, "deg")]),
    }


def test_a_changed_unit_is_a_change():
    assert asked_entries({"a": Asked(1, "mm")}, {"a": Asked(1, "deg")})[0].state == "changed"


def test_a_dimension_names_the_changed_keys_behind_it_the_nearest_first():
    spec = asked_entries(asked(shaft_length=30.0, mass=5.0), asked(shaft_length=40.0, mass=6.0))
    found = {e.id: e for e in dimension_entries(document(30.0, 5.0), document(40.0, 6.0), spec)}
    assert found["length"].because == ("motor.shaft_length", "motor.mass")
    assert found["wall"].because == ("motor.mass",)
    assert found["width"].state == "same"
    assert found["width"].because == ()


def test_a_value_that_did_not_change_hides_what_is_behind_it():
    spec = asked_entries(asked(shaft_length=30.0, mass=5.0), asked(shaft_length=40.0, mass=6.0))
    new = document(40.0, 5.0)
    new["inputs"]["motor.mass"]["value"] = 6.0
    found = {e.id: e for e in dimension_entries(document(30.0, 5.0), new, spec)}
    assert found["length"].because == ("motor.shaft_length",)


def test_rings_of_values_end():
    records = {"a": record(1.0, x="b"), "b": record(1.0, x="a", y="motor.mass")}
    assert causes("a", records, frozenset({"a", "b"}), frozenset({"motor.mass"})) == {"motor.mass": 2}


def test_a_limit_alone_is_a_change():
    new = document(30.0, 5.0)
    new["dimensions"]["width"]["fit"] = "H6"
    found = {e.id: e for e in dimension_entries(document(30.0, 5.0), new, ())}
    assert [(c.name, c.old, c.new, c.unit) for c in found["width"].changes] == [("fit", None, "H6", "")]
