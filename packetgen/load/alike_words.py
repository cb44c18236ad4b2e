"""Whether two names are one, misspelt in a word."""

import re
import unicodedata
from difflib import SequenceMatcher

from packetgen.diagnostics import Problems
from packetgen.load.values import Filled
from packetgen.load.words import said

# Our own choice: shorter words differ by a letter and mean another thing; longer ones are alike by so much.
_LEAST_LETTERS, _ALIKE = 5, 0.75

_ARTICLE = re.compile(r"\A\s*(?:the|an?)\s")


def complain_of_file_name(
    filled: Filled, field: str, id: str, what: str, problems: Problems
) -> None:
    """Advice where the name in `field` and the `id` of its file or folder, which is made from it, are spelt nearly alike.
    `what` it is: a folder or a file."""
    name = filled[field]
    if name and misspelt(name, id.replace("-", " ")):
        facts = {"name": said(name), "what": what, "id": said(id)}
        problems.add(filled.place_of(field), "name-near-file", **facts)


def misspelt(one: str, other: str) -> bool:
    """Whether all words of the two are the same but one, and that nearly; capitals, accents and a first article are let be."""
    words, others = _words(one), _words(other)
    unlike = [pair for pair in zip(words, others) if pair[0] != pair[1]]
    return (
        len(words) == len(others)
        and len(unlike) == 1
        and min(map(len, unlike[0])) >= _LEAST_LETTERS
        and SequenceMatcher(None, *unlike[0]).ratio() >= _ALIKE
    )


def _words(text: str) -> list[str]:
    apart = unicodedata.normalize("NFKD", text.casefold().replace("'", "").replace("’", ""))
    plain = "".join(sign for sign in apart if not unicodedata.combining(sign))
    return re.findall(r"\w+", _ARTICLE.sub("", plain))
