"""The files of a build: made, or taken over from the last one."""

from collections import Counter
from collections.abc import Callable, Iterable
from functools import cache

from packetgen.model import Series
from packetgen.nouns import counted
from packetgen.pipeline.bench import Done, bench
from packetgen.pipeline.jobs import PatternJob, environment_of, put
from packetgen.pipeline.kept_on_disk import KeptOnDisk
from packetgen.pipeline.order import Order, Told
from packetgen.pipeline.packets import colour_papers, paper_names, papers
from packetgen.pipeline.plans import SCHEMA, Plan, paper_digest
from packetgen.pipeline.public import SetPapers, list_files, series_files
from packetgen.reckon.figures import Figures
from packetgen.reckon.standing import Standing
from packetgen.record import Output, SeriesRecord
from packetgen.render.ledger_schema import schema_file
from packetgen.write import Staging

Outputs = dict[str, Output]


class NotMade(Exception):
    """Something could not be made, as `faults` say: TemplateFault, EngineComplaint."""

    def __init__(self, faults: tuple[Exception, ...]) -> None:
        super().__init__("; ".join(map(str, faults)))
        self.faults = faults


class Making:
    """One build at work. `ended` hears of each stage that is done."""

    def __init__(
        self,
        order: Order,
        plan: Plan,
        staging: Staging,
        told: Told,
        ended: Callable[[str], None],
    ) -> None:
        self._order, self._plan, self._staging = order, plan, staging
        self._told, self._ended = told, ended
        self._keep = KeptOnDisk(staging.last, plan.pictures(), staging.scratch)
        self._read = {each.series.id: each for each in plan.checked.reckoned}
        self._records = {name: plan.last.series[name] for name in plan.resting}
        self._outputs: Outputs = {}
        self._faults: dict[str, Exception] = {}  # by what they say: one template spoils many alike

    def all_files(self) -> tuple[dict[str, SeriesRecord], Outputs]:
        """Make the series that were read and take over those at rest; all that there is now.

        Raises NotMade, OSError, WorkerLost.
        """
        to_do = self._plan.to_do(self._keep.has)
        packets, pictures = (
            sum(bool(getattr(job, what)) for job in to_do) for what in ("packet", "pictures")
        )
        what = f"{counted(packets, 'packet')}, pictures of {counted(pictures, 'pattern')}"
        self._ended(f"to be made: {what}")
        self._told.expect(len(to_do) + len(self._read))
        workers = self._order.workers if to_do else 0
        with bench(workers) as at:
            at_work = at.all_done(to_do, self._keep, self._staging)
            # While others work on the patterns, this process does what need not wait for them.
            self._take_over(self._plan.at_rest())
            self._add_schema_and_list()
            awaited = Counter(job.series.id for job in to_do if _pages_need(job))
            for name in self._plan.stands:
                if not awaited[name]:
                    self._add_pages(name)
            for job, done in at_work:
                self._add(job, done)
                awaited[job.series.id] -= _pages_need(job)
                if _pages_need(job) and not awaited[job.series.id]:
                    self._add_pages(job.series.id)
        if to_do:
            workers = min(workers, len(to_do))
            side = f", {workers} side by side" if workers > 1 else ""
            self._ended(f"drawn and set: {what}{side}")
        if self._faults:
            raise NotMade(tuple(self._faults.values()))
        return self._records, self._outputs

    def drawn(self, outputs: Outputs) -> dict[str, str]:
        """By digest, every picture of this build or, of a series at rest, of an earlier one: the first of the
        `outputs` that are it."""
        asked_for = self._keep.asked_for()
        wanted, of_contents = set(asked_for.values()), dict[str, str]()
        for path, one in outputs.items():
            if one.sha256 in wanted:
                of_contents[one.sha256] = min(path, of_contents.get(one.sha256, path))
        found = {
            name: path
            for name, path in self._plan.last.drawn.items()
            if path in outputs and outputs[path].series in self._plan.resting
        }
        of_packets = [(name, path) for name, path in self._plan.covers() if path in outputs]
        covers = {name for name, _ in of_packets}  # are found where they are kept, and nowhere else
        of_pages = [
            (name, of_contents[sha256])
            for name, sha256 in asked_for.items()
            if sha256 in of_contents and name not in covers
        ]
        for name, path in (*of_pages, *of_packets):
            found[name] = min(path, found.get(name, path))
        return found

    def _add(self, job: PatternJob, done: Done) -> None:
        """What a job has made, or the fault that it met."""
        made = "packet set" if job.packet else "pictures drawn"
        self._told.step(f"{job.figures.pattern.title}: {made}")
        self._outputs |= done.outputs
        if done.fault:
            self._faults.setdefault(str(done.fault), done.fault)

    def _add_pages(self, name: str) -> None:
        """The public files of a series that was read, and its packets that are taken over. Where its
        patterns met a fault there would be no end of others."""
        from packetgen.render.pdf import EngineComplaint
        from packetgen.render.templates import TemplateFault

        if self._faults:
            return
        stands = self._plan.stands[name]
        self._take_over(self._plan.packets_left(name, self._outputs))
        try:
            pages = self._public(stands)
        except (EngineComplaint, TemplateFault) as error:
            self._faults.setdefault(str(error), error)
            return
        self._outputs |= pages
        self._records[name] = self._record_of(stands)
        self._told.step(f"{stands.series.title}: pages")
        self._ended(f"pages of {stands.series.title}: {counted(len(pages), 'file')}")

    def _add_schema_and_list(self) -> None:
        """What stands above all series."""
        from packetgen.render.templates import TemplateFault

        files = {SCHEMA: schema_file()}
        try:
            if self._plan.fills_list:
                env = environment_of(self._order.own_templates)
                files |= list_files(*self._plan.above(), env)
        except TemplateFault as error:
            self._faults[str(error)] = error
        self._outputs |= {path: put(self._staging, path, data, "") for path, data in files.items()}

    def _take_over(self, paths: Iterable[str]) -> None:
        """Files of the last build."""
        outputs = {path: self._plan.kept[path] for path in paths}
        for path in outputs:
            self._staging.keep(path)
        self._outputs |= outputs

    def _public(self, stands: Standing) -> Outputs:
        """Site and share of one series, with the pictures that are there by now."""
        from packetgen.render.part_pages import parts_source, parts_stem

        env, made = environment_of(self._order.own_templates), self._outputs

        def packet(series: Series, figures: Figures) -> dict[str, bytes]:
            """What a pattern gives away: the packet that is sold where that tells of nothing to come."""
            seen, sold, recipe = self._plan.given_away(series, figures)
            if all(path in made and made[path].recipe == recipe for path in sold.values()):
                return {name: self._staging.read(path) for name, path in sold.items()}
            set_now = cache(lambda: colour_papers(seen.series, seen.figures, env, self._keep))
            return self._kept(sold, recipe, set_now)

        def parts(series: Series) -> dict[str, bytes]:
            """The templates of the finishing piece's shaped parts; nothing where it has none."""
            source, stem = parts_source(series, env), parts_stem(series)
            if source is None:
                return {}
            set_now = cache(lambda: papers(stem, 1, source, env))
            return self._kept(paper_names(stem), self._plan.of_parts(source), set_now)

        files = series_files(stands, env, self._keep, SetPapers(packet, parts), self._plan.several)
        return {
            path: put(self._staging, path, data, stands.series.id) for path, data in files.items()
        }

    def _kept(
        self, names: Iterable[str], recipe: str, set_now: Callable[[], dict[str, bytes]]
    ) -> dict[str, bytes]:
        """Papers by name, set only where the last build has not the same."""

        def one(name: str) -> bytes:
            return self._keep(paper_digest(recipe, name), lambda: set_now()[name])

        return {name: one(name) for name in names}

    def _record_of(self, stands: Standing) -> SeriesRecord:
        each = self._read[stands.series.id]
        series = each.series
        zone = series.release.tzinfo
        since, until = stands.since, stands.until
        return SeriesRecord(
            title=series.title,
            tagline=series.tagline,
            address=series.address or "",
            patterns=tuple(of.pattern.id for of in each.figures),
            zone=getattr(zone, "key", ""),  # the loaders give only zones that have a name
            behind=self._plan.behind(series.id),
            shows_all=self._order.as_of is None,
            stands_from=since.isoformat() if since else "",
            stands_until=until.isoformat() if until else "",
        )


def _pages_need(job: PatternJob) -> bool:
    """Whether the pages of its series show what the job makes."""
    return bool(job.pictures) or "packet" in job.figures.pattern.given_away
