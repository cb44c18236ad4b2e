"""Times of drying and curing that the steps of a finishing piece make shorter than its labels do."""

import re
from collections.abc import Iterable, Mapping, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import NUMBER_WORDS, counted_number
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Paint
from packetgen.units import hours_minutes

_TIME = re.compile(
    rf"\b(?:(?P<half>half\s+an?)|(?P<number>\d{{1,3}}|an?|{'|'.join(NUMBER_WORDS)}))\s+"
    r"(?P<unit>min|minutes?|h|hours?|days?)\b(?!\s+(?:or|to)\b)",
    re.IGNORECASE | re.ASCII,
)
_GLUE_WORD = re.compile(r"[a-z-]{4,}")
_IN_ANY_GLUE = {"glue", "glued", "gluing", "part", "parts", "with", "that", "they", "into", "onto"}
_HOURS = {"m": 1 / 60, "h": 1.0, "d": 24.0}  # by the first letter of the unit
_COATS = re.compile(
    r"\bbetween\s+(?:the\s+)?(?:two\s+)?coats\b|\b(?:each|every|first|next|second)\s+coat\b|\bcoats?\b.*\bdr(?:y|ies)\b",
    re.IGNORECASE | re.DOTALL,
)
_CURED = re.compile(
    r"\b(?:(?:cur|harden|dr(?:y|ie))(?:e|s|d|ed|es|ing)?|leave|wait)\b", re.IGNORECASE
)
_LEFT_SO = re.compile(
    r"[ \t]*(?:leave|let)\s+(?:it|them|all|everything)\b|[ \t]*wait\b", re.IGNORECASE
)
_HELD = re.compile(
    r"\b(?:hold|held|press|clamp|clamped|weight|pinch|wipe|sand|tack|cool|spread|warm)\w*\b",
    re.IGNORECASE,
)


def complain_of_told_times(
    filled: Filled, paints: Sequence[Paint] | None, steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first time between coats, and the first until glue has cured, that is too short for what is named in
    its sentence; where nothing is named there, for all of them."""
    dry_h: Mapping[str, float] = {
        paint.name: min(way.dries_in_h for way in paint.ways) for paint in paints or ()
    }
    glues = [
        one.value
        for one in filled.each("glue")
        if one.value is not None and one.value["name"] and one.value["cures_in"] is not None
    ]
    cure_h = {glue["name"]: glue["cures_in"] for glue in glues}
    used_for = {glue["name"]: f"{glue['name']} {glue['for'] or ''}" for glue in glues}
    glued = re.compile(rf"\b(?:glue|{any_of(cure_h)})\b", re.IGNORECASE)
    told = set[str]()
    for start, sentence in sentences(steps):
        so_far = steps[: start + len(sentence)].rpartition("\n")[2]
        # 'Leave it for 12 hours', at the end of a step that glues.
        of_glue = glued.search(so_far if _LEFT_SO.match(sentence) else sentence)
        if _COATS.search(sentence):
            name, long_h = "dries_in", dry_h
        elif of_glue and _CURED.search(sentence) and not _HELD.search(sentence):
            # 'Let it cure' tells of what the step speaks of.
            name, long_h = "cures_in", _of_meant((sentence, so_far), used_for, cure_h)
        else:
            continue
        if name not in told and (short := _too_short(sentence, long_h)):
            found, least = short
            facts = {"said": said(found[0]), "what": said(least)}
            facts |= {"own": hours_minutes(long_h[least]), "name": said(name)}
            problems.add(place_in(steps, start + found.start(), path), "step-time-short", **facts)
            told.add(name)


def _of_meant(
    told: Iterable[str], used_for: Mapping[str, str], cure_h: Mapping[str, float]
) -> Mapping[str, float]:
    """Those of the glues that have most words in common with the sentence, or else with its step, of their name and of what
    they are for: 'glue the washers' is not done with wood glue."""
    alike = dict.fromkeys(used_for, 0)
    for words in told:
        said_words = _words_of(words)
        alike = {name: len(said_words & _words_of(of_it)) for name, of_it in used_for.items()}
        if any(alike.values()):
            break
    most = max(alike.values(), default=0)
    return {name: hours for name, hours in cure_h.items() if alike[name] == most}


def _words_of(text: str) -> set[str]:
    """Words that tell of one thing rather than another, in the singular."""
    return {one.rstrip("s") for one in _GLUE_WORD.findall(text.casefold())} - _IN_ANY_GLUE


def _too_short(sentence: str, long_h: Mapping[str, float]) -> tuple[re.Match[str], str] | None:
    """Where the time stands, and the name of what takes longer."""
    times = list(_TIME.finditer(sentence))
    named = _named_in(sentence, long_h) or list(long_h)
    if not times or not named:
        return None
    for found, names in _with_own_names(sentence, times, long_h):
        least = min(names, key=lambda one: long_h[one])
        if _hours(found) < long_h[least]:
            return found, least
    # 'Let each coat of whey dry for 3 h', in its own words between two commas.
    clauses = re.split(r"[,;]", sentence)
    (said_there,) = [one for one in clauses if times[0][0] in one][:1] or [sentence]
    named = (_named_in(said_there, long_h) if len(times) == 1 else []) or named
    least = min(named, key=lambda one: long_h[one])
    # 'each coat 2 hours, the copper blue 3 hours': it has its own time.
    enough = any(_hours(one) >= long_h[least] for one in times)
    return None if enough else (times[0], least)


def _with_own_names(
    sentence: str, times: Sequence[re.Match[str]], names: Iterable[str]
) -> list[tuple[re.Match[str], list[str]]]:
    """Of 'copper blue 3 hours and soap white 2 hours' each time with what is named before it; empty where one has none."""
    begins = [0, *(one.end() for one in times)]
    own = [
        (one, _named_in(sentence[start : one.start()], names)) for start, one in zip(begins, times)
    ]
    return own if len(times) > 1 and all(of for _, of in own) else []


def _named_in(text: str, names: Iterable[str]) -> list[str]:
    return [one for one in names if one.casefold() in text.casefold()]


def _hours(found: re.Match[str]) -> float:
    number = 0.5 if found["half"] else counted_number(found["number"]) or 1
    return number * _HOURS[found["unit"][0].casefold()]
