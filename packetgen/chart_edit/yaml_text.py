"""Exchanges in the text of a YAML file: values, entries of lists and names go by their exact places,
and everything between them stays as its author wrote it.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode

Exchanges = Mapping[TextNode, str]  # a value → what is written in its place
Patch = tuple[int, int, str]  # from where to where, and what comes there


def patched(text: str, patches: Iterable[Patch]) -> str:
    """The text after all of them; no two touch the same characters."""
    for start, end, new in sorted(patches, reverse=True):
        text = text[:start] + new + text[end:]
    return text


def quoted(text: str) -> str:
    """`text` between double quotes, as YAML reads it back."""
    escaped = text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")
    return f'"{escaped}"'


@dataclass(frozen=True)
class YamlText:
    """The text that nodes were read from."""

    text: str

    def written(self, node: TextNode) -> str:
        """A value as it stands in the file, with its quotes, or with its bar in the line above."""
        return self.text[node.span[0] : self._end(node)]

    def exchanged(self, values: Exchanges) -> list[Patch]:
        """Other values in the places of these."""
        return [(node.span[0], self._end(node), new) for node, new in values.items()]

    def copied(
        self, name: TextNode, of: ListNode, copies: Sequence[Sequence[Exchanges]]
    ) -> list[Patch]:
        """Each entry of the list under `name` once for each of its `copies`; none takes it out."""
        spans = [(item.span[0], self._end(item)) for item in of.items]
        written = [
            [self._copy(span, values) for values in every] for span, every in zip(spans, copies)
        ]
        if not any(written):
            return self._emptied(name, of, spans, "[]")
        if self._in_brackets(of):
            return [self._between_brackets(spans, [", ".join(every) for every in written])]
        return [
            (start, end, self._joint(start).join(every))
            if every
            else self._lines(self.text.rindex("-", 0, start), end)
            for (start, end), every in zip(spans, written)
        ]

    def without(self, name: TextNode, of: GroupNode, names: frozenset[str]) -> list[Patch]:
        """The group under `name` without the entries of these `names`."""
        spans = [(key.span[0], self._end(value)) for key, value in of.entries]
        gone = [key.value in names for key, _ in of.entries]
        if all(gone):
            return self._emptied(name, of, spans, "{}")
        if self._in_brackets(of):
            kept = ["" if out else self.text[start:end] for out, (start, end) in zip(gone, spans)]
            return [self._between_brackets(spans, kept)]
        return [self._lines(*span) for out, span in zip(gone, spans) if out]

    def with_entry(self, of: ListNode, number: int, new: str) -> list[Patch]:
        """The list with `new` as an entry of its own after the one of that number, from 0."""
        item = of.items[number]
        end = self._end(item)
        if self._in_brackets(of):
            return [(end, end, f", {new}")]
        line_end = self.text.find("\n", end)  # a remark beside the old entry stays there
        end = len(self.text) if line_end < 0 else line_end
        return [(end, end, self._joint(item.span[0]) + new)]

    # --- places ---

    def _in_brackets(self, node: Node) -> bool:
        return self.text[node.span[0]] in "[{"

    def _end(self, node: Node) -> int:
        """Where a value ends. What the reader calls the end of a block lies beyond the remarks below."""
        if isinstance(node, TextNode) or self._in_brackets(node):
            start, end = node.span
            return start + len(self.text[start:end].rstrip())
        if isinstance(node, ListNode):
            return self._end(node.items[-1])
        return self._end(node.entries[-1][1])

    def _joint(self, start: int) -> str:
        """What parts an entry that begins at `start`, after its dash, from one that follows it."""
        dash = self.text.rindex("-", 0, start)
        indent = dash - (self.text.rfind("\n", 0, dash) + 1)
        return "\n" + " " * indent + self.text[dash:start]

    # --- patches ---

    def _copy(self, span: tuple[int, int], values: Exchanges) -> str:
        start, end = span
        patches = ((at - start, to - start, new) for at, to, new in self.exchanged(values))
        return patched(self.text[start:end], patches)

    def _lines(self, start: int, end: int) -> Patch:
        """The whole lines from that of `start` to that of `end` taken out."""
        last = self.text.find("\n", end)
        first = self.text.rfind("\n", 0, start) + 1
        return first, len(self.text) if last < 0 else last + 1, ""

    def _emptied(
        self, name: TextNode, of: Node, spans: Sequence[tuple[int, int]], empty: str
    ) -> list[Patch]:
        if self._in_brackets(of):
            return [(of.span[0], self._end(of), empty)]
        after_colon = self.text.index(":", name.span[1]) + 1
        lines = [self._lines(*span) for span in spans]
        return [(after_colon, after_colon, f" {empty}"), *lines]

    def _between_brackets(self, spans: Sequence[tuple[int, int]], written: Sequence[str]) -> Patch:
        """All entries; one that is '' goes with the comma before it, the first with the one after."""
        whole = ""
        for number, (new, (start, _)) in enumerate(zip(written, spans)):
            if new:
                whole += (self.text[spans[number - 1][1] : start] if whole else "") + new
        return spans[0][0], spans[-1][1], whole
