"""What an author may get wrong about the days of the year."""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import FERN, PATTERN, SERIES
from tests.wrong_input_case import Case


def occasion(slip: str, on: str, said: str, column: int = 38) -> Case:
    place = f"series/garden-year/fern/pattern.yaml:4:{column}: "
    return Case(slip, {PATTERN: ("second Sunday of May", on)}, place + said)


def goes_up(slip: str, value: str, said: str, column: int = 10) -> Case:
    place = f"series/garden-year/series.yaml:4:{column}: "
    change = ("finish: shelf", f"goes_up: {value}\nfinish: shelf")
    return Case(slip, {SERIES: change}, place + said)


CASES = (
    occasion(
        "Easter misspelt",
        "Eester",
        "'Eester' is not a day that comes every year; did you mean 'Easter'?",
    ),
    occasion(
        "days before a misspelt Easter",
        "21 days before Eastre",
        "'21 days before Eastre' is not a day that comes every year; did you mean '21 days before Easter'?",
    ),
    occasion(
        "a month misspelt, before its day",
        "Mach 14",
        "'Mach 14' is not a day that comes every year; did you mean '14 March'?",
    ),
    occasion(
        "a solstice misspelt",
        "winter solstise",
        "'winter solstise' is not a day that comes every year; did you mean 'winter solstice'?",
    ),
    occasion(
        "a season misspelt",
        "sumer",
        "'sumer' is not a day that comes every year; did you mean 'summer'?",
    ),
    occasion(
        "the month of a solstice misspelt",
        "3 days before Decmber solstice",
        "'Decmber' is not a month or season; did you mean 'December'?",
        52,
    ),
    occasion(
        "a month without a solstice",
        "July solstice",
        "'July' is not a month or season; known here: December, June, March, September, autumn, spring, summer, winter",
    ),
    occasion(
        "a solstice in March",
        "March solstice",
        "there is no day 'March solstice'; did you mean 'March equinox'?",
    ),
    occasion(
        "an equinox in summer",
        "3 days after summer equinox",
        "there is no day '3 days after summer equinox'; did you mean 'summer solstice'?",
    ),
    occasion(
        "an occasion too far from a solstice",
        "120 days after June solstice",
        "'120 days after June solstice' is too far from the solstice; stay within 90 days, or name the day itself",
    ),
    occasion(
        "a month misspelt after 'in'",
        "in Mai",
        "'Mai' is not a month; did you mean 'May'?",
        41,
    ),
    goes_up(
        "days before without their unit",
        "7",
        "'goes_up' is '7', without a unit; write the unit, for example '7 days'",
    ),
    goes_up(
        "days before in another unit",
        "2 fortnights",
        "'fortnights' is not a unit for 'goes_up'; known here: day, days, week, weeks",
        12,
    ),
    goes_up(
        "days before in words",
        "a week",
        "'a week' does not say how many days before; write it like '7 days', '2 weeks' or 'on the day'",
    ),
    goes_up(
        "a year before",
        "52 weeks",
        "'goes_up' is '52 weeks', beyond what can be right; it goes from 0 days to 60 days",
    ),
    Case(
        "a revision that was copied and not changed",
        {
            PATTERN: (
                "note: First issue.}",
                "note: First issue.}\n  - {date: 2026-11-25, note: First issue.}",
            )
        },
        f"{PATTERN}:28:12: advice: the revision above stands here once more, word for word; take one of the two out, or write what has changed",
    ),
    Case(
        "a first issue after another revision",
        {
            PATTERN: (
                "note: First issue.}",
                "note: Blue.}\n  - {date: 2026-11-26, note: First issue.}",
            )
        },
        f"{PATTERN}:28:30: advice: 'First issue.' stands after another revision; say what has changed, or put the first issue first",
    ),
    Case(
        "what is laid aside, below the revisions, since its name is a remark still",
        {
            PATTERN: (
                "note: First issue.}",
                "note: First issue.}\n#laid_aside: []\n  - {advice: photo-missing, because: no model yet}",
            )
        },
        f"{PATTERN}:29:5: an entry with 'advice' and 'because' belongs to 'laid_aside', and stands in the list 'revisions'; write a line laid_aside: above it, or take the # away from the one that is there",
    ),
    Case(
        "a day that there is not, and another on which it is not",
        {
            f"{FERN}/story.md": "Sown on 31 June 2027,\npicked on Wednesday 1 July 2027 and\non Friday 16 July 2027.\n",
        },
        "series/garden-year/fern/story.md:1:9: advice: '31 June 2027' is no day: June has 30 days; look once more at your calendar",
        "series/garden-year/fern/story.md:2:11: advice: 'Wednesday 1 July 2027' is a Thursday; mend the weekday or the day",
    ),
)
