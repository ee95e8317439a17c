"""Presets: which file counts, what it gives, what displaces it."""

import pytest

from blockgen.errors import InfeasibleError, InputError
from blockgen.sizing.size import size
from blockgen.spec.load import load_spec, parse_spec
from blockgen.spec.presets import STATUSES, list_presets, read_preset, readable_presets, shipped_folder

HEAD = 'kind = "motor"\nname = "mine"\nsource = "measured"\nstatus = "read"\n'


@pytest.fixture(name="folder")
def folder_(tmp_path):
    place = tmp_path / "own"
    place.mkdir()
    return place


def write(folder, name, text):
    (folder / f"{name}.toml").write_text(text, encoding="utf-8")


def test_shipped_presets_load_and_are_honest():
    presets = list_presets()
    assert {p.kind for p in presets} == {"motor", "bearing", "coupling", "material"}
    for preset in presets:
        assert preset.status in STATUSES
        assert "check against" in preset.source
        assert preset.values


def test_a_preset_gives_what_the_spec_leaves_out(text_with):
    text = text_with(motor={"preset": "SERVO-80", "bolt_circle": None, "shaft_diameter": None})
    spec = parse_spec(text)
    circle = spec.records["motor.bolt_circle"]
    assert (circle.value, circle.origin, circle.line) == (90.0, "preset", None)
    assert circle.source.startswith("preset servo-80: invented plausible values")
    assert circle.source.endswith("(representative)")
    assert spec.records["motor.shaft_length"].origin == "given"
    assert spec.records["motor.name"].value == "servo-80"
    assert "motor.preset" not in spec.records
    assert [name for name, _ in spec.preset_files] == ["servo-80"]


@pytest.mark.parametrize(
    ("given", "gone", "kept"),
    [
        ({"pilot_upper": 0, "pilot_lower": -0.02}, {"pilot_fit"}, "pilot_length"),
        ({"bolt_spacing_y": 60, "bolt_spacing_z": 62}, {"bolt_circle", "bolt_count", "bolt_angle"}, "bolt_hole"),
        ({"bolt_positions": [[32, 32], [-32, -32]]}, {"bolt_circle", "bolt_count", "bolt_angle"}, "bolt_hole"),
        ({"flange_width": 84, "flange_height": 90}, {"flange_size", "flange_shape"}, "bolt_circle"),
        ({"fastening": "tapped", "bolt_thread": "M6"}, {"bolt_hole"}, "bolt_circle"),
        ({"bolt_circle": 92}, set(), "bolt_count"),
    ],
)
def test_alternatives_displace_one_another_as_a_group(text_with, required, given, gone, kept):
    motor = {**dict.fromkeys(required["motor"]), "preset": "servo-80", **given}
    records = parse_spec(text_with(motor=motor)).records
    assert not {f"motor.{k}" for k in gone} & set(records)
    assert records[f"motor.{kept}"].origin == "preset"
    assert all(records[f"motor.{k}"].origin == "given" for k in given)


def test_the_users_folder_comes_first(folder, text_with, tmp_path, monkeypatch):
    write(folder, "servo-80", HEAD.replace("mine", "servo-80") + "[motor]\nmass = '3 kg'\n")
    spec = tmp_path / "a.toml"
    spec.write_text(text_with(motor={"preset": "servo-80"}), encoding="utf-8")
    assert load_spec(spec, folder).records["motor.mass"].value == 3.0
    assert load_spec(spec).records["motor.mass"].value == 2.8
    monkeypatch.setenv("BLOCKGEN_PRESETS", str(folder))
    assert load_spec(spec).records["motor.mass"].value == 3.0


def test_a_standard_preset_gives_standard_values(folder, text_with):
    write(folder, "mine", HEAD.replace('"read"', '"standard"') + "[motor]\nmass = '3 kg'\n")
    assert (
        parse_spec(text_with(motor={"preset": "mine"}), preset_folder=folder).records["motor.mass"].origin == "standard"
    )


def test_an_unknown_preset_names_its_neighbours(problems_with):
    problem = problems_with(motor={"preset": "servo-08"})[0]
    assert problem.key == "motor.preset"
    assert "servo-80" in problem.remedy
    with pytest.raises(InputError, match="did you mean"):
        read_preset("servo-8")


def test_a_named_folder_must_exist(text_with, tmp_path):
    with pytest.raises(InputError, match="a folder of presets"):
        parse_spec(text_with(motor={"preset": "servo-80"}), preset_folder=tmp_path / "none")


def test_a_preset_of_another_kind(problems_with):
    assert "a preset of kind coupling" in problems_with(motor={"preset": "bellows-45"})[0].found


@pytest.mark.parametrize(
    ("text", "line", "match"),
    [
        (HEAD + "[motor]\nmass = '3 mm'\n", 6, "a mass such as"),
        (HEAD + "[motor]\nmas = 3\n", 6, "did you mean mass"),
        (HEAD + "[bearing]\nrunout = 3\n", 5, "unknown key bearing"),
        (HEAD.replace("motor", "pump"), 1, "one of motor, bearing, coupling, material"),
        (HEAD.replace("mine", "other") + "[motor]\n", 2, "the name of its file"),
        (HEAD.replace('"read"', '"true"') + "[motor]\n", 4, "one of standard, read, remembered, representative"),
        (HEAD.replace("measured", " ") + "[motor]\n", 3, "where the values come from"),
        (HEAD + "[motor]\npreset = 'servo-80'\n", 6, "a preset in a preset"),
        (HEAD + "motor = 1\n", 5, r"a table \[motor\]"),
        (HEAD + "[motor\n", 5, "TOML"),
    ],
)
def test_a_broken_preset_names_its_own_file_and_line(folder, text_with, text, line, match):
    write(folder, "mine", text)
    with pytest.raises(InputError, match=match) as caught:
        parse_spec(text_with(motor={"preset": "mine"}), preset_folder=folder)
    broken = [p for p in caught.value.problems if p.file == str(folder / "mine.toml")]
    assert line in [p.line for p in broken]


def test_a_broken_preset_that_nobody_names_does_no_harm(folder, text_with):
    write(folder, "mine", "not toml")
    assert parse_spec(text_with(), preset_folder=folder).records


def test_a_broken_preset_does_not_hide_the_others(folder):
    write(folder, "mine", "not toml")
    presets, problems = readable_presets(folder)
    assert [p.name for p in presets] == [p.name for p in list_presets()]
    assert [p.file for p in problems] == [str(folder / "mine.toml")]
    with pytest.raises(InputError, match=r"mine\.toml"):
        list_presets(folder)


@pytest.mark.parametrize("name", ["bellows-45", "servo-08", "mine"])
def test_what_a_preset_would_have_given_is_not_called_missing(folder, required, text_with, name):
    write(folder, "mine", "not toml")
    motor = {**dict.fromkeys(required["motor"]), "preset": name}
    with pytest.raises(InputError, match=r"preset|mine\.toml") as caught:
        parse_spec(text_with(motor=motor), preset_folder=folder)
    assert len(caught.value.problems) == 1


def test_materials_may_be_presets(text_with):
    spec = parse_spec(text_with(block={"material": "en-gjs-500-7"}, base={"material": "S235JR"}))
    assert spec.records["block.material"].value == "EN-GJS-500-7"
    assert spec.records["material.EN-GJS-500-7.youngs_modulus"].value == 169000.0
    assert spec.records["material.EN-GJS-500-7.youngs_modulus"].origin == "preset"
    assert spec.records["base.material"].value == "S235JR"
    assert [name for name, _ in spec.preset_files] == ["EN-GJS-500-7"]


EXAMPLES = sorted((shipped_folder() / "examples").glob("*.toml"))


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda p: p.stem)
def test_examples_load(path):
    assert load_spec(path).records["job.number"].line


@pytest.mark.parametrize("path", [p for p in EXAMPLES if "too_short" not in p.stem], ids=lambda p: p.stem)
def test_examples_have_room_for_tolerances(path):
    plan = size(load_spec(path))
    assert plan.number("length_high") - plan.number("length_low") >= 2.0


@pytest.mark.parametrize(
    ("name", "words"),
    [("spray_carriage_too_short", "motor shaft"), ("spray_carriage_family_too_short", "motor 3 .* asks for a block")],
)
def test_two_examples_fail_on_purpose(name, words):
    assert len(EXAMPLES) == 6
    with pytest.raises(InfeasibleError, match=words):
        size(load_spec(shipped_folder() / "examples" / f"{name}.toml"))
