"""The served page: the words stand above it as text, and the file stays as it is."""

from html.parser import HTMLParser
from pathlib import Path

import pytest

from blockgen.pipeline import BuildResult, design
from blockgen.spec.load import parse_spec
from blockgen.watching import live_page
from blockgen.watching.board import Shown
from tests.examples import SERVO

REPORT = '<!DOCTYPE html>\n<html><head><title>t</title></head>\n<BODY class="a">\n<p>the report</p></BODY></html>\n'
NASTY = '<script>alert(1)</script> & "quotes" </pre>'


class Reader(HTMLParser):
    """Collects tags and text, and insists that what is opened is closed."""

    VOID = frozenset({"meta", "link"})

    def __init__(self, text):
        super().__init__()
        self.open, self.tags, self.text = [], [], []
        self.feed(text)
        self.close()
        assert not self.open

    def handle_starttag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        self.text.append(data)


def test_the_words_stand_at_the_head_of_the_body_and_the_rest_is_the_report():
    found = live_page.page(Shown(html=REPORT, words="built\nstatus\nmore\nand more"), "run")
    head, _, rest = found.partition('<BODY class="a">')
    above, _, below = rest.partition("\n<p>the report")
    assert head + '<BODY class="a">\n<p>the report' + below == REPORT
    assert ">built\nstatus</p>" in above
    assert "<pre>more\nand more</pre>" in above
    Reader(found)


@pytest.mark.parametrize("wrong", [True, False])
def test_words_are_text_whatever_stands_in_them(wrong):
    found = Reader(live_page.page(Shown(html=REPORT, words=f"{NASTY}\n\n{NASTY}", wrong=wrong), "run"))
    scripts = [attrs for tag, attrs in found.tags if tag == "script"]
    assert scripts == [{"src": "/watch/live.js", "defer": None}]
    assert "".join(found.text).count(NASTY) == 2


def test_an_error_is_open_to_see_and_silence_is_hidden():
    tags = dict(Reader(live_page.page(Shown(html=REPORT, words="a", wrong=True), "run")).tags)
    assert "open" in tags["details"]
    assert "data-wrong" in tags["aside"]
    tags = dict(Reader(live_page.page(Shown(html=REPORT), "run")).tags)
    assert "hidden" in tags["aside"]
    assert "data-wrong" not in tags["aside"]


def test_before_the_first_set_there_is_a_page_too():
    assert "No set has been built yet" in live_page.page(Shown(words="wrong", wrong=True), "run")


def test_another_page_and_another_server_have_other_keys():
    keys = {live_page.page_key(Shown(page=page), run) for page in (1, 2) for run in ("a", "b")}
    assert len(keys) == 4


def built(text="", files=None):
    made = design(parse_spec(text or SERVO.read_text(encoding="utf-8"), str(SERVO)))
    return BuildResult(Path("out"), files or {"a b#1.step": "block"}, made.plan, made.findings, made.status)


def test_the_plain_page_has_status_sizes_checks_and_files():
    made = built()
    text = live_page.html_of(made)
    found = Reader(text)
    words = set(found.text)
    assert f"Status: {made.status}" in words
    assert {finding.title for finding in made.findings} <= words
    links = [attrs["href"] for tag, attrs in found.tags if tag == "a"]
    assert links == ["a%20b%231.step", "manifest.json"]


def test_text_of_a_spec_cannot_become_a_tag():
    text = SERVO.read_text(encoding="utf-8").replace("Motor and bearing block", "<b onclick=x>&amp;")
    found = Reader(live_page.plain_page(built(text)))
    assert not [attrs for tag, attrs in found.tags if tag == "b"]
    assert any("<b onclick=x>&amp;" in text for text in found.text)


def test_a_report_is_shown_as_it_is(tmp_path):
    (tmp_path / "r.html").write_text(REPORT, encoding="utf-8")
    made = built(files={"summary.md": "summary", "r.html": "report"})
    shown = BuildResult(tmp_path, made.files, made.plan, made.findings, made.status)
    assert live_page.html_of(shown) == REPORT


def test_a_report_that_is_gone_by_now_gives_the_plain_page(tmp_path):
    made = built(files={"r.html": "report"})
    gone = BuildResult(tmp_path, made.files, made.plan, made.findings, made.status)
    assert "Key sizes" in live_page.html_of(gone)
