"""Small pieces of the sentences that authors read."""

from collections.abc import Collection, Iterable

from packetgen.diagnostics import nearest

LOST = "\ufffd"  # stands for a character that was reported already; nobody complains about it again
LIKE_FIGURES = str.maketrans("oOlI", "0011")  # letters that are typed for figures
_LONGEST_QUOTE = 40
_LONGEST_LINE = 80
_LONGEST_OFFER = 110


def shown(text: str) -> str:
    """The author's own words: one line, shortened, nothing unseen in it."""
    seen = _seen(text)
    return seen if len(seen) <= _LONGEST_QUOTE else seen[: _LONGEST_QUOTE - 1] + "…"


def said(text: str) -> str:
    """The author's own words between quotes."""
    return f"'{shown(text)}'"


def to_write(line: str) -> str:
    """That this is to be written; '' where it is too long to be said, or has a sign that nobody sees."""
    return f"write {line}" if len(line) <= _LONGEST_LINE and line.isprintable() else ""


def offer(name: str, valid: Collection[str], longest: int = _LONGEST_OFFER) -> str:
    """The valid name nearest to `name`, or else a few of those that exist; never a long line."""
    return cut(nearest(name, tuple(valid)), longest=longest)


def cut(sentence: str, more: bool = False, longest: int = _LONGEST_OFFER) -> str:
    """A sentence that ends in a list, short enough for one line; `more` than it says there are anyhow."""
    sentence = _seen(sentence)
    if len(sentence) > longest:
        head = sentence[:longest].rpartition(", ")[0]
        return f"{head}, …" if head else f"{sentence[:longest]}…"
    return f"{sentence}, …" if more else sentence


def listed(words: Iterable[str], joint: str = "or") -> str:
    """('aida', 'linen') → "'aida' or 'linen'"."""
    quoted = [f"'{word}'" for word in words]
    if len(quoted) < 2:
        return "".join(quoted)
    return f"{', '.join(quoted[:-1])} {joint} {quoted[-1]}"


def counted(number: int, one: str, many: str | None = None) -> str:
    """(1, 'stitch', 'stitches') → '1 stitch'."""
    return f"{number} {one if number == 1 else many or one + 's'}"


def _seen(text: str) -> str:
    return "".join(letter if letter.isprintable() else LOST for letter in " ".join(text.split()))
