"""The guide in a browser: axe-core and the Nu checker look at every page of it."""

import json
import subprocess

import pytest

from packetgen.program import guide_sources
from packetgen.render.guide import guide_files
from packetgen.render.templates import environment
from tests.browser.looking import Window, none
from tests.browser.machine import nu_checker
from tests.browser.serving import served
from tests.browser.test_accessibility import OPTIONS, told


@pytest.fixture(scope="module")
def guide(tmp_path_factory):
    """The folder of the guide."""
    folder = tmp_path_factory.mktemp("guide")
    for path, data in guide_files(guide_sources(), environment()).items():
        (folder / path).parent.mkdir(parents=True, exist_ok=True)
        (folder / path).write_bytes(data)
    return folder


@pytest.mark.parametrize(("width_px", "scheme"), [(320, "light"), (1600, "dark")])
def test_axe_finds_nothing_in_the_guide(guide, chromium, width_px, scheme):
    """By day and by night, on a phone and on a wide screen; and no page is wider than the screen."""
    faults = []
    with (
        served({"guide": guide}) as address,
        Window(chromium, width_px, color_scheme=scheme) as window,
    ):
        for page in sorted(path.name for path in guide.glob("*.html")):
            window.open(address + "guide/", page)
            faults += [f"{page}: {each}" for each in told(window.axe(OPTIONS)["violations"])]
            wide = window.page.evaluate("document.documentElement.scrollWidth")
            faults += [f"{page}: {wide} px wide"] if wide > width_px else []
    none(faults)


def test_the_nu_checker_finds_no_error_in_the_guide(guide):
    command = [*nu_checker(), "--format", "json", "--errors-only", "--skip-non-html"]
    done = subprocess.run(
        [*command, "--also-check-css", str(guide)],
        capture_output=True,
        encoding="utf-8",
        timeout=300,
    )
    messages = json.loads(done.stderr)["messages"]
    none(f"{each.get('url')}:{each.get('lastLine', '')}: {each['message']}" for each in messages)
    assert done.returncode == 0
