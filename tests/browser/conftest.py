"""One browser for each file of tests, and the demo's site on a host of this machine."""

import os
from dataclasses import dataclass
from pathlib import Path

import pytest
from playwright.sync_api import sync_playwright

from tests.browser.machine import browser_program
from tests.browser.serving import served
from tests.browser.walking import SiteFiles

# A built site to look at in place of one that is built for the tests, for whoever works on a page.
LOOK_AT = "PACKETGEN_LOOK_AT"


@dataclass(frozen=True)
class Site(SiteFiles):
    """A site on the host; `root` is its address, with a slash at the end."""

    root: str

    @property
    def folder_root(self) -> str:
        """The same site opened from the folder."""
        return self.folder.resolve().as_uri() + "/"


@pytest.fixture(scope="module")
def chromium():
    """The browser. A module has its own, since what drives it keeps an event loop running."""
    program = browser_program()
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(
            executable_path=program,
            args=[
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                # No name of a host is looked up, whatever a page asks for.
                "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
            ],
        )
        yield browser
        browser.close()


@pytest.fixture(scope="session")
def site(request):
    """The demo's site on its release day; a test asks with `standing` for the one before, too."""
    standing = getattr(request, "param", "built")
    if not (looked_at := os.environ.get(LOOK_AT)):
        folder = request.getfixturevalue(standing) / "site"
    elif standing == "built":
        folder = Path(looked_at)
    else:
        pytest.skip(f"only the site in {looked_at} is looked at")
    assert (folder / "index.html").is_file(), f"no site in {folder}"
    with served({"almanac": folder}) as address:
        yield Site(folder, address + "almanac/")
