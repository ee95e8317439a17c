"""The served page in a real browser: words change in place, another page is loaded, the end is told."""

import shutil
from contextlib import contextmanager

import pytest

from blockgen.watching.board import Board
from blockgen.watching.server import served

sync_api = pytest.importorskip("playwright.sync_api")
CHROMIUM = shutil.which("chromium")

pytestmark = [pytest.mark.slow, pytest.mark.skipif(CHROMIUM is None, reason="there is no Chromium here")]

PAGE = (
    '<!DOCTYPE html><html lang="en"><head><title>t</title><link rel="icon" href="data:,"></head><body>{}</body></html>'
)


@contextmanager
def opened(address):
    with sync_api.sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
        page = browser.new_page()
        page.faults = []
        page.on("pageerror", lambda error: page.faults.append(str(error)))
        page.goto(address)
        yield page
        browser.close()


def wait(page, condition):
    page.wait_for_function(condition, timeout=60_000)


def test_news_reach_an_open_page(tmp_path):
    board = Board()
    board.turn(PAGE.format("<main><h1>one</h1></main>"), tmp_path, "built\nstatus\nlength 1 -> 2")
    with served(board) as address, opened(address) as page:
        details = page.locator("#watch-words details")
        assert page.locator("#watch-words p").inner_text() == "built\nstatus"
        assert details.get_attribute("open") is None
        page.evaluate("window.same = true")

        board.say("cannot be built\n<img src=x>\nline 7", wrong=True)
        wait(page, "document.querySelector('#watch-words p').textContent.startsWith('cannot')")
        assert page.locator("#watch-words pre").inner_text() == "line 7"
        assert page.locator("#watch-words img").count() == 0
        assert details.get_attribute("open") is not None
        assert page.locator("h1").inner_text() == "one"
        assert page.evaluate("window.same")
        assert accessible(page)

        board.turn(PAGE.format("<main><h1>two</h1></main>"), tmp_path, "built")
        wait(page, "document.querySelector('h1').textContent === 'two'")
        assert page.evaluate("window.same") is None
        assert details.is_hidden()
        assert accessible(page)

        board.close()
        wait(page, "document.querySelector('#watch-words p').textContent.includes('has ended')")
        assert page.faults == []


def accessible(page):
    axe = pytest.importorskip("axe_playwright_python.sync_playwright").Axe()
    found = axe.run(page)
    assert found.violations_count == 0, found.generate_report()
    return True
