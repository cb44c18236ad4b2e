"""English nouns, as far as goods need them, and lists of them."""

import re

_JOINT = re.compile(r" (?:of|for) ")
_IRREGULAR = {"foot": "feet", "leaf": "leaves", "shelf": "shelves", "knife": "knives"}
_HISSING = ("s", "x", "z", "ch", "sh")


def plural(noun: str) -> str:
    """'skein' → 'skeins', 'box' → 'boxes', 'pack of two' → 'packs of two', 'screw for it' → 'screws for it'."""
    head, rest = _parted(noun)
    before, _, last = head.rpartition(" ")
    if other := _IRREGULAR.get(last):
        return f"{noun[: len(before) + bool(before)]}{other}{rest}"
    if head.endswith(_HISSING):
        ending = "es"
    elif head.endswith("y") and head[-2:-1] not in tuple("aeiou"):
        head, ending = head[:-1], "ies"
    else:
        ending = "s"
    return f"{head}{ending}{rest}"


def _parted(noun: str) -> tuple[str, str]:
    """What it is, and, with its joint, of or for what."""
    end = _JOINT.search(noun)
    return (noun[: end.start()], noun[end.start() :]) if end else (noun, "")


def one_of(nouns: str) -> str:
    """'skeins' → 'skein', 'boxes' → 'box'; '' of what is no plural, or of which nobody can tell."""
    head, rest = _parted(nouns)
    for ending, single in (("ies", "y"), ("es", ""), ("s", "")):
        one = f"{head.removesuffix(ending)}{single}{rest}"
        if head.endswith(ending) and head != ending and plural(one) == nouns:
            return one
    return ""


def counted(number: int, noun: str) -> str:
    """(1, 'skein') → '1 skein'; (2, 'box') → '2 boxes'."""
    return f"{number} {noun if number == 1 else plural(noun)}"


def all_of(number: int, noun: str) -> str:
    """(2, 'picture') → 'both pictures'; (3, 'picture') → 'all 3 pictures'."""
    return f"both {plural(noun)}" if number == 2 else f"all {counted(number, noun)}"


def listed(words: tuple[str, ...], last: str = "and") -> str:
    """('a', 'b', 'c') → 'a, b and c'."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def at_the_ends(noun: str, first: int, last: int, length: int) -> str:
    """(row, 4, 2, 64) → 'rows 1–4 and 63–64', the first four and the last two; '' where there is none."""
    spans = [(1, first), (length - last + 1, length)]
    said = tuple(
        f"{start}" if start == end else f"{start}–{end}" for start, end in spans if start <= end
    )
    return f"{plural(noun) if first + last > 1 else noun} {listed(said)}" if said else ""
