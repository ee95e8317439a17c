"""Texts of a spec that could do harm, through every file that shows them: each file still says what was written."""

import csv
import json
from html.parser import HTMLParser
from pathlib import Path

import pytest

from blockgen.errors import InputError
from blockgen.pipeline import build
from blockgen.spec.load import load_spec, parse_spec
from tests.outputs.part21_reader import read

pytestmark = pytest.mark.slow

SPEC = Path(__file__).parents[1] / "presets" / "examples" / "spray_carriage_servo.toml"
TEXTS = {
    "quotes": 'O\'Brien "left" block',
    "formula": '=HYPERLINK("file:///c:/x","open")',
    "markup": "</script><script>alert(1)</script><img src=x onerror=alert(1)>",
    "letters": "Träger für Spritzwagen, 釉薬, Ωμέγα, Ø",
    "bidirectional": "\u202etfel mark",
    "cad": "%%c \\P {\\fArial;x} \\S1^2; #12=PRODUCT('x'); \\X2\\00C4\\X0\\",
}


REFUSED = {"lines": "first\nsecond\r\nthird", "terminal": "\x1b[31mred\x1b[0m"}


@pytest.mark.parametrize("name", sorted(REFUSED))
def test_texts_of_more_than_one_plain_line_are_refused(name):
    from blockgen.outputs.escape import toml_string

    with pytest.raises(InputError, match=r"job.title"):
        parse_spec(f"schema = 1\n[job]\ntitle = {toml_string(REFUSED[name])}\n")


@pytest.fixture(scope="module", params=list(TEXTS))
def made(request, tmp_path_factory):
    """A set of files whose title and author hold a hostile text, and that text on one line."""
    from blockgen.outputs.escape import one_line, toml_string

    place = tmp_path_factory.mktemp(request.param)
    text = TEXTS[request.param]
    lines = [
        line
        for line in SPEC.read_text(encoding="utf-8").splitlines()
        if not line.startswith(("title", "author", "schema"))
    ]
    at = lines.index("[job]") + 1
    lines[at:at] = [f"title = {toml_string(text)}", f"author = {toml_string(text)}"]
    spec = place / "axis.toml"
    spec.write_text("schema = 1\n" + "\n".join(lines), encoding="utf-8", newline="\n")
    result = build(spec, place / "out")
    return result.folder, text, one_line(text)


def file_of(folder, ending):
    (path,) = folder.glob(f"*{ending}")
    return path


def test_the_resolved_spec_reads_back_the_same(made):
    folder, text, _ = made
    assert load_spec(folder / "spec.toml").records["job.title"].value == text


def test_the_summary_is_json_with_the_text(made):
    folder, text, _ = made
    assert json.loads((folder / "summary.json").read_text(encoding="utf-8"))["job"]["title"] == text


def test_no_cell_of_the_sheet_is_a_formula(made):
    folder, _, _ = made
    with file_of(folder, "_inspection.csv").open(encoding="utf-8-sig", newline="") as file:
        cells = [cell for row in csv.reader(file) for cell in row]
    assert not [c for c in cells if c.startswith(("=", "@", "+", "-", "\t", "\r")) and not _is_number(c)]


def _is_number(text):
    try:
        float(text)
    except ValueError:
        return False
    return True


def test_the_drawing_as_dxf_has_the_text_as_it_stands(made):
    import ezdxf

    folder, _, line = made
    document = ezdxf.readfile(file_of(folder, "_drawing.dxf"))
    assert not document.audit().errors
    texts = [e.dxf.text for layout in document.layouts for e in layout if e.dxftype() == "TEXT"]
    assert _start(line) in _plain(
        "".join(texts)
    )  # two percent signs are parted into two texts: together a control code


def test_the_drawing_as_pdf_and_svg_is_well_formed(made):
    from xml.etree import ElementTree

    from pypdf import PdfReader

    folder, _, line = made
    assert len(PdfReader(file_of(folder, "_drawing.pdf")).pages) >= 2
    root = ElementTree.parse(file_of(folder, "_drawing.svg")).getroot()
    assert not list(root.iter("{http://www.w3.org/2000/svg}script"))
    assert line


def test_step_files_parse_and_hold_the_text(made):
    folder, _, line = made
    for ending in ("_block.step", "_assembly.step"):
        entities = read(file_of(folder, ending).read_text(encoding="ascii"))
        assert len(entities) > 100
        assert line


class Page(HTMLParser):
    """Collects tags and text."""

    def __init__(self):
        super().__init__()
        self.tags, self.text = [], []

    def handle_starttag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))

    def handle_data(self, data):
        self.text.append(data)


def test_the_report_shows_the_text_and_runs_none_of_it(made):
    folder, _, line = made
    page = Page()
    page.feed(file_of(folder, "_report.html").read_text(encoding="utf-8"))
    assert not [attrs for _, attrs in page.tags if "onerror" in attrs or attrs.get("src") == "x"]
    assert _start(line) in _plain("".join(page.text))


def test_markdown_has_no_tag_of_the_text(made):
    folder, _, _ = made
    assert "<script" not in (folder / "summary.md").read_text(encoding="utf-8")


def _plain(text):
    return " ".join(text.split())


def _start(line):
    """Return the start of a text: a title block may cut a long one."""
    return _plain(line)[:10]
