"""Which edit of what patterns share sets which packets anew, and which of those come out otherwise.

Two designs share a series, a third has a series of its own; all three share cards and cloths.
"""

import shutil
from dataclasses import dataclass

import pytest

from packetgen.digest import digest
from packetgen.model import BeadCard, Cloth, ThreadCard
from packetgen.pipeline.packets import packet_files
from packetgen.pipeline.proofs import proof
from packetgen.pipeline.seen import as_packets_see
from packetgen.render import pdf
from packetgen.render.chart_paint import painted
from packetgen.render.templates import environment
from tests.content_builder import BEADS, CHART, CLOTH, FERN, FINISH, MOSS, PATTERN, SERIES, TINY
from tests.test_builds import IVY, OTHER, Desk

SPOOL, WINTER = "threads/spool.yaml", SERIES.replace("garden-year", "winter-year")
IVY_PATTERN = f"{IVY}/pattern.yaml"
CORIN = """\
  - id: corin
    name: Corin Bellwether
    about: Draws what climbs.
    sells: PDF
"""
# What nobody takes: plum of the thread, hip blue of the beads, mist of the cloth. The ivy's spool colours
# are left to the tool; the fern's are the author's own, and leaf is no one's but hers.
FILES = {
    **OTHER,
    MOSS: TINY[MOSS] + '  - {number: Z9, name: plum, hex: "#5a2a4a"}\n',
    SPOOL: TINY[SPOOL] + '  - {number: "16", name: sky, hex: "#9db8d0"}\n',
    BEADS: TINY[BEADS] + '  - {number: "09", name: hip blue, hex: "#2c3ab3"}\n',
    CLOTH: TINY[CLOTH] + '  - {name: mist, hex: "#d8dede"}\n',
    FINISH: TINY[FINISH].replace("diameter: 10 mm", "diameter: 4 mm").replace("15 mm", "4 mm"),
    "finishes/ledge/finish.yaml": TINY[FINISH]
    .replace("The Shelf", "The Ledge")
    .replace("120,120 0,120", "120,120 60,130 0,120"),
    "finishes/ledge/steps.md": "1. Saw the ledge.\n",
    WINTER: TINY[SERIES].replace("finish: shelf", "finish: ledge"),
    SERIES: TINY[SERIES]
    .replace("order: [fern]", "order: [fern, ivy]")
    .replace("order:", CORIN + "order:")
    .replace("licence: For your own stitching.", "licence: For your own stitching. Ask for more.")
    + 'look: {light: {ink: "#2b2b24", heading: "#1f3a2d"}, dark: {ink: "#e8dfcb"}}\n',
    IVY_PATTERN: """\
title: Ivy on the Wall
designer: corin
about: An ivy climbs.
occasion: {name: Last warm day, on: first Sunday of October}
cloths:
  - {cloth: hopsack-28, colour: oatmeal}
thread_sets: [moss, spool]
matched: {spool: moss}
key:
  r: {moss: E2}
  k: {moss: K4}
credits: {model_stitcher: Hazel Penn}
sold_at:
  - {name: Corin's counter, url: https://example.org/corin}
revisions:
  - {date: 2026-11-25, note: First issue.}
""",
    f"{IVY}/chart.txt": "rrkk\nrk..\n",
    f"{IVY}/story.md": "It climbed.\n",
    f"{IVY}/stitching.md": "Begin below.\n",
}
GARDEN_FERN, GARDEN_IVY, WINTER_FERN = "garden-year/fern", "garden-year/ivy", "winter-year/fern"
FERNS, GARDEN = {GARDEN_FERN, WINTER_FERN}, {GARDEN_FERN, GARDEN_IVY}
ALL, NONE = FERNS | GARDEN, set[str]()


@dataclass(frozen=True)
class Edit:
    """`old` becomes `new` in one file. `sets` are the packets that are set anew for it, `alike` those of
    them that would have come out the same: what is broader than it need be."""

    what: str
    path: str
    old: str
    new: str
    sets: frozenset[str] = frozenset()
    alike: frozenset[str] = frozenset()


def edit(what, path, old, new, sets=NONE, alike=NONE):
    return Edit(what, path, old, new, frozenset(sets), frozenset(alike))


EDITS = (
    # thread
    edit("shade of a colour nobody takes", MOSS, "#5a2a4a", "#5a2a4b"),
    edit("name of a colour nobody takes", MOSS, "plum", "damson"),
    edit("one more colour on a card", MOSS, "  - {number: Z9", '  - {number: Z8, name: sloe, hex: "#2a2a4a"}\n  - {number: Z9'),
    edit("shade that one design takes", MOSS, "#4f7942", "#4f7943", FERNS),
    edit("shade that all take", MOSS, "#a04030", "#a04031", ALL),
    edit("price of a thread", MOSS, "length: 8 m", "length: 8 m\nprice: 1.40 EUR"),
    edit("length of a skein", MOSS, "length: 8 m", "length: 9 m", ALL),
    edit("shade of the conversion that one author gives", SPOOL, "#507840", "#507841", FERNS),
    edit("unused shade that is now the nearest", SPOOL, "#9db8d0", "#a04030", {GARDEN_IVY}),
    edit("unused shade that is still not the nearest", SPOOL, "#9db8d0", "#9db8d1"),
    # beads and cloth
    edit("bead nobody takes", BEADS, "hip blue", "haw blue"),
    edit("bead that some take", BEADS, "hip red", "haw red", FERNS),
    edit("beads in a packet", BEADS, "packet: 300", "packet: 250", FERNS),
    edit("price of beads", BEADS, "packet: 300", "packet: 300\nprice: 2 EUR"),
    edit("colour of cloth nobody takes", CLOTH, "#d8dede", "#d8dedf"),
    edit("shade of cloth that one design has", CLOTH, "#e6dcc6", "#e6dcc7", {GARDEN_IVY}),
    edit("price of cloth", CLOTH, "count: 28", "count: 28\nprice: 9 EUR"),
    edit("count of cloth", CLOTH, "count: 28", "count: 27", ALL),
    # finishing
    edit("a paint's colour", FINISH, "#b0c8b3", "#b0c8b4", GARDEN),
    edit("a paint's name", FINISH, "sage", "sage green", GARDEN),
    edit("what is said of a piece", FINISH, "A shelf with a back", "A shelf with its back", GARDEN),
    edit("steps of a piece", "finishes/shelf/steps.md", "Saw", "Cut", GARDEN),
    # series
    edit("tagline", SERIES, "Small patterns", "Little patterns"),
    edit("address", SERIES, "licence:", "address: https://almanac.example.org/\nlicence:"),
    edit("address where a part has a drawing there", WINTER, "licence:", "address: https://almanac.example.org/\nlicence:", {WINTER_FERN}),
    edit("what is shown before release", SERIES, "licence:", "before_release: all\nlicence:"),
    edit("colours by night", SERIES, "#e8dfcb", "#e8dfcc"),
    edit("colour by day that print has not", SERIES, "#2b2b24", "#2b2b25", GARDEN, GARDEN),
    edit("colour by day that print has", SERIES, "#1f3a2d", "#1f3a2e", GARDEN),
    edit("ornament of the site", SERIES, "look: {", "look: {ornament: pot, "),
    edit("notice", SERIES, "The linen is back", "The linen is gone"),
    edit("welcome", "series/garden-year/welcome.md", "Welcome", "Come in"),
    edit("title of a series", SERIES, "The Garden Year", "A Garden Year", GARDEN),
    edit("strands of a set", SERIES, "card: moss, strands: 2", "card: moss, strands: 3", GARDEN),
    edit("one more set that nobody takes", SERIES, "designers:", "  - {name: more, card: spool, strands: 1}\ndesigners:"),
    edit("order of the designs", SERIES, "[fern, ivy]", "[ivy, fern]", GARDEN, GARDEN),
    edit("rest of the licence", SERIES, "Ask for more.", "Ask for anything.", GARDEN, NONE),
    edit("hour of the release", SERIES, "09:00", "10:00", GARDEN, GARDEN),
    # people
    edit("what one designer says of herself", SERIES, "Draws what climbs", "Draws all that climbs", {GARDEN_IVY}),
    edit("a designer's name", SERIES, "Corin Bellwether", "Corin Wether", GARDEN, {GARDEN_FERN}),
    edit("a designer's shop", SERIES, "shop: https://alder.example/alder", "shop: https://example.org/wren", {GARDEN_FERN}, {GARDEN_FERN}),
    edit("title to come", SERIES, "title: Onions", "title: Shallots", GARDEN),
    # one design's own files
    edit("story", f"{FERN}/story.md", "grew", "stood", {GARDEN_FERN}),
    edit("title of one design", PATTERN, "Fern by the Tap", "Fern by the Pump", GARDEN),
    edit("what is said of one design", PATTERN, "A fern uncurls", "A fern unrolls", {GARDEN_FERN}),
    edit("one stitch of one design", CHART, "rrbb", "rrbr", {GARDEN_FERN}),
    edit("one row more of one design", CHART, "rk..\n", "rk..\nrk..\n", {GARDEN_FERN}),
    edit("one column less, which moves the magnets", f"{IVY}/chart.txt", "rrkk\nrk..\n", "rrk\nrk.\n", GARDEN),
    edit("one row less, which leaves it no magnets", f"{IVY}/chart.txt", "rrkk\n", "", {GARDEN_IVY}),
)  # fmt: skip


@pytest.fixture
def everything_counts(monkeypatch, quick_pictures):
    """The PDF engine is not asked; its papers are made of all that it is given."""

    def documents(html, assets, identifier, charts, *rest):
        page_mm, papers, attached, dated = rest
        numbers = {page.sheet.tile.number: 7 for page in charts.values()}
        painted_on = {anchor: painted(page, numbers) for anchor, page in charts.items()}
        given = digest(html, assets, identifier, painted_on, page_mm, attached, dated)
        return {paper: b"%PDF " + given.encode() for paper in papers}

    monkeypatch.setattr(pdf, "documents", documents)


@pytest.fixture(scope="module")
def base(tmp_path_factory):
    return tmp_path_factory.mktemp("rebuilt") / "base"


@pytest.fixture
def desk(base, tmp_path, everything_counts):
    if not base.exists():
        assert Desk(base, FILES).build().sound
    shutil.copytree(base, tmp_path / "desk")
    return Desk(tmp_path / "desk", None)


def packets(outputs):
    """'series/pattern' → {path: output} of what is sold and its ledger."""
    found = {}
    for path, one in outputs.items():
        if one.recipe and path.startswith(("packets/", "ledger/")):
            name = path.partition("/")[2]
            series, pattern = name.split("/")[0], name.split("/")[1].split("-")[0].split(".")[0]
            found.setdefault(f"{series}/{pattern}", {})[path] = one
    return found


@pytest.mark.parametrize("of", EDITS, ids=lambda of: of.what.replace(" ", "-"))
def test_an_edit_sets_those_packets_anew_that_see_it(desk, of):
    """And every other one is what it would be if it were made anew from everything."""
    text = (desk.content / of.path).read_text()
    assert of.old in text
    desk.write(of.path, text.replace(of.old, of.new))
    built = desk.build()
    assert built.sound, list(built.problems)
    before, after = packets(built.before), packets(built.outputs)
    assert before.keys() == after.keys() == ALL
    assert {
        name
        for name, files in after.items()
        if {one.recipe for one in files.values()} != {one.recipe for one in before[name].values()}
    } == of.sets
    same = {name for name in ALL if shas(after[name]) == shas(before[name])}
    assert same & of.sets == of.alike
    for each in proof(desk.content).reckoned:
        for figures in each.figures:
            name = f"{each.series.id}/{figures.pattern.id}"
            if name in of.sets:
                continue
            cover = (desk.folder / f".kept/{name}.jpg").read_bytes()
            made = packet_files(each.series, figures, cover, None, environment())
            assert {path: (desk.folder / path).read_bytes() for path in made} == made


def shas(files):
    return {path: one.sha256 for path, one in files.items()}


def test_a_packet_sees_no_price_and_only_its_own_colours(desk):
    """However deep in its figures a card hangs."""
    for each in proof(desk.content).reckoned:
        for name, seen in as_packets_see(each.series, each.figures).items():
            own = {
                MOSS: {"E2", "K4"} | ({"07"} if name == "fern" else set()),
                SPOOL: {"10", "12"} | ({"14"} if name == "fern" else set()),
                BEADS: {"07"} if name == "fern" else set(),
                CLOTH: {"frost"} if name == "fern" else {"oatmeal"},
            }
            goods = list(every_good(seen))
            assert {kind for kind, *_ in goods} >= {ThreadCard, Cloth}
            for kind, path, colours, price in goods:
                assert price is None
                assert colours == own[path] or (kind is Cloth and not colours)


def every_good(value):
    """(kind, file, colours, price) of every card and cloth in a value."""
    from collections.abc import Mapping
    from dataclasses import fields, is_dataclass

    folders = {ThreadCard: "threads", BeadCard: "beads", Cloth: "cloths"}
    if type(value) in folders:
        path = f"{folders[type(value)]}/{value.id}.yaml"
        yield type(value), path, set(value.colours), value.price
    elif isinstance(value, Mapping):
        for one in value.values():
            yield from every_good(one)
    elif isinstance(value, tuple):
        for one in value:
            yield from every_good(one)
    elif is_dataclass(value):
        for field in fields(value):
            yield from every_good(getattr(value, field.name))
