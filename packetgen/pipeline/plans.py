"""What of a build must be made, and what the last one has already. Decides, and makes nothing."""

from collections.abc import Callable, Iterable
from dataclasses import replace
from itertools import chain
from typing import TYPE_CHECKING

from packetgen.digest import Digests, digest
from packetgen.model import Listed, Series
from packetgen.pipeline.jobs import PatternJob
from packetgen.pipeline.order import Order
from packetgen.pipeline.packets import cover_path, paper_names
from packetgen.pipeline.proofs import Proof, Reckoned
from packetgen.pipeline.seen import Seen, as_packets_see
from packetgen.pipeline.survey import Survey
from packetgen.reckon.figures import Figures
from packetgen.reckon.standing import Standing, standing
from packetgen.record import Output, Record
from packetgen.render.ledger_schema import FILE_NAME

if TYPE_CHECKING:
    from packetgen.render.packet import PacketSource

SCHEMA = f"ledger/{FILE_NAME}"

# Whether a picture is there, by the digest of what it is drawn from.
Has = Callable[[str], bool]


class Plan:
    """Of the series that were read, and of those at rest."""

    def __init__(self, order: Order, found: Survey, checked: Proof) -> None:
        self._order, self.checked, self.resting = order, checked, found.resting
        self.last: Record = found.last
        self._program = found.program
        self._ids = sorted({each.series.id for each in checked.reckoned} | self.resting)
        self.several = len(self._ids) > 1
        # The page above several series has the look of the first, and rests with it.
        self.fills_list = self.several and self._ids[0] not in self.resting
        self.lost_of = {
            found.last.outputs[path].recipe: path for path in sorted(found.lost, reverse=True)
        }
        # Of a packet that is no longer whole everything is made again.
        self.kept = {
            path: one
            for path, one in found.last.outputs.items()
            if path not in found.lost and (not one.recipe or one.recipe not in self.lost_of)
        }
        self._recipes = {one.recipe for one in self.kept.values()}
        self.stands = {
            each.series.id: standing(each.series, each.figures, order.as_of)
            for each in checked.reckoned
        }
        wanted = order.choose(checked) if order.choose else None
        self.jobs = {
            each.series.id: self._jobs(each, self.stands[each.series.id], wanted)
            for each in checked.reckoned
        }

    def pictures(self) -> dict[str, tuple[str, str]]:
        """By digest, where the last build has a picture or a paper, and its SHA-256."""
        return {
            name: (path, self.kept[path].sha256)
            for name, path in self.last.drawn.items()
            if path in self.kept
        }

    def covers(self) -> list[tuple[str, str]]:
        """Digest of each cover's picture, and where that stands in a build that has made it."""
        from packetgen.render.pictures import cover_name

        return [
            (cover_name(job.figures), cover_path(job.series, job.figures.pattern))
            for job in chain(*self.jobs.values())
        ]

    def at_rest(self) -> tuple[str, ...]:
        """Paths of the files of series that were not read, and of what stands above them all."""
        list_rests = self.several and not self.fills_list
        return tuple(
            path
            for path, one in self.kept.items()
            if one.series in self.resting or (list_rests and not one.series and path != SCHEMA)
        )

    def to_do(self, has: Has) -> list[PatternJob]:
        """Every job without what the last build has."""
        jobs = (self._left_to_do(job, has) for job in chain(*self.jobs.values()))
        return [job for job in jobs if job]

    def packets_left(self, series_id: str, made: Iterable[str] = ()) -> tuple[str, ...]:
        """Packets, their ledgers and covers of the series in the last build that need not, or may not, be
        made anew; without those that are `made` all the same."""
        by_id = {job.figures.pattern.id: job for job in self.jobs[series_id]}
        tops, made = ("packets", "ledger", ".kept"), set(made)
        folders = tuple(f"{top}/{series_id}/" for top in tops)

        def stays(path: str, one: Output) -> bool:
            job = by_id.get(pattern_of(path, by_id))
            return job is not None and (not job.packet or one.recipe == job.recipe)

        return tuple(
            path
            for path, one in self.kept.items()
            if path.startswith(folders) and path not in made and stays(path, one)
        )

    def behind(self, series_id: str) -> bool:
        """Whether packets are not of the present files, since others were asked for."""
        jobs = self.jobs[series_id]
        return any(not job.packet and job.recipe not in self._recipes for job in jobs)

    def given_away(self, series: Series, figures: Figures) -> tuple[Seen, dict[str, str], str]:
        """How the packet on a pattern's page is made: from what of the `series` as it stands; by file name
        the path of the one that is sold, which serves where it has the same recipe; and that recipe."""
        seen = as_packets_see(series, (figures,))[figures.pattern.id]
        sold = {name: f"packets/{series.id}/{name}" for name in paper_names(figures.pattern.id)}
        return seen, sold, self._recipe(seen, Digests())

    def of_parts(self, source: "PacketSource") -> str:
        """A name for all that the templates of a finishing piece's parts are made from."""
        return digest("parts", self._program, source)

    def above(self) -> tuple[Series, tuple[Listed, ...]]:
        """For the page above several series that is filled: the first of them, and what it says of each."""
        listed = tuple(
            Listed.of(self.stands[name].series)
            if name in self.stands
            else _as_recorded(name, self.last)
            for name in self._ids
        )
        return self.stands[self._ids[0]].series, listed

    def _jobs(
        self, each: Reckoned, stands: Standing, wanted: frozenset[str] | None
    ) -> tuple[PatternJob, ...]:
        """A job a pattern: its packet, where that is wanted, and its pictures."""
        teased = {of.pattern.id for of in stands.teased}
        out = {of.pattern.id for of in stands.figures}
        seen, digests = as_packets_see(each.series, each.figures), Digests()
        return tuple(
            PatternJob(
                series=of.series,
                figures=of.figures,
                packet=wanted is None or name in wanted,
                pictures="out" if name in out else "part" if name in teased else "",
                editions=self._order.editions,
                recipe=self._recipe(of, digests),
                own_templates=self._order.own_templates,
            )
            for name, of in seen.items()
        )

    def _recipe(self, seen: Seen, digests: Digests) -> str:
        """A name for all that a packet is made from."""
        editions = self._order.editions
        return digests.digest("packet", self._program, seen, editions or (), editions is None)

    def _left_to_do(self, job: PatternJob, has: Has) -> PatternJob | None:
        packet = job.packet and job.recipe not in self._recipes
        pictures = "" if _has_pictures(job, has) else job.pictures
        return replace(job, packet=packet, pictures=pictures) if packet or pictures else None


def with_first_read(found: Survey, checked: Proof) -> Survey:
    """The survey, in which the first series does not rest where the page above them all, which has its
    look, says other things of those that were read than before."""
    ids = {each.series.id for each in checked.reckoned} | found.resting
    first = min(ids, default="")
    if first not in found.resting or all(
        Listed.of(each.series) == _as_recorded(each.series.id, found.last)
        for each in checked.reckoned
    ):
        return found
    return replace(found, resting=found.resting - {first})


def _as_recorded(name: str, last: Record) -> Listed:
    one = last.series[name]
    return Listed(name, one.title, one.tagline, one.address)


def _has_pictures(job: PatternJob, has: Has) -> bool:
    from packetgen.render.blank_picture import blank_picture
    from packetgen.render.pictures import pattern_pictures

    def only_known(name: str, make: Callable[[], bytes]) -> bytes:
        if not has(name):
            raise LookupError(name)
        return blank_picture(name)

    try:
        if job.pictures:
            pattern_pictures(job.series, job.figures, job.pictures == "out", only_known)
    except LookupError:
        return False
    return True


def pattern_of(path: str, ids: Iterable[str]) -> str:
    """Which of the patterns a file of a packet belongs to, by its name; '' for none."""
    name = path.rpartition("/")[2]
    owners = [one for one in ids if name.startswith((f"{one}-", f"{one}."))]
    return max(owners, key=len, default="")


def paper_digest(recipe: str, name: str) -> str:
    """A name for one paper of what is set for the site alone."""
    return digest(recipe, name)
