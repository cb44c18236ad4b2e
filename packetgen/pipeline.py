"""The line that every build runs: load → model → reckon → chart → render → write, each stage a call."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path

from packetgen.chart.vision_check import complain_of_likeness
from packetgen.diagnostics import Problems
from packetgen.load import load_content
from packetgen.load.symbols_file import SYMBOLS_FILE
from packetgen.model import Pattern, Series, ThreadCard
from packetgen.reckon.bead_fit import complain_of_beads
from packetgen.reckon.conversions import complain_of_conversions
from packetgen.reckon.coverage import complain_of_coverage
from packetgen.reckon.figures import Figures, complain
from packetgen.reckon.isolated import complain_of_isolated
from packetgen.reckon.matching import with_matches
from packetgen.reckon.series_checks import complain_of_series
from packetgen.reckon.series_magnets import complain_of_magnets, series_figures


@dataclass(frozen=True)
class Reckoned:
    """A series with the figures of its patterns, in the same order."""

    series: Series
    figures: tuple[Figures, ...]


@dataclass(frozen=True)
class Proof:
    """What checking found. `reckoned` is empty when the content could not be read."""

    reckoned: tuple[Reckoned, ...]
    problems: Problems
    thread_cards: Mapping[str, ThreadCard] = field(default_factory=dict)  # by id, used or not

    @property
    def sound(self) -> bool:
        return not self.problems.errors


def proof(content_folder: Path) -> Proof:
    """Load and reckon everything; report every problem; write nothing."""
    content, problems = load_content(content_folder)
    if content is None:
        return Proof((), problems)
    reckoned = tuple(_reckon(_matched(series, problems)) for series in content.series)
    for each in reckoned:
        complain(each.figures, each.series, problems)
        complain_of_magnets(each.figures, each.series, problems)
        complain_of_series(each.series, problems)
        for figure in each.figures:
            counts = {work.line.mark: work.total_stitches for work in figure.works}
            complain_of_likeness(figure.pattern, counts, problems)
            complain_of_coverage(figure.pattern, figure.works, problems)
            complain_of_beads(figure.pattern, problems)
            complain_of_isolated(figure.pattern, figure.isolated, problems)
            complain_of_conversions(figure.pattern, problems)
    return Proof(reckoned, problems, content.thread_cards)


def _matched(series: Series, problems: Problems) -> Series:
    patterns = tuple(with_matches(pattern, problems) for pattern in series.patterns)
    return replace(series, patterns=patterns)


def _reckon(series: Series) -> Reckoned:
    return Reckoned(series, series_figures(series))


def build(
    checked: Proof,
    build_folder: Path,
    own_templates: Path | None,
    wanted: frozenset[str] | None = None,
    editions: frozenset[str] | None = None,
    tell: Callable[[str], None] = lambda line: None,
) -> int:
    """Draw, set and write what `proof` found sound; return the number of files.

    `wanted` holds ids of patterns whose packets are made anew (all when None); the site is always made
    whole. `editions` replaces the patterns' own choice of editions. `tell` hears one line a step. Raises EngineComplaint, OSError.
    """
    # The engine and the picture library load only when something is really built.
    from packetgen.render.pictures import cover_jpeg, site_pictures
    from packetgen.render.site import series_list_files, site_files
    from packetgen.render.templates import environment
    from packetgen.write import swap_in

    env = environment(own_templates)
    files: dict[str, bytes] = {}
    for each in checked.reckoned:
        for figure in each.figures:
            pattern = figure.pattern
            if wanted is None or pattern.id in wanted:
                tell(f"{pattern.title}: packet")
                files |= packet_files(each.series, figure, cover_jpeg(figure), editions, env)
        tell(f"{each.series.title}: pictures and pages")
        pictures = site_pictures(each.series, each.figures)
        folder = "site" if len(checked.reckoned) == 1 else f"site/{each.series.id}"
        files |= _under(folder, site_files(each.series, each.figures, pictures, env))
        for pattern_id, share in pictures.shares.items():
            files[f"share/{each.series.id}/{pattern_id}.png"] = share
    if len(checked.reckoned) > 1:
        files |= _under("site", series_list_files(tuple(e.series for e in checked.reckoned), env))
    swap_in(build_folder, files, keep_others=wanted is not None)
    return len(files)


def packet_files(
    series: Series, figure: Figures, cover_jpeg: bytes, editions: frozenset[str] | None, env: object
) -> dict[str, bytes]:
    """Everything of one pattern that is not public, by its path in the build folder, and its listing.

    `editions` replaces the pattern's own choice.
    """
    from packetgen.chart.editions import COLOUR, EDITIONS
    from packetgen.chart.written import as_text, written
    from packetgen.render.ledger import ledger
    from packetgen.render.ledger_schema import FILE_NAME, schema_file
    from packetgen.render.listing import listing
    from packetgen.render.packet import booklet, packet, symbols_of
    from packetgen.render.written_page import written_source
    from packetgen.write import zipped

    pattern = figure.pattern
    wanted = frozenset(pattern.editions) if editions is None else editions
    sold = _papers(pattern, "", packet(series, figure, cover_jpeg, env))
    for edition in EDITIONS.values():
        if edition.id in wanted and edition is not COLOUR:
            sold |= _papers(pattern, f"-{edition.id}", booklet(series, figure, edition, env))
    if "written" in wanted:
        sold |= _papers(pattern, "-written", written_source(series, figure, env))
        sold[f"{pattern.id}-written.txt"] = as_text(written(pattern)).encode()
    files = _under(f"packets/{series.id}", sold | {f"{pattern.id}.zip": zipped(sold)})
    files[f"ledger/{series.id}/{pattern.id}.json"] = ledger(series, figure, symbols_of(figure))
    files[f"ledger/{FILE_NAME}"] = schema_file()
    files[f"share/{series.id}/{pattern.id}.txt"] = listing(series, figure, env)
    return files


def settle(checked: Proof, content_folder: Path, wanted: frozenset[str] | None = None) -> int:
    """Write down beside each pattern the chart symbols that it has now; return how many files changed.

    `wanted` holds ids of patterns (all when None). Raises OSError.
    """
    from packetgen.chart.assignment import shapes_for
    from packetgen.render.symbols_file import symbols_file
    from packetgen.write import replaced

    changed = 0
    for figure in (figure for each in checked.reckoned for figure in each.figures):
        pattern = figure.pattern
        if wanted is None or pattern.id in wanted:
            counts = {work.line.mark: work.total_stitches for work in figure.works}
            path = content_folder / pattern.place.path
            text = symbols_file(shapes_for(pattern, counts))
            changed += replaced(path.parent / SYMBOLS_FILE, text.encode())
    return changed


def _papers(pattern: Pattern, ending: str, source: object) -> dict[str, bytes]:
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


def _under(folder: str, files: Mapping[str, bytes]) -> dict[str, bytes]:
    return {f"{folder}/{path}": data for path, data in files.items()}
