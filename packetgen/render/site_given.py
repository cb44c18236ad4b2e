"""What a pattern that costs nothing gives on its page: its chart, its chart in words, its packet."""

from collections.abc import Mapping
from dataclasses import dataclass

from packetgen.chart.written import as_text, written
from packetgen.reckon.figures import Figures
from packetgen.render.open_chart import OpenChart, open_chart

# The end of a packet's file name → what its paper is called.
_PAPERS = {"letter": "Letter", "a4": "A4"}
_WRITTEN = "chart-in-words.txt"


@dataclass(frozen=True)
class Paper:
    """A packet to take along, ready to print."""

    name: str  # 'A4'
    file: str  # beside the page
    size: str  # '1.2 MB', '48 kB'


@dataclass(frozen=True)
class Given:
    chart: OpenChart | None
    written: str  # the chart in words: a file beside the page; '' where there is no chart
    packet: bool
    papers: tuple[Paper, ...]  # none before a build has set the packet


def given(figures: Figures, packet: Mapping[str, bytes]) -> Given | None:
    """What the pattern gives away; None for one that gives nothing. `packet` holds its files by name."""
    away = figures.pattern.given_away
    if not away:
        return None
    chart = "chart" in away
    return Given(
        chart=open_chart(figures) if chart else None,
        written=_WRITTEN if chart else "",
        packet="packet" in away,
        papers=papers_said(packet),
    )


def papers_said(files: Mapping[str, bytes]) -> tuple[Paper, ...]:
    """Of a document on each of its papers, by file name."""
    return tuple(Paper(_PAPERS[_paper(name)], name, _size(data)) for name, data in files.items())


def _size(data: bytes) -> str:
    return f"{len(data) / 1e6:.1f} MB" if len(data) >= 1e5 else f"{len(data) / 1e3:.0f} kB"


def given_files(figures: Figures, packet: Mapping[str, bytes]) -> dict[str, bytes]:
    """The files that stand beside the page of a pattern that is given away, by their path in the site."""
    pattern = figures.pattern
    files = dict(packet) if "packet" in pattern.given_away else {}
    if "chart" in pattern.given_away:
        files[_WRITTEN] = as_text(written(pattern)).encode()
    return {f"{pattern.id}/{name}": data for name, data in files.items()}


def _paper(file_name: str) -> str:
    """'glass-cloche-a4.pdf' → 'a4'."""
    return file_name.removesuffix(".pdf").rpartition("-")[2]
