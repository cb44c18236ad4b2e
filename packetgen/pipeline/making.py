"""The files of a build: made, or taken over from the last one."""

from collections.abc import Callable, Iterable
from dataclasses import replace
from functools import cache
from itertools import chain

from packetgen.digest import digest
from packetgen.model import Series
from packetgen.pipeline.jobs import (
    PatternJob,
    as_packet_sees,
    bench,
    environment_of,
    packet_recipe,
    put,
)
from packetgen.pipeline.kept_on_disk import KeptOnDisk
from packetgen.pipeline.order import Order, Told
from packetgen.pipeline.packets import colour_papers, paper_names
from packetgen.pipeline.proofs import Proof, Reckoned
from packetgen.pipeline.public import Listed, list_files, series_files
from packetgen.reckon.figures import Figures
from packetgen.reckon.standing import Standing, standing
from packetgen.record import Output, Record, SeriesRecord
from packetgen.render.ledger_schema import FILE_NAME, schema_file
from packetgen.write import Staging

Outputs = dict[str, Output]


class NotMade(Exception):
    """Something could not be made, as `faults` say: TemplateFault, EngineComplaint."""

    def __init__(self, faults: tuple[Exception, ...]) -> None:
        super().__init__("; ".join(map(str, faults)))
        self.faults = faults


class Making:
    """One build at work. `program` names all that every packet is made with; `lost` holds files of the
    last build that are not there any more."""

    def __init__(
        self,
        order: Order,
        told: Told,
        last: Record,
        lost: frozenset[str],
        program: str,
        staging: Staging,
    ) -> None:
        self._order, self._told, self._program, self._staging = order, told, program, staging
        broken = {last.outputs[path].recipe for path in lost}
        self._last = {
            path: one
            for path, one in last.outputs.items()
            if path not in lost and (not one.recipe or one.recipe not in broken)
        }
        self._records, self._drawn = last.series, last.drawn
        self._recipes = {one.recipe for one in self._last.values()}
        pictures = {
            name: (path, self._last[path].sha256)
            for name, path in last.drawn.items()
            if path in self._last
        }
        self._keep = KeptOnDisk(staging.last, pictures, staging.scratch)

    def all_of(
        self, checked: Proof, resting: frozenset[str]
    ) -> tuple[dict[str, SeriesRecord], Outputs]:
        """Make the series that were read and take over those at rest; all that there is now.

        Raises NotMade, OSError.
        """
        several = len(checked.reckoned) + len(resting) > 1
        wanted = self._order.choose(checked) if self._order.choose else None
        outputs = self._taken_over(
            path for path, one in self._last.items() if one.series in resting
        )
        records = {name: self._records[name] for name in resting}
        stands = {
            each.series.id: standing(each.series, each.figures, self._order.as_of)
            for each in checked.reckoned
        }
        jobs = {
            each.series.id: self._jobs(each, stands[each.series.id], wanted)
            for each in checked.reckoned
        }
        to_do = [job for job in map(self._left_to_do, chain(*jobs.values())) if job]
        self._told.stage(f"{len(to_do)} patterns to draw and set")
        self._told.expect(len(to_do) + len(checked.reckoned))
        faults: dict[str, Exception] = {}
        with bench(min(self._order.workers, len(to_do))) as at:
            for job, result in at.all_done(to_do):
                made = "packet" if job.packet else "pictures"
                self._told.step(f"{job.figures.pattern.title}: {made}")
                if isinstance(result, Exception):
                    faults.setdefault(str(result), result)  # one template spoils every packet alike
                else:
                    outputs |= result
        if faults:
            raise NotMade(tuple(faults.values()))
        from packetgen.render.pdf import EngineComplaint
        from packetgen.render.templates import TemplateFault

        try:
            self._add_public(checked, stands, jobs, records, outputs, several)
        except (EngineComplaint, TemplateFault) as error:
            raise NotMade((error,)) from error
        return records, outputs

    def _add_public(
        self,
        checked: Proof,
        stands: dict[str, Standing],
        jobs: dict[str, tuple[PatternJob, ...]],
        records: dict[str, SeriesRecord],
        outputs: Outputs,
        several: bool,
    ) -> None:
        """The pages of every series that was read, and what stands above them. Raises EngineComplaint,
        TemplateFault."""
        for each in checked.reckoned:
            name = each.series.id
            outputs |= self._taken_over(self._packets_left(each, jobs[name], outputs))
            outputs |= self._public(stands[name], several, outputs)
            behind = any(not j.packet and j.recipe not in self._recipes for j in jobs[name])
            records[name] = _series_record(each, stands[name], self._order, behind)
            self._told.step(f"{each.series.title}: pages")
        schema = f"ledger/{FILE_NAME}"
        outputs[schema] = put(self._staging, schema, schema_file(), "")
        if several:
            outputs |= self._list_of(records, stands.values())

    def drawn(self, outputs: Outputs, resting: frozenset[str]) -> dict[str, str]:
        """By digest, every picture that `keep` was asked for, in this build or, of a series at `resting`,
        in an earlier one: a path among `outputs`."""
        of_contents = {one.sha256: path for path, one in sorted(outputs.items(), reverse=True)}
        of_rest = {
            name: path
            for name, path in self._drawn.items()
            if path in outputs and outputs[path].series in resting
        }
        return of_rest | {
            name: of_contents[sha256]
            for name, sha256 in self._keep.asked_for().items()
            if sha256 in of_contents
        }

    def _taken_over(self, paths: Iterable[str]) -> Outputs:
        """Files of the last build."""
        outputs = {path: self._last[path] for path in paths}
        for path in outputs:
            self._staging.keep(path)
        return outputs

    def _jobs(
        self, each: Reckoned, stands: Standing, wanted: frozenset[str] | None
    ) -> tuple[PatternJob, ...]:
        """A job a pattern: its packet, where that is wanted, and its pictures."""
        teased = {of.pattern.id for of in stands.teased}
        out = {of.pattern.id for of in stands.figures}
        return tuple(
            PatternJob(
                series=as_packet_sees(each.series, of.pattern),
                figures=of,
                packet=wanted is None or of.pattern.id in wanted,
                pictures="out"
                if of.pattern.id in out
                else "part"
                if of.pattern.id in teased
                else "",
                editions=self._order.editions,
                program=self._program,
                own_templates=self._order.own_templates,
                keep=self._keep,
                staging=self._staging,
            )
            for of in each.figures
        )

    def _left_to_do(self, job: PatternJob) -> PatternJob | None:
        """The job without what the last build has; None where nothing is left."""
        packet = job.packet and job.recipe not in self._recipes
        pictures = "" if self._has_pictures(job) else job.pictures
        return replace(job, packet=packet, pictures=pictures) if packet or pictures else None

    def _has_pictures(self, job: PatternJob) -> bool:
        from packetgen.render.pictures import pattern_pictures

        def only_known(name: str, make: Callable[[], bytes]) -> bytes:
            if not self._keep.has(name):
                raise LookupError(name)
            return self._keep(name, make)

        try:
            if job.pictures:
                pattern_pictures(job.series, job.figures, job.pictures == "out", only_known)
        except LookupError:
            return False
        return True

    def _list_of(self, records: dict[str, SeriesRecord], stands: Iterable[Standing]) -> Outputs:
        """What stands above several series; the first of them is always among those that were read."""
        read = {one.series.id: one.series for one in stands}
        listed = tuple(
            read.get(name) or Listed(name, one.title, one.tagline, one.address)
            for name, one in sorted(records.items())
        )
        files = list_files(listed, environment_of(self._order.own_templates))
        return {path: put(self._staging, path, data, "") for path, data in files.items()}

    def _packets_left(
        self, each: Reckoned, jobs: tuple[PatternJob, ...], made: Outputs
    ) -> Iterable[str]:
        """Packets and ledgers of the series in the last build that need not, or may not, be made anew."""
        by_id = {job.figures.pattern.id: job for job in jobs}
        folders = (f"packets/{each.series.id}/", f"ledger/{each.series.id}/")
        for path, one in self._last.items():
            if path in made or not path.startswith(folders):
                continue
            job = by_id.get(pattern_of(path, by_id))
            if job and (not job.packet or one.recipe == job.recipe):
                yield path

    def _public(self, stands: Standing, several: bool, made: Outputs) -> Outputs:
        """Site and share of one series, with the pictures that are there by now."""
        env = environment_of(self._order.own_templates)

        def packet(series: Series, figures: Figures) -> dict[str, bytes]:
            """What a pattern gives away: the packet that is sold where that tells of nothing to come."""
            seen = as_packet_sees(series, figures.pattern)
            recipe = packet_recipe(self._program, seen, figures, self._order.editions)
            names = paper_names(figures.pattern)
            sold = {name: f"packets/{series.id}/{name}" for name in names}
            if all(path in made and made[path].recipe == recipe for path in sold.values()):
                return {name: self._staging.read(path) for name, path in sold.items()}
            set_now = cache(lambda: colour_papers(seen, figures, env))
            return {
                name: self._keep(digest(recipe, name), lambda name=name: set_now()[name])
                for name in names
            }

        files = series_files(stands, env, self._keep, packet, several)
        return {
            path: put(self._staging, path, data, stands.series.id) for path, data in files.items()
        }


def pattern_of(path: str, ids: Iterable[str]) -> str:
    """Which of the patterns a file of a packet belongs to, by its name; '' for none."""
    name = path.rpartition("/")[2]
    owners = [one for one in ids if name.startswith((f"{one}-", f"{one}."))]
    return max(owners, key=len, default="")


def _series_record(each: Reckoned, stands: Standing, order: Order, behind: bool) -> SeriesRecord:
    series, since, until = each.series, stands.since, stands.until
    return SeriesRecord(
        title=series.title,
        tagline=series.tagline,
        address=series.address or "",
        patterns=tuple(of.pattern.id for of in each.figures),
        zone=series.release.tzinfo.key,
        behind=behind,
        shows_all=order.as_of is None,
        stands_from=since.isoformat() if since else "",
        stands_until=until.isoformat() if until else "",
    )
