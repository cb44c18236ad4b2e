"""Pieces of hardware that the steps count, beside those that a stitcher is told to buy."""

import re
from collections.abc import Mapping, Sequence, Set

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNT, COUNTED, counted_number
from packetgen.load.prose_words import SENTENCE, any_of, sentences
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.nouns import counted, plural

# What nobody has in the house in the number that is meant; pins and hooks may be those of the wall.
_TO_BUY = ("screw", "nail", "hinge", "dowel", "bracket", "bolt", "tack")
_SORTS = (
    r"\b(?:saw-?tooth|picture|flat|plate|ring|strap|keyhole"
    r"|cup|shoulder|square|dresser|wood|brass|steel|chipboard|machine)\b"
)
_HUNG_BY = re.compile(
    rf"\b(?=(?:the|a|its|{COUNT})\s)(?:(?:the|a|its)\s+)?(?:{COUNTED}\s+)?(?:\d+\s+mm\s+)?(?P<what>(?:{_SORTS}\s+)?hanger|(?:picture|hanging|screw)\s+ring|D-?\s?ring|hanging\s+(?:plate|bracket|loop)"
    r"|screw\s+eye|eyelet|mirror\s+plate|picture\s+(?:hook|wire))s?\b",
    re.IGNORECASE,
)
# Sorts of one kind, none of which is another: 'cup hook' is no 'shoulder hook'.
_OF_SORT = re.compile(
    rf"(?:\b{COUNTED}\s+)?(?P<told>(?P<what>(?P<sort>{_SORTS})\s+(?P<kind>hanger|hook|screw|nail|eye|ring|hinge))s?)\b",
    re.IGNORECASE,
)
# Hooks and the like of the piece itself: 'screw the two cup hooks into the lid', and none into the wall.
_PUT_IN = re.compile(
    rf"\b(?:screw|drive|twist|turn|put|fix|fasten|knock|push)\s+(?:in\s+)?(?:{COUNT}\s+of\s+)?(?:the\s+|a\s+)?(?:{COUNTED}\s+)?"
    r"(?P<what>(?:[a-z-]+\s+){0,2}(?:hook|eye|knob|brad|handle))s?\b(?![^.!?]*\bwall\b)",
    re.IGNORECASE,
)
_HUNG_ON = re.compile(
    r"\b(?:hang|hung)\b[^.;:]{0,40}?\b(?:by|from|on|with)\s+(?:a|the)\s+(?P<what>cord|chain|string|twine|wire)\b",
    re.IGNORECASE,
)
_ONE = re.compile(r"\b(?:a|an|one)\s", re.IGNORECASE)
_LEAST = 3  # letters of a word that names a piece
_PLACES = r"(?:through|into|in|at|on|for|to|from|below|above)"
_INTO = re.compile(
    rf"(?:\s+through\s+it)?\s+(?:{_PLACES}\s+(?:the|its)|from)\s+(?P<where>[a-z]+)", re.IGNORECASE
)
# Behind what is counted: 'through it into each post', ', 3 × 16 mm, from below, two into each post'.
_INTO_EACH = re.compile(
    r"(?:,?\s+(?:of\s+)?[\d.]+(?:\s?[×x]\s?[\d.]+)?\s?(?:mm|cm|in)\b,?)?"
    rf"(?:\s+(?:from\s+[a-z]+|through\s+(?:it|the\s+[a-z ]{{3,20}}?)))?(?:,\s+(?P<count>{COUNT}))?\s+(?:into|through|in|to)\s+each\s+(?P<part>[a-z]+)"
)
# 'one screw of 3 × 30 mm through each of the two rails'
_IN_EACH = re.compile(
    rf"(?:\s+of\s+[\d.× x]+\s?(?:mm|cm|in)\b)?(?:\s+from\s+[a-z]+)?\s+(?:through|into|in|to)\s+each\s+(?:of\s+the\s+(?:{COUNT}\s+)?)?(?P<part>[a-z]+)",
    re.IGNORECASE,
)
_SHARED_OUT = re.compile(
    rf"[,:]\s+{COUNT}\s+(?:of\s+them\s+)?(?:go(?:es)?\s+)?{_PLACES}\b[^.;]*\band\b", re.IGNORECASE
)
THE = re.compile(r"\b(?:the|all|both)\s+\Z", re.IGNORECASE)
_SHARED = re.compile(
    r"\b(?:each|every|either|both|same|spare|corners?|more|another)\b", re.IGNORECASE
)
_MORE = re.compile(r"more\s", re.IGNORECASE)
_OTHERS = re.compile(r"\b(?:other|further|remaining)\s+\Z", re.IGNORECASE)


def complain_of_counted_hardware(filled: Filled, steps: str, path: str, problems: Problems) -> None:
    """Advice where a step counts more pieces of a kind of hardware than are to buy in all, 'four screws' of two; and where
    all steps together tell of fewer, 'the two screws' of three."""
    pieces: dict[str, int] = {}
    names: dict[str, str] = {}
    of_entries: dict[str, int] = {}
    for one in filled.each("hardware"):
        line = one.value
        if line is None or not line["name"] or line["pieces"] is None:
            return
        of_entries[line["name"].casefold()] = line["pieces"]
        kind = kind_of(line["name"])
        names[kind] = kind if kind in pieces else line["name"]
        pieces[kind] = pieces.get(kind, 0) + line["pieces"]
    for name, number in of_entries.items():
        if pieces[kind_of(name)] > number and _look_at_entry(
            name, number, of_entries.keys(), steps, path, problems
        ):
            return
    for kind, number in pieces.items():
        if len(kind) < _LEAST:
            continue
        there_are = {"of": said(names[kind]), "are": are(number)}
        before = 0  # of the same kind, where a step counts others
        driven: dict[str, int] = {}  # into what → how many
        for found in counting(kind).finditer(steps):
            told = _with_more(found, kind, steps)
            if told and (parts := _in_each(found, filled, steps)):
                told *= parts
            others = bool(found["others"] or _OTHERS.search(steps, 0, found.start()))
            into = _INTO.match(steps, found.end())
            if told is not None and into and not THE.search(steps, 0, found.start()):
                before = max(before, sum(driven.values()))
                others = others or bool(driven.keys() - {into["where"]})
                driven[into["where"]] = told
            if told_each := _told_of_each(found, filled, steps, number):
                place = place_in(steps, found.start(), path)
                problems.add(place, "hardware-short", said=said(told_each), **there_are)
                break
            so_far = (told or 0) + (before if others else 0)
            in_all = max(so_far, told_in_all(found) or 0)
            before = max(before, so_far if found["of_all"] else in_all)
            if told is not None and in_all > number:
                code = "hardware-others" if others else "hardware-short"
                both = not found["of_all"] and told != counted_number(found["number"])
                facts = (
                    {"said": said(f"{found[0]} and more, {told} in all" if both else found[0])}
                    | there_are
                    | ({"all": in_all} if others else {})
                )
                problems.add(place_in(steps, found.start(), path), code, **facts)
                break
        else:
            if left := _all_that_are_told(kind, number, filled, steps):
                all_told, words = left
                place = place_in(steps, all_told.start(), path)
                problems.add(place, "hardware-left", said=said(words), **there_are)


def _look_at_entry(
    name: str, number: int, names: Set[str], steps: str, path: str, problems: Problems
) -> bool:
    """Whether more of one of several kinds of screws are counted, by its whole name, than there are, which is told."""
    for found in counting(name).finditer(steps):
        told = counted_number(found["number"])
        if _whole_name(found, name) not in names - {name} and told and told > number:
            facts = {"said": said(found[0]), "of": said(name), "are": are(number)}
            problems.add(place_in(steps, found.start(), path), "hardware-short", **facts)
            return True
    return False


def _whole_name(found: re.Match[str], name: str) -> str:
    """'wood screw' of 'three wood screws'."""
    return f"{found['what'] or ''}{name}".casefold()


def _told_of_each(found: re.Match[str], filled: Filled, steps: str, number: int) -> str:
    """'two screws, two into each post', where that makes more than the number; else ''."""
    sentence = SENTENCE.match(steps, found.end())
    each = _INTO_EACH.match(sentence[0]) if sentence else None
    if not each:
        return ""
    parts = _pieces_of(each["part"], filled)
    count = each["count"] or found["number"]
    in_all = (counted_number(count) or 0) * parts
    return f"{count} into each {each['part']}, {in_all} in all" if in_all > number else ""


def _in_each(found: re.Match[str], filled: Filled, steps: str) -> int:
    """How many parts there are of 'one screw through each rail'; 0 where it does not say so, or counts all: 'the two'."""
    each = _IN_EACH.match(steps, found.end())
    if not each or found["of_all"] or THE.search(steps, 0, found.start()):
        return 0
    return _pieces_of(each["part"], filled)


def _pieces_of(kind: str, filled: Filled) -> int:
    """Of all parts whose last word it is, or several of it."""
    names = [(one.value["name"], one.value["pieces"]) for one in filled.each("parts") if one.value]
    return sum(
        pieces or 0
        for name, pieces in names
        if name and kind in ((last := name.casefold().split()[-1]), plural(last))
    )


def kind_of(name: str) -> str:
    """What is bought: of 'flat hanger with two pins' the hanger."""
    bought = re.split(r"\s+(?:with|for|of|to|in)\s|\s*[,(]", name.casefold())[0].split()
    return bought[-1] if bought else name.casefold()


def _with_more(found: re.Match[str], kind: str, steps: str) -> int | None:
    """With those that its sentence counts behind an 'and': 'two screws through the lid and two through the foot' are 4."""
    told = counted_number(found["number"])
    sentence = SENTENCE.match(steps, found.end())
    again = rf"\band\s+{COUNTED}(?:\s+(?:more|{re.escape(plural(kind))}))?\s+{_PLACES}\b"
    more = re.search(again, sentence[0], re.IGNORECASE) if sentence else None
    # 'four screws, two into the board and one into each post' shares them out.
    if told is None or more is None or (sentence and _SHARED_OUT.search(sentence[0])):
        return told
    return told + (counted_number(more["number"]) or 0)


def _all_that_are_told(
    kind: str, number: int, filled: Filled, steps: str
) -> tuple[re.Match[str], str] | None:
    """Where 'the two screws' or 'the other two screws' stands, and what is told there of all, if the steps tell of no others,
    and there are more; None otherwise."""
    counted = list(counting(kind).finditer(steps))
    told = [(told_in_all(one) or number) * (_in_each(one, filled, steps) or 1) for one in counted]
    spoken_of = re.findall(
        # 'Screw the hanger to the board' drives in what the hanger comes with.
        rf"\b(?:{re.escape(kind)}(?!\s+(?:the|it|them|both|each|{COUNT})\b)|{re.escape(plural(kind))})\b",
        steps,
        re.IGNORECASE,
    )
    if len(spoken_of) > len(counted) or sum(told) >= number:
        return None
    # 'The three wood screws' are all of theirs, whatever other screws there are.
    pieces = {name.casefold(): of_it for name, of_it in _pieces(filled).items()}
    if any(pieces.get(_whole_name(one, kind)) == all_ for one, all_ in zip(counted, told)):
        return None
    for one in counted:
        if one["of_all"] or THE.search(steps, 0, one.start()):
            return one, one[0]
        if _OTHERS.search(steps, 0, one.start()):
            return one, f"the other {one[0]}, {sum(told)} in all"
        # 'Two wood screws', and later 'two more wood screws'.
        if len(counted) > 1 and (one["others"] or _MORE.match(one["what"])):
            return one, f"{one[0]}, {sum(told)} in all"
    # 'Fix it with two screws', once, and nothing else is driven in: 'two more nails' are none of them.
    bought = [kind_of(name) for name in _pieces(filled)]
    else_ = any_of(word for one in bought if one != kind for word in (one, plural(one)))
    others = re.search(
        rf"{COUNT}\s+(?:other|further|remaining|more)\b(?!\s+(?:[a-z-]+\s+){{0,2}}(?:{else_})\b)",
        steps,
        re.IGNORECASE,
    )
    for start, sentence in sentences(steps) if len(counted) == 1 and not others else ():
        if start <= counted[0].start() < start + len(sentence) and not _SHARED.search(sentence):
            return counted[0], counted[0][0]
    return None


def complain_of_unlisted_hardware(
    filled: Filled, unsaid: Sequence[str], steps: str, path: str, problems: Problems
) -> Sequence[str]:
    """Advice where a step counts pieces of a kind of which none is to buy: 'two hinges'; and on the first thing to hang
    it by, or to put in, that is not, 'the picture ring'. What is bought and `unsaid` in the steps is meant, mostly: what of
    it is offered is returned."""
    before = len(problems)
    names = hardware_names(filled)
    pieces = _pieces(filled)
    for kind in _TO_BUY:
        counted_at = list(counting(kind).finditer(steps)) if kind not in names else []
        if counted_at and (number := _together(counted_at, steps)):
            found, *more = counted_at
            name = f"{found['what'] or ''}{kind}".casefold()
            meant = unsaid or (_left_over(pieces, steps) if found["others"] else ())
            instead = [_in_its_place(found, one, pieces.get(one, 1), bool(more)) for one in meant]
            facts = {"said": said(found[0])}
            if more:
                line = place_in(steps, more[0].start(), path).line
                facts["said"] += f" (and line {line} {said(more[0][0])})"
            facts["mend"] = _mend(name, number, instead)
            problems.add(place_in(steps, found.start(), path), "hardware-unlisted", **facts)
    parts = " ".join(one.value["name"] or "" for one in filled.each("parts") if one.value)
    listed = f"{names} {parts.casefold()}"
    for found in (*_HUNG_BY.finditer(steps), *_HUNG_ON.finditer(steps), *_PUT_IN.finditer(steps)):
        name = " ".join(found["what"].split())
        if re.search(rf"\b{re.escape(name.split()[-1])}s?\b", listed, re.IGNORECASE):
            continue
        number = counted_number(found.groupdict().get("number") or "") or 1
        # 'A cup hook into each' stays one.
        each_one = _ONE.search(found[0])
        meant = [one if each_one else _so_many(pieces.get(one, 1), one) for one in unsaid]
        if number > 1 and meant and pieces.get(unsaid[0], 1) == number:
            meant[0] = f"{found['number']} {plural(unsaid[0])}"  # 'three', where the step has it so
        facts = {"said": said(found[0]), "mend": _mend(name, number, meant)}
        problems.add(place_in(steps, found.start(), path), "hardware-unlisted", **facts)
        break
    return unsaid if len(unsaid) == 1 and len(problems) > before else ()


def complain_of_sorted_hardware(filled: Filled, steps: str, path: str, problems: Problems) -> None:
    """Advice on the first 'cup hook' of the steps where all hooks that are bought are told to be of another sort."""
    for found in _OF_SORT.finditer(steps):
        kind, sort = found["kind"].casefold(), found["sort"].casefold()
        pieces = _pieces(filled)
        bought = [name for name in pieces if kind_of(name) == kind]
        sorts = [re.findall(_SORTS, name.casefold()) for name in bought]
        # A screw of one sort may be of another too; a cup hook is no peg hook.
        told_apart = all(sorts) or (kind == "hook" and all(" " in name for name in bought))
        if bought and told_apart and not any(sort in of for of in sorts):
            name = found["what"].casefold()
            meant = [plural(one) if pieces[one] > 1 else one for one in bought]
            number = counted_number(found["number"] or "") or 1
            facts = {"said": said(found["told"]), "mend": _mend(name, number, meant)}
            place = place_in(steps, found.start("told"), path)
            problems.add(place, "hardware-unlisted", **facts)
            return


def _together(counted_at: Sequence[re.Match[str]], steps: str) -> int:
    """How many are counted: 'two screws' and later 'two other screws' are 4, and 'the two screws' are those of before."""
    whole = [number for one in counted_at if (number := counted_number(one["of_all"] or ""))]
    own = [counted_number(one["number"]) or 0 for one in counted_at]
    again = [bool(THE.search(steps, 0, one.start())) and not one["others"] for one in counted_at]
    return max(*whole, *own, sum(number for number, known in zip(own, again) if not known), 0)


def _left_over(pieces: Mapping[str, int], steps: str) -> tuple[str, ...]:
    """Of what is bought that of which the steps count some, and not all."""
    told = {
        name: _together(list(counting(kind_of(name)).finditer(steps)), steps) for name in pieces
    }
    return tuple(name for name, number in pieces.items() if 0 < told[name] < number)


def _in_its_place(found: re.Match[str], name: str, pieces: int, one_of_many: bool) -> str:
    """What is bought, as the step would say it: 'two of the four oak pegs' for 'two of the four wood screws', where as many are
    bought, and 'two oak pegs' where others are counted elsewhere; else '4 oak pegs'."""
    told = told_in_all(found) or 0
    as_many = told == pieces or (told < pieces and one_of_many and not found["of_all"])
    if not (as_many or found["others"]) or re.search(r"\d\s*(?:mm|cm|in)\b", found[0]):
        return _so_many(pieces, name)
    words = len((found["what"] or "").split()) + 1
    return f"{found[0].rsplit(maxsplit=words)[0]} {plural(name) if told > 1 else name}"


def _so_many(pieces: int, name: str) -> str:
    return counted(pieces, name) if pieces > 1 else name


def _mend(name: str, number: int, instead: Sequence[str]) -> str:
    add = f"add it to 'hardware' in finish.yaml, as {{name: {name}, pieces: {number}, size: …}}"
    return f"did you mean {said(instead[0])}? Else {add}" if len(instead) == 1 else add


def _pieces(filled: Filled) -> dict[str, int]:
    """How many of each are bought, by its name."""
    listed = (one.value for one in filled.each("hardware") if one.value)
    return {one["name"]: one["pieces"] or 1 for one in listed if one["name"]}


def are(number: int) -> str:
    """'is 1', 'are 2': how many there are."""
    return f"{'is' if number == 1 else 'are'} {number}"


def hardware_names(filled: Filled) -> str:
    """Of all that is to buy: a screw for a plate is no plate."""
    return " ".join(
        one.value["name"].casefold().partition(" for ")[0]
        for one in filled.each("hardware")
        if one.value is not None and one.value["name"]
    )


def told_in_all(found: re.Match[str]) -> int | None:
    """Of what `counting` found: 'two' is 2, 'two of the six' tells of 6."""
    return counted_number(found["of_all"] or found["number"])


def counting(kind: str) -> re.Pattern[str]:
    """Finds 'two wood screws', 'two other screws', 'two 3 × 30 mm screws', 'two of the wood screws' and 'two of the four wood
    screws'."""
    many = rf"(?:{re.escape(kind)}|{re.escape(plural(kind))})"
    what = r"(?P<what>(?:(?!(?:mm|cm|in|inch|of|and|the|into|to|on|with|for|from|each)\b)[a-z-]+\s+){0,3})"
    of_size = r"(?:(?:\d{1,2}(?:\.\d+)?\s*(?:×|x|by)\s*)?\d{1,3}(?:\.\d+)?\s*(?:mm|cm|in)\s+)?"
    of_the = rf"(?:of\s+(?:the|these|those|your|all)\s+(?:(?P<of_all>{COUNT})\s+)?)?"
    return re.compile(
        rf"{COUNTED}\s+(?P<others>(?:other|further|remaining)\s+)?{of_the}{of_size}{what}{many}\b(?!\s+(?:eye|hook|ring)s?\b)",
        re.IGNORECASE,
    )
