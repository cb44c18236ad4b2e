"""English nouns, as far as goods need them, and lists of them."""

_HISSING = ("s", "x", "z", "ch", "sh")


def plural(noun: str) -> str:
    """'skein' → 'skeins', 'box' → 'boxes', 'pack of two' → 'packs of two'."""
    head, joint, rest = noun.partition(" of ")
    if head.endswith(_HISSING):
        ending = "es"
    elif head.endswith("y") and head[-2:-1] not in tuple("aeiou"):
        head, ending = head[:-1], "ies"
    else:
        ending = "s"
    return f"{head}{ending}{joint}{rest}"


def counted(number: int, noun: str) -> str:
    """(1, 'skein') → '1 skein'; (2, 'box') → '2 boxes'."""
    return f"{number} {noun if number == 1 else plural(noun)}"


def listed(words: tuple[str, ...]) -> str:
    """('a', 'b', 'c') → 'a, b and c'."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"
