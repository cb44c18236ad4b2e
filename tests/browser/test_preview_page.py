"""A page of the preview in a browser: it follows the author's files by itself."""

import pytest

from tests.content_builder import FERN, PATTERN, TINY, build
from tests.previewing import previewing

_STORY = f"{FERN}/story.md"
_LONG_MS = 60_000


@pytest.fixture(scope="module")
def preview(tmp_path_factory):
    with previewing(build(tmp_path_factory.mktemp("at-home") / "content")) as running:
        running.page().settled()
        yield running


@pytest.fixture
def page(chromium, preview):
    """The pattern's page, with everything that a browser has to complain of."""
    context = chromium.new_context(viewport={"width": 390, "height": 800})
    page = context.new_page()
    said = []
    page.on("console", lambda message: said.append(message.text))
    page.on("pageerror", lambda error: said.append(str(error)))
    # What a page still waits for is called off by the browser when the page is left or loaded
    # anew: the news always, an icon now and then. What a server fails at has other names.
    called_off = "net::ERR_ABORTED"
    page.on(
        "requestfailed",
        lambda request: None if request.failure == called_off else said.append(request.url),
    )
    page.goto(preview.address + "fern/")
    yield page
    context.close()
    assert said == []


def save(preview, path: str, text: str) -> None:
    (preview.content / path).write_text(text, "utf-8")


def test_a_saved_story_comes_to_the_open_page_which_stays_where_it_was_scrolled(page, preview):
    page.evaluate("window.scrollTo(0, 600)")
    page.evaluate("window.before = true")
    save(preview, _STORY, "It grew in the browser.\n")
    page.get_by_text("It grew in the browser.").wait_for(timeout=_LONG_MS)
    page.wait_for_function("Math.abs(window.scrollY - 600) < 20")
    assert page.evaluate("window.before") is None
    save(preview, _STORY, TINY[_STORY])
    page.get_by_text(TINY[_STORY].strip()).wait_for(timeout=_LONG_MS)


def test_a_fault_lies_over_the_last_good_page_and_vanishes_when_it_is_mended(page, preview):
    page.evaluate("window.before = true")
    save(preview, PATTERN, TINY[PATTERN] + "colour: brick\n")
    strip = page.get_by_role("alert")
    strip.wait_for(timeout=_LONG_MS)
    assert "'colour' is not part of a pattern" in strip.inner_text()
    assert strip.bounding_box()["y"] == 0
    assert page.get_by_text(TINY[_STORY].strip()).count() == 1
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    save(preview, PATTERN, TINY[PATTERN])
    strip.wait_for(state="detached", timeout=_LONG_MS)
    assert page.evaluate("window.before"), "the page was not loaded again"


def test_advice_unfolds_by_keyboard_and_stays_unfolded(page, preview):
    advice = page.locator("#preview-strip details")
    summary = advice.locator("summary")
    assert "of advice" in summary.inner_text() and advice.get_attribute("open") is None
    summary.focus()
    page.keyboard.press("Enter")
    assert advice.get_attribute("open") is not None
    assert advice.locator("li").first.is_visible()


def test_a_page_that_nobody_sees_lets_go_and_catches_up_when_it_is_seen_again(page, preview):
    hide = "(hidden) => { Object.defineProperty(document, 'hidden', {value: hidden, configurable: true});"
    hide += " document.dispatchEvent(new Event('visibilitychange')); }"
    page.evaluate("window.before = true")
    page.evaluate(hide, True)
    save(preview, _STORY, "It grew unseen.\n")
    preview.page().hears_of(lambda news: b"It grew unseen." in preview.get("/fern/")[1])
    page.wait_for_timeout(300)
    assert page.evaluate("window.before")
    page.evaluate(hide, False)
    page.get_by_text("It grew unseen.").wait_for(timeout=_LONG_MS)
    save(preview, _STORY, TINY[_STORY])
    page.get_by_text(TINY[_STORY].strip()).wait_for(timeout=_LONG_MS)
