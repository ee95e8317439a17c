import json

import pytest

from blockgen.outputs.manifest import listed_files, manifest, set_is_whole


@pytest.fixture
def folder(tmp_path):
    (tmp_path / "b.txt").write_bytes(b"abc")
    (tmp_path / "a.txt").write_bytes(b"")
    document = manifest(tmp_path, {"b.txt": "summary", "a.txt": "spec"}, "5" * 64, "PRELIMINARY: x")
    (tmp_path / "manifest.json").write_text(json.dumps(document))
    return tmp_path


def test_it_lists_files_with_role_hash_and_size(folder):
    document = json.loads((folder / "manifest.json").read_text())
    assert [f["name"] for f in document["files"]] == ["a.txt", "b.txt"]
    assert document["files"][1] == {
        "name": "b.txt",
        "role": "summary",
        "sha256": "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",  # FIPS 180 example "abc"
        "size": 3,
    }
    assert document["status"] == "PRELIMINARY: x"
    assert document["libraries"] == {}


def test_the_kernel_is_named_where_it_made_a_file(folder):
    assert set(manifest(folder, {"a.txt": "stl"}, "", "")["libraries"]) == {"cadquery", "cadquery-ocp"}


def test_a_set_is_whole_until_a_byte_differs(folder):
    assert set_is_whole(folder)
    (folder / "b.txt").write_bytes(b"abd")
    assert not set_is_whole(folder)


def test_a_missing_file_is_noticed(folder):
    (folder / "a.txt").unlink()
    assert not set_is_whole(folder)


@pytest.mark.parametrize("text", ["", "[]", '{"files": 1}', '{"files": [{"name": "x"}]}', "[" * 100_000, "\x00\xff"])
def test_a_broken_manifest_makes_no_set(tmp_path, text):
    (tmp_path / "manifest.json").write_bytes(text.encode("latin-1"))
    assert listed_files(tmp_path) is None
    assert not set_is_whole(tmp_path)


@pytest.mark.parametrize("name", ["../x", "/etc/x", "a/b", "..", "a\\b", "manifest.json", ""])
def test_names_that_leave_the_folder_are_refused(tmp_path, name):
    (tmp_path / "manifest.json").write_text(json.dumps({"files": [{"name": name, "sha256": ""}]}))
    assert listed_files(tmp_path) is None
