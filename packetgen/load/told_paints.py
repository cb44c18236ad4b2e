"""Paints that the steps name for a part, and coats of them, beside those that it has."""

import re
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNT, COUNTED, counted_number
from packetgen.load.prose_words import SENTENCE, any_of
from packetgen.load.words import listed, said
from packetgen.model import Paint, Part

_THIN = r"(?:(?:thin|light|even|full|good)\s+)?"  # as coats are
# Of which paint, comes behind it.
_COATS_OF = rf"{COUNT}\s+{_THIN}coats?\s+of\s+(?:the\s+)?"
_GETS = r"(?:(?:gets?|takes?|has|needs?|wants?|with|in)\s+)?"
_TIMES = rf"(?:once|twice|{COUNT}\s+times)"
# What stands between a part and its paint.
_PAINTED = rf"(?:(?:(?:is|are)\s+(?:painted\s+)?|painted\s+)?(?:{_TIMES}\s+)?(?:in|with)\s+(?:{_COATS_OF}|the\s+)?|{_GETS}{_COATS_OF})"
_COATS = re.compile(
    rf"{COUNTED}\s+{_THIN}coats(?:\s+of\s+paint)?(?!\s+of\b)(?![\w-])",
    re.IGNORECASE,
)
_EACH_BEHIND = re.compile(r"\s+each\b", re.IGNORECASE)
_EACH_BEFORE = re.compile(
    r"\b(?:each|every|all)\s+(?:\w+\s+)?(?:parts?|pieces?)\s+(?:gets?\s+)?\Z", re.IGNORECASE
)
_COATS_OF_SOME = re.compile(_COATS_OF, re.IGNORECASE)
_NO_COLOUR = re.compile(
    r"varnish|\bwax|\boil|primer|\bprim(?:e|ed|ing)\b|seal|glue|lacquer", re.IGNORECASE
)
_OTHER_COATS = re.compile(
    rf"(?:{COUNTED}|\b(?:a|another))\s+(?:(?!of\b)[a-z]+\s+)?coats?\s+of\s+(?:[a-z]+\s+)?"
    r"(?P<what>varnish|wax|primer|sealer|lacquer|stain|oil)\b",
    re.IGNORECASE,
)
# As a verb, or of paint: a spray of leaves is none.
_SPRAYED = re.compile(
    r"\b(?:spray(?:ed|ing)?\s+(?:paints?|cans?|on|the|it|them|all|both|each|every|with|two|three|four)\b"
    r"|(?:is|are|be|been)\s+sprayed\b)",
    re.IGNORECASE,
)
_NO_PAINT = re.compile(
    r"\b(?:not?|never|nor|without|instead|adhesive|glue|water|starch|bottle|mist|fixative|or spray)\b|n't\b",
    re.IGNORECASE,
)


def complain_of_told_paints(
    parts: Iterable[Part], steps: str, path: str, problems: Problems
) -> tuple[range, ...]:
    """Advice on 'the sill in white' and 'white over the back of the sill' where that is a paint of the piece and the sill,
    or that face of it, has another. Returned is where it is told of; of coats nothing more is to be said there."""
    parts = tuple(parts)
    own = {part.name.casefold(): {coat.paint.name: None for coat in part.painted} for part in parts}
    paints = {paint.casefold() for of_part in own.values() for paint in of_part}
    if not paints:
        return ()
    named = re.compile(
        rf"(?<![\w-])(?P<part>{any_of(own)})\s+{_PAINTED}"
        rf"(?P<paint>{any_of(paints)})(?![\w-])",
        re.IGNORECASE,
    )
    onto = re.compile(
        rf"(?<![\w-])(?P<paint>{any_of(paints)})\s+(?:over|on|onto|to)\s+(?:the\s+)?"
        rf"(?:(?P<face>front|back|edges)\s+of\s+(?:the\s+)?)?(?P<part>{any_of(own)})(?![\w-])",
        re.IGNORECASE,
    )
    for found in onto.finditer(steps):
        face, paint = (found["face"] or "").casefold(), found["paint"].casefold()
        coats = [
            coat
            for part in parts
            for coat in part.painted
            if (part.name.casefold(), coat.paint.name.casefold())
            == (found["part"].casefold(), paint)
        ]
        if face and coats and not any(coat.faces in (face, "both") for coat in coats):
            facts = {
                "said": said(found[0]),
                "part": said(found["part"]),
                "faces": " and ".join(dict.fromkeys(coat.faces for coat in coats)),
            }
            problems.add(place_in(steps, found.start(), path), "step-face-other", **facts)
    wrong = [
        found
        for found in (*named.finditer(steps), *onto.finditer(steps))
        if found["paint"].casefold() not in map(str.casefold, own[found["part"].casefold()])
    ]
    told = tuple(range(*found.span()) for found in wrong)
    if len(wrong) == 2 and all(_has(own, wrong[one], wrong[1 - one]) for one in (0, 1)):
        first, other = sorted(wrong, key=lambda found: found.start())
        facts = {"part": said(first["part"]), "other": said(other["part"])}
        problems.add(place_in(steps, first.start(), path), "step-paints-exchanged", **facts)
        return told
    for found in wrong:
        facts = {
            "said": said(found[0]),
            "part": said(found["part"]),
            "own": listed(own[found["part"].casefold()], "and"),
        }
        problems.add(place_in(steps, found.start(), path), "step-paint-other", **facts)
    return told


def _has(own: Mapping[str, Collection[str]], one: re.Match[str], other: re.Match[str]) -> bool:
    """Whether the part that one tells of has the paint that the other tells."""
    return other["paint"].casefold() in map(str.casefold, own[one["part"].casefold()])


def complain_of_told_coats(
    parts: Sequence[Part], steps: str, path: str, told: Iterable[range], problems: Problems
) -> None:
    """Advice on 'three coats of beet red' where no part has so many of that paint, and on 'three coats' where none has so
    many of any; `told` is where another paint is told of."""
    coats: dict[str, set[int]] = {}
    of_parts: dict[tuple[str, str], set[int]] = {}
    for part in parts:
        for coat in part.painted:
            paint = coat.paint.name.casefold()
            coats.setdefault(paint, set()).add(coat.coats)
            of_parts.setdefault((part.name.casefold(), paint), set()).add(coat.coats)
    if not coats:
        return
    named = re.compile(
        rf"{COUNTED}\s+coats?\s+(?:of\s+)?(?:the\s+)?"
        rf"(?P<paint>{any_of(coats)})(?![\w-])"
        rf"(?P<where>\s+(?:on|onto|over|for|to)\s+(?:the\s+)?(?P<part>{any_of(part for part, _ in of_parts)})(?![\w-]))?",
        re.IGNORECASE,
    )
    of_one = {found.start(): found for found in named.finditer(steps)}
    of_any = {found.start(): found for found in _coats_alone(steps)} | of_one
    for start, found in sorted(of_any.items()):
        number = counted_number(found["number"])
        if number is None or any(start in one for one in told):
            continue
        paint = found["paint"].casefold() if start in of_one else ""
        own = coats[paint] if paint else set().union(*coats.values())
        of_part = of_parts.get(((found["part"] or "").casefold(), paint)) if paint else None
        if of_part and number not in of_part:
            facts = {"said": said(found[0]), "part": said(found["part"]), "own": _numbers(of_part)}
            problems.add(place_in(steps, start, path), "step-part-coats", **facts)
        elif not of_part and number not in own:
            facts = {
                "said": said(found[0].removesuffix(found["where"] or "") if paint else found[0]),
                "paint": f" of {said(found['paint'])}" if paint else "",
                "own": " or ".join(map(str, sorted(own))),
            }
            problems.add(place_in(steps, start, path), "step-coats-other", **facts)
        elif not paint and (lacking := _without(steps, found, number, parts)):
            facts = {"said": said(_each(steps, found)), "part": said(lacking.name)}
            facts["own"] = _numbers(coat.coats for coat in lacking.painted)
            problems.add(place_in(steps, start, path), "step-part-coats", **facts)


def _each(steps: str, found: re.Match[str]) -> str:
    """'two coats each', 'each part two coats'; '' where it is not said of each."""
    first, end = found.span()
    if behind := _EACH_BEHIND.match(steps, end):
        end = behind.end()
    if before := _EACH_BEFORE.search(steps, 0, first):
        first = before.start()
    return steps[first:end] if behind or before else ""


def _without(steps: str, found: re.Match[str], number: int, parts: Sequence[Part]) -> Part | None:
    """The first part that has not so many coats, where each is said to have them and no step tells of others."""
    if not _each(steps, found):
        return None
    told = {
        counted_number(one["number"])
        for one in re.finditer(rf"{COUNTED}\s+{_THIN}coats?\b", steps, re.I)
    }
    others = (
        part
        for part in parts
        if part.painted
        and number not in (own := {coat.coats for coat in part.painted})
        and not own & told
    )
    return next(others, None)


def _numbers(of_part: Iterable[int]) -> str:
    return " and ".join(map(str, sorted(of_part)))


def complain_of_coats_of_parts(
    parts: Iterable[Part], steps: str, path: str, told: Iterable[range], problems: Problems
) -> tuple[range, ...]:
    """Advice on 'give the sill two coats' where other parts have so many, and the sill has not; `told` is where another
    paint is told of. Returned is where this is."""
    here = list[range]()
    parts = tuple(parts)
    own = _coats_of(parts)
    paints = {coat.paint.name for part in parts for coat in part.painted} | {"paint", "painted"}
    speaks_of_paint = re.compile(rf"\b(?:{any_of(paints)})\b", re.IGNORECASE)
    every = set().union(*own.values()) if own else set()
    named = re.compile(
        rf"(?<![\w-])(?P<part>{any_of(own)})\s+(?:{_GETS}{COUNTED}\s+{_THIN}coats\b|(?:(?:is|are)\s+)?(?:painted\s+)?"
        rf"(?P<times>{_TIMES})\b)",
        re.IGNORECASE,
    )
    # 'and the sill with three', in a sentence that speaks of coats.
    also = re.compile(
        rf"(?<![\w-])(?P<part>{any_of(own)})\s+(?:with|gets?|takes?|has|needs?)\s+{COUNTED}(?P<times>)"
        r"(?=\s*[.,;:]|\s+and\b|\s*\Z)",
        re.IGNORECASE,
    )
    listed_before = re.compile(
        rf"(?<![\w-])(?P<part>{any_of(own)})(?:,\s*|\s+and\s+)(?:the\s+)?\Z", re.IGNORECASE
    )
    for sentence in SENTENCE.finditer(steps):
        span = sentence.span()
        spoken_of = _COATS.search(sentence[0]) or _COATS_OF_SOME.search(sentence[0])
        alone = also.finditer(steps, *span) if spoken_of else ()
        for found in (*named.finditer(steps, *span), *alone):
            times, of_part = found["times"], own[found["part"].casefold()]
            first = listed_before.search(steps, 0, found.start())
            number = _times(times) if times else counted_number(found["number"])
            if (
                first and number in of_part and not times
            ):  # 'the left post and the right post get two coats'
                of_part = own[first["part"].casefold()]
            else:
                first = None
            if _NO_COLOUR.search(sentence[0]) or number in of_part:
                continue
            if times and not speaks_of_paint.search(sentence[0]):
                continue
            if not times and found.re is not also and number not in every:
                continue  # told of that number
            if any(found.start() in one for one in told):
                continue
            facts = {
                "said": said(steps[(first or found).start() : found.end()]),
                "part": said((first or found)["part"]),
                "own": _numbers(of_part),
            }
            problems.add(
                place_in(steps, (first or found).start(), path), "step-part-coats", **facts
            )
            here.append(range(*found.span()))
    return tuple(here)


def _coats_of(parts: Iterable[Part]) -> dict[str, set[int]]:
    """How many coats each part has, of all its paints."""
    own: dict[str, set[int]] = {}
    for part in parts:
        own.setdefault(part.name.casefold(), set()).update(coat.coats for coat in part.painted)
    return own


def _times(words: str) -> int | None:
    """'twice' → 2, 'three times' → 3."""
    first = words.casefold().split()[0]
    return {"once": 1, "twice": 2}.get(first) or counted_number(first)


def complain_of_listed_coats(
    parts: Iterable[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on 'two coats for the board and three for the sill' where the sill has not so many."""
    own = _coats_of(parts)
    every = set().union(*own.values()) if own else set()
    name = rf"(?:the\s+)?(?:{any_of(own)})(?![\w-])"
    listed_for = re.compile(
        rf"{COUNTED}(?P<coats>\s+{_THIN}coats)?\s+for\s+(?P<parts>{name}(?:(?:,\s*|,?\s+and\s+){name})*)",
        re.IGNORECASE,
    )
    for sentence in SENTENCE.finditer(steps):
        if _NO_COLOUR.search(sentence[0]) or not re.search(r"\bcoats\b", sentence[0]):
            continue
        for found in listed_for.finditer(steps, *sentence.span()):
            number = counted_number(found["number"])
            if found["coats"] and number not in every:
                continue  # told of that number
            for one in re.finditer(rf"\b(?:{any_of(own)})\b", found["parts"], re.IGNORECASE):
                of_part = own[one[0].casefold()]
                if number not in of_part:
                    facts = {
                        "said": said(f"{found['number']} for {one[0]}"),
                        "part": said(one[0]),
                        "own": _numbers(of_part),
                    }
                    place = place_in(steps, found.start("parts") + one.start(), path)
                    problems.add(place, "step-part-coats", **facts)
                    return


def _coats_alone(steps: str) -> Iterator[re.Match[str]]:
    """'three coats' of which is not said of what, in sentences that speak of paint alone."""
    for sentence in SENTENCE.finditer(steps):
        if not _NO_COLOUR.search(sentence[0]):
            yield from _COATS.finditer(steps, sentence.start(), sentence.end())


def complain_of_unlisted_coats(paints: str, steps: str, path: str, problems: Problems) -> None:
    """Advice on 'two coats of varnish' where nothing that is to buy is called so. `paints` are the names of all that is."""
    for found in _OTHER_COATS.finditer(steps):
        if found["what"].casefold() not in paints.casefold():
            facts = {"said": said(found[0]), "what": said(found["what"])}
            problems.add(place_in(steps, found.start(), path), "coats-unlisted", **facts)
            return


def complain_of_told_spray(
    paints: Iterable[Paint], steps: str, path: str, problems: Problems
) -> None:
    """Advice on 'spray all three' where every paint is put on with a brush: the packet has no caution for spray then."""
    ways = {way.put_on_with for paint in paints for way in paint.ways}
    if not ways or "spray" in ways:
        return
    for sentence in SENTENCE.finditer(steps):
        found = _SPRAYED.search(sentence[0])
        if found and not _NO_PAINT.search(sentence[0]):
            facts = {"said": said(found[0])}
            start = sentence.start() + found.start()
            problems.add(place_in(steps, start, path), "step-sprays", **facts)
            return
