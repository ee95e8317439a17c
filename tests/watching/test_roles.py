from blockgen.outputs.names import CHOOSABLE
from blockgen.watching.roles import at_once, has_stiffness, roles_of, wanted


def test_without_a_word_block_and_stl_are_written_and_nothing_that_stands_is_lost():
    assert wanted(None, (), shown=False) == ("block", "stl")
    assert wanted(None, ("inspection", "drawing"), shown=False) == ("block", "stl", "drawing", "inspection")


def test_a_page_that_is_shown_is_written():
    assert wanted(None, (), shown=True) == ("block", "stl", "report")


def test_what_is_named_is_all_that_is_written():
    assert wanted(("stl",), CHOOSABLE, shown=True) == ("stl",)
    assert wanted((), CHOOSABLE, shown=False) == ()


def test_block_and_stl_come_first():
    assert at_once(CHOOSABLE) == ("block", "stl")
    assert at_once(("stl", "report")) == ("stl",)


def test_without_them_all_come_at_once():
    assert at_once(("drawing", "inspection")) == ("drawing", "inspection")
    assert at_once(()) == ()


def test_a_folder_without_a_set_has_no_roles(tmp_path):
    assert roles_of(tmp_path) == ()
    for text in ("", "{}", '{"files": 3}', '{"files": [{}]}', "[" * 100_000):
        (tmp_path / "manifest.json").write_text(text)
        assert roles_of(tmp_path) == ()


def test_the_roles_of_a_set_stand_in_its_manifest(tmp_path):
    (tmp_path / "manifest.json").write_text(
        '{"files": [{"role": "report"}, {"role": "summary"}, {"role": "block"}, {"role": "no-such"}]}'
    )
    assert roles_of(tmp_path) == ("block", "report")


def test_a_summary_tells_of_stiffness(tmp_path):
    assert not has_stiffness(tmp_path)
    for text, found in (("[]", False), ("{", False), ("{}", False), ('{"stiffness": {"band": 0.05}}', True)):
        (tmp_path / "summary.json").write_text(text)
        assert has_stiffness(tmp_path) is found
