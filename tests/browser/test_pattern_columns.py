"""What stands side by side on a pattern's page leaves no hole in it."""

import pytest

from tests.browser.looking import Window, none

WIDTHS_PX = (390, 768, 1280, 1600)
# Boxes of the chooser of cloths and of the opening, in px of the page.
_BOXES = """() => {
  const box = (element) => { const { left, right, top, bottom } = element.getBoundingClientRect();
    return { left, right, top, bottom }; };
  const all = (selector) => [...document.querySelectorAll(selector)].map(box);
  const shown = [...document.querySelectorAll(".chooser > .panel")].find((one) => one.offsetHeight);
  return {
    chooser: all(".chooser")[0],
    options: all(".chooser > label"),
    panel: box(shown),
    inside: [...shown.children].map(box),
    opening: all(".opening")[0],
    parts: [".title", ".plate", ".facts", ".buy"].map((one) => all(".opening " + one)[0]),
  };
}"""


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width_px", WIDTHS_PX)
def test_the_chooser_of_cloths_has_no_hole(site, chromium, width_px, scheme):
    """Every row of options, and the panel, is as wide as the chooser, and the next begins where one ends; in
    the panel drawing and figures end together or stand below one another."""
    faults = []
    with Window(chromium, width_px, color_scheme=scheme) as window:
        for name in patterns(site):
            window.open(site.root, name)
            seen = window.page.evaluate(_BOXES)
            chooser, panel = seen["chooser"], seen["panel"]
            rows: dict[int, list[dict[str, float]]] = {}
            for one in [*seen["options"], panel]:
                rows.setdefault(round(one["top"]), []).append(one)
            ends = None
            for top, row in sorted(rows.items()):
                wide = max(b["right"] for b in row) - min(b["left"] for b in row)
                if wide < chooser["right"] - chooser["left"] - 4:
                    faults.append(f"{name}: a row of the chooser is {wide:.0f} px wide")
                if ends is not None and abs(top - ends) > 3:
                    faults.append(f"{name}: {top - ends:.0f} px between two rows")
                if max(b["bottom"] for b in row) - min(b["bottom"] for b in row) > 1:
                    faults.append(f"{name}: options of one row end apart")
                ends = max(b["bottom"] for b in row)
            drawing, figures = seen["inside"]
            beside = drawing["right"] <= figures["left"]
            if beside and abs(drawing["bottom"] - figures["bottom"]) > 2:
                faults.append(f"{name}: drawing and figures end apart")
            if not beside and drawing["bottom"] > figures["top"]:
                faults.append(f"{name}: drawing and figures overlap")
    none(faults)


@pytest.mark.parametrize("width_px", [*WIDTHS_PX, 1024, 1440])
def test_neither_column_of_the_opening_ends_long_before_the_other(site, chromium, width_px):
    """What is narrower than the page stands in one of two columns: the shorter is two thirds of the longer."""
    faults = []
    with Window(chromium, width_px) as window:
        for name in patterns(site):
            window.open(site.root, name)
            seen = window.page.evaluate(_BOXES)
            opening = seen["opening"]
            middle = (opening["left"] + opening["right"]) / 2
            narrow = [
                box
                for box in seen["parts"]
                if box["left"] > middle - 60 or box["right"] < middle + 60
            ]
            ends = [
                max((box["bottom"] - opening["top"] for box in column), default=0)
                for column in (
                    [box for box in narrow if box["right"] < middle + 60],
                    [box for box in narrow if box["left"] > middle - 60],
                )
            ]
            assert bool(narrow) == (width_px > 390)
            if min(ends) < 0.65 * max(ends):
                faults.append(f"{name}: columns end at {ends[0]:.0f} and {ends[1]:.0f} px")
    none(faults)


def patterns(site) -> list[str]:
    """The pages of patterns, as addresses below the site's."""
    found = sorted(page.parent.name for page in site.folder.glob("*/index.html"))
    assert found
    return [f"{name}/index.html" for name in found]
