"""Loading: values in default units with lines, and every problem at once."""

import contextlib
import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.errors import InputError
from blockgen.spec.fingerprint import spec_hash
from blockgen.spec.keys import key_table
from blockgen.spec.load import load_spec, parse_spec


def test_the_required_keys_alone_load(load_with):
    records = load_with().records
    assert records["motor.pilot_diameter"].value == 70.0
    assert records["motor.pilot_diameter"].unit == "mm"
    assert records["motor.pilot_diameter"].origin == "given"
    assert set(records) == {"job.number", *(k for k in records if not k.startswith("job."))}
    assert "motor.bolt_count" not in records  # defaults are the sizing's


def test_values_carry_line_and_file(tmp_path, text_with):
    file = tmp_path / "a.toml"
    file.write_text("# note\nschema = 1\n\n" + text_with(), encoding="utf-8")
    record = load_spec(file).records["motor.bolt_circle"]
    assert file.read_text().splitlines()[record.line - 1] == 'bolt_circle = "90 mm"'
    assert record.source == str(file)


def test_one_run_names_everything_that_is_wrong(problems_with):
    problems = problems_with(
        motor={"bolt_cicle": "90 mm", "flange_size": "80 N", "pilot_form": "prod", "shaft_length": None},
        screw={"shaft_height": 1},
    )
    by_key = {p.key: p for p in problems}
    assert by_key["motor.bolt_cicle"].remedy == "did you mean bolt_circle?"
    assert by_key["motor.flange_size"].found == '"80 N"'
    assert by_key["motor.flange_size"].expected.startswith('a length such as "40 mm"')
    assert by_key["motor.flange_size"].line == 6
    assert by_key["motor.pilot_form"].expected == "one of proud, recessed"
    assert by_key["motor.pilot_form"].remedy == 'did you mean "proud"?'
    assert by_key["motor.shaft_length"].found == "nothing"
    assert by_key["screw.shaft_height"].remedy == "shaft_height belongs in [base]"


def test_missing_keys_are_named_together():
    with pytest.raises(InputError, match="the key is required") as caught:
        parse_spec("[job]\nnumber = 'x'\n")
    required = {k.key for k in key_table() if k.required}
    assert {p.key for p in caught.value.problems} == required - {"job.number"}
    assert "Shaft length from the mounting face" in str(caught.value)


@pytest.mark.parametrize(
    ("instead_of", "keys"),
    [
        ("bolt_circle", {"bolt_spacing_y": 60, "bolt_spacing_z": 66}),
        ("bolt_circle", {"bolt_positions": [[30, 30], ["-30 mm", 30], [0, -36]]}),
        ("flange_size", {"flange_width": 84, "flange_height": "90 mm"}),
    ],
)
def test_stand_ins_for_required_keys(load_with, instead_of, keys):
    assert f"motor.{instead_of}" not in load_with(motor={instead_of: None, **keys}).records


def test_shoulder_to_end_stands_in_for_the_reach(load_with, problems_with):
    screw = {"journal_reach": None, "shoulder_to_end": 60}
    assert load_with(screw=screw, bearing={"shoulder_offset": 17}).records["screw.shoulder_to_end"].value == 60
    assert "bearing.shoulder_offset as well" in problems_with(screw=screw)[0].expected


def test_two_ways_to_say_one_thing(problems_with):
    (problem,) = problems_with(motor={"pilot_fit": "h7", "pilot_upper": 0, "pilot_lower": -0.03})
    assert problem.found == "both pilot_fit and pilot_lower"


@pytest.mark.parametrize(
    ("table", "key", "value", "stored", "unit"),
    [
        ("base", "dowels", True, True, ""),
        ("base", "dowels", "8 mm", 8.0, "mm"),
        ("base", "hole_positions", [["10 mm", 5], ["1 in", 9]], ((10.0, 5.0), (25.4, 9.0)), "mm"),
        ("drawing", "date", "2026-03-31", "2026-03-31", ""),
        ("motor", "brake", True, True, ""),
        ("motor", "bolt_count", 4, 4, ""),
        ("motor", "inertia", "0.9 kg*cm^2", 0.9e-4, "kg*m^2"),
        ("motor", "bolt_thread", "1/4-20 UNC", "1/4-20 UNC", ""),
        ("thermal", "block_temperature", "68 degF", 20.0, "degC"),
        ("limits", "probability", "95 %", 0.95, ""),
        ("job", "title", "  Bock für Spindel ", "Bock für Spindel", ""),
        ("job", "number", "Größe-4_b.2", "Größe-4_b.2", ""),
    ],
)
def test_kinds_of_value(load_with, table, key, value, stored, unit):
    record = load_with(**{table: {key: value}}).records[f"{table}.{key}"]
    assert (record.value, record.unit) == (stored, unit)


@pytest.mark.parametrize(
    ("table", "key", "value", "words"),
    [
        ("motor", "brake", "yes", "true or false"),
        ("motor", "bolt_count", True, "a whole number from 1 to 24"),
        ("motor", "bolt_count", 4.5, "a whole number"),
        ("motor", "bolt_count", 1000, "a whole number"),
        ("motor", "flange_size", True, "a length"),
        ("motor", "flange_size", [4], "a length"),
        ("motor", "bolt_thread", "Q8", "a thread such as"),
        ("motor", "pilot_fit", "7h", "an ISO 286 tolerance class"),
        ("base", "screw", "1/4-20", "a metric thread"),
        ("base", "hole_positions", [[1, 2, 3]], "pairs of lengths"),
        ("base", "hole_positions", [[1, "2 N"]], "each one a length"),
        ("base", "hole_positions", [], "pairs of lengths"),
        ("base", "dowels", "yes", "true, false or a length"),
        ("drawing", "date", "2026-02-30", "a date such as"),
        ("job", "title", "two\nlines", "text on one line"),
        ("job", "title", 5, "text stands in quotes"),
        ("job", "number", 40, "text stands in quotes"),
        ("job", "gravity", "down", "one of -z, \\+z"),
        ("job", "revision", "A/B", "a revision of 1 to 64 letters"),
    ],
)
def test_wrong_kinds_of_value(problems_with, table, key, value, words):
    (problem,) = problems_with(**{table: {key: value}})
    assert problem.key == f"{table}.{key}"
    assert problem.line is not None
    with pytest.raises(InputError, match=words):
        raise InputError([problem])


def test_a_table_that_is_a_value_and_tables_that_do_not_exist():
    with pytest.raises(InputError, match=r"a table \[motor\]") as caught:
        parse_spec("motor = 3\nhello = 1\nschema = 2\n[baering]\n")
    messages = str(caught.value)
    assert "unknown table [baering]" in messages
    assert "did you mean [bearing]?" in messages
    assert "unknown key hello" in messages
    assert "reads schema 1 only" in messages


def test_own_materials_are_spelled_as_their_table(text_with):
    own = '[material."My Alloy 5.2"]\nyoungs_modulus = "70 GPa"\ndensity = "2.7 g/cm^3"\n'
    records = parse_spec(text_with(block={"material": "my alloy 5.2"}) + own).records
    assert records["block.material"].value == "My Alloy 5.2"
    assert records["material.My Alloy 5.2.youngs_modulus"].value == 70000.0
    assert records["material.My Alloy 5.2.density"].unit == "kg/m^3"


def test_families_are_motors(text_with, required, to_toml):
    one = to_toml({"x": required["motor"]}).removeprefix("[x]\n")
    records = parse_spec(text_with() + f"[[family]]\n{one}[[family]]\npreset = 'servo-100'\n").records
    assert records["family.0.pilot_diameter"].value == 70.0
    assert records["family.1.pilot_diameter"].origin == "preset"
    with pytest.raises(InputError, match=r"family\.0\.shaft_length"):
        parse_spec(text_with() + "[[family]]\nflange_size = 80\n")


def test_a_maker_file_must_exist(tmp_path, text_with):
    file = tmp_path / "a.toml"
    file.write_text(text_with(motor={"model": "cad/motor.step"}), encoding="utf-8")
    with pytest.raises(InputError, match="a STEP file that exists"):
        load_spec(file)
    (tmp_path / "cad").mkdir()
    (tmp_path / "cad" / "motor.step").write_text("ISO-10303-21;", encoding="utf-8")
    assert load_spec(file).records["motor.model"].value == "cad/motor.step"


@given(st.randoms(use_true_random=False))
def test_the_order_of_tables_and_keys_changes_nothing(required, to_toml, shuffle: random.Random):
    tables = list(required)
    shuffle.shuffle(tables)
    mixed = {t: dict(shuffle.sample(sorted(required[t].items()), len(required[t]))) for t in tables}
    one, other = parse_spec(to_toml(required)), parse_spec(to_toml(mixed))
    assert list(one.records) == list(other.records)
    assert {k: r.value for k, r in one.records.items()} == {k: r.value for k, r in other.records.items()}
    assert spec_hash(one) == spec_hash(other)


KEYS = sorted(k.key for k in key_table() if not k.key.startswith("material.") and len(k.key.split(".")[1]) > 5)


@given(st.sampled_from(KEYS), st.data())
def test_a_slip_of_the_finger_names_the_key(text_with, key, data):
    table, name = key.split(".")
    place = data.draw(st.integers(1, len(name) - 3))  # bolt_spacing_y and _z differ at the end only
    typo = name[:place] + name[place + 1] + name[place] + name[place + 2 :]
    if any(k.key.endswith(f".{typo}") for k in key_table()):
        return
    with pytest.raises(InputError, match=f"unknown key {typo}") as caught:
        parse_spec(text_with(**{table: {typo: 1}}))
    remedy = next(p.remedy for p in caught.value.problems if p.key == f"{table}.{typo}")
    assert remedy == f"did you mean {name}?"


VALUES = st.recursive(
    st.one_of(
        st.none().map(lambda _: "65 mm"),
        st.booleans(),
        st.integers(-(10**25), 10**25),
        st.floats(),
        st.text(max_size=12),
        st.dates(),
        st.sampled_from(["1e308 mm", "-1 mm", "0", "M8", "H7", "servo-80", "both"]),
    ),
    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(st.text(max_size=4), inner, max_size=2)),
    max_leaves=5,
)
ALL_KEYS = sorted(k.key for k in key_table() if not k.key.startswith("material."))


@given(st.dictionaries(st.sampled_from([*ALL_KEYS, "family", "material", "schema", "motor"]), VALUES, max_size=4))
def test_any_value_anywhere_loads_or_is_refused(required, changes):
    import tomlkit

    document = tomlkit.document()
    for table, keys in required.items():
        document[table] = dict(keys)
    for key, value in changes.items():
        table, _, name = key.partition(".")
        if not name:
            document[table] = value
        elif isinstance(document.setdefault(table, {}), dict):
            document[table][name] = value
    with contextlib.suppress(InputError):
        assert parse_spec(tomlkit.dumps(document)).records


@pytest.mark.parametrize("text", ["", "# only a comment\n", "schema = 1\n"])
def test_an_empty_file_is_one_problem(text):
    with pytest.raises(InputError, match="a file without any table") as caught:
        parse_spec(text)
    (problem,) = caught.value.problems
    assert problem.remedy == "`blockgen new FILE` writes a spec to start from"


def test_what_stands_in_a_line_is_told_before_what_is_missing():
    with pytest.raises(InputError, match="bellows-45") as caught:
        parse_spec('[motor]\npreset = "bellows-45"\n')
    assert caught.value.problems[0].key == "motor.preset"
    assert {p.line for p in caught.value.problems[1:]} == {None}
