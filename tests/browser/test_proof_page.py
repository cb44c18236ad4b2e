"""An editor's report in a browser: axe-core and the Nu checker look at it, by day, by night and on paper."""

import json
import subprocess
from itertools import product

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from tests.browser.looking import Window, none
from tests.browser.machine import nu_checker
from tests.browser.serving import served
from tests.browser.test_accessibility import OPTIONS, told
from tests.content_builder import CHART, build
from tests.demo_patterns import CONTENT


@pytest.fixture(scope="module")
def reports(tmp_path_factory):
    """The demo's, and one of a folder that cannot be read."""
    folder = tmp_path_factory.mktemp("proof")
    broken = build(folder / "broken" / "content", {CHART: "rrbb\nr?..\n"})
    out = folder / "out"
    for name, content in (("demo", CONTENT), ("broken", broken)):
        CliRunner().invoke(
            main, ["proof", "--content", str(content), "--report", str(out / f"{name}.html")]
        )
    return out


@pytest.mark.parametrize(("width_px", "scheme"), product((320, 390, 1280), ("light", "dark")))
def test_axe_finds_nothing_and_nothing_is_wider_than_the_screen(
    reports, chromium, width_px, scheme
):
    faults = []
    with (
        served({"proof": reports}) as address,
        Window(chromium, width_px, color_scheme=scheme) as window,
    ):
        for name in ("demo.html", "broken.html"):
            window.open(address + "proof/", name)
            faults += [f"{name}: {each}" for each in told(window.axe(OPTIONS)["violations"])]
            wide = window.page.evaluate("document.documentElement.scrollWidth")
            faults += [f"{name}: {wide} px wide"] if wide > width_px else []
    none(faults)


def test_the_nu_checker_finds_no_error_in_a_report(reports):
    command = [*nu_checker(), "--format", "json", "--errors-only", "--also-check-css"]
    done = subprocess.run(
        [*command, str(reports)], capture_output=True, encoding="utf-8", timeout=300
    )
    messages = json.loads(done.stderr)["messages"]
    none(f"{each.get('url')}:{each.get('lastLine', '')}: {each['message']}" for each in messages)
    assert done.returncode == 0
