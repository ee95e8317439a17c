"""The 3D view in a real browser, from a file, with the network off."""

from __future__ import annotations

import io
from contextlib import contextmanager
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from tests.browser import view_page

CHROMIUM = Path("/usr/bin/chromium")
ARGUMENTS = [
    "--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader",
    "--ignore-gpu-blocklist", "--no-first-run", "--disable-background-networking", "--disable-component-update",
    "--disable-sync",
]  # fmt: skip
FIRST_PICTURE = 2000.0
"""Milliseconds from opening the file to the first picture."""

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(not CHROMIUM.exists(), reason=f"{CHROMIUM} is not there; Debian's package chromium brings it"),
]


@pytest.fixture(scope="module")
def browser():
    from playwright.sync_api import sync_playwright

    with sync_playwright() as play:
        started = play.chromium.launch(executable_path=str(CHROMIUM), args=ARGUMENTS)
        yield started
        started.close()


@pytest.fixture(scope="module")
def address(tmp_path_factory):
    place = tmp_path_factory.mktemp("view") / "view.html"
    place.write_text(view_page.html(), encoding="utf-8")
    return place.as_uri()


@contextmanager
def opened(browser, address, *, before="", ready=True, **options):
    """Open a page without network; fail on anything on the console, or asked for, but the file."""
    context = browser.new_context(**{"viewport": {"width": 960, "height": 640}, "reduced_motion": "reduce", **options})
    context.set_offline(True)
    page = context.new_page()
    said, asked = [], []
    page.on("console", lambda message: said.append(message.text) if message.type in {"error", "warning"} else None)
    page.on("pageerror", lambda error: said.append(str(error)))
    page.on("request", lambda request: asked.append(request.url))
    if before:
        page.add_init_script(before)
    page.goto(address)
    if ready:
        page.wait_for_selector("figure.view[data-ready=yes]", timeout=20_000)
    yield page
    strange = [url for url in asked if not url.startswith((address, "data:"))]
    context.close()
    assert not strange
    assert not [text for text in said if "GPU stall due to ReadPixels" not in text]


@pytest.fixture(scope="module")
def shared(browser, address):
    with opened(browser, address) as made:
        yield made


@pytest.fixture
def page(shared):
    """Return a page as it is at the start; one page is enough, since it can be set back."""
    shared.emulate_media(media="screen")
    shared.evaluate("scrollTo(0, 0)")
    start_again(shared)
    return shared


def start_again(page):
    page.get_by_role("button", name="Start again").evaluate("(button) => button.click()")
    page.evaluate("document.activeElement.blur()")
    pixels(page)


def pixels(page):
    """Return the picture as it is on the screen."""
    page.evaluate("new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))")
    return np.asarray(Image.open(io.BytesIO(page.locator(".view-picture").screenshot())).convert("RGB")).astype(int)


def changed(one, other):
    """Return the share of pixels that differ clearly."""
    return float((np.abs(one - other).max(axis=2) > 12).mean())


def click(page, *point):
    """Click where a point of the block is in the picture, mm."""
    page.locator(".view canvas").evaluate("(canvas) => canvas.scrollIntoView({block: 'center'})")
    at = page.evaluate("([x, y, z]) => window.blockgenView.project(x, y, z)", list(point))
    page.mouse.click(at["x"], at["y"])


def told(page):
    return page.locator(".view-facts").text_content()


def slide(page, place, value):
    page.locator(place).evaluate(
        "(slider, value) => { slider.value = value; slider.dispatchEvent(new Event('input')); }", value
    )


def test_the_first_picture_comes_soon_and_is_no_blank_area(browser, address):
    times = []
    for _ in range(2):
        with opened(browser, address) as page:
            times.append(page.evaluate("window.blockgenView.firstPicture"))
            shown = pixels(page)
            assert (np.abs(shown - shown[5, 5]).max(axis=2) > 20).mean() > 0.2
    print(f"first picture after {', '.join(f'{time:.0f} ms' for time in times)}")
    assert min(times) < FIRST_PICTURE


def test_it_draws_only_when_something_has_changed(page):
    frames = "window.blockgenView.renderer.info.render.frame"
    pixels(page)
    before = page.evaluate(frames)
    page.wait_for_timeout(400)
    assert page.evaluate(frames) == before
    page.get_by_role("button", name="From above").click()
    pixels(page)
    assert page.evaluate(frames) > before


def test_a_click_on_a_face_tells_its_feature_and_how_it_came_about(page):
    click(page, 0.0, -45.0, 95.0)
    assert told(page).startswith("bearing seat")
    page.select_option(".view-axis", "y")
    click(page, 70.0, 30.0, 20.0)
    text = told(page)
    plan = view_page.demo().plan
    assert "window, side plus y" in text
    assert plan.feature("window").call_out in text
    page.get_by_text("window length =", exact=False).click()
    record = plan.records["window_length"]
    assert record.rule in told(page)
    href = page.locator(".view-facts details[open] a", has_text="In the table").get_attribute("href")
    assert href == "#dimension-window_length"
    assert all(page.locator(f"[id='{link[1:]}']").count() == 1 for link in links(page))


def links(page):
    found = page.locator(".view-facts a").evaluate_all("all => all.map((a) => a.getAttribute('href'))")
    assert found
    return found


def test_fit_limits_and_tolerances_of_a_bore(page):
    page.select_option(".view-features", "motor_bore")
    text = told(page)
    assert "70 H7, from 70.000 to 70.030 mm" in text
    note = next(n for n in view_page.demo().plan.annotations if n.kind == "coaxiality")
    assert f"No. {note.number}, coaxiality {note.value:g} mm to {', '.join(note.datums)}" in text


def test_every_feature_and_outside_face_can_be_chosen_from_the_list(page):
    values = page.locator(".view-features option").evaluate_all("all => all.map((option) => option.value)")
    plan = view_page.demo().plan
    assert {feature.id for feature in plan.features} <= set(values)
    assert {"bearing_seat", "motor_seat", "base", "top"} <= set(values)
    for value in filter(None, values):
        page.select_option(".view-features", value)
        assert "block" in told(page)
        assert page.evaluate("window.blockgenView.marks.children.length") == 2
    page.select_option(".view-features", "")
    assert "Nothing is chosen" in told(page)


def test_all_can_be_set_back(page):
    start = pixels(page)
    page.select_option(".view-features", "window")
    page.select_option(".view-axis", "z")
    page.get_by_label("motor servo-80").uncheck()
    slide(page, ".view-apart", 60)
    page.get_by_role("button", name="Nearer").click()
    assert changed(start, pixels(page)) > 0.1
    start_again(page)
    assert changed(start, pixels(page)) == 0
    assert "Nothing is chosen" in told(page)


def test_a_choice_shows_in_the_picture(page):
    before = pixels(page)
    page.select_option(".view-features", "window")
    assert changed(before, pixels(page)) > 0.01


def test_a_part_is_told_by_its_name_and_what_was_assumed(page):
    page.get_by_role("button", name="From the motor").click()
    click(page, 233.0, 5.0, 60.0)
    assert "motor servo-80" in told(page)
    assert "stand-in" in told(page)


def test_the_cut_moves_is_filled_and_tells_the_part(page):
    whole = pixels(page)
    page.select_option(".view-axis", "y")
    assert page.locator(".view-place-shown").inner_text() == "y = 0 mm"
    middle = pixels(page)
    assert changed(whole, middle) > 0.1
    slide(page, ".view-place", 25)
    assert page.locator(".view-place-shown").inner_text() == "y = 25 mm"
    assert changed(middle, pixels(page)) > 0.03
    slide(page, ".view-place", 0)
    click(page, 10.0, 0.0, 12.0)  # in the wall, on the cut face
    assert told(page).startswith("block")
    assert "Feature" not in told(page)
    page.select_option(".view-features", "")
    page.keyboard.press("Escape")
    click(page, 10.0, -52.0, 12.0)  # on the side that was cut away
    assert "side, -y" not in told(page)


def test_a_cut_face_is_hatched_in_the_colour_of_its_part(page):
    page.get_by_role("button", name="From the front").click()
    page.select_option(".view-axis", "y")
    shown = pixels(page)
    box = page.locator(".view-picture").bounding_box()
    at = page.evaluate("window.blockgenView.project(14, 0, 20)")
    x, y = int(at["x"] - box["x"]), int(at["y"] - box["y"])
    patch = shown[y - 12 : y + 12, x - 6 : x + 6].reshape(-1, 3)
    assert patch.mean(axis=1).max() > 190  # between the lines
    assert patch.mean(axis=1).min() < 160  # on a line
    assert np.ptp(patch, axis=1).max() < 30  # grey, as the block


def test_the_other_side_can_be_taken_away(page):
    page.select_option(".view-axis", "x")
    one = pixels(page)
    page.get_by_label("take the other side away").check()
    assert changed(one, pixels(page)) > 0.1


def test_parts_are_hidden_and_what_is_behind_can_be_chosen(page):
    page.get_by_role("button", name="From the motor").click()
    before = pixels(page)
    click(page, 113.0, 0.0, 65.0)
    assert "motor servo-80" in told(page)
    for label in ("motor servo-80", "coupling bellows-45"):
        page.get_by_label(label).uncheck()
    assert changed(before, pixels(page)) > 0.05
    click(page, 109.0, 30.0, 65.0)
    assert "motor bore, shoulder" in told(page)


def test_the_assembly_is_drawn_apart_and_fits_the_picture(page):
    before = pixels(page)
    page.locator(".view-apart").focus()
    page.keyboard.press("End")
    assert page.locator(".view-apart-shown").inner_text() == "100 %"
    after = pixels(page)
    assert changed(before, after) > 0.1
    inner = after[6:-6, 6:-6]
    edge = np.concatenate([inner[0], inner[-1], inner[:, 0], inner[:, -1]])
    assert np.abs(edge - inner[0, 0]).max() < 12  # nothing runs out of the picture
    motor = next(p for p in page.evaluate("window.blockgenView.parts.map((p) => ({id: p.data.id, box: p.box}))")
                 if p["id"] == "motor")  # fmt: skip
    assert motor["box"][0] > view_page.demo().plan.body.length


def test_keys_turn_move_zoom_and_choose(page):
    look = "(({turn, tilt, half, middle}) => ({turn, tilt, half, x: middle.x}))(window.blockgenView.view)"
    page.locator(".view canvas").focus()
    start = page.evaluate(look)
    page.keyboard.press("ArrowLeft")
    page.keyboard.press("ArrowUp")
    turned = page.evaluate(look)
    assert turned["turn"] != start["turn"]
    assert turned["tilt"] != start["tilt"]
    page.keyboard.press("+")
    assert page.evaluate(look)["half"] < turned["half"]
    page.keyboard.press("-")
    assert page.evaluate(look)["half"] == pytest.approx(turned["half"])
    page.keyboard.press("Shift+ArrowRight")
    assert page.evaluate(look)["x"] != turned["x"]
    page.keyboard.press("0")
    assert page.evaluate(look) == pytest.approx(start)
    page.keyboard.press("Enter")
    assert "Part" in told(page)
    page.keyboard.press("Escape")
    assert "Nothing is chosen" in told(page)


def test_the_mouse_turns_and_the_wheel_zooms_only_a_picture_in_use(page):
    half, turn = "window.blockgenView.view.half", "window.blockgenView.view.turn"
    box = page.locator(".view canvas").bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    before = page.evaluate(half)
    page.mouse.move(x, y)
    page.mouse.wheel(0, 200)
    page.wait_for_timeout(150)
    assert page.evaluate(half) == before
    assert page.evaluate("scrollY") > 0
    page.evaluate("scrollTo(0, 0)")
    was = page.evaluate(turn)
    page.mouse.down()
    page.mouse.move(x + 80, y, steps=4)
    page.mouse.up()
    assert page.evaluate(turn) < was
    page.mouse.wheel(0, 200)
    page.wait_for_timeout(150)
    assert page.evaluate(half) > before


def test_two_fingers_zoom_and_a_tap_chooses(browser, address):
    with opened(browser, address, has_touch=True, viewport={"width": 390, "height": 844}) as page:
        box = page.locator(".view canvas").bounding_box()
        x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
        page.touchscreen.tap(x, y)
        assert "Part" in told(page)
        before = page.evaluate("window.blockgenView.view.half")
        session = page.context.new_cdp_session(page)

        def touch(kind, *places):
            points = [{"x": px, "y": py, "id": i} for i, (px, py) in enumerate(places)]
            session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})

        touch("touchStart", (x - 20, y), (x + 20, y))
        touch("touchMove", (x - 60, y), (x + 60, y))
        touch("touchEnd")
        assert page.evaluate("window.blockgenView.view.half") < before / 2


@pytest.mark.parametrize("dark", [False, True])
def test_axe_finds_nothing(browser, address, dark):
    from axe_playwright_python.sync_playwright import Axe

    scheme = "dark" if dark else "light"
    with opened(browser, address, color_scheme=scheme) as page:
        page.select_option(".view-features", "bearing_bore")
        page.locator(".view-facts summary").first.click()
        found = Axe().run(page, context=".view")
        assert found.violations_count == 0, found.generate_report()


def test_it_fits_a_phone_without_scrolling_sideways(browser, address):
    with opened(browser, address, viewport={"width": 360, "height": 740}) as page:
        page.select_option(".view-features", "motor_bore")
        assert page.evaluate("document.documentElement.scrollWidth") <= 360


def test_light_and_dark(browser, address):
    grounds = []
    for scheme in ("light", "dark"):
        with opened(browser, address, color_scheme=scheme) as page:
            grounds.append(int(pixels(page)[5, 5].mean()))
    assert grounds[0] > 220
    assert grounds[1] < 80


def test_without_webgl_the_still_picture_stays_and_a_message_says_why(browser, address):
    off = "HTMLCanvasElement.prototype.getContext = () => null;"
    with opened(browser, address, before=off, ready=False) as page:
        assert "WebGL" in page.locator(".view-message").first.inner_text()
        assert page.locator(".view-picture img").is_visible()
        assert not page.locator(".view-controls").is_visible()
        shown = pixels(page)
        assert (np.abs(shown - shown[5, 5]).max(axis=2) > 20).mean() > 0.2


def test_without_scripts_the_still_picture_stays(browser, address):
    with opened(browser, address, ready=False, java_script_enabled=False) as page:
        assert page.locator(".view-picture img").is_visible()
        assert not page.locator(".view-controls").is_visible()
        assert "needs JavaScript" in page.locator("noscript").text_content()


def test_the_still_picture_is_printed(page):
    page.emulate_media(media="print")
    assert page.locator(".view-picture img").evaluate("(img) => getComputedStyle(img).visibility") == "visible"
    assert not page.locator(".view canvas").is_visible()
    assert not page.locator(".view-controls").is_visible()


def test_still_and_first_picture_show_the_same(page):
    live = pixels(page)
    live_class = "document.querySelector('figure.view').classList.toggle('view-live')"
    page.evaluate(live_class)
    still = pixels(page)
    page.evaluate(live_class)
    assert changed(live, still) < 0.06  # lines and the smoothing of edges differ


def test_a_lost_picture_comes_back(browser, address):
    with opened(browser, address) as page:
        before = pixels(page)
        page.evaluate("window.lost = window.blockgenView.renderer.getContext().getExtension('WEBGL_lose_context')")
        page.evaluate("window.lost.loseContext()")
        page.wait_for_function("!document.querySelector('.view-message').hidden")
        assert page.locator(".view-picture img").is_visible()
        page.evaluate("window.lost.restoreContext()")
        page.wait_for_function("document.querySelector('.view-message').hidden")
        assert changed(before, pixels(page)) < 0.01


def test_a_block_under_load_bends_and_shows_its_stress(browser, tmp_path):
    place = tmp_path / "loaded.html"
    place.write_text(view_page.html(field=True), encoding="utf-8")
    with opened(browser, place.as_uri()) as page:
        before = pixels(page)
        assert (
            "thrust towards the motor; tied under the screw heads; flanges free"
            in page.locator(".view-load").inner_text()
        )
        page.get_by_label("show the block as it bends").check()
        loaded = pixels(page)
        assert changed(before, loaded) > 0.1
        assert "40 MPa and more, at sharp edges" in page.locator(".view-scale").inner_text()
        assert page.locator(".view-magnified").inner_text() == "5000 times"
        page.select_option(".view-axis", "y")
        assert changed(loaded, pixels(page)) > 0.05
        page.select_option(".view-axis", "")
        slide(page, ".view-magnify", 100)
        assert page.locator(".view-magnified").inner_text() == "10000 times"
        assert changed(loaded, pixels(page)) > 0.01
