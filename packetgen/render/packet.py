"""Fills the packet's templates: everything a stitcher holds in her hands, as one HTML document."""

from collections.abc import Mapping
from dataclasses import dataclass

from jinja2 import Environment

from packetgen.cautions import CAUTIONS
from packetgen.chart import drawing
from packetgen.chart.diagrams import diagram
from packetgen.chart.piece_drawing import piece_drawing
from packetgen.chart.symbols import assign, code_point
from packetgen.model import Pattern, Series
from packetgen.reckon.buying import buy_tables
from packetgen.reckon.figures import Figures
from packetgen.render.chart_pages import chart_layout, chart_pages, rows_on
from packetgen.render.faces import font_css
from packetgen.render.key import key_rows
from packetgen.render.pdf import CHART_ALT
from packetgen.render.templates import fill

# Stitches of the working notes in the order in which a stitcher meets them.
_DIAGRAMS: Mapping[str, str] = {
    "full": "Cross stitch: up at 1, down at 2, up at 3, down at 4. All upper legs lie the same way.",
    "half": "Half stitch, rising: only the leg from lower left to upper right.",
    "half back": "Half stitch, falling: only the leg from upper left to lower right.",
    "three-quarter": "Three-quarter stitch: one whole leg, and a short one to the middle of the cell.",
    "quarter": "Quarter stitch: one short leg from the corner to the middle of the cell.",
    "backstitch": "Backstitch: up one stitch ahead, back down where the last stitch ended.",
    "long": "Long stitch: one straight stitch from end to end, laid without pulling.",
    "knot": "French knot: wind the thread twice round the needle, go down beside where you came up.",
    "bead": "Bead: sewn on with a half stitch, every bead leaning the same way.",
}


@dataclass(frozen=True)
class PacketSource:
    """What the PDF engine is given: the document and the files it names."""

    html: str
    assets: Mapping[str, bytes]


def symbols_of(figures: Figures) -> dict[str, str]:
    """Key mark → the character of its symbol in the symbol face."""
    marks = tuple(line.mark for line in figures.pattern.key)
    stitches = {work.line.mark: work.total_stitches for work in figures.works}
    return {mark: code_point(name) for mark, name in assign(marks, stitches, {}).items()}


def packet(series: Series, figures: Figures, cover_jpeg: bytes, env: Environment) -> PacketSource:
    """The packet of one pattern. `cover_jpeg` is the stitched picture of the cover."""
    pattern = figures.pattern
    look = drawing.look_of(pattern, symbols_of(figures))
    pages, assets = chart_pages(pattern, look)
    rows = key_rows(figures, look)
    model = figures.cloths[0]
    stitches_used = _stitches_used(pattern)
    assets["cover.jpg"] = cover_jpeg
    assets["overview.svg"] = drawing.overview(pattern, chart_layout(pattern), look).encode()
    assets["piece.svg"] = piece_drawing(series.finish, model.fit, model.finished).encode()
    for kind in stitches_used:
        assets[_diagram_name(kind)] = diagram(kind).encode()
    html = fill(
        env,
        "packet/packet.html",
        series=series,
        pattern=pattern,
        figures=figures,
        model=model,
        finish=series.finish,
        revision=pattern.revisions[-1],
        revision_number=len(pattern.revisions),
        licence_line=series.licence.partition(".")[0] + ".",
        colours=len(
            {c.number for line in pattern.key for c in line.threads[pattern.thread_sets[0].id]}
        ),
        rows=rows,
        buy=buy_tables(figures),
        chart=[(page, rows_on(page, rows)) for page in pages],
        chart_alt=CHART_ALT,
        diagrams=[(_diagram_name(kind), _DIAGRAMS[kind]) for kind in stitches_used],
        cautions=[CAUTIONS[name] for name in series.finish.cautions],
        font_css=font_css("asset:"),
    )
    return PacketSource(html, assets)


def _diagram_name(kind: str) -> str:
    return f"stitch-{kind.replace(' ', '-')}.svg"


def _stitches_used(pattern: Pattern) -> tuple[str, ...]:
    """Only the stitches that this chart has, in the order of `_DIAGRAMS`."""
    used = {f.stitch.value for f in pattern.fractions}
    worked = {mark for row in pattern.grid.rows for mark in row}
    used |= {line.stitch.value for line in pattern.key if line.mark in worked}
    used |= {"long" if line.long else "backstitch" for line in pattern.lines}
    used |= {"knot"} if pattern.knots else set()
    used |= {"bead"} if pattern.beads else set()
    return tuple(kind for kind in _DIAGRAMS if kind in used)
