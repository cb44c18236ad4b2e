"""What can be chosen and ticked on the pages works, with scripts and without."""

import pytest

from tests.browser.looking import Window

# Chooser → the numbers of the panels in sight.
PANELS_SHOWN = """chooser => [...chooser.querySelectorAll('.panel')]
    .flatMap((panel, index) => panel.checkVisibility() ? [index] : [])"""

SUPPLIES = "supplies.html"
BOXES = ".ticks input[type=checkbox]"


@pytest.mark.parametrize("scripts", (True, False), ids=("with scripts", "without"))
def test_a_click_shows_how_the_picture_lies_on_that_cloth(site, chromium, scripts):
    """Each cloth of each pattern has one panel, and a click on its name shows just that."""
    with Window(chromium, 390, java_script_enabled=scripts) as window:
        assert site.patterns
        for page in site.patterns:
            window.open(site.root, page)
            chooser = window.page.locator("fieldset.chooser")
            names = chooser.locator("input[type=radio] + label")
            assert names.count() == chooser.locator(".panel").count() > 1
            assert chooser.evaluate(PANELS_SHOWN) == [0], "the model's cloth is chosen at first"
            for number in reversed(range(names.count())):
                names.nth(number).click()
                assert chooser.evaluate(PANELS_SHOWN) == [number]


@pytest.mark.parametrize("scripts", (True, False), ids=("with scripts", "without"))
def test_the_arrow_keys_choose_a_cloth(site, chromium, scripts):
    """By keyboard one stop leads to the cloths, and arrows from each to the next and round again."""
    with Window(chromium, 1280, java_script_enabled=scripts) as window:
        window.open(site.root, site.patterns[0])
        chooser = window.page.locator("fieldset.chooser")
        cloths = chooser.locator("input[type=radio]").count()
        window.page.locator("fieldset.chooser input:checked").focus()
        for number in [*range(1, cloths), 0]:
            window.page.keyboard.press("ArrowDown")
            assert chooser.evaluate(PANELS_SHOWN) == [number]


def test_a_print_shows_every_cloth(site, chromium):
    """Nothing can be chosen on paper, so a print has all panels, each under the name of its cloth."""
    with Window(chromium, 703) as window:
        window.page.emulate_media(media="print")
        window.open(site.root, site.patterns[0])
        chooser = window.page.locator("fieldset.chooser")
        names = chooser.locator("label")
        assert chooser.evaluate(PANELS_SHOWN) == list(range(names.count()))
        assert all(each.is_visible() for each in names.all())


def test_ticks_stay_where_they_were_made(site, chromium):
    """What is ticked off on the supply list is ticked still when the page is opened again."""
    with Window(chromium, 390) as window:
        for root in (site.root, site.folder_root):
            window.open(root, SUPPLIES)
            boxes = window.page.locator(BOXES)
            assert boxes.count() > 2 and not any(each.is_checked() for each in boxes.all())
            boxes.nth(0).check()
            boxes.nth(boxes.count() - 1).check()
            window.page.reload()
            ticked = [number for number, each in enumerate(boxes.all()) if each.is_checked()]
            assert ticked == [0, boxes.count() - 1]
            window.page.get_by_role("button", name="Clear").click()
            window.page.reload()
            assert not any(each.is_checked() for each in boxes.all())
            assert not window.noise


def test_ticks_do_without_a_memory(site, chromium):
    """Where a browser keeps nothing for a page, the boxes tick all the same and nothing complains."""
    with Window(chromium, 390) as window:
        window.page.add_init_script(
            "Object.defineProperty(window, 'localStorage', { get() { throw new Error('kept shut') } })"
        )
        window.open(site.root, SUPPLIES)
        box = window.page.locator(BOXES).first
        box.check()
        assert box.is_checked() and not window.noise


def test_boxes_tick_and_print_without_scripts(site, chromium):
    """The list is of use on paper and without scripts: each box is there, and shows its tick."""
    with Window(chromium, 703, java_script_enabled=False) as window:
        window.open(site.root, SUPPLIES)
        boxes = window.page.locator(BOXES)
        boxes.first.check()
        window.page.emulate_media(media="print")
        assert boxes.first.is_checked() and all(each.is_visible() for each in boxes.all())
        ticked, bare = (boxes.nth(number).screenshot() for number in (0, 1))
        assert ticked != bare
