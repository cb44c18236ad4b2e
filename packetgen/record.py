"""What a build wrote down of itself: its files, and what each was made from.

It stands as manifest.json in the build folder, so that anybody can check the files against it, and the
next build knows what need not be made again. One of another version is as good as none. It holds nothing
of the machine or of the hour, nor of builds before: what the disk said of the inputs, and how patterns were stitched
when their revisions were first built, stands beside it, hidden.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from json.encoder import encode_basestring_ascii
from zoneinfo import ZoneInfo

from packetgen.load.inputs import Seen
from packetgen.reckon.moments import AsOf, moment_of

MANIFEST, SIGNS, ISSUED = "manifest.json", ".signs.json", ".issued.json"
_FORM = 1  # of this file; raised whenever its meaning changes
_AS_JSON = json.JSONEncoder(check_circular=False).encode  # nothing in a record holds itself
_TEXT = encode_basestring_ascii  # the same for a text, and much sooner


@dataclass(frozen=True)
class Output:
    """A file of the build. `recipe` is a digest of all that a packet was made from; '' for anything public.
    `series` is '' for what stands above them all."""

    sha256: str
    size_bytes: int
    series: str = ""
    recipe: str = ""


@dataclass(frozen=True)
class SeriesRecord:
    """What is kept of a series: enough to name it on the page above several, and to leave it alone when
    nothing of it has changed."""

    title: str
    tagline: str
    address: str  # of its site; '' where nobody has said yet
    patterns: tuple[str, ...]  # ids
    zone: str  # of its release
    behind: bool = (
        False  # whether packets in it are not of its present files, since others were asked for
    )
    shows_all: bool = False  # whatever is not out yet too
    stands_from: str = ""  # ISO moment since which its site has been as it is; '' for ever
    stands_until: str = ""  # ISO moment from which its site is another one; '' for never

    def still_stands(self, as_of: AsOf) -> bool:
        """Whether its site would be the same at another moment."""
        if as_of is None or self.shows_all:
            return as_of is None and self.shows_all
        moment = moment_of(as_of, ZoneInfo(self.zone))
        since, until = self.stands_from, self.stands_until
        begun = not since or datetime.fromisoformat(since) <= moment
        return begun and (not until or moment < datetime.fromisoformat(until))


@dataclass(frozen=True)
class Issued:
    """Of a pattern that is out: how it was stitched when its revision was first built, and how it is now, as digests."""

    title: str
    revision: int
    place: str  # of the revision's day, as it is printed
    first: str
    now: str
    ahead: bool = False  # made for a day that was not there yet: nobody has had it for certain


@dataclass(frozen=True)
class Record:
    """`inputs` holds every file of the content, the templates and the program by its path."""

    made_with: str  # digest of the program, its libraries and the options
    advice: tuple[str, ...] = ()  # lines of advice, to be said again
    inputs: Mapping[str, Seen] = field(default_factory=dict)
    series: Mapping[str, SeriesRecord] = field(default_factory=dict)
    outputs: Mapping[str, Output] = field(default_factory=dict)
    drawn: Mapping[str, str] = field(
        default_factory=dict
    )  # digest of a picture → an output that is it
    issued: Mapping[str, Issued] = field(default_factory=dict)  # by the path of its ledger


def unrevised(issued: Mapping[str, Issued]) -> tuple[Issued, ...]:
    """Those that need a revision and have none."""
    return tuple(one for _, one in sorted(issued.items()) if one.first != one.now)


def as_json(record: Record) -> bytes:
    """The record as the text of its file: sorted, a line a file, so that two can be compared."""
    lines = ["{", f'"form": {_FORM},', f'"made_with": {json.dumps(record.made_with)},']
    lines.append(f'"advice": {json.dumps(record.advice)},')
    for name in ("inputs", "series", "outputs", "drawn"):
        entries = sorted(getattr(record, name).items())
        lines.append(f'"{name}": {{')
        lines += [f"{_TEXT(key)}: {_entry(value)}," for key, value in entries]
        if entries:
            lines[-1] = lines[-1].removesuffix(",")
        lines.append("}" if name == "drawn" else "},")
    return "\n".join([*lines, "}", ""]).encode()


def signs_as_json(record: Record) -> bytes:
    """What the disk said of each input, as the text of its file."""
    signs = {path: seen.sign for path, seen in sorted(record.inputs.items()) if seen.sign}
    return json.dumps(signs, indent=0).encode()


def issued_as_json(record: Record) -> bytes:
    """How patterns were stitched when their revisions were first built, as the text of its file."""
    return json.dumps({path: vars(one) for path, one in record.issued.items()}, indent=0).encode()


def _entry(value: "Seen | SeriesRecord | Output | str") -> str:
    if isinstance(value, Output):  # of which there are tens of thousands
        name, series, recipe = map(_TEXT, (value.sha256, value.series, value.recipe))
        return (
            f'{{"sha256": {name}, "size_bytes": {value.size_bytes}, '
            f'"series": {series}, "recipe": {recipe}}}'
        )
    if isinstance(value, Seen):
        return _TEXT(value.sha256)
    return _TEXT(value) if isinstance(value, str) else _AS_JSON(vars(value))


def from_json(data: bytes, signs_data: bytes = b"{}", issued_data: bytes = b"{}") -> Record | None:
    """The record in its files; None where it is another version's, or no record at all."""
    try:
        read, signs, issued = map(json.loads, (data, signs_data, issued_data))
        if read["form"] != _FORM:
            return None
        return Record(
            read["made_with"],
            tuple(read["advice"]),
            {key: Seen(sha256, signs.get(key, "")) for key, sha256 in read["inputs"].items()},
            {
                key: SeriesRecord(**(one | {"patterns": tuple(one["patterns"])}))
                for key, one in read["series"].items()
            },
            {key: Output(**one) for key, one in read["outputs"].items()},
            dict(read["drawn"]),
            {key: Issued(**one) for key, one in issued.items()},
        )
    except (ValueError, KeyError, TypeError, AttributeError):
        return None
