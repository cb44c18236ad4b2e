"""What anybody may see: build/site and build/share. render, without the disk."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from packetgen.digest import Keep, afresh
from packetgen.model import Listed, Series
from packetgen.pipeline.packets import under
from packetgen.pipeline.proofs import Proof
from packetgen.reckon.figures import Figures
from packetgen.reckon.standing import AsOf, Standing, standing

if TYPE_CHECKING:
    from packetgen.render.templates import Environment


@dataclass(frozen=True)
class SetPapers:
    """Sets what a site gives away on paper, by file name: the packet of a pattern for a series as it stands, and the
    templates of the shaped parts of its finishing piece."""

    packet: Callable[[Series, Figures], Mapping[str, bytes]]
    parts: Callable[[Series], Mapping[str, bytes]]


def public_files(
    checked: Proof,
    env: "Environment",
    as_of: AsOf = None,
    keep: Keep = afresh,
    set_papers: SetPapers | None = None,
) -> dict[str, bytes]:
    """All of build/site and build/share as they stand `as_of`, by path in the build folder.

    `env` is the templates' environment. Pictures are asked of `keep`, and the packets of patterns that
    give theirs away, and the templates of parts, of `set_papers`; without it the pages say that a build will add them. Raises
    TemplateFault, and EngineComplaint where packets are set.
    """
    files: dict[str, bytes] = {}
    standings = tuple(standing(each.series, each.figures, as_of) for each in checked.reckoned)
    several = len(standings) > 1
    for stands in standings:
        files |= series_files(stands, env, keep, set_papers, several)
    if several:
        listed = tuple(Listed.of(stands.series) for stands in standings)
        files |= list_files(standings[0].series, listed, env)
    return files


def series_files(
    stands: Standing, env: "Environment", keep: Keep, set_papers: SetPapers | None, several: bool
) -> dict[str, bytes]:
    """The public files of one series; `several` series have a folder each. Raises as `public_files` does."""
    from packetgen.render.pictures import site_pictures
    from packetgen.render.share import share_files
    from packetgen.render.site import site_files

    name = stands.series.id
    pictures = site_pictures(stands, keep)
    packets = _packets_given(stands, set_papers) if set_papers else {}
    parts = set_papers.parts(stands.series) if set_papers else {}
    site = site_files(stands, pictures, env, packets, parts)
    shared = share_files(stands, pictures, env)
    return under(f"site/{name}" if several else "site", site) | under(f"share/{name}", shared)


def list_files(first: Series, listed: tuple[Listed, ...], env: "Environment") -> dict[str, bytes]:
    """What stands above several series, in the look of the first of those `listed`. Raises TemplateFault."""
    from packetgen.render.site import series_list_files

    return under("site", series_list_files(first, listed, env))


def _packets_given(stands: Standing, set_papers: SetPapers) -> dict[str, Mapping[str, bytes]]:
    """The packets that patterns which are out give away, by pattern id."""
    return {
        figure.pattern.id: set_papers.packet(stands.series, figure)
        for figure in stands.figures
        if "packet" in figure.pattern.given_away
    }
