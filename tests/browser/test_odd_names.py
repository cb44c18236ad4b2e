"""Titles and names as no layout likes them do not break a page."""

from dataclasses import replace

import pytest

from tests.browser.conftest import Site
from tests.browser.looking import Window, none
from tests.browser.serving import served
from tests.test_site import BOARD, HOLLY, LIFTING, QUIET, ROSE, SELLER, SPRIG, YEAR, site_of

WHOLE_WORD = "Kleingartenvereinsjahreshauptversammlungsprotokollfuehrerin"
LONG = "What the Gardener Found behind the Water Butt on the Morning after the First Hard Frost"
# Invented; written from right to left.
FROM_RIGHT = "נועה בת־השקד"

WRITER = replace(SELLER, id="writer", name=FROM_RIGHT)
UNBROKEN = replace(QUIET, id="unbroken", name=WHOLE_WORD)
ODD = replace(
    YEAR,
    title=f"{LONG} and {WHOLE_WORD}",
    patterns=(
        replace(HOLLY, title=WHOLE_WORD, designer=WRITER),
        replace(SPRIG, title=LONG, designer=UNBROKEN, occasion=replace(LIFTING, name=WHOLE_WORD)),
        replace(ROSE, title=f"{LONG}, Retold", designer=WRITER),
    ),
    finish=replace(BOARD, name=f"The {WHOLE_WORD}"),
    designers=(WRITER, UNBROKEN),
    to_come=tuple(replace(each, title=WHOLE_WORD, designer=UNBROKEN) for each in YEAR.to_come),
)


@pytest.fixture(scope="module", params=("out", "awaited"))
def odd_site(request, tmp_path_factory):
    """A small site of such names, on its release day and before."""
    folder = tmp_path_factory.mktemp("odd")
    before = YEAR.release.replace(year=YEAR.release.year - 1)
    for path, data in site_of(ODD, before if request.param == "awaited" else None).items():
        target = folder / path.removeprefix("site/")
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(data)
    with served({"odd": folder}) as address:
        yield Site(folder, address + "odd/")


@pytest.mark.parametrize("width_px", (320, 768, 1600))
def test_odd_names_find_room(odd_site, chromium, width_px):
    """A word without end is broken, and nothing is cut off or pushed beyond the edge."""
    faults = []
    with Window(chromium, width_px) as window:
        for page in odd_site.pages:
            window.open(odd_site.root, page)
            faults += [f"{page}: {each}" for each in [*window.noise, *window.ask("room")]]
    none(faults)


def test_a_name_from_right_to_left_turns_nothing_else_round(odd_site, chromium):
    """Such a name stands by itself: the words and figures about it keep their order."""
    faults, met = [], 0
    with Window(chromium) as window:
        for page in odd_site.pages:
            window.open(odd_site.root, page)
            held = window.ask("mixed", FROM_RIGHT)
            met += held["met"]
            faults += [f"{page}: {each}" for each in held["faults"]]
    assert met
    none(faults)
