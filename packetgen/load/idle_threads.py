"""Threads that an author's texts name, and that no line of the pattern's key has: a buyer would look for their skeins."""

import re
from collections import Counter
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from packetgen.diagnostics import Place, Problems, nearest_of
from packetgen.load.number_words import COUNT
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.told_numbers import counts_something, form_of
from packetgen.load.words import said, shown
from packetgen.model import Colour, ThreadCard
from packetgen.nouns import listed

# Of figures and letters, as 'M170': what is shorter, or of figures alone, may count or measure something.
_NUMBER = re.compile(r"(?<![\w#.,/-])(?=\w*\d)(?=\w*[A-Za-z])\w{3,7}(?![\w-])", re.ASCII)
_THREAD = re.compile(r"\bthreads?\s+(?:no\.?\s*)?(?P<number>\w*\d\w*)(?![\w-])", re.IGNORECASE)
# 'the bar in the middle, 350, and …': a number of three signs or more between a comma and the next sign.
_BETWEEN_SIGNS = re.compile(r",\s+(?P<number>\w*\d\w+)(?=\s*(?:[;:)]|[.,](?!\d)|$))", re.ASCII)
# 'Work the slug in 501 upwards', 'rows of 402': nothing is counted.
_WORKED_IN = re.compile(
    r"\b(?:in|with|use|using|(?:rows?|lines?|bands?|stitches)\s+of)\s+(?P<number>\d{3,5})"
    r"(?![\w.,/×%-]*\w|\s*(?:×|x\b|%|mm\b|cm\b|m\b|stitch|cross|row|column|hour|minute|day|week|year|page|piece|colour|step|bead|knot|square))",
    re.IGNORECASE,
)
_PROPOSED = re.compile(
    r"\b(?:not|never|instead|without|if|may|might|could|would|or)\b", re.IGNORECASE
)
# 'two strands of jam red'.
_OF_IT = r"(?:\w+\s+)?(?:stitch(?:es)?|crosses|strands?|threads?|rows?|lengths?|knots?|skeins?|shadows?|touch(?:es)?|bands?|lines?|rings?|rounds?|stripes?|borders?|patch(?:es)?|edges?|dots?|spots?)\s+of"
# Behind a colour that something is worked in.
_GOES_ON = r"(?=\s*[.,;:]|\s*\Z|\s+(?:from|to|towards|up|down|upwards|downwards|outwards|inwards|next|last|first|along|across|round|with|over|for|on|and)\b)"
_PLAIN_COLOURS = frozenset(
    "black white grey gray brown red orange yellow green blue purple violet pink cream beige".split()
)
_LISTED = re.compile(r"#\s+\S\s+\w*\d")  # '# t  23 soot'
_COUNTS = 2  # figures that may count something
_YEAR = re.compile(r"(?:19|20)\d\d")
_SERIES = 3  # numbers of a card with the same letters and as many figures, of which another is seen to be one: our own choice


def complain_of_idle_threads(
    text: str,
    path: str,
    cards: Sequence[ThreadCard],
    used: Collection[str],
    instead: Mapping[str, str],
    problems: Problems,
) -> None:
    """Advice on 'M170', 'thread 119', '119 wet plank', 'in wet plank' and 'jam red' in a text where that is a thread of
    one of the cards and not one of the numbers that the key has `used`, in any thread set; and on 'thread 999' where no
    card has it. Of a chart only the list at its head is looked at. `instead` are threads that the key seems to have got
    for others, by the numbers of these."""
    threads = {
        number: (colour, card)
        for card in reversed(cards)
        for number, colour in card.colours.items()
    }
    forms = {form_of(number) for number in threads}
    leads = Counter(map(_lead, threads))
    # Of a number that is another's by the name beside it all is told.
    answered = [problem for problem in problems if problem.place.path == path]
    told: set[str] = set()
    idle: dict[str, tuple[Place, list[int], dict[str, str]]] = {}  # and the lines that name it too
    remarks_only = path.endswith(".txt")
    in_text = text.casefold()
    spoken_of = {
        number: thread
        for number, thread in threads.items()
        if number in used or thread[0].name.casefold() in in_text
    }
    in_notes = path.endswith("stitching.md")
    named = () if remarks_only else _named(spoken_of, used, in_notes, instead)
    of_key = [colour.name for number, (colour, _) in threads.items() if number in used]
    # 'Loam Cotton' speaks of no loam.
    of_key += [card.name for card in cards]
    in_key = re.compile(rf"(?<![\w-])(?:{any_of(of_key)})(?![\w-])", re.IGNORECASE)
    for row, line in enumerate(text.split("\n"), 1):
        if remarks_only and not line.startswith("#"):
            continue
        called = _called(line)
        between = [
            (one.start("number") + 1, one["number"])
            for way in (_BETWEEN_SIGNS, _WORKED_IN)
            for one in way.finditer(line)
        ]
        between = [one for one in between if len(one[1]) > _COUNTS and not _YEAR.fullmatch(one[1])]
        alike = [one for one in (*_alone(line), *between) if leads[_lead(one[1])] >= _SERIES]
        for column, number in (*called, *alike):
            place = Place(path, row, column)
            if number not in threads and form_of(number) in forms and number not in told:
                told.add(number)
                if place not in [problem.place for problem in answered]:
                    facts = {"number": said(number), "cards": _none_of(cards)}
                    facts["hint"] = _meant(number, used, _named_alone(line, threads, used))
                    problems.add(place, "thread-told-none", **facts)
        by_name, with_names = _by_name(line, named, in_key), _with_names(line, threads)
        for column, number in (*_alone(line), *called, *between, *with_names, *by_name):
            if number in idle:
                if row not in idle[number][1]:
                    idle[number][1].append(row)
            elif number in threads and number not in used:
                colour, card = threads[number]
                # As it stands there: by its number, or by its name alone.
                words, other = number, colour.name
                if (column, number) in by_name:
                    words, other = other, words
                if any(one.place.line == row and words in one.wrong for one in answered):
                    continue
                facts = {"number": said(words), "name": shown(other), "card": shown(card.name)}
                write = _as_it_stands(line, column, number, colour.name, instead.get(number))
                of_card = [one.name for one in card.colours.values() if one.number in used]
                one_of_key = f"name one of the key{_not_yet_told(of_card, in_text)}"
                facts["mend"] = (
                    f"if the key is right, write {write} or take it out; else mend the key"
                    if number in instead
                    else "take this line out of the list"
                    if _LISTED.match(line) and remarks_only
                    else f"{one_of_key}, or take {said(f'{number} {colour.name}')} out; or mend the key"
                    if (column, number) in with_names
                    else f"{one_of_key}, or take it out; or mend the key"
                )
                idle[number] = (Place(path, row, column), [], facts)
    for place, rows, facts in idle.values():
        rows = [row for row in rows if row != place.line]
        lines = "lines" if len(rows) > 1 else "line"
        also = f", named here and on {lines} {listed(tuple(map(str, rows)))}" if rows else ""
        problems.add(place, "thread-idle", **facts, also=also)


def _not_yet_told(of_key: Sequence[str], in_text: str) -> str:
    """The one colour of the key that the text does not name, which is mostly meant; '' where there are several."""
    left = [name for name in of_key if name.casefold() not in in_text]
    return f", as {said(left[0])}" if len(left) == 1 and len(of_key) > 1 else ""


def _as_it_stands(line: str, column: int, number: str, name: str, instead: str | None) -> str:
    """What to write for the thread at a column: with its name where the line has that before the number, 'soot (36)' or
    'soot, number 36', and for both where the number comes first."""
    behind = rf"{_plain(name)}(\s+\(|,?\s+(?:no\.?|number)\s+){re.escape(number)}(\)?)"
    own, _, called = (instead or "").partition(" ")
    for found in re.finditer(behind, line, re.IGNORECASE):
        if found.start() < column <= found.end():
            write = said(f"{called}{found[1]}{own}{found[2]}")
            return write if found.start() == column - 1 else f"{write} for {said(found[0])}"
    before = re.compile(rf"{re.escape(number)}\s+{_plain(name)}\b", re.IGNORECASE)
    both = before.match(line, column - 1)
    return said(instead or "") + (f" for {said(both[0])}" if both else "")


def _none_of(cards: Sequence[ThreadCard]) -> str:
    """'Moss Stranded does not have', 'neither … nor …', or of more than two cards the first."""
    first, *others = map(shown, dict.fromkeys(card.name for card in cards))
    if not others:
        return f"{first} does not have it"
    other = others[0] if len(others) == 1 else "another card of the pattern"
    return f"neither {first} nor {other} has it"


def _meant(number: str, used: Collection[str], named: Sequence[tuple[str, str]]) -> str:
    """The number in the key of the one colour that the line names without its number; else the nearest that is as long."""
    if len(named) == 1:
        own, name = named[0]
        return f"did you mean {own}, {said(name)}? Else take it out"
    as_long = tuple(sorted(one for one in used if len(one) == len(number)))
    near = nearest_of(number, as_long or tuple(sorted(used)))
    return (
        f"did you mean {near}? Else take it out"
        if near
        else "write the number of one in the key, or take it out"
    )


def _named_alone(
    line: str, threads: Mapping[str, tuple[Colour, ThreadCard]], used: Collection[str]
) -> list[tuple[str, str]]:
    """Numbers and names of the colours of the key that the line names, and not by their numbers."""
    return [
        (number, colour.name)
        for number, (colour, _) in threads.items()
        if number in used
        and re.search(rf"(?<![\w-]){_plain(colour.name)}(?![\w-])", line, re.IGNORECASE)
        and not re.search(rf"(?<!\w){re.escape(number)}(?!\w)", line)
    ]


def _plain(name: str) -> str:
    return r"\s+".join(map(re.escape, name.split()))


def _lead(number: str) -> str:
    """'Q99' of 'Q43'."""
    return re.sub(r"\d", "9", number)


def _alone(line: str) -> list[tuple[int, str]]:
    return [(one.start() + 1, one[0]) for one in _NUMBER.finditer(line)]


def _called(line: str) -> list[tuple[int, str]]:
    """'thread 131'."""
    return [(one.start("number") + 1, one["number"]) for one in _THREAD.finditer(line)]


@dataclass(frozen=True)
class _Named:
    """A thread that the key has not, by its name, and the ways in which a text may name it."""

    number: str
    name: str
    ways: tuple[re.Pattern[str], ...]


def _named(
    threads: Mapping[str, tuple[Colour, ThreadCard]],
    used: Collection[str],
    in_notes: bool,
    instead: Collection[str],
) -> tuple[_Named, ...]:
    """Of threads whose name is no other's, that name where one stitches in it. A name of one word may be an everyday one,
    so that it is believed in 'in moss and slate' alone, where moss is a colour of the key, or in notes where the key had it."""
    in_key = {colour.name.casefold() for number, (colour, _) in threads.items() if number in used}
    found = []
    for number, (colour, _) in threads.items():
        if (name := colour.name.casefold()) not in in_key:
            ways = _ways_of_several(name, in_key, in_notes) if " " in name else ()
            ways += _ways_of_one(name, in_key, in_notes)
            ways += (_words(name),) if in_notes and number in instead else ()
            compiled = tuple(re.compile(rf"(?<![\w-]){way}", re.IGNORECASE) for way in ways)
            found.append(_Named(number, name, compiled))
    return tuple(found)


def _ways_of_one(name: str, in_key: Collection[str], in_notes: bool) -> tuple[str, ...]:
    """'In moss and slate', one of three colours in a row of which the key has the others, and in notes 'the rail, in bracken:',
    'is in bracken' and 'a strand of bracken'; behind one that the key has 'then fill in pollen' and 'the rim of clover last' too."""
    keyed, words = any_of(in_key), _words(name)
    one, joint = (
        rf"(?:{keyed})(?![\w-])",
        r"(?:\s+(?:first|next))?(?:,\s*|,?\s+and\s+)(?:then\s+)?(?:the\s+)?",
    )
    return (
        *(
            [
                rf"{one}[^.;:]*\b(?:fill\s+in|in|with)\s+{words}{_GOES_ON}",
                rf"\b(?:work|stitch|fill|cross)\s+[^.;:]{{2,40}}?\s+in\s+{words}{_GOES_ON}",
                rf"\b(?:in|with)\s+{words}(?=\s*[,;:]|\s+with\s+an?\b)",
                rf"\b(?:is|are)\s+in\s+{words}{_GOES_ON}",
                rf"{COUNT}\s+(?:more\s+)?in\s+{words}{_GOES_ON}",
                rf"\b(?:strands?|threads?)\s+of\s+{words}{_GOES_ON}",
                rf"\b(?:stitches|crosses)\s+of\s+(?:the\s+)?{one}[^.;:]*\b\d+\s+of\s+{words}",
                rf"\bthe\s+{words}\s+(?:spots?|dots?|stripes?|crosses|knots?|outlines?)\b",
                rf"{one}[^.;:]*\bof\s+{words}\s+(?:first|last|next|afterwards)\b",
                rf"{one}\s+for\s+the\b[^.;:]*\b{words}\s+for\s+the\b",
            ]
            * in_notes
        ),
        *([rf"\*{words}\*"] if in_notes else ()),
        rf"{one}{joint}{one}{joint}{words}",
        rf"{one}{joint}{words}{joint}{one}",
        rf"{words}{joint}{one}{joint}{one}",
        rf"(?:in|with)\s+(?:the\s+)?(?:{keyed})\s+and\s+(?:the\s+)?{words}",
        rf"(?:in|with)\s+(?:the\s+)?{words}\s+and\s+(?:the\s+)?(?:{keyed})",
    )


def _ways_of_several(name: str, in_key: Collection[str], in_notes: bool) -> tuple[str, ...]:
    """Also '40 stitches of jam red', 'old soot bands, then the jam red' where the key has old soot, and in notes 'jam red'
    anywhere: what ends in the plain word for a colour names no thing."""
    keyed, words = any_of(one for one in in_key if " " in one), _words(name)
    also = r"(?:,\s*|\s+)(?:and\s+|or\s+|then\s+)*(?:the\s+|its\s+)?"
    return (
        rf"(?:in|with|use|using|is|are|\d+\s+of|{_OF_IT})\s+(?:the\s+)?{words}",
        rf"(?:{keyed})(?:\s+\w+)?{also}{words}",
        rf"{words}{also}(?:{keyed})(?![\w-])",
        rf"{words},?\s+(?:number|no\.?)\s+\w*\d",
        *([words] if in_notes and name.rpartition(" ")[2] in _PLAIN_COLOURS else ()),
        *([rf"\b(?:outwards|inwards|on|over)\s+(?:to|towards|into)\s+{words}"] if in_notes else ()),
    )


def _words(name: str) -> str:
    return rf"(?P<name>{_plain(name)})(?![\w-])"


def _by_name(
    line: str, named: Collection[_Named], in_key: re.Pattern[str]
) -> list[tuple[int, str]]:
    """Those that the line names, and where: 'red' in 'jam red' of the key is none, nor what is only proposed."""
    lower, found = line.casefold(), list[tuple[int, str]]()
    if not any(thread.name in lower for thread in named):
        return found
    of_key = [one.span() for one in in_key.finditer(line)]
    proposed = [(at, at + len(one)) for at, one in sentences(line) if _PROPOSED.search(one)]
    for thread in named:
        if thread.name in lower:
            places = {one.start("name") for way in thread.ways for one in way.finditer(line)}
            end = len(thread.name)
            taken = (*of_key, *proposed)
            free = [at for at in places if not any(a <= at and at + end <= b for a, b in taken)]
            found += [(min(free) + 1, thread.number)] if free else []
    return found


def _with_names(
    line: str, threads: Mapping[str, tuple[Colour, ThreadCard]]
) -> list[tuple[int, str]]:
    """Numbers with their own name behind them, or before them and they between brackets."""
    found = []
    for number in dict.fromkeys(re.findall(r"\w+", line)):
        if number in threads:
            name = _plain(threads[number][0].name)
            behind = rf"\b{name}\s+\({re.escape(number)}\)"
            before = rf"(?<![\w#]){re.escape(number)}\s+{name}\b"
            ways = (re.finditer(way, line, re.IGNORECASE) for way in (before, behind))
            first, after = map(list, ways)
            first = [one for one in first if not counts_something(number, line, one.end(), True)]
            found += [(one.start() + 1, number) for one in (*first, *after)[:1]]
    return found
