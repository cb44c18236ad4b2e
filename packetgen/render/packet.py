"""Fills the packet's templates: everything a stitcher holds in her hands, as one HTML document."""

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

from jinja2 import Environment

from packetgen.cautions import CAUTIONS
from packetgen.chart.assignment import symbols_for
from packetgen.chart.diagrams import diagram
from packetgen.chart.drawing import knot_sample, line_sample, overview
from packetgen.chart.editions import COLOUR, Edition
from packetgen.chart.paint_timeline import paint_timeline
from packetgen.chart.piece_drawing import piece_drawing
from packetgen.chart.sheet import LINE_WIDTH, Manner, knot_dot, look_of, sheet, whole_tile
from packetgen.model import Pattern, Series, Stitch
from packetgen.model.extent import squares_at, worked_squares
from packetgen.nouns import listed
from packetgen.reckon.buying import buy_tables
from packetgen.reckon.cutting import FAT_QUARTER
from packetgen.reckon.figures import Figures
from packetgen.reckon.fit import TIGHT_MM
from packetgen.reckon.fit_table import fit_table
from packetgen.reckon.magnets import AGAINST_SLIDING, FEWEST, THROUGH_CLOTH
from packetgen.reckon.mounting import SEAM_MM, cloth_margin_mm, corner_cut, trim_corner_mm
from packetgen.reckon.needle import threads_used
from packetgen.reckon.precautions import precautions
from packetgen.reckon.sawing import any_shaped, to_saw
from packetgen.reckon.sizes import FRAMING_MARGIN_MM
from packetgen.reckon.swaps import swaps
from packetgen.reckon.thread import in_words
from packetgen.reckon.working_time import RULE_SAID, weights_said
from packetgen.render.address import in_full
from packetgen.render.character_map import FILE_NAME, character_csv
from packetgen.render.chart_pages import ChartPage, alternative, chart_pages
from packetgen.render.cover_room import picture_room_mm
from packetgen.render.covering import cover_rows
from packetgen.render.faces import series_font_files
from packetgen.render.full_size_pages import full_size
from packetgen.render.key import fits_a_page, key_rows, matched_notes
from packetgen.render.look_style import packet_style
from packetgen.render.magnet_table import magnet_table
from packetgen.render.other_finishes import other_finishes
from packetgen.render.page_key import page_lines
from packetgen.render.painting import painting
from packetgen.render.pdf_charts import CHART_ALT
from packetgen.render.people import sells_said, studio_said
from packetgen.render.room_left import (
    cloth_said,
    in_a_row,
    laid_on_panel,
    piece_stands_beside,
    piece_type_mm,
)
from packetgen.render.site_nav import PIECE_PAGE
from packetgen.render.site_year import before_its_day
from packetgen.render.templates import fill

# Stitches of the working notes in the order in which a stitcher meets them.
_DIAGRAMS: Mapping[str, str] = {
    "full": "Cross stitch: up at 1, down at 2, up at 3, down at 4. All upper legs lie the same way.",
    "half": "Half stitch, rising: only the leg from lower left to upper right.",
    "half back": "Half stitch, falling: only the leg from upper left to lower right.",
    "three-quarter": "Three-quarter stitch: a short leg to the middle of the cell, then the whole leg over it.",
    "two three-quarters": "Two three-quarter stitches in one cell: each its own short leg, their whole legs side by side.",
    "quarter": "Quarter stitch: one short leg from the corner to the middle of the cell.",
    "petite": "Petite: a whole small cross in one quarter of the cell.",
    "backstitch": "Backstitch: up one stitch ahead, back down where the last stitch ended.",
    "long": "Long stitch: one straight stitch from end to end, laid without pulling.",
    "daisy": "Lazy daisy: a loop from the base, held down at its tip by a small stitch.",
    "knot": "French knot: wind the thread twice round the needle, or as the notes say; go down beside where you came up.",
    "bead": "Bead: sewn on with a half stitch, every bead leaning the same way.",
}
_PACKET, _BOOKLET = "packet/packet.html", "packet/booklet.html"
_BLANK = b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"/>'


@dataclass(frozen=True)
class PacketSource:
    """What the PDF engine is given: the document, the files it names, and the charts to be painted."""

    template: str  # from which the document was filled
    html: str
    assets: Mapping[str, bytes]
    charts: Mapping[str, ChartPage]
    edition: Edition
    dated: date
    attached: Mapping[str, bytes]  # files that travel inside the document


def symbols_of(figures: Figures) -> dict[str, str]:
    """Key mark → the character of its symbol in the symbol face."""
    counts = {work.line.mark: work.total_stitches for work in figures.works}
    return symbols_for(figures.pattern, counts)


def packet(series: Series, figures: Figures, cover_jpeg: bytes, env: Environment) -> PacketSource:
    """The packet of one pattern. `cover_jpeg` is the stitched picture of the cover."""
    pattern = figures.pattern
    chart = _Chart(figures, COLOUR)
    model = figures.cloths[0]
    stitches_used = _stitches_used(pattern)
    beside = piece_stands_beside(series.finish, len(figures.cloths))
    assets = chart.assets | {
        "cover.jpg": cover_jpeg,
        "piece.svg": piece_drawing(
            series.finish,
            model.fit,
            model.finished,
            piece_type_mm(series.finish, beside),
        ).encode(),
        "paint-timeline.svg": paint_timeline(figures.coats).encode(),
    }
    if len(chart.pages) > 1:
        assets["overview.svg"] = _overview(chart).encode()
    views = {
        f"laid-{number}.svg": view
        for number, view in enumerate(laid_on_panel(figures, series.finish), 1)
    }
    assets |= {name: view.drawing.encode() for name, view in views.items()}
    templates = full_size(series, figures)
    assets |= templates.assets
    assets |= {_diagram_name(kind): diagram(kind).encode() for kind in stitches_used}
    model_set = pattern.thread_sets[0]
    threads = threads_used(pattern, model_set)
    html = fill(
        env,
        _PACKET,
        **about(series, pattern),
        **chart.facts,
        figures=figures,
        model=model,
        cover_picture_mm=picture_room_mm(series, figures),
        finish=series.finish,
        matched=matched_notes(pattern),
        key_whole=fits_a_page(chart.rows),
        colours=sum(card == model_set.card for card, _ in threads),
        further=sum(card != model_set.card for card, _ in threads),
        buy=buy_tables(figures),
        fit=fit_table(pattern, series),
        covers=cover_rows(pattern.thread_sets, figures.coverage),
        tight_mm=TIGHT_MM,
        studio=studio_said(pattern.designer, series.designers),
        sells_said=sells_said(pattern.designer),
        character_file=FILE_NAME,
        fat_quarter=FAT_QUARTER,
        framing_margin_mm=FRAMING_MARGIN_MM,
        finishing_margin_mm=cloth_margin_mm(series.finish),
        weights=weights_said(pattern, figures.works),
        difficulty_rule=RULE_SAID,
        diagrams=[(_diagram_name(kind), _DIAGRAMS[kind]) for kind in stitches_used],
        cautions=[CAUTIONS[name] for name in precautions(series.finish, bool(pattern.beads))],
        full_size=templates,
        magnet_table=magnet_table(figures, series.finish),
        without_magnets=listed(tuple(cloth_said(on.option) for on in figures.without_magnets)),
        bunched=listed(tuple(cloth_said(on.option) for on in figures.bunched)),
        corner=corner_cut(series.finish),
        seam_mm=SEAM_MM,
        trim_corner_mm=trim_corner_mm(series.finish.trim),
        fewest_magnets=in_words(FEWEST),
        through_cloth=THROUGH_CLOTH,
        against_sliding=AGAINST_SLIDING,
        swaps=swaps(series),
        laid=views,
        laid_in_row=in_a_row(len(views)),
        piece_beside=beside,
        to_saw=to_saw(series.finish),
        shaped=any_shaped(series.finish),
        piece_address=in_full(series.address, PIECE_PAGE),
        templates_follow=False,
        painting=painting(series.finish),
        other=other_finishes(figures),
        goes_up=before_its_day(series.goes_up_days),
    )
    return chart.source(_PACKET, html, assets | series_font_files(series.look))


def booklet(series: Series, figures: Figures, edition: Edition, env: Environment) -> PacketSource:
    """Key and chart alone, in another edition."""
    chart = _Chart(figures, edition)
    html = fill(
        env,
        _BOOKLET,
        **about(series, figures.pattern),
        **chart.facts,
        figures=figures,
        edition=edition,
    )
    return chart.source(_BOOKLET, html, chart.assets | series_font_files(series.look))


def about(series: Series, pattern: Pattern) -> dict[str, object]:
    """What every document of a pattern says of itself."""
    return {
        "series": series,
        "pattern": pattern,
        "revision": pattern.revisions[-1],
        "revision_number": len(pattern.revisions),
        "licence_line": series.licence.partition(".")[0] + ".",
        "font_css": packet_style(series.look),
    }


class _Chart:
    """The chart and key of a pattern in one edition, as the templates want them."""

    def __init__(self, figures: Figures, edition: Edition) -> None:
        self.edition = edition
        self.pattern = figures.pattern
        self.symbols = symbols_of(figures)
        self.look = look_of(figures.pattern, self.symbols, edition.manner)
        self.rows = key_rows(figures, self.look)
        told = page_lines(self.rows, figures.beads, self.look)
        self.pages = chart_pages(figures.pattern, self.look, told, edition)
        self.by_anchor = {page.anchor: page for page in self.pages}
        samples = {row.mark: f"line-{ord(row.mark):x}.svg" for row in self.rows if row.draws_lines}
        self.assets: dict[str, bytes] = {"blank.svg": _BLANK} | {
            name: line_sample(self.look.lines[mark], self.look.dashes[mark], LINE_WIDTH).encode()
            for mark, name in samples.items()
        }
        knots = {row.mark: f"knot-{ord(row.mark):x}.svg" for row in self.rows if row.knots}
        if self.look.coloured:
            self.assets |= {
                name: knot_sample(knot_dot((0.5, 0.5), mark, self.look)).encode()
                for mark, name in knots.items()
            }
        worked = worked_squares(self.pattern)
        self.facts: dict[str, object] = {
            "rows": self.rows,
            "blended": any(len(of.colours) > 1 for row in self.rows for of in row.threads),
            "knots_cover": any(
                not worked.isdisjoint(squares_at(knot.at)) for knot in self.pattern.knots
            ),
            "backstitched": any(not line.long for line in self.pattern.lines),
            "coloured": self.look.coloured,
            "conversions": edition is COLOUR and len(figures.pattern.thread_sets) > 1,
            "samples": {row.mark: samples.get(row.mark, "") for row in self.rows},
            "knots": knots,
            "chart": [(page, alternative(page)) for page in self.pages],
            "chart_alt": CHART_ALT,
        }

    def source(self, template: str, html: str, assets: Mapping[str, bytes]) -> PacketSource:
        characters = {FILE_NAME: character_csv(self.pattern, self.symbols)}
        dated = self.pattern.revisions[-1].on
        return PacketSource(template, html, assets, self.by_anchor, self.edition, dated, characters)


def _overview(chart: _Chart) -> str:
    whole = whole_tile(chart.pattern)
    look = look_of(chart.pattern, chart.symbols, Manner.PLAIN_COLOUR)
    return overview(sheet(chart.pattern, whole, look), [page.sheet.tile for page in chart.pages])


def _diagram_name(kind: str) -> str:
    return f"stitch-{kind.replace(' ', '-')}.svg"


def _stitches_used(pattern: Pattern) -> tuple[str, ...]:
    """Only the stitches that this chart has, in the order of `_DIAGRAMS`."""
    used = {f.stitch.value for f in pattern.fractions}
    cells = Counter(
        (f.column, f.row) for f in pattern.fractions if f.stitch is Stitch.THREE_QUARTER
    )
    used |= {"two three-quarters"} if max(cells.values(), default=0) > 1 else set()
    worked = {mark for row in pattern.grid.rows for mark in row}
    used |= {line.stitch.value for line in pattern.key if line.mark in worked}
    used |= {"long" if line.long else "backstitch" for line in pattern.lines}
    used |= {"daisy"} if pattern.daisies else set()
    used |= {"knot"} if pattern.knots else set()
    used |= {"bead"} if pattern.beads else set()
    return tuple(kind for kind in _DIAGRAMS if kind in used)
