"""The swap calendar as a file that calendar programs read: iCalendar, RFC 5545.

One event of a whole day for each time that a design goes up. It says what the site's page says, no more.
"""

from collections.abc import Iterator
from datetime import date, timedelta
from uuid import NAMESPACE_URL, uuid5

from packetgen.model import Series
from packetgen.reckon.calendar import in_words
from packetgen.reckon.swaps import Swap, Turn, swaps
from packetgen.render.site_year import pattern_page

CALENDAR_FILE = "calendar.ics"
_LONGEST_LINE = 75  # octets without the line end, RFC 5545 section 3.1


def calendar_file(series: Series) -> bytes:
    """The next turns of every design, in the order of days."""
    designs = swaps(series)
    events = [(turn, swap, _name(swap, designs)) for swap in designs for turn in swap.turns]
    events.sort(key=lambda one: one[0].day)
    issued = [pattern.revisions[-1].on for pattern in series.patterns]
    newest = max(issued, default=series.release.date())
    stamps = {pattern.id: pattern.revisions[-1].on for pattern in series.patterns}
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//packetgen//swap calendar//EN",
        "CALSCALE:GREGORIAN",
        f"NAME:{_text(series.title)}",  # RFC 7986
    ]
    for turn, swap, name in events:
        stamp = stamps.get(swap.pattern_id or "", newest)
        lines += _event(series, swap, turn, name, stamp)
    lines.append("END:VCALENDAR")
    return b"".join(_folded(line) + b"\r\n" for line in lines)


def _event(series: Series, swap: Swap, turn: Turn, name: str, stamp: date) -> Iterator[str]:
    occasion = swap.occasion.name
    yield "BEGIN:VEVENT"
    yield f"UID:{uuid5(NAMESPACE_URL, f'swap-calendar/{series.id}/{name}/{turn.year}')}"
    yield f"DTSTAMP:{_day(stamp)}T000000Z"
    yield f"DTSTART;VALUE=DATE:{_day(turn.up)}"
    yield f"DTEND;VALUE=DATE:{_day(turn.up + timedelta(days=1))}"  # the day after, which is not in it
    yield f"SUMMARY:{_text(f'Put up {swap.title}: {occasion}')}"
    yield "DESCRIPTION:" + _text(
        f"For {occasion}, {in_words(swap.occasion.rule, turn.day)}. {swap.title} by {swap.designer} hangs until {_said(turn.down)}."
    )
    if series.address and swap.pattern_id:
        yield f"URL:{series.address.rstrip('/')}/{pattern_page(swap.pattern_id)}"
    yield "TRANSP:TRANSPARENT"  # the day stays free for other things
    yield "END:VEVENT"


def _name(swap: Swap, designs: tuple[Swap, ...]) -> str:
    """What the identifiers of a design's events are made of, in every build the same, so that a newer file
    replaces the older one: its title, which it has already while it is still to come.
    """
    alike = [one for one in designs if one.title.casefold() == swap.title.casefold()]
    return f"{swap.title.casefold()}/{alike.index(swap) + 1}"


def _day(day: date) -> str:
    return day.isoformat().replace("-", "")


def _said(day: date) -> str:
    return f"{day.day} {day:%B %Y}"


def _text(words: str) -> str:
    """A value of the type TEXT: RFC 5545, section 3.3.11. Characters that no text may hold are left out."""
    one_kind = words.replace("\r\n", "\n").replace("\r", "\n")
    kept = "".join(
        letter for letter in one_kind if letter in "\n\t" or letter >= " " and letter != "\x7f"
    )
    for plain, escaped in (("\\", "\\\\"), (";", "\\;"), (",", "\\,"), ("\n", "\\n")):
        kept = kept.replace(plain, escaped)
    return kept


def _folded(line: str) -> bytes:
    """A line in pieces of 75 octets at most; each further piece begins with a space, and no character is cut."""
    pieces, piece = [], b""
    for letter in line:
        coded = letter.encode()
        if len(piece) + len(coded) > _LONGEST_LINE:
            pieces.append(piece)
            piece = b" "
        piece += coded
    return b"\r\n".join([*pieces, piece])
