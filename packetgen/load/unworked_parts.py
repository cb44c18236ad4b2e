"""Parts of a finishing piece that its steps name twice, or leave out where they name all others."""

import re
from collections.abc import Iterator, Sequence, Set

from packetgen.diagnostics import Problems, place_in
from packetgen.load.part_names import OF_ANY, parts_by_name
from packetgen.load.prose_words import WHERE, any_of, named, sentences
from packetgen.load.sure import sure
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.nouns import listed, plural

_SAWN = re.compile(r"\b(?:saw|cut)\b", re.IGNORECASE)
_SMOOTHED = re.compile(r"\b(?:smooth|sand|wipe|drill|round|file|mark|glue)\b", re.IGNORECASE)
# What is done to each part → how a step says so, where its list of parts ends, and how many others are named at least.
_WORK = {
    "saws": (re.compile(r"\b(?:fretsaw|saw)\b", re.IGNORECASE), _SMOOTHED, 2),
    "paints": (
        re.compile(r"\b(?:paint(?!ing)|coats?\b)", re.IGNORECASE),
        re.compile(r"\bleave\b", re.IGNORECASE),
        2,
    ),
    "joins": (
        re.compile(
            r"\b(?:glue|screw|nail|peg|dowel|fix|fasten|attach|mount|stand|set|put|slot|slide|drive|drill|join|fit|lay|hang|slip|butt|go(?:es)?)\b",
            re.IGNORECASE,
        ),
        re.compile(r"(?!)"),
        3,  # of fewer, one joint tells of all
    ),
}
_EVERY = re.compile(
    r"\b(?:all|every|everything|parts|pieces|rest|others?|wood|it|them|these|whole)\b|(?<!coats )\beach\b",
    re.IGNORECASE,
)
_HEADING = re.compile(r"^#.*$", re.MULTILINE)


def complain_of_part_twice(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> bool:
    """Advice on 'the board and the board', and on 'saw the board, the roof and the board' of a piece that has another
    part; whether it was told is returned."""
    names = named(part.name for part in parts)
    spoken_of = " ".join(one for _, one in sentences(steps) if _SAWN.search(one)).casefold()
    lacking = [part for part in parts if not any(one in spoken_of for one in _kinds(part))]
    for start, sentence in sentences(steps):
        sawn = _SAWN.search(sentence)
        end = _SMOOTHED.search(sentence)
        found = list(names.finditer(sentence, 0, end.start() if sawn and end else len(sentence)))
        words = [one[0].casefold() for one in found]
        for number, one in enumerate(found):
            # 'behind the roof, and the roof on the front of the board' joins it a second time.
            beside = (
                bool(number)
                and re.fullmatch(
                    r"\W*(?:and|then)\W+(?:the\W+)?",
                    sentence[found[number - 1].end() : one.start()],
                )
                and not re.match(rf"\s+{WHERE}\b", sentence[one.end() :])
            )
            if words[number] in words[:number] and (
                (sawn and lacking) or (beside and words[number] == words[number - 1])
            ):
                other = f", and {said(lacking[0].name)} not at all" if sawn and lacking else ""
                facts = {"part": said(one[0]), "other": other}
                problems.add(place_in(steps, start + one.start(), path), "step-part-twice", **facts)
                return True
    return False


def complain_of_unworked_part(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice where steps saw, paint or join parts by their names, and not the one that is left: on the first such step."""
    for work, (verb, ends, others) in _WORK.items():
        working = list(_worked(verb, ends, steps))
        if not working or (work != "joins" and any(_EVERY.search(words) for _, words in working)):
            continue
        done = {number for _, words in working for number in _named(parts, words)}
        due = [number for number, part in enumerate(parts) if work != "paints" or part.painted]
        spoken_of = set(re.findall(r"\w+", " ".join(words for _, words in working).casefold()))
        # 'the moulding' may be an under-moulding.
        lacking = [
            parts[number].name
            for number in due
            if number not in done and not _only_called(parts[number], parts, spoken_of)
        ]
        if len(done) >= others and len(lacking) == 1:
            start, words = working[0]
            word = sure(verb.search(words))
            place = place_in(steps, start + word.start(), path)
            facts = {"said": said(word[0]), "does": work, "lacking": said(lacking[0])}
            facts["mend"] = _mend(
                steps, path, place.line, facts["lacking"], _strange(parts, working)
            )
            problems.add(place, "step-part-left", **facts)
            return


def _strange(parts: Sequence[Part], working: Sequence[tuple[int, str]]) -> str:
    """The one name that stands in a row with those of parts, 'the board, the lath and the foot', and is no part's; '' where
    there is none, or more than one."""
    called = {*parts_by_name(parts), *map(_last_word, parts)}
    row = re.compile(
        rf"(?:(?<![\w-])(?:{any_of(called)}),?\s+(?:and\s+)?the\s+(?P<next>[a-z-]+)(?=\s*(?:[,.;:]|and\b|\Z))"
        rf"|(?<=\bthe\s)(?P<before>[a-z-]+),?\s+(?:and\s+)?the\s+(?:{any_of(called)})(?![\w-]))",
        re.IGNORECASE,
    )
    found = [one["next"] or one["before"] for _, words in working for one in row.finditer(words)]
    strange = {one.casefold() for one in found} - called - OF_ANY - set(map(plural, OF_ANY))
    return strange.pop() if len(strange) == 1 else ""


def _mend(steps: str, path: str, line: int, lacking: str, strange: str) -> str:
    if not strange:
        return "name it in one, or mend the name that stands for it"
    lines = {place_in(steps, one.start(), path).line for one in named([strange]).finditer(steps)}
    others = tuple(map(str, sorted(lines - {line})))
    where = f" and on line{'s' * (len(others) > 1)} {listed(others)}" if others else ""
    return f"write it for {said(strange)}, the name of no part, here{where}; or name it in a step"


def _worked(verb: re.Pattern[str], ends: re.Pattern[str], steps: str) -> Iterator[tuple[int, str]]:
    """The sentences that have the verb, as far as they list parts, and where they begin."""
    for start, sentence in sentences(_HEADING.sub(lambda found: " " * len(found[0]), steps)):
        words = ends.split(sentence)[0]
        if verb.search(words):
            yield start, words


def _named(parts: Sequence[Part], words: str) -> Iterator[int]:
    numbers = parts_by_name(parts)
    for name in named(numbers).findall(words):
        yield from numbers[name.casefold()]


def _only_called(part: Part, parts: Sequence[Part], spoken_of: Set[str]) -> bool:
    """Whether its last word is spoken of, and is that of no other part."""
    word = _last_word(part)
    alone = word not in (_last_word(one) for one in parts if one is not part)
    return alone and not spoken_of.isdisjoint({word, plural(word)})


def _last_word(part: Part) -> str:
    """'moulding' of 'under-moulding'."""
    return re.split(r"\W+", part.name.casefold())[-1]


def _kinds(part: Part) -> tuple[str, str]:
    """As a text may speak of it: by its name, or as one of several."""
    return part.name.casefold(), plural(part.name.casefold().split()[-1])
