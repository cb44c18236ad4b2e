"""What a pattern's own folder says, as far as it must be known to bring a design into it."""

import os
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from packetgen.bring.chart_text import rows_of
from packetgen.bring.codes import known_for
from packetgen.bring.key_text import (
    KnownLine,
    entry,
    known_lines,
    marks_elsewhere,
    without_entries,
    word,
    words,
)
from packetgen.diagnostics import Problems
from packetgen.load.cards import Cards, load_threads
from packetgen.load.examples import is_example_chart
from packetgen.load.files import ContentFolder
from packetgen.load.references import resolve
from packetgen.load.shape_pattern import ON_THE_CHART
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, read_nodes
from packetgen.model import ThreadCard
from packetgen.starting.left_over import lines_of_example
from packetgen.starting.sprig import MARKS

PATTERN, CHART = "pattern.yaml", "chart.txt"
_BEFORE = "_before"  # a name that nothing reads begins with it


class NotThere(Exception):
    """There is no `what` called `name`; `known` are those that there are."""

    def __init__(self, what: str, name: str, known: Sequence[str]) -> None:
        super().__init__(f"there is no {what} called {name!r}")
        self.what, self.name = what, name
        self.known = tuple(known)


@dataclass(frozen=True)
class PatternFolder:
    """What a pattern says, as far as it must be known to bring a design into it."""

    path: str  # relative to the content folder
    text: str  # of pattern.yaml
    root: GroupNode
    set_name: str
    card: ThreadCard
    sets: tuple[tuple[str, ThreadCard], ...]  # all that a key line has a number for, in order
    known: tuple[KnownLine, ...]
    known_in: Mapping[str, tuple[KnownLine, ...]]  # by set
    elsewhere: frozenset[str]  # marks that lines, knots and close-ups name
    example: tuple[str, ...] = ()  # entries that lay on the example's chart, and go with it
    of_example: bool = False  # whether key and chart are still those that begin wrote

    @property
    def series(self) -> str:
        return self.path.split("/")[1]

    def for_signs(self, signs: Collection[str]) -> "PatternFolder":
        """What it is to a design that is drawn in these signs: the key goes with its chart where it says nothing of them."""
        if known_for(signs, self.known, self.of_example) == self.known:
            return self
        return replace(self, known=(), known_in={name: () for name in self.known_in})

    @property
    def on_the_chart(self) -> tuple[str, ...]:
        """What of the old chart lies on it beside its stitches."""
        found = {name: entry(self.root, name) for name in ON_THE_CHART}
        return tuple(
            name
            for name, one in found.items()
            if one is not None and not (isinstance(one, ListNode) and not one.items)
        )


def cards_in(content_folder: Path) -> dict[str, ThreadCard]:
    """The thread cards that can be read, by their names in files."""
    cards = load_threads(ContentFolder(content_folder, Problems()), Problems())
    return {name: card for name, card in sorted(cards.items()) if card is not None}


def card_of(content_folder: Path, name: str) -> ThreadCard:
    """The thread card called that. Raises NotThere."""
    cards = cards_in(content_folder)
    if name not in cards:
        raise NotThere("thread card", name, tuple(cards))
    return cards[name]


def pattern_folder(
    content_folder: Path, name: str, threads: str | None, without_lines: bool, problems: Problems
) -> PatternFolder | None:
    """The pattern called that; None where its files cannot be read, with the reasons in `problems`.

    `threads` names a thread set of the pattern, or its card; the model's set when None. With
    `without_lines`, what lies on its chart beside the stitches counts no longer; nor what lies on the
    very example that the pattern began with. Raises NotThere.
    """
    folder = ContentFolder(content_folder, problems)
    if folder.unfinished():
        return None
    path = _path_of(folder, name)
    text = folder.text(f"{path}/{PATTERN}")
    series_path = f"{path.rpartition('/')[0]}/series.yaml"
    series_text = folder.text(series_path)
    root = None if text is None else read_nodes(text, f"{path}/{PATTERN}", problems)
    series = None if series_text is None else read_nodes(series_text, series_path, problems)
    if text is None or not isinstance(root, GroupNode) or problems.errors:
        return None
    rows = rows_of(_chart_text(content_folder, path))
    example = () if without_lines else lines_of_example(root, rows)
    if without_lines or example:
        text = without_entries(text, root, ON_THE_CHART)
        again = read_nodes(text, f"{path}/{PATTERN}", problems)
        assert isinstance(again, GroupNode), "it still has its other entries"
        root = again
    in_cards = Problems()  # a fault in a card that this pattern does not use is no matter here
    cards = load_threads(ContentFolder(content_folder, in_cards), in_cards)
    sets = _sets(root, series, cards)
    if not sets and in_cards.errors:
        problems.take(in_cards)
        return None
    if not sets and series is not None:
        named_sets = entry(root, "thread_sets")
        for item in named_sets.items if isinstance(named_sets, ListNode) else ():
            resolve(word(item), item.place, _cards_of_sets(series), "thread set", problems)
        if problems.errors:
            return None
    wanted = threads if threads is not None else next(iter(sets), "")
    named = {
        **{card.id: set_name for set_name, card in reversed(sets.items())},
        **dict(zip(sets, sets)),
    }
    if wanted not in named:
        raise NotThere(
            "thread set of this pattern",
            wanted,
            list(dict.fromkeys((*sets, *(card.id for card in sets.values())))),
        )
    set_name = named[wanted]
    matched = entry(root, "matched")
    left_out = (
        {key.value for key, _ in matched.entries} if isinstance(matched, GroupNode) else set()
    )
    of_example = _is_example_key(root) and is_example_chart(_chart_text(content_folder, path))
    known_in = {one: known_lines(root, one, cards, card.id) for one, card in sets.items()}
    return PatternFolder(
        path,
        text,
        root,
        set_name,
        sets[set_name],
        tuple((one, card) for one, card in sets.items() if one not in left_out or one == set_name),
        known_in[set_name],
        known_in,
        marks_elsewhere(root),
        example,
        of_example,
    )


def set_name_of(content_folder: Path, card: ThreadCard) -> str:
    """What the series there call the card in their thread sets; its own name where they do not, or differ."""
    folder = ContentFolder(content_folder, Problems())
    names = set()
    for series in folder.folders("series"):
        path = f"series/{series}/series.yaml"
        text = folder.text(path)
        root = None if text is None else read_nodes(text, path, Problems())
        names |= {name for name, of in _cards_of_sets(root).items() if of == card.id}
    return names.pop() if len(names) == 1 else card.id


def kept_as(content_folder: Path, path: str) -> str:
    """Under which path an old file is kept: beside its place, where nothing reads it and nothing is yet."""
    name = path.rpartition("/")[2]
    folder = path.removesuffix(name)
    number = 1
    while True:
        kept = f"{folder}{_BEFORE}{f'-{number}' if number > 1 else ''}-{name}"
        if not os.path.lexists(content_folder / kept):
            return kept
        number += 1


def _chart_text(content_folder: Path, path: str) -> str:
    """Of the chart that begin writes; '' where there is none of that name. Its faults are told elsewhere."""
    folder = ContentFolder(content_folder, Problems())
    return (folder.text(f"{path}/{CHART}") or "") if CHART in folder.files(path) else ""


def _is_example_key(root: GroupNode) -> bool:
    """Whether its marks are those that begin writes: none of them is the author's own then, as long as the chart is the
    example too."""
    key = entry(root, "key")
    return isinstance(key, GroupNode) and MARKS.startswith(
        "".join(one.value for one, _ in key.entries)
    )


def _path_of(folder: ContentFolder, name: str) -> str:
    paths = {
        pattern: f"series/{series}/{pattern}"
        for series in folder.folders("series")
        for pattern in folder.folders(f"series/{series}")
    }
    if name not in paths:
        raise NotThere("pattern", name, sorted(paths))
    return paths[name]


def _sets(root: GroupNode, series: Node | None, cards: Cards[ThreadCard]) -> dict[str, ThreadCard]:
    """The pattern's thread sets in its order, as far as their cards can be read."""
    card_named = _cards_of_sets(series)
    known = {name: card for name, card in cards.items() if card is not None}
    return {
        name: known[card_named[name]]
        for name in words(entry(root, "thread_sets"))
        if card_named.get(name) in known
    }


def _cards_of_sets(series: Node | None) -> dict[str, str]:
    listed = entry(series, "thread_sets")
    return {
        word(entry(item, "name")): word(entry(item, "card"))
        for item in (listed.items if isinstance(listed, ListNode) else ())
    }
