"""The report page in a real browser: no errors, no network, no sideways scrolling, links that unfold, axe, print."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.outputs.report.built import folder_of_the_demo

CHROMIUM = Path("/usr/bin/chromium")
FLAGS = [
    "--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader",
    "--ignore-gpu-blocklist", "--no-first-run", "--disable-background-networking", "--disable-component-update",
    "--disable-sync",
]  # fmt: skip
PHONE, SMALL, DESK = {"width": 390, "height": 844}, {"width": 360, "height": 740}, {"width": 1440, "height": 900}

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(not CHROMIUM.exists(), reason="Debian's Chromium is not at /usr/bin/chromium"),
]


@pytest.fixture(scope="module")
def report():
    folder = folder_of_the_demo()
    return folder / f"{folder.name}_report.html"


@pytest.fixture(scope="module")
def browser():
    api = pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
    with api.sync_playwright() as play:
        chromium = play.chromium.launch(executable_path=str(CHROMIUM), args=FLAGS)
        yield chromium
        chromium.close()


@pytest.fixture
def opened(browser, report):
    """Open the report with the network off; fails at the end where the console had an error or a request left."""
    contexts, heard = [], []

    def open_page(viewport=DESK, scheme="light", place="", **more):
        context = browser.new_context(viewport=viewport, color_scheme=scheme, offline=True, **more)
        contexts.append(context)
        page = context.new_page()
        page.on("console", lambda message: heard.append(message.text) if message.type == "error" else None)
        page.on("pageerror", lambda error: heard.append(str(error)))
        page.on(
            "request",
            lambda asked: None if asked.url.startswith(("file:", "data:", "blob:")) else heard.append(asked.url),
        )
        page.goto(f"{report.as_uri()}{place}")
        return page

    yield open_page
    for context in contexts:
        context.close()
    assert heard == []


def test_no_page_scrolls_sideways(opened):
    page = opened(SMALL)
    for viewport in (SMALL, PHONE, DESK):
        page.set_viewport_size(viewport)
        assert page.evaluate("document.documentElement.scrollWidth") == viewport["width"]


def test_wide_tables_keep_their_width_and_row_names_on_a_telephone(opened):
    page = opened(PHONE)
    row = page.get_by_role("rowheader", name="one-piece block")
    cell = row.locator("xpath=../td[last()]")
    assert cell.bounding_box()["width"] > 120
    row.evaluate("of => { of.closest('.scroll').scrollLeft = 200; }")
    assert 0 <= row.bounding_box()["x"] < 20
    assert page.evaluate("document.documentElement.scrollWidth") == PHONE["width"]


@pytest.mark.parametrize(
    ("viewport", "scheme", "rules"),
    [
        (PHONE, "light", {}),
        (DESK, "dark", {"runOnly": ["color-contrast", "target-size", "scrollable-region-focusable"]}),
    ],
)
def test_axe_finds_nothing(opened, viewport, scheme, rules):
    """All rules once; in the other colours and width again those that colours and width can break."""
    axe = pytest.importorskip("axe_playwright_python.sync_playwright", reason="axe-playwright-python is not installed")
    page = opened(viewport, scheme)
    found = axe.Axe().run(page, options=rules).response["violations"]
    assert not [(rule["id"], [node["target"] for node in rule["nodes"][:3]]) for rule in found]


def test_the_page_in_the_browser_is_the_one_in_the_file(opened, report):
    page = opened()
    status = json.loads((report.parent / "summary.json").read_text(encoding="utf-8"))["status"]
    assert page.locator("#status").inner_text() == f"Status: {status}"
    inside = page.evaluate("JSON.parse(document.getElementById('summary-data').textContent)")
    assert inside == json.loads((report.parent / "summary.json").read_text(encoding="utf-8"))


def test_a_link_to_a_dimension_unfolds_it_without_a_script(opened):
    page = opened(place="#dimension-length", java_script_enabled=False)
    assert page.locator("#dimension-length").is_visible()
    assert not page.locator("#dimension-width").is_visible()


def test_the_drawing_grows_and_shrinks_without_a_script(opened):
    page = opened(java_script_enabled=False)
    sheet = page.locator("#drawing-sheet .scroll > svg")
    fitting = sheet.bounding_box()["width"]
    page.get_by_role("link", name="Larger").click()
    assert sheet.bounding_box()["width"] > 1.3 * fitting
    page.get_by_role("link", name="Fit the width").click()
    assert sheet.bounding_box()["width"] == fitting


def test_the_first_key_reaches_the_skip_link_and_the_focus_is_seen(opened):
    page = opened()
    page.keyboard.press("Tab")
    focused = page.locator(":focus")
    assert focused.inner_text() == "Skip to the content"
    assert focused.evaluate("of => getComputedStyle(of).outlineStyle") == "solid"
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.id") == "content"


def words_on_paper(page):
    """Return how many sheets there are, and their words."""
    pdfium = pytest.importorskip("pypdfium2", reason="pypdfium2 is not installed")
    sheets = list(pdfium.PdfDocument(page.pdf(format="A4", prefer_css_page_size=True)))
    assert [round(side) for side in sheets[0].get_size()] == [595, 842]
    return len(sheets), " ".join(" ".join(sheet.get_textpage().get_text_range() for sheet in sheets).split())


def test_paper_has_every_check_and_the_derivations_that_matter(opened, report):
    page = opened()
    many, words = words_on_paper(page)
    assert many < 20  # 18 with the fonts of a Debian system
    checks = json.loads((report.parent / "summary.json").read_text(encoding="utf-8"))["checks"]
    assert {check["id"] for check in checks if f"Id: {check['id']} " in words} == {
        check["id"] for check in checks if check["verdict"] != "pass"
    }
    assert "Key: bearing_bore " in words
    assert "Key: base_pattern " not in words
    assert "friction 0.12" in words
    assert page.locator("#dimension-width").is_hidden()


def test_all_unfolds_at_a_press(opened):
    page = opened()
    assert page.locator("#check-width_size").is_hidden()
    button = page.get_by_role("button", name="Unfold everything")
    button.click()
    assert page.locator("#dimension-base_pattern").is_visible()
    assert page.locator("#check-width_size").is_visible()
    button.click()
    assert page.locator("#dimension-base_pattern").is_hidden()
