"""The Nu HTML checker reads every page, style sheet and drawing."""

import json
import subprocess

import pytest

from tests.browser.looking import STANDINGS, none
from tests.browser.machine import nu_checker


@pytest.mark.parametrize("site", STANDINGS, indirect=True)
def test_the_nu_checker_finds_no_error(site):
    """Pages, style sheets and drawings keep the standards."""
    command = [*nu_checker(), "--format", "json", "--errors-only", "--skip-non-html"]
    command += ["--also-check-css", "--also-check-svg", str(site.folder)]
    done = subprocess.run(command, capture_output=True, encoding="utf-8", timeout=120)
    messages = json.loads(done.stderr)["messages"]
    none(
        f"{each.get('url', '').rpartition('/site/')[2]}:{each.get('lastLine', '')}: {each['message']}"
        for each in messages
    )
    assert done.returncode == 0
