"""The notices of a series: news, open calls, prize draws."""

import re
from datetime import date, datetime, timedelta

from packetgen.diagnostics import Problems
from packetgen.load.prose_days import DAYS
from packetgen.load.shape_series import NOTICE
from packetgen.load.spoken_days import month_number
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Notice

# What nobody can have before a release.
_STITCHED = re.compile(
    r"\b(?:finished|stitched|completed)\s+(?!(?:for|since|with|before|school|anything)\b)[a-z]+",
    re.IGNORECASE,
)
# Before the day on which it closes.
_CLOSES = re.compile(
    r"\b(?:by|until|till|before|(?:closes?|ends?)(?:\s+on)?|at\s+the\s+end\s+of|the\s+day\s+after)\s+(?:the\s+)?\Z",
    re.IGNORECASE,
)
_BEHIND = re.compile(r"\bafter\s+(?:the\s+)?\Z", re.IGNORECASE)
# 'On 1 May, the day after it closes'.
_DAY_AFTER = re.compile(
    r",?\s+the\s+day\s+after\s+(?:it|the\s+draw|the\s+call)\s+(?:closes|ends)\b", re.IGNORECASE
)


def read_notices(series: Filled, problems: Problems) -> tuple[Notice, ...]:
    """The notices that can be read. What is wrong goes to `problems`."""
    notices = [given.value for given in series.each("notices") if given.value is not None]
    for notice in notices:
        _check(notice, problems)
        _check_against_release(notice, series["release"], problems)
        _check_told_close(notice, problems)
    return tuple(_notice(notice) for notice in notices if notice.whole)


def _check(notice: Filled, problems: Problems) -> None:
    opens, closes = notice["opens"], notice["closes"]
    if opens and closes and closes <= opens:
        problems.add(notice.place_of("closes"), "closes-early", closes=closes, opens=opens)
    if not notice.whole:
        return
    examples = {field.name: field.example for field in NOTICE.fields}
    for needs in NOTICE.needs:
        if notice[needs.name] != needs.option:
            continue
        for name in needs.names:
            if not notice[name]:
                problems.add(
                    notice.place,
                    "name-missing",
                    name=said(name),
                    what=f"a {needs.option}",
                    example=f"{name}: {examples[name]}",
                    how="add a line",
                )


def _check_against_release(notice: Filled, release: datetime | None, problems: Problems) -> None:
    """Advice on a draw among those who have stitched a design that opens before any can be bought."""
    opens = notice["opens"]
    stitched = _STITCHED.search(notice["who"] or "")
    if release and opens and stitched and opens < release.date():
        facts = {"said": said(stitched[0]), "opens": opens, "released": release.date()}
        problems.add(notice.place_of("opens"), "opens-early", **facts)


def _check_told_close(notice: Filled, problems: Problems) -> None:
    """Advice on the first 'send it by 31 May' of a notice that closes on another day, or on any day but its
    first that is the one on which it closes with two figures that changed places, as 20 and 02, or that day of another month,
    after which something is told."""
    closes, text = notice["closes"], notice.given.get("text")
    if not closes or text is None or not text.value:
        return
    for form in DAYS:
        for found in form.finditer(text.value):
            told = (
                month_number(found["month"]),
                int(found["day"]),
                int(found["year"] or closes.year),
            )
            after = _DAY_AFTER.match(text.value, found.end())
            due = closes + timedelta(days=1) if after and closes < date.max else closes
            own = due.month, due.day, due.year
            as_last = _CLOSES.search(text.value, 0, found.start()) is not None
            exchanged = f"{told[1]:02}" == f"{closes.day:02}"[::-1] and told[::2] == own[::2]
            # 'Drawn after 30 November' of one that closes on 30 October.
            exchanged |= told[1] == closes.day and bool(
                _BEHIND.search(text.value, 0, found.start())
            )
            opens = notice["opens"]
            on_opening = opens and told == (opens.month, opens.day, opens.year)
            if told != own and (as_last or after or (exchanged and not on_opening)):
                words = found[0] + (after[0] if after else "")
                facts = {"said": said(words) + " as its last day" * as_last}
                facts |= {"closes": str(closes)}
                problems.add(text.letter(found.start()), "closes-told-other", **facts)
                return


def _notice(notice: Filled) -> Notice:
    return Notice(
        on=notice["date"],
        title=notice["title"],
        markdown=notice["text"],
        kind=notice["kind"],
        opens=notice["opens"],
        closes=notice["closes"],
        who=notice["who"],
    )
