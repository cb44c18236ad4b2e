"""The files of a build: made, or taken over from the last one."""

from collections.abc import Callable, Iterable
from functools import cache

from packetgen.model import Series
from packetgen.nouns import counted
from packetgen.pipeline.bench import bench
from packetgen.pipeline.jobs import environment_of, put
from packetgen.pipeline.kept_on_disk import KeptOnDisk
from packetgen.pipeline.order import Order, Told
from packetgen.pipeline.packets import colour_papers
from packetgen.pipeline.plans import SCHEMA, Plan, paper_digest
from packetgen.pipeline.proofs import Reckoned
from packetgen.pipeline.public import list_files, series_files
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

    def all_files(self) -> tuple[dict[str, SeriesRecord], Outputs]:
        """Make the series that were read and take over those at rest; all that there is now.

        Raises NotMade, OSError, WorkerLost.
        """
        from packetgen.render.pdf import EngineComplaint
        from packetgen.render.templates import TemplateFault

        outputs = self._taken_over(self._plan.at_rest())
        records = {name: self._plan.last.series[name] for name in self._plan.resting}
        outputs |= self._patterns()
        try:
            self._add_public(records, outputs)
        except (EngineComplaint, TemplateFault) as error:
            raise NotMade((error,)) from error
        return records, outputs

    def drawn(self, outputs: Outputs) -> dict[str, str]:
        """By digest, every picture that `keep` was asked for, in this build or, of a series at rest, in an
        earlier one: a path among `outputs`."""
        of_contents = {one.sha256: path for path, one in sorted(outputs.items(), reverse=True)}
        of_rest = {
            name: path
            for name, path in self._plan.last.drawn.items()
            if path in outputs and outputs[path].series in self._plan.resting
        }
        return of_rest | {
            name: of_contents[sha256]
            for name, sha256 in self._keep.asked_for().items()
            if sha256 in of_contents
        }

    def _patterns(self) -> Outputs:
        """Packets, ledgers and pictures that the last build has not. Raises NotMade."""
        to_do = self._plan.to_do(self._keep.has)
        packets, pictures = (
            sum(bool(getattr(job, what)) for job in to_do) for what in ("packet", "pictures")
        )
        workers = self._order.workers if to_do else 0
        what = f"{counted(packets, 'packet')}, pictures of {counted(pictures, 'pattern')}"
        self._ended(f"to be made: {what}")
        self._told.expect(len(to_do) + len(self._plan.checked.reckoned))
        outputs: Outputs = {}
        faults: dict[str, Exception] = {}
        with bench(workers) as at:
            for job, done in at.all_done(to_do, self._keep, self._staging):
                made = "packet" if job.packet else "pictures"
                self._told.step(f"{job.figures.pattern.title}: {made}")
                outputs |= done.outputs
                if done.fault:  # one template spoils every packet alike
                    faults.setdefault(str(done.fault), done.fault)
        if to_do:
            workers = min(workers, len(to_do))
            side = f", {workers} side by side" if workers > 1 else ""
            self._ended(f"drawn and set: {what}{side}")
        if faults:
            raise NotMade(tuple(faults.values()))
        return outputs

    def _add_public(self, records: dict[str, SeriesRecord], outputs: Outputs) -> None:
        """The pages of every series that was read, and what stands above them. Raises EngineComplaint,
        TemplateFault."""
        for each in self._plan.checked.reckoned:
            name = each.series.id
            outputs |= self._taken_over(self._plan.packets_left(name, outputs))
            pages = self._public(self._plan.stands[name], outputs)
            outputs |= pages
            records[name] = self._record_of(each)
            self._told.step(f"{each.series.title}: pages")
            self._ended(f"pages of {each.series.title}: {counted(len(pages), 'file')}")
        outputs[SCHEMA] = put(self._staging, SCHEMA, schema_file(), "")
        if self._plan.fills_list:
            env = environment_of(self._order.own_templates)
            for path, data in list_files(*self._plan.above(), env).items():
                outputs[path] = put(self._staging, path, data, "")

    def _taken_over(self, paths: Iterable[str]) -> Outputs:
        """Files of the last build."""
        outputs = {path: self._plan.kept[path] for path in paths}
        for path in outputs:
            self._staging.keep(path)
        return outputs

    def _public(self, stands: Standing, made: Outputs) -> Outputs:
        """Site and share of one series, with the pictures that are there by now."""
        env = environment_of(self._order.own_templates)

        def packet(series: Series, figures: Figures) -> dict[str, bytes]:
            """What a pattern gives away: the packet that is sold where that tells of nothing to come."""
            seen, sold, recipe = self._plan.given_away(series, figures)
            if all(path in made and made[path].recipe == recipe for path in sold.values()):
                return {name: self._staging.read(path) for name, path in sold.items()}
            set_now = cache(lambda: colour_papers(seen, figures, env))

            def one(name: str) -> bytes:
                return self._keep(paper_digest(recipe, name), lambda: set_now()[name])

            return {name: one(name) for name in sold}

        files = series_files(stands, env, self._keep, packet, self._plan.several)
        return {
            path: put(self._staging, path, data, stands.series.id) for path, data in files.items()
        }

    def _record_of(self, each: Reckoned) -> SeriesRecord:
        series, stands = each.series, self._plan.stands[each.series.id]
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
