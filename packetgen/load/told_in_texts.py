"""What an author's texts of a pattern tell of threads, strands, columns and rows, beside what its key and its chart have."""

from collections.abc import Collection, Mapping

from packetgen.diagnostics import Problems
from packetgen.load.chart import Chart
from packetgen.load.counted_rows import complain_of_counted_rows
from packetgen.load.idle_threads import complain_of_idle_threads
from packetgen.load.key import Key
from packetgen.load.sure import all_sure
from packetgen.load.told_blocks import complain_of_told_blocks
from packetgen.load.told_counts import complain_of_told_counts
from packetgen.load.told_kinds import complain_of_told_kinds
from packetgen.load.told_list import complain_of_list, exchanged, names_in_list
from packetgen.load.told_numbers import complain_of_told_numbers
from packetgen.load.told_places import complain_of_told_places
from packetgen.load.told_rows import complain_of_told_rows
from packetgen.load.told_spellings import complain_of_told_spellings
from packetgen.load.told_steps import complain_of_mixed_steps
from packetgen.load.told_strands import complain_of_told_strands
from packetgen.model import Stitch, ThreadCard, ThreadSet

NOTES = "stitching.md"
_HALVES = (Stitch.HALF, Stitch.HALF_BACK)


def complain_of_texts(
    texts: Mapping[str, str | None],
    path: str,
    key: Key | None,
    sets: Mapping[str, ThreadSet | None],
    chart: Chart | None,
    on_chart: Collection[str],
    values: Mapping[str, str | None],
    called: Mapping[str, str],
    problems: Problems,
) -> None:
    """Advice on each of the `texts`, by their files in the folder `path`. `values` are texts of pattern.yaml, by their
    fields, `called` names that colours seem to have had before, by their numbers. What a key line lacks that could not be
    read may be what a text names, so with such a line less is said. `on_chart` is what of ON_THE_CHART the pattern has."""
    whole_key = key if key is not None and key.sound else None
    notes = texts.get(NOTES)
    complain_of_mixed_steps(notes or "", f"{path}/{NOTES}", problems)
    if notes is not None and chart is not None and chart.even:
        size = len(chart.rows[0]), len(chart.rows)
        complain_of_told_places(notes, f"{path}/{NOTES}", size, problems)
        if whole_key:
            of_chart = whole_key.lines, chart.rows, problems
            complain_of_told_rows(notes, f"{path}/{NOTES}", *of_chart)
            complain_of_told_blocks(notes, f"{path}/{NOTES}", *of_chart)
            complain_of_counted_rows(notes, f"{path}/{NOTES}", *of_chart)
    if notes is not None and whole_key and sets and None not in sets.values():
        of_sets = all_sure(sets.values())
        complain_of_told_strands(
            notes, f"{path}/{NOTES}", of_sets, whole_key.lines, on_chart, problems
        )
    halves = not whole_key or any(line.stitch in _HALVES for line in whole_key.lines)
    for file, words in texts.items():
        if words is not None and file.endswith(".md"):
            complain_of_told_kinds(words, f"{path}/{file}", on_chart, halves, problems)
    if notes is not None and whole_key and chart is not None and "close_ups" not in on_chart:
        complain_of_told_counts(notes, f"{path}/{NOTES}", whole_key.lines, chart.rows, problems)
    cards = {name: one.card for name, one in sets.items() if one is not None}
    beside = {file: text for file, text in texts.items() if text and file.endswith(".md")}
    beside |= {f"'{field}'": text for field, text in values.items() if text}
    former, instead = dict(called), dict[str, str]()
    for file, words in texts.items():
        if words is not None and whole_key and file.endswith(".txt"):
            former |= names_in_list(words, whole_key.lines)
            instead |= exchanged(words, whole_key.lines, cards)
    for file, words in texts.items():
        if words is not None and whole_key and file.endswith(".txt"):
            words = complain_of_list(
                words, f"{path}/{file}", whole_key.lines, cards, beside, problems
            )
        if words is not None:
            used = _used(whole_key) if whole_key else frozenset()
            on_cards = tuple(cards.values())
            respelt: frozenset[tuple[int, str]] = frozenset()
            if whole_key and file.endswith(".md"):
                respelt = complain_of_told_spellings(
                    words, f"{path}/{file}", on_cards, used, former, problems
                )
            complain_of_told_numbers(words, f"{path}/{file}", on_cards, problems, used, respelt)
            if whole_key:
                _look_for_idle(words, f"{path}/{file}", whole_key, cards, instead, problems)


def _look_for_idle(
    words: str,
    path: str,
    key: Key,
    cards: Mapping[str, ThreadCard],
    instead: Mapping[str, str],
    problems: Problems,
) -> None:
    left_out = {name for line in key.lines for name in line.matched}
    named = [card for name, card in cards.items() if name not in left_out]
    complain_of_idle_threads(words, path, named, _used(key), instead, problems)


def _used(key: Key) -> frozenset[str]:
    """The numbers of all its threads."""
    return frozenset(
        colour.number for line in key.lines for needle in line.threads.values() for colour in needle
    )
