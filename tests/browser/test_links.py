"""Where the links of the site lead, by its files alone."""

from urllib.parse import urlsplit

import pytest

from tests.browser.looking import STANDINGS, none
from tests.browser.walking import in_style

pytestmark = pytest.mark.parametrize("site", STANDINGS, indirect=True)


def test_every_address_leads_somewhere(site):
    """What a page points to is there: pages and places in them, pictures, type, files to keep."""
    faults = []
    for holder, page in site.all_pages.items():
        for tag, address in page.addresses:
            path, fragment = site.local(holder, address)
            if tag in ("link", "meta"):
                path = site.named(holder, address)
            if path is None:
                continue
            if not (site.folder / path).is_file():
                faults.append(f"{holder}: <{tag}> {address} is no file")
            elif fragment and tag == "a" and fragment not in site.all_pages[path].ids:
                faults.append(f"{holder}: {address} is no place in {path}")
    none(faults)


def test_what_a_style_sheet_names_is_there(site):
    """Every face of type and every picture in a style sheet is a file of the site."""
    faults = []
    sheets = sorted(site.folder.rglob("*.css"))
    assert sheets
    for sheet in sheets:
        for address in in_style(sheet.read_text("utf-8")):
            if not address.startswith("data:") and not (sheet.parent / address).is_file():
                faults.append(f"{sheet.name}: {address}")
    none(faults)


def test_links_to_outside_are_well_formed(site):
    """A link that leaves the site says a scheme that a browser knows, and a host or a mailbox."""
    faults = []
    for holder, page in site.all_pages.items():
        for tag, address in page.addresses:
            if tag != "a" or site.local(holder, address)[0] is not None:
                continue
            parts = urlsplit(address)
            known = (parts.scheme in ("http", "https") and "." in parts.netloc) or (
                parts.scheme == "mailto" and "@" in parts.path
            )
            faults += [] if known else [f"{holder}: {address}"]
    none(faults)


def test_every_page_is_found_by_following_links(site):
    """No page is left out of the links, and one is shown where there is none."""
    assert sorted({*site.walked, "404.html"}) == sorted(site.all_pages)


def test_every_page_has_a_title_of_its_own(site):
    """Tabs and search results tell the pages apart; an id names one place only."""
    titles = [page.title for page in site.all_pages.values()]
    none([f"twice: {title!r}" for title in titles if not title or titles.count(title) > 1])
    none(
        f"{path}: #{each}"
        for path, page in site.all_pages.items()
        for each in page.ids
        if page.ids.count(each) > 1
    )
