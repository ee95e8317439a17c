"""The hash of a spec follows what is asked, not how it is written."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from blockgen.errors import InputError
from blockgen.spec.fingerprint import build_date, spec_hash
from blockgen.spec.load import load_spec, parse_spec


@pytest.fixture(autouse=True)
def no_date(monkeypatch):
    monkeypatch.delenv("SOURCE_DATE_EPOCH", raising=False)


def test_spelling_changes_nothing(load_with):
    one = spec_hash(load_with(motor={"shaft_length": "1.5 in"}))
    assert one == spec_hash(load_with(motor={"shaft_length": "38.1 mm"}))
    assert one == spec_hash(load_with(motor={"shaft_length": 38.1}))
    assert one == spec_hash(load_with(motor={"shaft_length": "3.81 cm"}))
    assert one != spec_hash(load_with(motor={"shaft_length": "38.11 mm"}))


@given(st.integers(1, 2000))
def test_inches_and_millimetres_agree(text_with, sixty_fourths):
    inches = sixty_fourths / 64
    a = parse_spec(text_with(screw={"nut_distance_min": f"{inches} in"}))
    b = parse_spec(text_with(screw={"nut_distance_min": f"{inches * 25.4:.9f} mm"}))
    assert spec_hash(a) == spec_hash(b)


def test_comments_and_paths_change_nothing(tmp_path, text_with):
    a, b = tmp_path / "a.toml", tmp_path / "b.toml"
    a.write_text(text_with(), encoding="utf-8")
    b.write_text("# note\n\n" + text_with(), encoding="utf-8")
    assert spec_hash(load_spec(a)) == spec_hash(load_spec(b))


def test_a_changed_preset_changes_it_and_a_resolved_one_does_not(tmp_path, text_with):
    head = "kind = 'motor'\nname = 'mine'\nsource = 'measured'\nstatus = 'read'\n[motor]\n"
    (tmp_path / "mine.toml").write_text(head + "mass = 3\n", encoding="utf-8")
    text = text_with(motor={"preset": "mine"})
    first = spec_hash(parse_spec(text, preset_folder=tmp_path))
    resolved = text_with(motor={"name": "mine", "mass": "3 kg", "data_source": "preset mine: measured (read)"})
    assert spec_hash(parse_spec(resolved)) == first
    (tmp_path / "mine.toml").write_text(head + "mass = 4\n", encoding="utf-8")
    assert spec_hash(parse_spec(text, preset_folder=tmp_path)) != first


def test_a_maker_file_counts_by_content(tmp_path, text_with):
    hashes = []
    for name, content in (("a.step", "1"), ("b.step", "1"), ("c.step", "2")):
        (tmp_path / name).write_text(content, encoding="utf-8")
        text = text_with(motor={"model": name})
        hashes.append(spec_hash(parse_spec(text, str(tmp_path / "spec.toml"))))
    assert hashes[0] == hashes[1] != hashes[2]


def test_the_date_counts_wherever_it_comes_from(load_with, monkeypatch):
    undated = spec_hash(load_with())
    dated = spec_hash(load_with(drawing={"date": "2026-03-31"}))
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1774958400")
    assert build_date(load_with().records) == "2026-03-31"
    assert spec_hash(load_with()) == dated != undated


@pytest.mark.parametrize("epoch", ["yesterday", "1e9", str(10**30)])
def test_a_date_that_is_none(load_with, monkeypatch, epoch):
    monkeypatch.setenv("SOURCE_DATE_EPOCH", epoch)
    with pytest.raises(InputError, match="SOURCE_DATE_EPOCH"):
        spec_hash(load_with())
