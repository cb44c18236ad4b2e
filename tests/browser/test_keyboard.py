"""The site without a mouse."""

import pytest

from tests.browser.looking import Window, none


def samples(site) -> tuple[str, ...]:
    """The first page, the page of a pattern, and the one to tick on."""
    return (
        "index.html",
        site.patterns[0],
        *(page for page in site.pages if page == "supplies.html"),
    )


def walk(window: Window) -> tuple[list[int], list[str]]:
    """Press Tab until the page is left: (the numbers of the stops, what is wrong on the way)."""
    stops, faults = [], []
    for _ in range(len(window.ask("number")) + 10):
        window.page.keyboard.press("Tab")
        found = window.ask("focus")
        if found is None:
            break
        stops += [] if found["stop"] is None else [found["stop"]]
        faults += found["faults"]
    return stops, faults


@pytest.mark.parametrize("scheme", ("light", "dark"))
def test_tab_reaches_everything_in_order_and_shows_where_it_is(site, chromium, scheme):
    """Every link, button and field is reached in reading order, in sight and plainly marked."""
    faults = []
    with Window(chromium, 768, color_scheme=scheme) as window:
        for page in samples(site):
            window.open(site.root, page)
            names = window.ask("number")
            stops, wrong = walk(window)
            assert names
            missed = [names[each] for each in range(len(names)) if each not in stops]
            faults += [f"{page}: {each}" for each in wrong]
            faults += [f"{page}: not reached: {each}" for each in missed]
            faults += [f"{page}: out of order: {stops}"] if stops != sorted(stops) else []
    none(faults)


def test_the_focus_shows_in_forced_colours(site, chromium):
    """Where the system chooses all colours, pages still load, fit, and show the focus."""
    faults = []
    with Window(chromium, 768, forced_colors="active") as window:
        for page in site.pages:
            window.open(site.root, page)
            faults += [f"{page}: {each}" for each in [*window.noise, *window.ask("room")]]
        for page in samples(site):
            window.open(site.root, page)
            faults += [f"{page}: {each}" for each in walk(window)[1]]
    none(faults)


def test_the_first_stop_leads_past_the_navigation(site, chromium):
    """Whoever goes by keyboard can pass over what stands at the head of every page."""
    faults = []
    with Window(chromium) as window:
        for page in site.pages:
            window.open(site.root, page)
            window.page.keyboard.press("Tab")
            leads = window.page.evaluate("document.activeElement.getAttribute('href')")
            if not (leads or "").startswith("#"):
                faults.append(f"{page}: the first stop leads to {leads}")
                continue
            window.page.keyboard.press("Enter")
            window.page.keyboard.press("Tab")
            # Where the main part has nothing to stop at, the next stop is beyond it.
            past = "!document.activeElement.matches('nav:not(main *) *, header:not(main *) *')"
            faults += [] if window.page.evaluate(past) else [f"{page}: {leads} is not past it"]
    none(faults)
