"""What is sold of one pattern, and its ledger. chart → render, without the disk."""

from collections.abc import Mapping
from typing import TYPE_CHECKING

from packetgen.digest import Keep
from packetgen.model import Pattern, Series
from packetgen.reckon.figures import Figures

if TYPE_CHECKING:
    from packetgen.render.packet import PacketSource
    from packetgen.render.templates import Environment


def packet_files(
    series: Series,
    figure: Figures,
    cover_jpeg: bytes,
    editions: frozenset[str] | None,
    env: "Environment",
) -> dict[str, bytes]:
    """Everything of one pattern that is not public, by its path in the build folder.

    `editions` replaces the pattern's own choice.
    """
    from packetgen.chart.editions import COLOUR, EDITIONS
    from packetgen.chart.written import as_text, written
    from packetgen.render.ledger import ledger
    from packetgen.render.packet import booklet, packet, symbols_of
    from packetgen.render.written_page import written_source
    from packetgen.write import zipped

    pattern = figure.pattern
    wanted = frozenset(pattern.editions) if editions is None else editions
    issue = len(pattern.revisions)
    sold = papers(pattern.id, issue, packet(series, figure, cover_jpeg, env), env)
    for edition in EDITIONS.values():
        if edition.id in wanted and edition is not COLOUR:
            stem = f"{pattern.id}-{edition.id}"
            sold |= papers(stem, issue, booklet(series, figure, edition, env), env)
    if "written" in wanted:
        sold |= papers(f"{pattern.id}-written", issue, written_source(series, figure, env), env)
        sold[f"{pattern.id}-written.txt"] = as_text(written(pattern)).encode()
    files = under(f"packets/{series.id}", sold | {f"{pattern.id}.zip": zipped(sold)})
    files[ledger_path(series.id, pattern.id)] = ledger(series, figure, symbols_of(figure))
    return files


def paper_names(stem: str) -> tuple[str, ...]:
    """The files of a document, one a paper: of a packet itself, whose stem is the pattern's id."""
    from packetgen.render.pdf import PAPERS_MM

    return tuple(f"{stem}-{paper}.pdf" for paper in PAPERS_MM)


def ledger_path(series_id: str, pattern_id: str) -> str:
    """Where the ledger of a pattern stands, in the build folder."""
    return f"ledger/{series_id}/{pattern_id}.json"


def cover_path(series: Series, pattern: Pattern) -> str:
    """Where the cover's picture is kept for the next time that the packet is set, in the build folder."""
    return f".kept/{series.id}/{pattern.id}.jpg"


def packet_paths(
    series: Series, pattern: Pattern, editions: frozenset[str] | None
) -> tuple[str, ...]:
    """Where everything stands that `packet_files` makes, in the build folder."""
    from packetgen.chart.editions import COLOUR, EDITIONS
    from packetgen.render.pdf import PAPERS_MM

    wanted = frozenset(pattern.editions) if editions is None else editions
    endings = [f"-{paper}.pdf" for paper in PAPERS_MM]
    for edition in EDITIONS.values():
        if edition.id in wanted and edition is not COLOUR:
            papers = [f"-{paper}" for paper in PAPERS_MM] if edition.on_paper else [""]
            endings += [f"-{edition.id}{paper}.pdf" for paper in papers]
    if "written" in wanted:
        endings += [f"-written-{paper}.pdf" for paper in PAPERS_MM]
        endings.append("-written.txt")
    sold = (f"packets/{series.id}/{pattern.id}{ending}" for ending in (*endings, ".zip"))
    return *sold, ledger_path(series.id, pattern.id)


def colour_papers(
    series: Series, figures: Figures, env: "Environment", keep: Keep
) -> dict[str, bytes]:
    """The packet itself on each of its papers, by file name. Raises EngineComplaint, TemplateFault."""
    from packetgen.render.packet import packet
    from packetgen.render.pictures import cover_jpeg

    pattern = figures.pattern
    source = packet(series, figures, cover_jpeg(figures, keep), env)
    return papers(pattern.id, len(pattern.revisions), source, env)


def papers(stem: str, issue: int, source: "PacketSource", env: "Environment") -> dict[str, bytes]:
    """A document for each of its papers, by file name, which begins with the stem. Raises EngineComplaint, in an
    author's words."""
    from packetgen.render.engine_words import sources, told
    from packetgen.render.pdf import PAPERS_MM, EngineComplaint, documents

    edition = source.edition
    identifier = f"{stem}/{issue}".encode()
    try:
        made = documents(
            source.html,
            source.assets,
            identifier,
            source.charts,
            edition.page_mm,
            PAPERS_MM if edition.on_paper else {"": edition.page_mm},
            source.attached,
            source.dated,
        )
    except EngineComplaint as complaint:
        templates = sources(env)
        raise EngineComplaint(
            *(told(said, source.html, source.template, templates) for said in complaint.args)
        ) from complaint
    return {f"{stem}{f'-{paper}' if paper else ''}.pdf": data for paper, data in made.items()}


def under(folder: str, files: Mapping[str, bytes]) -> dict[str, bytes]:
    """The same files by their paths one folder higher."""
    return {f"{folder}/{path}": data for path, data in files.items()}
