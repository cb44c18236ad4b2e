"""The guide: pages that hold together, and figures that are reckoned again."""

import re
from datetime import date, timedelta
from html.parser import HTMLParser
from math import sqrt

import pytest
from click.testing import CliRunner

from packetgen import colour
from packetgen.chart.editions import EDITIONS
from packetgen.chart.sheet import ARROW_ROOM
from packetgen.cli import main
from packetgen.load.dates import read_rule
from packetgen.model import (
    Assumptions,
    Coating,
    Colour,
    Magnets,
    Pace,
    Paint,
    Part,
    ThreadCard,
    Trim,
)
from packetgen.program import guide_sources
from packetgen.reckon import (
    bead_fit,
    calendar,
    coverage,
    cutting,
    fit,
    magnets,
    matching,
    mounting,
    paint,
    sizes,
    stitches,
    thread,
    working_time,
)
from packetgen.reckon.figures import beads_with_spares
from packetgen.reckon.sizes import Size
from packetgen.render.guide import guide_files, pages_of
from packetgen.render.templates import environment
from packetgen.units import cut_centimetres, cut_inches, inches
from packetgen.yarn_numbers import read_yarn_number
from tests.stitching import piece
from tests.test_review_unseen import told as unseen_on_white
from tests.test_turned_chart import pages_of as chart_pages_of
from tests.test_turned_chart import sampler

SOURCES = guide_sources()
FILES = guide_files(SOURCES, environment())
PAGES = {path: data.decode() for path, data in FILES.items() if path.endswith(".html")}


class Read(HTMLParser):
    """What a page links to and what may be linked to on it."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.links: list[str] = []
        self.ids: list[str] = []
        self.levels: list[int] = []
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        self.links += [given[name] or "" for name in ("href", "src") if name in given]
        self.ids += [given["id"] or ""] if "id" in given else []
        if re.fullmatch("h[1-6]", tag):
            self.levels.append(int(tag[1]))


READ = {path: Read(html) for path, html in PAGES.items()}


@pytest.mark.parametrize("path", PAGES)
def test_every_link_of_a_page_leads_somewhere(path):
    """To a page or file that is there, and to a spot on it; each relative, so that the folder can be moved."""
    for link in READ[path].links:
        if re.match(r"https?://", link):
            continue
        target, _, spot = link.partition("#")
        target = target or path
        assert target in FILES, link
        assert not spot or spot in READ[target].ids, link


@pytest.mark.parametrize("path", PAGES)
def test_a_page_is_in_order(path):
    """One title, no step of headings left out, no id twice, room to skip to, nothing that runs."""
    html, read = PAGES[path], READ[path]
    assert read.levels.count(1) == 1 and read.levels[0] == 1
    assert all(after <= before + 1 for before, after in zip(read.levels, read.levels[1:]))
    assert len(read.ids) == len(set(read.ids))
    assert 'href="#main"' in html and '<main id="main"' in html
    assert "<script" not in html and "style=" not in html
    assert f'aria-current="page">{pages_title(path)}' in html


def pages_title(path: str) -> str:
    return next(page.title for page in pages_of(SOURCES) if page.address == path)


def test_the_index_leads_to_every_page():
    linked = {link for link in READ["index.html"].links if link.endswith(".html")}
    assert linked >= set(PAGES)
    listed = re.findall(r"\]\(([\w-]+\.md)\)", SOURCES["index.md"].decode())
    assert set(listed) == {path for path in SOURCES if path.endswith(".md")} - {"index.md"}


def test_the_style_serves_day_night_print_and_keyboard():
    style = FILES["guide.css"].decode()
    for needed in ("prefers-color-scheme: dark", "@media print", ":focus-visible", "forced-colors"):
        assert needed in style
    named = set(re.findall(r"url\(['\"]?([^'\")]+)", style))
    assert named and named <= set(FILES)


def test_the_command_writes_all_of_it(tmp_path):
    result = CliRunner().invoke(main, ["guide", "--into", str(tmp_path / "guide")])
    assert result.exit_code == 0, result.output
    written = {
        path.relative_to(tmp_path / "guide").as_posix(): path.read_bytes()
        for path in (tmp_path / "guide").rglob("*")
        if path.is_file()
    }
    assert written == FILES
    assert result.output.startswith(f"{len(FILES)} files in ")
    assert "schemas/thread-card.schema.json" in written


# --- every figure with its source -------------------------------------------------------------------

COTTON = ThreadCard("moss", "Moss", "cotton", 6, 25, "skein", 8.0, False, {})
AIDA_14 = sizes.cell_mm(14, 1)
HUNDRED_MM = 100 * stitches.stitch_mm(stitches.Stitch.FULL, AIDA_14)
USUAL = Assumptions()


def _framed() -> tuple[str, ...]:
    wide = Size(112 * sizes.cell_mm(28, 2), 10).grown(sizes.FRAMING_MARGIN_MM).width_mm
    return (f"203.2 mm become {wide:.1f} mm, {wide / 25.4:.0f} in",)


def _strand() -> tuple[str, ...]:
    eased = HUNDRED_MM * (1 + USUAL.ease.usual)
    needlefuls = -(-eased // (USUAL.needleful_mm - 2 * USUAL.tail_mm))
    whole = thread._with_tails([(HUNDRED_MM, 1)], 1 + USUAL.ease.usual, USUAL)
    assert whole == pytest.approx(eased + needlefuls * 2 * USUAL.tail_mm)
    return (
        f"measures {HUNDRED_MM / 1000:.3f} m",
        f"it is {eased / 1000:.3f} m and takes {needlefuls:.0f}\nneedlefuls, so {whole / 1000:.3f} m",
        f"{USUAL.ease.careful:.0%}".replace("%", " %"),
        f"{USUAL.ease.generous:.0%}".replace("%", " %"),
    )


def _skeins() -> tuple[str, ...]:
    bought = thread.units_to_buy(thread.Lengths(90, 95, 100), COTTON)
    return (f"holds {thread.strand_m_per_unit(COTTON):.0f} m of strand; for 100 m {bought} skeins",)


def _yarn() -> tuple[str, ...]:
    found = [read_yarn_number(text) for text in ("Ne 1", "Ne 50/2", "225 denier")]
    one, half, denier = (number.tex for number in found if number)
    return (
        f"tex is {one:.2f} divided",
        f"Ne 50/2 is {half:.2f} tex, and 225 denier are {denier:.0f} tex",
    )


def _cover() -> tuple[str, ...]:
    found = coverage.coverage((COTTON,), 2, AIDA_14)
    limits = f"Below {coverage.THIN_BELOW:.0%} cover is thin,\nabove {coverage.CROWDED_ABOVE:.0%} crowded"
    return f"cover {found.percent} %, which is {found.word}", limits.replace("%", " %")


def _bead_fit() -> tuple[str, ...]:
    cells = {count: sizes.cell_mm(count, 1) for count in (14, 18)}
    assert [bead_fit.bead_fit(2.2, cell) for cell in cells.values()] == ["fits", "crowds"]
    return tuple(f"{sqrt(2) * cell:.2f} mm" for cell in cells.values()) + (
        f"{bead_fit.LOOSE_BELOW}",
    )


def _difficulty() -> tuple[str, ...]:
    points = working_time.COLOURS.points(22), working_time.FRACTIONS.points(0.12)
    word = max(pair for pair in working_time.WORDS if pair[0] <= sum(points))[1]
    assert points == (1, 2)
    return (f"with three points it is {word}",)


def _layers() -> tuple[str, ...]:
    card = Size(100, 80).grown(6)
    layers = card, card.grown(-1), Size(100, 80).grown(6 + 20), card.grown(mounting.SEAM_MM)
    return tuple(f"{layer.width_mm:.0f} × {layer.height_mm:.0f} mm" for layer in layers)


def _corners() -> tuple[str, ...]:
    cut = mounting.corner_cut(piece(fold_over_mm=20.0))
    return f"= {cut.clear_of_card_mm:.1f} mm", f"takes {cut.along_edge_mm:.1f} mm"


def _fit() -> tuple[str, ...]:
    on = piece(120.0, 100.0, border_mm=6.0)
    corded = piece(120.0, 100.0, border_mm=6.0, trim=Trim("round", 1.0, 20.0, 2.0))
    laid = (on, 100.0), (on, 104.0), (corded, 100.0)
    found = [fit.fit(Size(wide, 80), 1.0, under) for under, wide in laid]
    said = (
        "leaves {} on each side and {}",
        "leaves {} and is {}",
        "round it, which leaves {} and is {}",
    )
    return tuple(
        words.format(f"{one.reveal_left_mm:.0f} mm", one.verdict.value)
        for words, one in zip(said, found)
    )


def _magnets() -> tuple[str, ...]:
    carried = 1000 * magnets.THROUGH_CLOTH * magnets.AGAINST_SLIDING
    pairs, _ = magnets.pairs_for(450, Magnets(4, 10, 2, 15, 1000))
    return (f"carries {carried:.0f} g; for 450 g {pairs} are needed",)


def _paint() -> tuple[str, ...]:
    sage = Paint("sage", "#b0c8b3", "brush", 10, 1, 100)
    board = Part(
        "back", ((0, 0), (120, 0), (120, 120), (0, 120)), (0, 0), 6, 1, (Coating(sage, 2, "both"),)
    )
    (need,) = paint.paint_needs(piece(parts=(board,), paints=(sage,)))
    return (f"{need.volume_ml:.1f} ml,\nso {need.tins} tin",)


def _days() -> tuple[str, ...]:
    said = []
    for rule in ("second Sunday of May", "Easter", "June solstice"):
        read = read_rule(rule, lambda *_, **__: None)
        assert read
        said.append(calendar.day_of(read, 2027))
    assert said == [date(2027, 5, 9), date(2027, 3, 28), date(2027, 6, 21)]
    return "is the 9th, Easter is 28 March", "on 21 June"


def _apart(one: str, other: str) -> float:
    return colour.difference(colour.lab(one), colour.lab(other))


def _difference() -> tuple[str, ...]:
    apart = _apart("#a04030", "#9c4a2f")
    return (f"are {apart:.2f} apart, which is {colour.in_words(apart)}",)


def _on_the_cloth() -> tuple[str, ...]:
    beside = ("mmt",) * 5  # five of fourteen sides
    seen, unseen = ((*beside, below) for below in ("tt.", "t.."))
    assert unseen_on_white(*unseen) and not unseen_on_white(*seen)
    assert 2 * (2 + 5) == 14
    return ("2 × 5 stitches has 14 sides", "along 7 of them it shows, and with 6 it does not")


def _conversion() -> tuple[str, ...]:
    model = Colour("1", "ash", "#808080"), Colour("2", "fog", "#868686")
    card = Colour("a", "slate", "#848484"), Colour("b", "lead", "#707070")
    assert {one.target.number for one in matching.nearest_matches(model, card)} == {"a"}
    kept = matching.distinct_matches(model, card)
    assert [one.target.number for one in kept] == ["b", "a"]
    sums = (
        _apart("#808080", "#707070") + _apart("#868686", "#848484"),
        _apart("#808080", "#848484") + _apart("#868686", "#707070"),
    )
    return (f"{sums[0]:.2f} instead of {sums[1]:.2f}",)


def _beads() -> tuple[str, ...]:
    return (f"{beads_with_spares(84)} are counted: {-(-beads_with_spares(84) // 300)} packet",)


def _chart_on_pages() -> tuple[str, ...]:
    edition = EDITIONS["colour"]
    (one,) = chart_pages_of(sampler(56, 56), edition)
    several = chart_pages_of(sampler(60, 56), edition)
    left_for_stitches = one.cell_mm * (56 + 2 * ARROW_ROOM)
    return (
        f"smaller than {edition.least_cell_mm:g} mm, or {EDITIONS['large-print'].least_cell_mm:g} in",
        f"each {one.cell_mm:.2f} mm wide.",
        f"would be {left_for_stitches / (60 + 2 * ARROW_ROOM):.2f} mm wide",
        f"on {len(several)} pages and are {several[0].cell_mm:.2f} mm.",
    )


EXAMPLES = {
    "A stitch and a design": lambda: (
        f"a stitch of {sizes.cell_mm(28, 2):.3f} mm",
        f"are {112 * sizes.cell_mm(28, 2):.1f} mm wide,\n{inches(112 * sizes.cell_mm(28, 2))}",
    ),
    "Cloth for a framer": _framed,
    "Lengths that are cut": lambda: (
        f"as {cut_inches(311)} or {cut_centimetres(311)}",
        f"takes {cutting.as_cut(Size(311, 311)).width_mm:.0f} mm",
    ),
    "Pieces from a fat quarter": lambda: (
        f"gives {cutting.pieces_from(cutting.FAT_QUARTER, cutting.as_cut(Size(200, 150)))}.",
    ),
    "Thread in one stitch": lambda: (
        f"the side is {AIDA_14:.3f} mm, and a full cross takes {HUNDRED_MM / 100:.2f} mm",
        f"knot takes {stitches.KNOT_MM:.0f} mm, a bead {stitches.BEAD_MM:.0f} mm",
    ),
    "From the stitch to the strand": _strand,
    "Skeins to buy": _skeins,
    "Yarn numbers": _yarn,
    "Cover": _cover,
    "How many to buy": _beads,
    "Whether they fit": _bead_fit,
    "Working time": lambda: ("6,000 crosses take 60, 40 or 30 hours",)
    if [6000 / pace for pace in (Pace().slow, Pace().usual, Pace().quick)] == [60, 40, 30]
    else ("the pace has changed",),
    "Difficulty": _difficulty,
    "Card, wadding, cloth, backing": _layers,
    "Trim": lambda: (f"{mounting.trim_mm(Size(112, 92), Trim('gathered', 1.5, 20)):.0f} mm.",),
    "Folded corners": _corners,
    "Fit": _fit,
    "Weight and magnets": _magnets,
    "Paint": _paint,
    "Moving days": _days,
    "The swap calendar": lambda: (f"goes up on {(date(2027, 5, 9) - timedelta(7)).day} May",),
    "How many pages a chart takes": _chart_on_pages,
    "The difference of two colours": _difference,
    "What shows on the cloth": _on_the_cloth,
    "A conversion": _conversion,
    "What can be read": lambda: (f"at {colour.contrast('#767676', '#ffffff'):.2f}:1",),
}  # fmt: skip
SECTIONS = {
    part.partition("\n")[0]: part for part in SOURCES["figures.md"].decode().split("\n### ")[1:]
}


def test_every_figure_has_an_example_and_a_source():
    assert set(SECTIONS) == set(EXAMPLES)
    for title, text in SECTIONS.items():
        assert text.count("*Example:*") == text.count("*Source:*") == 1, title


@pytest.mark.parametrize("title", EXAMPLES)
def test_an_example_comes_out_when_it_is_reckoned(title):
    """The numbers are those of the program today."""
    text = " ".join(SECTIONS[title].split())
    for words in EXAMPLES[title]():
        assert " ".join(words.split()) in text
