"""Fills the template of the shaped parts of a finishing piece: a document of its own, to print and saw by."""

from collections.abc import Iterator

from jinja2 import Environment

from packetgen.cautions import CAUTIONS
from packetgen.chart.editions import COLOUR
from packetgen.chart.part_templates import PartTemplate, part_templates
from packetgen.chart.piece_drawing import piece_drawing
from packetgen.model import FinishingPiece, Series
from packetgen.nouns import listed
from packetgen.reckon.sawing import Alike, any_shaped, to_saw
from packetgen.reckon.thread import in_words
from packetgen.render.faces import series_font_files
from packetgen.render.full_size_pages import MOST_PAGES, Found, on_pages
from packetgen.render.look_style import packet_style
from packetgen.render.packet import PacketSource
from packetgen.render.templates import fill

_PARTS = "packet/parts.html"
_CAUTIONS = ("blades", "dust")  # of sawing; what else the work needs is on the page of the piece


def parts_stem(series: Series) -> str:
    """With what the names of its files begin."""
    return f"{series.id}-parts"


def parts_source(series: Series, env: Environment) -> PacketSource | None:
    """The templates of the series' piece at full size; None where every part is a rectangle."""
    piece = series.finish
    if not any_shaped(piece):
        return None
    pages = on_pages(_found(piece))
    html = fill(
        env,
        _PARTS,
        series=series,
        finish=piece,
        licence_line=series.licence.partition(".")[0] + ".",
        font_css=packet_style(series.look),
        to_saw=to_saw(piece),
        shaped=True,
        templates_follow=True,
        most_pages=in_words(MOST_PAGES),
        full_size=pages,
        cautions=[CAUTIONS[name] for name in _CAUTIONS],
    )
    assets = {
        **pages.assets,
        **series_font_files(series.look),
        "piece.svg": piece_drawing(piece).encode(),
    }
    return PacketSource(_PARTS, html, assets, {}, COLOUR, series.release.date(), {})


def _found(piece: FinishingPiece) -> Iterator[Found]:
    templates = part_templates(piece)
    sheets = sum(len(one.parts) > 1 for one in templates)
    for number, one in enumerate(templates, 1):
        alone = len(one.parts) == 1
        numbered = f" {number}" if sheets > 1 else ""
        what = one.parts[0][1].names[0] if alone else f"shaped parts{numbered}"
        yield f"parts-{number}", f"Template: {what}", _words(one), _alt(one), one.template


def _words(one: PartTemplate) -> tuple[str, ...]:
    cut = (
        "Seen from the front. Cut the paper along the line, draw round it on the board, and saw. How thick the board "
        "is stands in the list on the first page."
    )
    if len(one.parts) > 1:
        named = (f"{number}: {listed(part.names)}{_pieces(part)}" for number, part in one.parts)
        return cut, f"{'; '.join(named)}."
    ((_, alone),) = one.parts
    return (cut, f"{listed(alone.names)}{_pieces(alone)}.") if alone.pieces > 1 else (cut,)


def _pieces(part: Alike) -> str:
    return f", {part.pieces} pieces" if part.pieces > 1 else ""


def _alt(one: PartTemplate) -> str:
    return f"Outlines at full size: {listed(tuple(name for _, part in one.parts for name in part.names))}"
