"""What is sold of one pattern, and its ledger. chart → render, without the disk."""

from collections.abc import Mapping

from packetgen.model import Pattern, Series
from packetgen.reckon.figures import Figures


def packet_files(
    series: Series, figure: Figures, cover_jpeg: bytes, editions: frozenset[str] | None, env: object
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
    sold = papers(pattern, "", packet(series, figure, cover_jpeg, env))
    for edition in EDITIONS.values():
        if edition.id in wanted and edition is not COLOUR:
            sold |= papers(pattern, f"-{edition.id}", booklet(series, figure, edition, env))
    if "written" in wanted:
        sold |= papers(pattern, "-written", written_source(series, figure, env))
        sold[f"{pattern.id}-written.txt"] = as_text(written(pattern)).encode()
    files = under(f"packets/{series.id}", sold | {f"{pattern.id}.zip": zipped(sold)})
    files[f"ledger/{series.id}/{pattern.id}.json"] = ledger(series, figure, symbols_of(figure))
    return files


def paper_names(pattern: Pattern) -> tuple[str, ...]:
    """The files of a packet itself, one a paper."""
    from packetgen.render.pdf import PAPERS_MM

    return tuple(f"{pattern.id}-{paper}.pdf" for paper in PAPERS_MM)


def colour_papers(series: Series, figures: Figures, env: object) -> dict[str, bytes]:
    """The packet itself on each of its papers, by file name. Raises EngineComplaint, TemplateFault."""
    from packetgen.render.packet import packet
    from packetgen.render.pictures import cover_jpeg

    return papers(figures.pattern, "", packet(series, figures, cover_jpeg(figures), env))


def papers(pattern: Pattern, ending: str, source: object) -> dict[str, bytes]:
    """A document for each of its papers, by file name."""
    from packetgen.render.pdf import PAPERS_MM, documents

    edition = source.edition
    identifier = f"{pattern.id}{ending}/{len(pattern.revisions)}".encode()
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
    return {
        f"{pattern.id}{ending}{f'-{paper}' if paper else ''}.pdf": data
        for paper, data in made.items()
    }


def under(folder: str, files: Mapping[str, bytes]) -> dict[str, bytes]:
    """The same files by their paths one folder higher."""
    return {f"{folder}/{path}": data for path, data in files.items()}
