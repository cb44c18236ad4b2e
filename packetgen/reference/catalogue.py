"""Every message that can be told, each with its cause, its cure and an example."""

import json
import re
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from difflib import SequenceMatcher, get_close_matches

from packetgen.diagnostics import nearest
from packetgen.faults import FAULTS, Fault
from packetgen.faults.bringing import BRINGING
from packetgen.faults.figures import FIGURES
from packetgen.faults.files import FILES
from packetgen.faults.patterns import PATTERNS
from packetgen.faults.review import REVIEW
from packetgen.faults.values import VALUES
from packetgen.faults.whys import WHYS
from packetgen.load.words import listed

SECTIONS: Mapping[str, Mapping[str, Fault]] = {
    "Files, characters and YAML": FILES,
    "Single values": VALUES,
    "Series, patterns and charts": PATTERNS,
    "What reckoning and drawing find": FIGURES,
    "What an editor's review adds": REVIEW,
    "Designs brought in": BRINGING,
}


@dataclass(frozen=True)
class Example:
    """What stood in a file, and the line that was told of it; `written` is '' where nothing stood there."""

    file: str
    written: str
    told: str


_MOST_OFFERED = 3
_TELLING = 4  # letters from which on a word may be the beginning of others of its kind
_SMALL_WORDS = set("a an and for from in is it no not of on or the to too with".split())

Examples = Mapping[str, Example]  # by code; most codes have one


def read_examples(kept: bytes) -> Examples:
    """The examples as the tests that provoke each message wrote them down, in JSON."""
    return {code: Example(**one) for code, one in json.loads(kept).items()}


def as_json(examples: Examples) -> bytes:
    """The examples, to be kept."""
    plain = {code: asdict(example) for code, example in examples.items()}
    return (json.dumps(plain, ensure_ascii=False, indent=1) + "\n").encode()


def words_of(code: str) -> str:
    """The line of a message with '…' where it names what it is about; of one that is made of such words alone,
    what its code says."""
    fault = FAULTS[code]
    line = f"{fault.wrong}; {fault.right}".replace("{{", "\0").replace("}}", "\1")
    said = re.sub(r"\{\w+\}( \{\w+\})*", "…", line).replace("\0", "{").replace("\1", "}")
    return said if re.search(r"[a-z]", said) else code.replace("-", " ")


def explained(code: str, examples: Examples) -> str | None:
    """What a message means and what to do about it, for a screen; None for a code that there is not."""
    if code not in FAULTS:
        return None
    why, example = WHYS[code], examples.get(code)
    lines = [
        f"{code} ({FAULTS[code].level.value})",
        f"  {words_of(code)}",
        "",
        f"Why it comes:  {why.cause}",
        f"What mends it: {why.cure}",
    ]
    if example:
        lines += ["", *_example_lines(example)]
    return "\n".join(lines)


def nearest_code(code: str) -> str:
    """End of a sentence that offers codes that there are: one that is nearly it, or else those that have most
    of its words in themselves or in what they tell."""
    if get_close_matches(code, FAULTS, n=1, cutoff=0.8):
        return nearest(code, tuple(FAULTS))
    asked = _words(code)

    def alike(other: str) -> tuple[int, float]:
        told = f" {words_of(other)} {WHYS[other].cause}".casefold()
        number = 2 * len(asked & _words(other)) + sum(_begins(word, told) for word in asked)
        return number, SequenceMatcher(None, code, other).ratio()

    best = sorted(FAULTS, key=alike, reverse=True)[:_MOST_OFFERED]
    fewest = max(1, alike(best[0])[0] - 1)
    near = [other for other in best if alike(other)[0] >= fewest]
    return f"did you mean {listed(near)}?" if near else nearest(code, tuple(FAULTS))


def _begins(asked: str, told: str) -> bool:
    """Whether a word of `told` begins as the one asked for; where that is short, is that very word."""
    return bool(re.search(rf" {asked}" + (r"s?\b" if len(asked) < _TELLING else ""), told))


def _words(text: str) -> set[str]:
    return set(re.findall(r"[a-z]+", text.casefold())) - _SMALL_WORDS


def all_codes() -> str:
    """Every code with the words of its message, section by section, for a screen."""
    widest = max(map(len, FAULTS))
    parts = [
        "\n".join([title, *(f"  {code:<{widest}}  {words_of(code)}" for code in faults)])
        for title, faults in SECTIONS.items()
    ]
    return "\n\n".join(parts)


def catalogue_page(examples: Examples) -> str:
    """The catalogue as a page in Markdown; its headings are the codes."""
    parts = [_HEAD]
    for title, faults in SECTIONS.items():
        parts.append(f"## {title}")
        parts += [_entry(code, examples) for code in faults]
    return "\n\n".join(parts) + "\n"


_HEAD = """# Every message

Each line that the tool tells you ends with a code in brackets. Here is what each of them means: the words
of the line with … for what it names, why it comes, and what mends it. On the screen the same is told by

    packetgen proof --explain name-unknown

An **error** stops a build, and nothing is written. **Advice** is told, and the build goes on."""


def _entry(code: str, examples: Examples) -> str:
    why, example = WHYS[code], examples.get(code)
    text = (
        f"### `{code}`\n\n**{FAULTS[code].level.value.capitalize()}:** {_plain(words_of(code))}\n\n"
        f"{_plain(why.cause)}\n\n**What mends it:** {_plain(why.cure)}"
    )
    return f"{text}\n\n{_example(example)}" if example else text


def _example(example: Example) -> str:
    told = f"> {_plain(example.told)}"
    if not example.written:
        return f"For example:\n\n{told}"
    written = "\n".join(f"    {line}" for line in example.written.split("\n"))
    return f"For example, in `{example.file}`\n\n{written}\n\nis answered with\n\n{told}"


def _plain(words: str) -> str:
    """Words that Markdown leaves as they are."""
    return re.sub(r"([\\`*_<>\[\]#&|])", r"\\\1", words)


def _example_lines(example: Example) -> list[str]:
    if not example.written:
        return [example.told]
    shown = [f"    {line}" for line in example.written.split("\n")]
    return [f"In {example.file} stands", *shown, "and you read", f"    {example.told}"]
