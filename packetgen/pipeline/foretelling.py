"""What a build would change, without making it: nothing is written, drawn or set.

Pages are filled in memory, so of them it is known whether they would come out as they are. Of a packet
that would be set and a picture that would be drawn it is not: the work alone could tell.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta
from enum import Enum
from functools import partial
from hashlib import sha256

from packetgen.edition_names import EDITION_NAMES
from packetgen.model import Series
from packetgen.pipeline.jobs import PatternJob, environment_of
from packetgen.pipeline.kept_on_disk import KeptOnDisk
from packetgen.pipeline.order import Order
from packetgen.pipeline.packets import cover_path, ledger_path, packet_paths, paper_names
from packetgen.pipeline.plans import SCHEMA, Plan, paper_digest, with_first_read
from packetgen.pipeline.proofs import Proof
from packetgen.pipeline.public import SetPapers, list_files, series_files
from packetgen.pipeline.reasons import ANOTHER_DAY, OTHER_EDITIONS, TAKEN_AWAY, because
from packetgen.pipeline.reissued import issued
from packetgen.pipeline.survey import Survey, survey
from packetgen.reckon.figures import Figures
from packetgen.record import Issued, Output, Record, unrevised
from packetgen.render.ledger_schema import schema_file

_HEIGHTS_PX = (
    11,
    13,
)  # of the blanks in two fillings: what is the same in both does not depend on them
_COMES_OR_GOES = ("new", "gone")
_PAPER = b"%PDF of "  # begins a blank in the place of a paper


class Kind(Enum):
    """What would become of a file; the value says it of several."""

    NEW = "new"
    MADE_ANEW = "made anew"  # with other contents, or put back
    MAY_CHANGE = "that may change"  # made anew, perhaps with the same contents
    GONE = "gone"


@dataclass(frozen=True)
class Days:
    """From the first to the last; None where there is no such end. One of both is there."""

    first: date | None
    last: date | None

    @property
    def one(self) -> date:
        """One of them, to be typed."""
        day = self.first or self.last
        assert day is not None
        return day


@dataclass(frozen=True)
class Foretold:
    """`lines` has (path, what would become of it) of every file that would not surely stay as it is."""

    lines: tuple[tuple[str, str], ...] = ()
    kinds: Mapping[str, Kind] = field(default_factory=dict)  # by path, of `lines`
    left: int = 0  # as they are
    packets: int = 0  # to be set
    pictures: int = 0  # to be drawn
    pages_of: int = 0  # series whose pages would be filled
    shown: Days | None = None  # those that give the site that is there; None where no one day does
    unrevised: tuple[Issued, ...] = ()  # stitched otherwise than their revision was
    of_another_day: bool = (
        False  # the site that is there stands otherwise at the time that is told of
    )
    for_the_day: frozenset[str] = frozenset()  # of `lines`, those that the day alone makes other

    @property
    def work(self) -> bool:
        """Whether a build would have anything to do."""
        return bool(self.packets or self.pictures or self.pages_of)


def foretold(order: Order, checked: Proof) -> Foretold:
    """What a build of this order would change in `order.build`; `checked` is the proof of all its content.

    Raises TemplateFault where a page of the site could not be filled.
    """
    found = survey(order)
    if found.nothing_to_do:
        out = () if order.ahead else unrevised(found.last.issued)
        return Foretold(left=len(found.last.outputs), unrevised=out)
    found = with_first_read(found, _read(found, checked))
    told = _Foretelling(order, found, _read(found, checked)).all()
    if not told.of_another_day:
        return told
    if told.shown is None:
        by_reason = (path for path, what in told.lines if what.endswith(f": {ANOTHER_DAY}"))
        return replace(told, for_the_day=frozenset(by_reason))
    on_its_day = dict(foretold(replace(order, as_of=told.shown.one), checked).lines)
    for_the_day = (
        path
        for path, what in told.lines
        if path not in on_its_day or (what in _COMES_OR_GOES and on_its_day[path] != what)
    )
    return replace(told, for_the_day=frozenset(for_the_day))


def _read(found: Survey, checked: Proof) -> Proof:
    """Of all the content what a build would read."""
    read = tuple(each for each in checked.reckoned if each.series.id not in found.resting)
    return Proof(read, checked.problems)


class _Foretelling:
    def __init__(self, order: Order, found: Survey, checked: Proof) -> None:
        self._order, self._found = order, found
        self._plan = Plan(order, found, checked)
        self._last = order.build.resolve()
        self._keep = KeptOnDisk(self._last, self._plan.pictures(), self._last / ".next" / "none")
        self._to_do = self._plan.to_do(self._keep.has)
        self._to_set = {path for job in self._to_do if job.packet for path in self._paths_of(job)}
        self._kept = set(self._plan.at_rest())
        for name in self._plan.jobs:
            self._kept.update(self._plan.packets_left(name, self._to_set))
        self._foretell_covers()
        self._of_photos = self._cut_photos()

    def all(self) -> Foretold:
        filled, blanks = self._filled(_HEIGHTS_PX[0])
        again = self._filled(_HEIGHTS_PX[1])[0] if blanks else filled
        before = self._found.last.outputs
        lines: list[tuple[str, str]] = []
        kinds: dict[str, Kind] = {}
        left = 0
        for path in sorted({*self._kept, *self._to_set, *filled, *before}):
            of_work = "" if path not in filled else _work_on(filled[path], again.get(path), blanks)
            if path in self._kept:
                left += 1
                continue
            if path not in filled and path not in self._to_set:
                kind, words = Kind.GONE, f"gone{self._not_asked_for(path)}"
            elif path not in before:
                kind, words = Kind.NEW, "new"
            elif of_work or path in self._to_set:
                what = f"{of_work or 'set'} anew, may change"
                kind, words = Kind.MAY_CHANGE, f"{what}: {self._why(path)}"
            elif path in self._found.lost or not _is(filled[path], before[path]):
                kind, words = Kind.MADE_ANEW, f"made anew: {self._why(path)}"
            else:
                left += 1
                continue
            lines.append((path, words))
            kinds[path] = kind
        return Foretold(
            tuple(lines),
            kinds,
            left,
            packets=sum(job.packet for job in self._to_do),
            pictures=sum(not blank.startswith(_PAPER) for blank in blanks),
            pages_of=len(self._plan.stands),
            shown=_days_of(self._found.last),
            unrevised=self._unrevised(),
            of_another_day=not all(
                one.still_stands(self._order.as_of) for one in self._found.last.series.values()
            ),
        )

    def _paths_of(self, job: PatternJob) -> tuple[str, ...]:
        editions = None if job.editions is None else frozenset(job.editions)
        return packet_paths(job.series, job.figures.pattern, editions)

    def _foretell_covers(self) -> None:
        """A cover is drawn anew only when its design has changed."""
        from packetgen.render.pictures import cover_name

        for job in self._to_do:
            path = cover_path(job.series, job.figures.pattern)
            if job.packet:
                known = path in self._plan.kept and self._keep.has(cover_name(job.figures))
                (self._kept if known else self._to_set).add(path)

    def _unrevised(self) -> tuple[Issued, ...]:
        if self._order.ahead:
            return ()
        from packetgen.render.ledger import ledger
        from packetgen.render.packet import symbols_of

        to_set = {
            ledger_path(job.series.id, job.figures.pattern.id): job
            for job in self._to_do
            if job.packet
        }

        def ledger_at(path: str) -> bytes | None:
            if path in to_set:
                job = to_set[path]
                return ledger(job.series, job.figures, symbols_of(job.figures))
            there = self._last / path
            return there.read_bytes() if there.is_file() else None

        last, resting = self._found.last.issued, self._found.resting
        all_stand = self._plan.stands.values()
        return unrevised(issued(all_stand, last, resting, to_set.__contains__, ledger_at))

    def _why(self, path: str) -> str:
        one = self._found.last.outputs[path]
        if path in self._found.lost:
            return TAKEN_AWAY
        if one.recipe in self._plan.lost_of:
            return f"{self._plan.lost_of[one.recipe]} was taken away or changed"
        return because(path, one.series, self._found.inputs_changed)

    def _not_asked_for(self, path: str) -> str:
        """Of a packet that goes although its pattern stays, why."""
        editions = frozenset(EDITION_NAMES)
        of_editions = (
            packet_paths(stands.series, figures.pattern, editions)
            for stands in self._plan.stands.values()
            for figures in stands.figures
        )
        return f": {OTHER_EDITIONS}" if any(path in paths for paths in of_editions) else ""

    def _cut_photos(self) -> dict[str, bytes]:
        """The pictures that are cut from an author's photo, since in how many widths they come depends on it;
        by digest."""
        from packetgen.render.pictures import pattern_pictures

        cut: dict[str, bytes] = {}
        for job in self._to_do:
            if job.pictures and job.figures.pattern.photo:
                out = job.pictures == "out"
                pattern_pictures(job.series, job.figures, out, partial(_kept_in, cut))
        return cut

    def _filled(self, height_px: int) -> tuple[dict[str, bytes], set[bytes]]:
        """All that is public, with blanks of that height where something would have to be drawn or set; and
        those blanks. Raises TemplateFault."""
        from packetgen.render.blank_picture import blank_picture
        from packetgen.render.part_pages import parts_source, parts_stem

        env, blanks = environment_of(self._order.own_templates), set()

        def keep(name: str, make: Callable[[], bytes]) -> bytes:
            data = self._of_photos.get(name) or self._keep.found(name)
            if data is None:
                data = blank_picture(name, height_px)
                blanks.add(data)
            return data

        def packet(series: Series, figures: Figures) -> dict[str, bytes]:
            _, sold, recipe = self._plan.given_away(series, figures)
            kept = self._plan.kept
            if all(path in self._kept and kept[path].recipe == recipe for path in sold.values()):
                return {name: (self._last / path).read_bytes() for name, path in sold.items()}
            return {name: paper(name, recipe) for name in sold}

        def parts(series: Series) -> dict[str, bytes]:
            source = parts_source(series, env)
            if source is None:
                return {}
            recipe = self._plan.of_parts(source)
            return {name: paper(name, recipe) for name in paper_names(parts_stem(series))}

        def paper(name: str, recipe: str) -> bytes:
            data = self._keep.found(paper_digest(recipe, name))
            if data is None:
                data = _PAPER + name.encode() + bytes(height_px * 100_000)
                blanks.add(data)
            return data

        files = {SCHEMA: schema_file()}
        for stands in self._plan.stands.values():
            files |= series_files(stands, env, keep, SetPapers(packet, parts), self._plan.several)
        if self._plan.fills_list:
            files |= list_files(*self._plan.above(), env)
        return files, blanks


def _days_of(last: Record) -> Days | None:
    """The days on which all series stand as they do in that build."""
    shown = tuple(last.series.values())
    begun = [datetime.fromisoformat(one.stands_from).date() for one in shown if one.stands_from]
    ended = [datetime.fromisoformat(one.stands_until).date() for one in shown if one.stands_until]
    first = max(begun, default=None)
    end = min(ended, default=None)  # a bare day is taken at its very end
    days = Days(first, end and end - timedelta(days=1))
    if not (begun or ended) or not all(one.still_stands(days.one) for one in shown):
        return None
    return days


def _work_on(data: bytes, again: bytes | None, blanks: set[bytes]) -> str:
    """What must be done before it is known what a public file would hold; '' where it is known."""
    if data in blanks:
        return "set" if data.startswith(_PAPER) else "drawn"
    return "" if data == again else "filled"


def _is(data: bytes, output: Output) -> bool:
    return sha256(data).hexdigest() == output.sha256


def _kept_in(made: dict[str, bytes], name: str, make: Callable[[], bytes]) -> bytes:
    return made.setdefault(name, make())
