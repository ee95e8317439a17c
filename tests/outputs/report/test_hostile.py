"""Texts of a spec that are out to do harm stay texts."""

import json
from dataclasses import replace

import pytest

from blockgen.outputs.report.page import page
from tests.outputs.report.reading import Page, Strict, local

HOSTILE = (
    '"><script>alert(1)</script>',
    "</script><!-- ]]> &amp; 'x'",
    "Portalachse \u00c4\u00df \u4e3b\u8f74 \u0634\u0627\u0641\u062a \u03a9 \U0001f529",
    "first\nsecond\r\nthird\u2028fourth",
    "\u202eevil \x07bell \x1b[31m \ufffe",
    "javascript:alert(1) {{7*7}} ${x}",
)


def letters(words):
    return "".join(c for c in words if c.isalnum() or c in "<>&'\"")


@pytest.mark.parametrize("title", HOSTILE)
def test_a_title_is_shown_as_it_stands_and_nothing_more(contents, shown, title):
    document = {**contents.document, "job": {**contents.document["job"], "title": title}}
    text = page(replace(contents, document=document))
    Strict(text)
    made = Page(text)
    assert len(made.all("script")) == len(shown.all("script"))
    assert len(list(made.root.iter())) == len(list(shown.root.iter()))
    heading = made.words(made.all("h1")[0])
    assert letters(heading).endswith(letters(title))
    assert not set(text) & {"\u202e", "\x07", "\x1b", "\u2028", "\ufffe"}
    assert json.loads("".join(made.by_id["summary-data"].itertext()))["job"]["title"] == title


def test_hostile_ids_become_ids(contents):
    key = 'material.my "own" <x>.density'
    entry = {**contents.document["inputs"]["block_poisson"], "rule": "<b>"}
    document = {**contents.document, "inputs": {**contents.document["inputs"], key: entry}}
    made = Page(page(replace(contents, document=document)))
    (place,) = [of for of in made.by_id if of.startswith("value-material.my")]
    assert not set(place) & set(' "<>')
    assert "<b>" in made.words(made.by_id[place])


def test_a_hostile_spec_text_and_file_name_stay_text(contents):
    files = {"a b&c\"'#?.step": "block"}
    made = Page(page(replace(contents, spec="x = '</code></pre><script>'\n# ]]>", files=files)))
    code = [of for of in made.by_id["spec"].iter() if local(of) == "pre"]
    assert made.words(code[0]) == "x = '</code></pre><script>' # ]]>"
    assert [of.get("href") for of in made.by_id["files"].iter() if of.get("href")] == ["a%20b%26c%22%27%23%3F.step"]
