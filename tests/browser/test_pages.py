"""Each page, on a phone, a tablet and a wide screen, in the light and in the dark."""

import pytest

from tests.browser.looking import STANDINGS, Window, none

WIDTHS_PX = (320, 768, 1600)

# WCAG 2.2, 1.4.12: nothing may be lost when a reader spaces text out as far as this.
SPACED = (
    "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; "
    "word-spacing: 0.16em !important } p { margin-bottom: 2em !important }"
)


@pytest.mark.parametrize("site", STANDINGS, indirect=True)
@pytest.mark.parametrize("scheme", ("light", "dark"))
@pytest.mark.parametrize("width_px", WIDTHS_PX)
def test_every_page_is_whole(site, chromium, width_px, scheme):
    """Nothing is missing, refused, cut off or complained of, and headings follow in order."""
    faults = []
    with Window(chromium, width_px, color_scheme=scheme) as window:
        for page in site.pages:
            window.open(site.root, page)
            for probe in ("pictures", "structure", "room", "unseen"):
                faults += [f"{page}: {each}" for each in window.ask(probe)]
            faults += [f"{page}: {each}" for each in window.noise]
    none(faults)


def test_every_page_bears_text_spaced_out(site, chromium):
    """A reader may space out lines, words and letters: nothing is cut off, even on a phone."""
    faults = []
    with Window(chromium, 320) as window:
        for page in site.pages:
            window.open(site.root, page)
            window.page.add_style_tag(content=SPACED)
            faults += [f"{page}: {each}" for each in window.ask("cut")]
    none(faults)


def test_every_page_opens_from_a_folder(site, chromium):
    """No host is needed: the files, opened as they lie, show the same pages with their pictures."""
    faults = []
    with Window(chromium) as window:
        for page in site.pages:
            window.open(site.folder_root, page)
            faults += [f"{page}: {each}" for each in [*window.noise, *window.ask("pictures")]]
            faces = window.page.evaluate(
                "[...document.fonts].filter(f => f.status === 'error').length"
            )
            faults += [f"{page}: {faces} faces of type do not load"] if faces else []
    none(faults)


def test_a_wrong_address_shows_a_whole_page(site, chromium):
    """Whoever goes astray, however deep, sees a page of the site that says so."""
    with Window(chromium) as window:
        for page in ("nothing.html", "no/such/page/index.html"):
            window.open(site.root, page)
            astray = [each for each in window.noise if "404" not in each or page not in each]
            none([f"{page}: {each}" for each in [*astray, *window.ask("structure")]])
