"""axe-core looks at every page."""

from itertools import product

import pytest

from tests.browser.looking import Window, none

# All rules that stand for WCAG 2.2 A and AA, best practice, and those still on trial.
# Left out: the rules of level AAA.
TAGS = ("wcag2a wcag2aa wcag21a wcag21aa wcag22a wcag22aa best-practice experimental").split()
OPTIONS = {
    "runOnly": {"type": "tag", "values": TAGS},
    "rules": {"target-size": {"enabled": True}},
    "resultTypes": ["violations", "incomplete"],
}


# Before its release the site has the same pages in the same clothes, so two views of it do.
VIEWS = [
    *product(["built"], (320, 1600), ("light", "dark")),
    ("awaited", 320, "dark"),
    ("awaited", 1600, "light"),
]


@pytest.mark.parametrize(("site", "width_px", "scheme"), VIEWS, indirect=["site"])
def test_axe_finds_nothing(site, chromium, width_px, scheme):
    """No rule is broken, and no contrast is left for a person to judge."""
    faults = []
    with Window(chromium, width_px, color_scheme=scheme) as window:
        for page in site.pages:
            window.open(site.root, page)
            found = window.axe(OPTIONS)
            unsure = [each for each in found["incomplete"] if "contrast" in each["id"]]
            faults += [f"{page}: {each}" for each in told(found["violations"])]
            faults += [
                f"{page}: unsure: {each}" for each in told(unsure, besides=excused(window, unsure))
            ]
            faults += [f"{page}: {each}" for each in window.ask("drawings")]
    none(faults)


def excused(window: Window, rules: list[dict]) -> list[str]:
    """What axe cannot judge and need not: words in drawings, which are judged here with `drawings`,
    and cells of a table that is scrolled by itself, which stand in sight where the page is wide."""
    return window.ask("apart", [node["target"][0] for rule in rules for node in rule["nodes"]])


def told(rules: list[dict], besides: list[str] = ()) -> list[str]:
    """The findings of axe, one a line."""
    return [
        f"{rule['id']}: {node['target'][0]}: {' '.join(node['failureSummary'].split())}"
        for rule in rules
        for node in rule["nodes"]
        if node["target"][0] not in besides
    ]
