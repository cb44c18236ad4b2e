"""The site without scripts, without a screen, without movement."""

from contextlib import closing

import pypdfium2

from tests.browser.looking import Window, none


def test_every_page_is_read_without_scripts(site, chromium):
    """Whatever is read with scripts is read without."""
    faults = []
    with Window(chromium) as window, Window(chromium, java_script_enabled=False) as bare:
        for page in site.pages:
            window.open(site.root, page)
            bare.open(site.root, page)
            with_scripts, without = window.ask("lines"), bare.ask("lines")
            assert with_scripts
            missing = [line for line in with_scripts if line not in without]
            faults += [f"{page}: only with scripts: {line}" for line in missing]
            faults += [f"{page}: {each}" for each in [*bare.noise, *bare.ask("unseen")]]
    none(faults)


def test_a_print_is_dark_on_light_and_bare_of_navigation(site, chromium):
    """Nothing to click is printed, words are dark enough for white paper, and all is within its width."""
    faults = []
    # The width of A4 within margins of 12 mm, at 96 px to the inch.
    with Window(chromium, 703) as window:
        window.page.emulate_media(media="print")
        for page in site.pages:
            window.open(site.root, page)
            faults += [f"{page}: {each}" for each in [*window.ask("print"), *window.ask("room")]]
    none(faults)


def test_a_print_of_a_dark_page_is_on_light_paper(site, chromium):
    """Whoever reads in the dark and prints wastes no ink: the sheets that come out are light."""
    faults = []
    with Window(chromium, color_scheme="dark") as window:
        for page in site.pages:
            window.open(site.root, page)
            with closing(pypdfium2.PdfDocument(window.page.pdf(print_background=True))) as sheets:
                shot = sheets[0].render(scale=0.25, grayscale=True).to_pil().convert("L")
            across, down = shot.size
            corners = [shot.getpixel((x, y)) for x in (1, across - 2) for y in (1, down - 2)]
            faults += [f"{page}: the paper is {corners} of 255"] if min(corners) < 230 else []
    none(faults)


def test_nothing_moves_for_those_who_ask_for_it(site, chromium):
    """With reduced motion asked for, nothing is animated and no jump is a glide."""
    faults = []
    with Window(chromium, reduced_motion="reduce") as window:
        for page in site.pages:
            window.open(site.root, page)
            faults += [f"{page}: {each}" for each in window.ask("moving")]
            glide = window.page.evaluate(
                "getComputedStyle(document.documentElement).scrollBehavior"
            )
            faults += [f"{page}: glides"] if glide == "smooth" else []
    none(faults)
