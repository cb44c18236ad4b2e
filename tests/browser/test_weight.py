"""What a page weighs on its way to a reader."""

import pytest

from tests.browser.looking import STANDINGS, Window, none

LIMIT_BYTES = 300_000

# (what it stands for, width px, height px, device pixels to a px)
SCREENS = (("phone", 390, 844, 2), ("fine phone", 390, 844, 3), ("desk", 1280, 800, 1))


def weight_bytes(window: Window) -> int:
    """The bytes of all answers so far, as they lie on the host: nothing is packed on the way."""
    return sum(len(answer.body()) for answer in window.answers)


@pytest.mark.parametrize("site", STANDINGS, indirect=True)
@pytest.mark.parametrize(
    ("screen", "width_px", "height_px", "dots"), SCREENS, ids=lambda each: str(each)
)
def test_a_pattern_page_is_light(
    site, chromium, record_property, screen, width_px, height_px, dots
):
    """Page, style, type and pictures together stay under 300 KB, scrolled to the end."""
    faults, rows = [], []
    for page in site.patterns:
        with Window(chromium, width_px, height_px, device_scale_factor=dots) as window:
            window.open(site.root, page)
            window.page.evaluate("document.fonts.ready.then(() => null)")
            at_once = weight_bytes(window)
            window.ask("pictures")
            whole = weight_bytes(window)
        rows.append(f"{at_once:>9,} {whole:>9,}  {page}")
        faults += [rows[-1]] if whole >= LIMIT_BYTES else []
    assert rows
    record_property("shown", f"{screen}: bytes at once, and in all\n" + "\n".join(rows))
    none(faults)
